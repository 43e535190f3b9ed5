import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../stores/temporary-folder.ts';
import { asked, HOST, inventedEntries, TRACE } from './asked.ts';

const folder = temporaryFolder();
const page = join(folder.path, 'app');
beforeAll(() => {
  mkdirSync(join(page, 'assets'), { recursive: true });
  mkdirSync(join(folder.path, 'app-private'));
  writeFileSync(join(folder.path, 'secret.json'), '"nobody reads this"');
  writeFileSync(join(folder.path, 'app-private', 'secret.json'), '"nobody reads this"');
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>the page</title>');
  writeFileSync(join(page, 'assets', 'a.js'), 'export {};');
});
afterAll(() => folder.remove());

describe('only this machine is answered', () => {
  test.each(['tupwise.example', 'tupwise.example:4700', 'localhost.tupwise.example', '192.168.1.20:4700', '0.0.0.0', 'localhost:4700@tupwise.example', '127.0.0.1.tupwise.example', '[::2]:4700', ''])('not as %j', async (host) => {
    const answer = await asked(page).ask('/api/entries', { headers: { host } });
    expect(answer.status).toBe(403);
    expect(await answer.text()).toBe('Tupwise answers on this machine only, as localhost.\n');
  });
  test.each(['localhost', 'localhost:4700', '127.0.0.1:80', '[::1]:4700'])('as %s', async (host) => {
    expect((await asked(page).ask('/api/entries', { headers: { host } })).status).toBe(200);
  });
});

describe('only our own pages write', () => {
  test.each(['http://tupwise.example', 'http://localhost:4701', 'null', 'https://localhost:4700.tupwise.example', 'nonsense', ''])('not from %j', async (origin) => {
    const { ask, send } = asked(page);
    expect((await send('/api/entries', { entries: inventedEntries() }, { origin })).status).toBe(403);
    expect((await ask('/api/blobs', { method: 'POST', body: 'x', headers: { origin, 'content-type': 'image/png' } })).status).toBe(403);
    expect(((await (await ask('/api/entries')).json()) as { entries: unknown[] }).entries).toEqual([]);
  });
  test('from our own', async () => {
    expect((await asked(page).send('/api/entries', { entries: inventedEntries() }, { origin: `http://${HOST}` })).status).toBe(200);
  });
});

test('every address without a file of its own gets the page, and every answer the policy', async () => {
  for (const path of ['/', '/hammer/01ABC/elevation', '/hammer/01ABC/part/lower-die']) {
    const answer = await asked(page).ask(path);
    expect(await answer.text()).toContain('the page');
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(answer.headers.get('cache-control')).toBe('no-cache');
    expect(answer.headers.get('content-security-policy')).toMatch(/default-src 'self';.*object-src 'none'.*frame-ancestors 'none'/);
    expect(answer.headers.get('referrer-policy')).toBe('no-referrer');
  }
  const file = await asked(page).ask('/assets/a.js');
  expect(file.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  expect(file.headers.get('cache-control')).toContain('immutable');
  expect((await asked(page).ask('/assets/b.js')).status).toBe(404);
});

test.each(['/../secret.json', '/..%2fsecret.json', '/%2e%2e/secret.json', '/%2e%2e%2fsecret.json', '/assets/..%2f..%2fsecret.json', '/..%2fapp-private%2fsecret.json', '/..%5csecret.json', '/%2fetc%2fhosts', '/..%2f..%2f..%2f..%2f..%2fetc%2fpasswd', '/a%00.json', '/secret.json%00.js'])('nothing outside the page is given away: %s', async (path) => {
  const text = await (await asked(page).ask(path)).text();
  expect(text).not.toMatch(/nobody reads this|localhost|root:/);
  expect(text).not.toMatch(TRACE);
});

test.each(['/%', '/%E0%A4%A', '/%ff.js'])('an address that spells no text is refused: %s', async (path) => {
  const answer = await asked(page).ask(path);
  expect(answer.status).toBe(400);
  expect(await answer.text()).not.toMatch(TRACE);
});

test('a page that is not built yet says how it is built', async () => {
  const answer = await asked(join(folder.path, 'nowhere')).ask('/');
  expect(answer.status).toBe(503);
  expect(await answer.text()).toBe('The page is not built yet; npm start builds it.\n');
});
