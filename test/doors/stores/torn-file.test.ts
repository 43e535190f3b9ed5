import { appendFileSync, readFileSync, readdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openFileStore, START } from '../../../src/stores/index.ts';
import { anEntry } from './store-contract.ts';
import { temporaryFolder } from './temporary-folder.ts';

const temporary = temporaryFolder();
afterAll(() => temporary.remove());

/** A closed store with three appends of two entries; the bytes of its log. */
async function threeAppends(name: string) {
  const folder = join(temporary.path, name);
  const path = join(folder, 'entries.jsonl');
  const store = await openFileStore(folder);
  expect(store.problems).toEqual([]);
  const entries = Array.from({ length: 6 }, () => anEntry({ words: 'spring of 11 3/4 in, ä' }));
  for (let first = 0; first < 6; first += 2) await store.append(entries.slice(first, first + 2));
  await store.close();
  return { folder, path, entries, bytes: readFileSync(path) };
}

test('a log torn at any byte keeps the whole appends, reports the rest, puts it aside, and goes on', async () => {
  const { folder, path, entries, bytes } = await threeAppends('torn');
  for (let length = 0; length < bytes.length; length += 37) {
    writeFileSync(path, bytes);
    truncateSync(path, length);
    const whole = bytes.subarray(0, length).toString('latin1').split('\n').length - 1;
    const goodLength = bytes.subarray(0, length).lastIndexOf(0x0a) + 1;
    const store = await openFileStore(folder);
    expect((await store.readSince(START)).entries).toEqual(entries.slice(0, 2 * whole));
    expect(store.problems).toHaveLength(goodLength === length ? 0 : 1);
    if (goodLength < length) {
      expect(store.problems[0]).toContain(`${length - goodLength} bytes`);
      expect(readFileSync(join(folder, `torn-at-${goodLength}.txt`))).toEqual(bytes.subarray(goodLength, length));
    }
    await store.append(entries);
    await store.close();
    const again = await openFileStore(folder);
    expect(again.problems).toEqual([]);
    expect((await again.readSince(START)).entries).toEqual(entries);
    await again.close();
  }
  expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
});

test('a line that somebody damaged in the middle is passed over, named, and left where it is', async () => {
  const { folder, path, entries, bytes } = await threeAppends('damaged');
  const lines = bytes.toString('utf8').split('\n');
  lines[1] = lines[1]!.slice(0, 40);
  writeFileSync(path, lines.join('\n'));
  const store = await openFileStore(folder);
  expect(store.problems).toHaveLength(1);
  expect(store.problems[0]).toContain('line 2 of entries.jsonl');
  expect((await store.readSince(START)).entries).toEqual([...entries.slice(0, 2), ...entries.slice(4)]);
  await store.close();
  expect(readFileSync(path, 'utf8')).toBe(lines.join('\n'));
});

test('a line that contradicts an earlier one is named', async () => {
  const { folder, path, entries } = await threeAppends('contradicting');
  appendFileSync(path, `${JSON.stringify([{ ...entries[0], by: 'somebody else' }])}\n`);
  const store = await openFileStore(folder);
  expect(store.problems).toEqual([expect.stringContaining(entries[0]!.id)]);
  await store.close();
});
