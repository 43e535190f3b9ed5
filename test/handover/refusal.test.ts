import { chmodSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { writeFolder } from '../../src/cli/write-folder.ts';
import { EXAMPLES, typed } from '../cli/at-the-door.ts';
import { filesIn, workplace } from './made-folder.ts';

const place = workplace();
afterAll(place.remove);
const GOOD = join(EXAMPLES, 'kettlebrae-50-simply-good.yaml');
const at = (name: string): string => join(place.path, name);

test('a folder that is there is not written over, unless somebody says so; then nothing of the old one stays', { timeout: 120_000 }, async () => {
  mkdirSync(at('held'));
  writeFileSync(at('held/letter.txt'), 'mine');
  const refused = await typed(['handover', GOOD, '-o', at('held')]);
  expect(refused.exit).toBe(2);
  expect(refused.err).toBe(`the folder is there and not empty; another name, or --replace to write over it: ${at('held')}\n`);
  expect(filesIn(at('held'))).toEqual(['letter.txt']);
  expect((await typed(['handover', GOOD, '-o', at('held'), '--replace'])).exit).toBe(0);
  expect(filesIn(at('held'))).toContain('index.html');
  expect(filesIn(at('held'))).not.toContain('letter.txt');
  expect(readdirSync(place.path)).toEqual(['held']);
});

test('an empty folder takes the papers, and a file in its place is left alone', { timeout: 120_000 }, async () => {
  mkdirSync(at('empty'));
  expect((await typed(['handover', GOOD, '-o', at('empty')])).exit).toBe(0);
  writeFileSync(at('file'), 'mine');
  const refused = await typed(['handover', GOOD, '-o', at('file'), '--replace']);
  expect([refused.exit, refused.err]).toEqual([2, `something that is no folder has this name; another name: ${at('file')}\n`]);
  expect(readFileSync(at('file'), 'utf8')).toBe('mine');
});

test('bad input leaves nothing behind', async () => {
  writeFileSync(at('bad.yaml'), `${readFileSync(GOOD, 'utf8')}\n      no.such-place: {value: 3 furlongs}\n`);
  const before = readdirSync(place.path);
  for (const words of [
    ['handover', at('bad.yaml'), '-o', at('never')], ['handover', at('none.yaml'), '-o', at('never')], ['handover', GOOD, '-o', at('never'), '--paper', 'foolscap'], ['handover', GOOD, '-o', ' '], ['handover', GOOD],
    ['handover', GOOD, '-o', at('never'), '--as-of', '1999-01-01'], ['handover', GOOD, '-o', at('file/below')], ['make', at('bad.yaml'), '-o', at('never')],
  ]) {
    const { exit, err, out } = await typed(words);
    expect(exit, words.join(' ')).toBe(2);
    expect(err, words.join(' ')).not.toMatch(/\bat .+:\d+:\d+|its own fault/);
    expect(err, words.join(' ')).not.toBe('');
    expect(out).toBe('');
  }
  expect(readdirSync(place.path)).toEqual(before);
});

test('what breaks half way leaves neither a half folder nor a lost one', async () => {
  mkdirSync(at('kept'));
  writeFileSync(at('kept/old.txt'), 'old');
  const breaks = writeFolder(at('kept'), true, async (put) => {
    await put('a/b.txt', 'new');
    throw new Error('the typesetter broke');
  });
  await expect(breaks).rejects.toThrow('the typesetter broke');
  expect(filesIn(at('kept'))).toEqual(['old.txt']);
  expect(readdirSync(place.path).filter((name) => name.startsWith('.'))).toEqual([]);
});

test.skipIf(process.getuid?.() === 0)('a disk that may not be written says so in a sentence', async () => {
  mkdirSync(at('locked'));
  chmodSync(at('locked'), 0o500);
  const { exit, err } = await typed(['handover', GOOD, '-o', at('locked/papers')]);
  expect([exit, err]).toEqual([2, `the folder cannot be written; it may not be opened: ${at('locked/papers')}\n`]);
});
