import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { openEmbeddedStore, openFileStore, START } from '../../../src/stores/index.ts';
import { temporaryFolder } from './temporary-folder.ts';

const KILLS = 4;
const temporary = temporaryFolder();
afterAll(() => temporary.remove());

/** Lets the loop run for a while after it has opened, kills it without warning, and gives the last round that it reported. */
async function killedLoop(kind: string, folder: string, name: string, writingMilliseconds: number): Promise<number> {
  const child = spawn(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'write-loop.ts'), kind, folder, name], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let complaint = '';
  child.stderr.on('data', (data: Buffer) => (complaint += data));
  child.stdout.on('data', (data: Buffer) => {
    if (out === '') setTimeout(() => child.kill('SIGKILL'), writingMilliseconds);
    out += data;
  });
  const signal = await new Promise((resolve) => child.once('close', (_code, how) => resolve(how)));
  expect(complaint).toBe('');
  expect(signal).toBe('SIGKILL');
  const rounds = out.split('\n').slice(0, -1).slice(1);
  return rounds.length === 0 ? -1 : Number(rounds.at(-1));
}

describe.each([
  ['file', openFileStore],
  ['embedded', openEmbeddedStore],
] as const)('%s store, killed while it writes', (kind, open) => {
  test(`keeps every append that it promised, whole, ${KILLS} times over, and takes over the dead process's lock`, async () => {
    const folder = join(temporary.path, kind);
    let promised = 0;
    for (let kill = 0; kill < KILLS; kill++) {
      const name = `kill-${kill}`;
      const lastRound = await killedLoop(kind, folder, name, 150 + 70 * kill);
      promised += lastRound + 1;
      const store = await open(folder);
      const { entries } = await store.readSince(START);
      await store.close();
      const rounds = byRound(entries.filter(({ id }) => id.startsWith(name)));
      // The one append under way at the kill may be there, but whole.
      expect([lastRound + 1, lastRound + 2]).toContain(rounds.size);
      for (const round of rounds.values()) expect(round).toHaveLength(3);
    }
    console.log(`${kind}: ${promised} appends promised before ${KILLS} kills, all there`);
    expect(promised).toBeGreaterThan(KILLS);
  }, 240_000);
});

function byRound(entries: readonly { id: string }[]): Map<string, { id: string }[]> {
  const rounds = new Map<string, { id: string }[]>();
  for (const entry of entries) rounds.set(entry.id.slice(0, -2), [...(rounds.get(entry.id.slice(0, -2)) ?? []), entry]);
  return rounds;
}
