import { tmpdir } from 'node:os';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/entries/index.ts';
import { openMemoryStore } from '../../../src/stores/index.ts';
import { asked, inventedEntries, TRACE } from './asked.ts';

const entries = inventedEntries();
const server = () => asked(tmpdir());
const problemsOf = async (answer: Response) => ((await answer.json()) as { problems: { field: string; value: string; message: string; expected: string }[] }).problems;

test('entries that were sent come back as they were, in order, and once', async () => {
  const { ask, send } = server();
  expect(await (await send('/api/entries', { entries })).json()).toEqual({ kept: entries.length });
  expect((await send('/api/entries', { entries: entries.slice(0, 5) })).status).toBe(200);
  const all = (await (await ask('/api/entries?since=0')).json()) as { entries: Entry[]; cursor: string };
  expect(all.entries).toEqual(entries);
  const rest = (await (await ask(`/api/entries?since=${all.cursor}`)).json()) as { entries: Entry[]; cursor: string };
  expect(rest).toEqual({ entries: [], cursor: all.cursor });
  expect(((await (await ask('/api/entries')).json()) as { entries: Entry[] }).entries).toHaveLength(entries.length);
});

test('an entry that cannot be right is refused with its field, what stood there and what would be right, and nothing is kept', async () => {
  const { ask, send } = server();
  const reading = entries.find((entry) => entry.kind === 'reading');
  const wrong = [{ ...reading, at: '2026-02-30T10:00:00Z' }, { ...reading, id: 'short' }, { ...reading, body: { ...(reading?.body as object), standing: 'guessed' } }];
  const answer = await send('/api/entries', { entries: [entries[0], ...wrong] });
  expect(answer.status).toBe(422);
  const problems = await problemsOf(answer);
  expect(problems.map(({ field }) => field)).toEqual(['[1].at', '[2].id', '[3].body.standing']);
  for (const problem of problems) {
    expect(problem.value).not.toBe('');
    expect(problem.expected).not.toBe('');
    expect(problem.message).toContain(problem.value);
  }
  expect(problems[2]?.value).toContain('guessed');
  expect(((await (await ask('/api/entries')).json()) as { entries: Entry[] }).entries).toEqual([]);
});

describe('what is no list of entries is refused', () => {
  test.each([['no JSON', 'ten thou'], ['JSON without entries', '{}'], ['a list', '[]'], ['null', 'null'], ['entries that are no list', '{"entries":{}}'], ['nothing', ''], ['cut short', '{"entries":[{"id":"01']])('%s', async (_words, body) => {
    const answer = await server().send('/api/entries', body);
    expect(answer.status).toBe(400);
    expect(await problemsOf(answer)).toEqual([{ field: 'entries', value: '', message: 'no entries were sent', expected: 'a JSON object with a list called entries' }]);
  });
});

test('a second content under the same id is a conflict, and neither it nor its companions are kept', async () => {
  const { ask, send } = server();
  await send('/api/entries', { entries: entries.slice(0, 3) });
  const answer = await send('/api/entries', { entries: [entries[3], { ...entries[1], by: 'somebody else' }] });
  expect(answer.status).toBe(409);
  expect((await problemsOf(answer))[0]).toMatchObject({ field: 'id', value: entries[1]?.id, expected: 'an id of its own for each entry' });
  expect(((await (await ask('/api/entries')).json()) as { entries: Entry[] }).entries).toEqual(entries.slice(0, 3));
});

test.each(['9999', 'x', '-1', '1e3', ''])('a place in the log that is not known is gone, with the way on: %j', async (since) => {
  const { ask, send } = server();
  await send('/api/entries', { entries: entries.slice(0, 3) });
  const answer = await ask(`/api/entries?since=${since}`);
  expect(answer.status).toBe(410);
  expect((await problemsOf(answer))[0]).toMatchObject({ field: 'since', value: since, expected: 'start again from the beginning' });
});

test('an entry of a kind that is not known yet is kept and passed on', async () => {
  const { ask, send } = server();
  const later = { ...entries[1], kind: 'smell', body: { of: 'burnt belt' } };
  expect((await send('/api/entries', { entries: [later] })).status).toBe(200);
  expect(((await (await ask('/api/entries')).json()) as { entries: Entry[] }).entries).toEqual([later]);
});

test('more than 64 MB is refused, whether its length is told or not', async () => {
  const { ask, send } = server();
  const told = await send('/api/entries', '{}', { 'content-length': String(65 * 1024 * 1024) });
  expect(told.status).toBe(413);
  expect((await problemsOf(told))[0]).toMatchObject({ field: 'body', expected: '64 MB at most' });
  let pieces = 0;
  const body = new ReadableStream<Uint8Array>({ pull: (controller) => (pieces++ < 65 ? controller.enqueue(new Uint8Array(1024 * 1024)) : controller.close()) });
  const untold = await ask('/api/blobs', { method: 'POST', body, duplex: 'half', headers: { 'content-type': 'image/jpeg' } } as RequestInit);
  expect(untold.status).toBe(413);
});

test('a store that fails is answered with a plain sentence and no trace', async () => {
  const failing = { ...openMemoryStore(), readSince: () => Promise.reject(new Error('disk at /src/x.ts:1:2')), append: () => Promise.reject(new Error('disk at /src/x.ts:1:2')) };
  const { ask, send } = asked(tmpdir(), failing);
  const said: unknown[] = [];
  const { error } = console;
  console.error = (...words) => said.push(words);
  try {
    for (const answer of [await ask('/api/entries'), await send('/api/entries', { entries }), await ask(`/paper/${entries[0]?.hammer}/report`)]) {
      expect(answer.status).toBe(500);
      const text = await answer.text();
      expect(text).toContain('the server could not do this');
      expect(text).not.toMatch(TRACE);
    }
  } finally {
    console.error = error;
  }
  expect(said).toHaveLength(3);
});
