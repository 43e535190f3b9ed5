import { execFileSync, spawn } from 'node:child_process';
import { chownSync, existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { temporaryFolder } from './temporary-folder.ts';

export interface PostgresServer {
  readonly version: string;
  /** Address of a database that has nothing in it yet. */
  newDatabase(): string;
  stop(): Promise<void>;
}

/** Folder of the newest PostgreSQL server's programs on this machine, or undefined. */
export function postgresPrograms(): string | undefined {
  const root = '/usr/lib/postgresql';
  if (!existsSync(root)) return undefined;
  const versions = readdirSync(root).filter((version) => existsSync(join(root, version, 'bin', 'initdb')));
  const newest = versions.sort((a, b) => Number(b) - Number(a))[0];
  return newest && join(root, newest, 'bin');
}

/** Starts a server of its own in a temporary folder, on loopback, as an unprivileged user: it refuses to run as root. */
export async function startPostgres(programs: string): Promise<PostgresServer> {
  const { path, remove } = temporaryFolder();
  const data = join(path, 'data');
  mkdirSync(data);
  const user = process.getuid?.() === 0 ? { uid: userNumber('-u'), gid: userNumber('-g') } : {};
  if (user.uid !== undefined) chownSync(data, user.uid, user.gid!);
  const run = (program: string, ...parameters: string[]) =>
    execFileSync(join(programs, program), parameters, { ...user, cwd: path, stdio: ['ignore', 'pipe', 'pipe'], encoding: 'utf8' });
  run('initdb', '-D', data, '-U', 'tester', '-A', 'trust', '-E', 'UTF8', '--no-locale', '-N');
  const port = await freePort();
  const server = spawn(join(programs, 'postgres'), ['-D', data, '-p', String(port), '-h', '127.0.0.1', '-k', ''], {
    ...user,
    cwd: path,
    stdio: 'ignore',
  });
  const ended = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  await answering(() => run('psql', '-h', '127.0.0.1', '-p', String(port), '-U', 'tester', '-c', 'select 1', 'postgres'));
  let databases = 0;
  return {
    version: run('postgres', '--version').trim(),
    newDatabase: () => {
      const name = `yard_${++databases}`;
      run('createdb', '-h', '127.0.0.1', '-p', String(port), '-U', 'tester', name);
      return `postgres://tester@127.0.0.1:${port}/${name}`;
    },
    stop: async () => {
      server.kill('SIGINT');
      await ended;
      rmSync(data, { recursive: true, force: true });
      remove();
    },
  };
}

function userNumber(which: '-u' | '-g'): number {
  for (const name of ['postgres', 'nobody']) {
    try {
      return Number(execFileSync('id', [which, name], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }));
    } catch {
      // Not every machine has both.
    }
  }
  return 65534;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => (address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port'))));
    });
  });
}

async function answering(ask: () => unknown): Promise<void> {
  for (let attempt = 0; attempt < 100; attempt++) {
    try {
      ask();
      return;
    } catch {
      await new Promise((resume) => setTimeout(resume, 100));
    }
  }
  throw new Error('the PostgreSQL server did not answer within 10 s');
}
