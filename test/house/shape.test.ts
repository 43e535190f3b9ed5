import { expect, test } from 'vitest';
import { lengthProblems, nameProblems } from './shape-problems.ts';
import { sourceFiles } from './source-file.ts';

const ENDINGS = ['.ts', '.mts', '.mjs', '.svelte', '.css', '.html', '.json', '.yaml', '.js'];
const files = sourceFiles(['src', 'test', 'scripts', 'bench', 'examples'], ENDINGS);

test('no file is longer than 400 lines, data excepted', () => expect(lengthProblems(files)).toEqual([]));

test('a long file is seen, and data are let be', () => {
  const text = 'x\n'.repeat(401);
  expect(lengthProblems([{ path: 'src/derived/stack/stack.ts', text }])).toHaveLength(1);
  expect(lengthProblems([{ path: 'src/derived/stack/stack.ts', text: 'x\n'.repeat(400) }])).toEqual([]);
  expect(lengthProblems([{ path: 'src/knowledge/criteria/dies.ts', text }, { path: 'test/published/springs/rows.ts', text }])).toEqual([]);
});

test('files and folders are named in whole words, and say what they hold', () =>
  expect(nameProblems(files.map(({ path }) => path))).toEqual([]));

test('an empty name is seen', () => {
  for (const path of ['src/derived/utils.ts', 'src/server/yard-service.ts', 'src/app/helpers/x.ts', 'test/house/MyTest.test.ts', 'src/hammer/die_seat.ts'])
    expect(nameProblems([path])).toHaveLength(1);
  expect(nameProblems(['src/app/service-worker.ts', 'scripts/browser.d.mts', 'test/house/shape.test.ts', 'src/knowledge/criteria/v2.ts'])).toEqual([]);
});
