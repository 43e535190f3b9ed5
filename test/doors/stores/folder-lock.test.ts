import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { lockFolder } from '../../../src/stores/folder-lock.ts';
import { FolderInUse, openEmbeddedStore, openFileStore } from '../../../src/stores/index.ts';
import { temporaryFolder } from './temporary-folder.ts';

// The first opening of an embedded database takes seconds, many where the machine is busy.
vi.setConfig({ testTimeout: 180_000 });

const temporary = temporaryFolder();
afterAll(() => temporary.remove());
const newFolder = (name: string) => {
  const folder = join(temporary.path, name);
  mkdirSync(folder);
  return folder;
};

/** A process that holds the folder's store open. */
async function otherProcess(kind: string, folder: string) {
  const child = spawn(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'write-loop.ts'), kind, folder, 'other'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await new Promise((resolve) => child.stdout.once('data', resolve));
  child.stdout.resume();
  return { pid: child.pid!, kill: () => new Promise((resolve) => child.once('exit', resolve) && child.kill('SIGKILL')) };
}

describe.each([
  ['file', openFileStore],
  ['embedded', openEmbeddedStore],
] as const)('%s store', (kind, open) => {
  test('refuses a second process, in words, and opens once the first is dead', async () => {
    const folder = newFolder(kind);
    const other = await otherProcess(kind, folder);
    await expect(open(folder)).rejects.toThrow(FolderInUse);
    await expect(open(folder)).rejects.toThrow(`open in another Tupwise, process ${other.pid}`);
    await other.kill();
    await (await open(folder)).close();
  });

  test('refuses a second opening in the same process, and opens again after the first is closed', async () => {
    const folder = join(temporary.path, kind);
    const first = await open(folder);
    await expect(open(folder)).rejects.toThrow(FolderInUse);
    await first.close();
    await (await open(folder)).close();
    expect(readdirSync(folder).filter((name) => name.startsWith('lock'))).toEqual([]);
  });
});

describe('the lock', () => {
  const self = { pid: process.pid, host: hostname(), boot: 'of another day', began: '1' };
  const plant = (folder: string, holder: object) => writeFileSync(join(folder, 'lock-1-abc'), JSON.stringify(holder));

  test('takes over from a process number that was given out again, and from before the machine was started', async () => {
    const folder = newFolder('stale');
    plant(folder, self);
    (await lockFolder(folder))();
    expect(readdirSync(folder)).toEqual([]);
  });

  test('does not judge a process on another machine', async () => {
    const folder = newFolder('elsewhere');
    plant(folder, { ...self, host: 'another-machine' });
    await expect(lockFolder(folder)).rejects.toThrow('another-machine');
    expect(readdirSync(folder)).toEqual(['lock-1-abc']);
  });

  test('of many that come at once never two get in', async () => {
    const folder = newFolder('crowd');
    const outcomes = await Promise.allSettled(Array.from({ length: 12 }, () => lockFolder(folder)));
    const inside = outcomes.filter(({ status }) => status === 'fulfilled');
    expect(inside.length).toBeLessThanOrEqual(1);
    for (const outcome of outcomes) if (outcome.status === 'rejected') expect(outcome.reason).toBeInstanceOf(FolderInUse);
  });

  test('is given back when a process ends without closing', () => {
    const folder = newFolder('unclosed');
    const script = `import { openFileStore } from ${JSON.stringify(join(import.meta.dirname, '../../../src/stores/index.ts'))}; await openFileStore(${JSON.stringify(folder)}); process.exit(0);`;
    const { status, stderr } = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script], { encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(readdirSync(folder)).toEqual(['entries.jsonl']);
  });
});
