import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sharedPage } from '../doors/app/shared-page.ts';
import { thirdPartyProblems } from './built-page-problems.ts';

test('the built page names no address but its own', { timeout: 120_000 }, async () => {
  const built = await sharedPage();
  const files = readdirSync(built, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(html|js|css|svg|json|webmanifest)$/.test(path))
    .map((path) => ({ path, text: readFileSync(join(built, path), 'utf8') }));
  expect(files.some(({ path }) => path === 'index.html')).toBe(true);
  expect(files.some(({ path }) => path.endsWith('.js'))).toBe(true);
  expect(thirdPartyProblems(files)).toEqual([]);
});

test('an address of somebody else is seen', () => {
  const problems = (text: string) => thirdPartyProblems([{ path: 'a.js', text }]).length;
  for (const text of [
    '<script src="https://cdn.somewhere.net/a.js"></script>',
    '@import "//fonts.somewhere.net/x.css";',
    'background:url(//somewhere.net/a.png)',
    'new WebSocket("wss://somewhere.net")',
    'fetch("https://www.w3.org.somewhere.net/")',
  ])
    expect(problems(text)).toBe(1);
  expect(problems('createElementNS("http://www.w3.org/2000/svg") + "http://127.0.0.1:4700/" + "https://svelte.dev/e/x" // comment')).toBe(0);
});
