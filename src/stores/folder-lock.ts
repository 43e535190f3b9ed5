import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { readFile, readdir } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { writeWhole } from './durable-file.ts';
import { FolderInUse } from './failures.ts';

interface Holder {
  readonly pid: number;
  readonly host: string;
  /** The machine's present run, and when in it the process began: a process number alone is given out again. */
  readonly boot: string;
  readonly began: string;
}

const TRIES = 4;

/**
 * Takes a folder for this process alone; neither database nor log file guards itself.
 * Every claimant writes a file of its own and only then looks for others. So of two that come at once at least one
 * sees the other and steps back, and a dead claimant's file can be removed without a race for its name.
 * @param folder exists; the lock files lie in it
 * @returns a function that gives the folder back
 * @throws FolderInUse where a living process holds it, or one on another machine of which nothing can be known here
 */
export async function lockFolder(folder: string): Promise<() => void> {
  const self: Holder = { pid: process.pid, host: hostname(), boot: bootOf(), began: beganOf(process.pid) };
  for (let attempt = 1; ; attempt++) {
    const own = `lock-${process.pid}-${randomBytes(6).toString('hex')}`;
    const path = join(folder, own);
    await writeWhole(path, JSON.stringify(self));
    const other = await livingHolder(folder, own, self);
    if (other === undefined) {
      const release = () => {
        rmSync(path, { force: true });
        process.off('exit', release);
      };
      process.on('exit', release);
      return release;
    }
    rmSync(path, { force: true });
    // Two that came together both stepped back; the pause differs by process, so one gets through.
    if (attempt === TRIES) throw refusal(folder, other, self);
    await new Promise((resume) => setTimeout(resume, 20 + (process.pid % 17) * 10 * attempt));
  }
}

async function livingHolder(folder: string, own: string, self: Holder): Promise<{ name: string; holder: Holder } | undefined> {
  for (const name of await readdir(folder)) {
    if (!/^lock-\d+-[0-9a-f]+$/.test(name) || name === own) continue;
    const text = await readFile(join(folder, name), 'utf8').catch(() => undefined);
    if (text === undefined) continue;
    const holder = JSON.parse(text) as Holder;
    if (lives(holder, self)) return { name, holder };
    rmSync(join(folder, name), { force: true });
  }
  return undefined;
}

function lives(holder: Holder, self: Holder): boolean {
  if (holder.host !== self.host) return true;
  if (holder.boot !== self.boot) return false;
  try {
    process.kill(holder.pid, 0);
  } catch (failure) {
    if ((failure as NodeJS.ErrnoException).code === 'ESRCH') return false;
  }
  return beganOf(holder.pid) === holder.began;
}

function refusal(folder: string, { name, holder }: { name: string; holder: Holder }, self: Holder): FolderInUse {
  return holder.host === self.host
    ? new FolderInUse(`the yard's folder is open in another Tupwise, process ${holder.pid}; stop that one first: ${folder}`)
    : new FolderInUse(`the yard's folder was opened on another machine, ${holder.host}; if it is not running there, remove the file ${name}: ${folder}`);
}

function bootOf(): string {
  const path = '/proc/sys/kernel/random/boot_id';
  return existsSync(path) ? readFileSync(path, 'utf8').trim() : 'unknown';
}

/** Start of a process in ticks since boot, field 22 of its stat line; the name before it may hold spaces and brackets. */
function beganOf(pid: number): string {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? 'unknown';
  } catch {
    return 'unknown';
  }
}
