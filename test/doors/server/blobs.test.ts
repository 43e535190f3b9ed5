import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import { expect, test } from 'vitest';
import { DamagedBlob, openMemoryStore } from '../../../src/stores/index.ts';
import { asked, TRACE } from './asked.ts';

const bytes = new Uint8Array(3000).map((_byte, index) => (index * 37) % 251);
const put = (type: string | undefined, body: Uint8Array<ArrayBuffer>) => asked(tmpdir()).ask('/api/blobs', { method: 'POST', body, headers: type === undefined ? {} : { 'content-type': type } });

test('a photograph comes back byte for byte, under its SHA-256, as what it was', async () => {
  const { ask } = asked(tmpdir());
  const answer = await ask('/api/blobs', { method: 'POST', body: bytes, headers: { 'content-type': 'image/jpeg' } });
  const { sha256 } = (await answer.json()) as { sha256: string };
  expect(sha256).toBe(createHash('sha256').update(bytes).digest('hex'));
  const back = await ask(`/api/blobs/${sha256}`);
  expect(back.headers.get('content-type')).toBe('image/jpeg');
  expect(back.headers.get('x-content-type-options')).toBe('nosniff');
  expect(back.headers.get('cache-control')).toContain('immutable');
  expect(new Uint8Array(await back.arrayBuffer())).toEqual(bytes);
});

test.each(['image/png', 'image/webp', 'image/heic', 'audio/wav', 'audio/ogg; codecs=opus', 'video/mp4'])('kept: %s', async (type) => {
  expect((await put(type, bytes)).status).toBe(200);
});

test.each(['text/html', 'image/svg+xml', 'application/javascript', 'application/octet-stream', 'text/plain', '', undefined, 'image/jpeg2', 'not a type'])('refused, since it could run as a page or is no picture or sound: %s', async (type) => {
  const answer = await put(type, bytes);
  expect(answer.status).toBe(415);
  expect(await answer.json()).toMatchObject({ problems: [{ field: 'file', message: 'this kind of file is not kept' }] });
});

test('an empty file is refused', async () => {
  const answer = await put('image/jpeg', new Uint8Array());
  expect(answer.status).toBe(422);
  expect(await answer.json()).toMatchObject({ problems: [{ field: 'file', message: 'the file is empty' }] });
});

test('what was never put is not there, and what is no SHA-256 names nothing', async () => {
  const { ask } = asked(tmpdir());
  expect((await ask(`/api/blobs/${'0'.repeat(64)}`)).status).toBe(404);
  for (const name of ['abc', '..%2f..%2fetc%2fpasswd', 'A'.repeat(64)]) expect(await (await ask(`/api/blobs/${name}`)).text()).not.toContain('root:');
});

test('a photograph that rotted on the disk is told as that, without a trace', async () => {
  const { ask } = asked(tmpdir(), { ...openMemoryStore(), getBlob: () => Promise.reject(new DamagedBlob('0'.repeat(64), '1'.repeat(64))) });
  const answer = await ask(`/api/blobs/${'0'.repeat(64)}`);
  expect(answer.status).toBe(500);
  expect(await answer.text()).not.toMatch(TRACE);
});
