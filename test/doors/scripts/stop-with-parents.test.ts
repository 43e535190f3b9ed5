import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { temporaryFolder } from '../stores/temporary-folder.ts';

const START = join(import.meta.dirname, '../../../scripts/start.mjs');
const temporary = temporaryFolder();
afterAll(() => temporary.remove());

// A server that holds on to life unless it is asked to end, and then says that it has put its things away.
writeFileSync(
  join(temporary.path, 'server.mjs'),
  `import { writeFileSync } from 'node:fs';
   const [name] = process.argv.slice(2);
   setInterval(() => undefined, 1000);
   process.on('SIGTERM', () => { writeFileSync(name + '.closed', ''); process.exit(0); });
   writeFileSync(name + '.pid', String(process.pid));`,
);
const serve = (watch: string, after: string) => `node ${watch} server.mjs`.concat(` $NAME${after}`);
writeFileSync(
  join(temporary.path, 'package.json'),
  JSON.stringify({
    scripts: {
      start: serve(`--import ${START}`, ''),
      // Something after it keeps the shell between npm and the server, as some shells do anyway.
      'shell-between': serve(`--import ${START}`, '; true'),
      unwatched: serve('', '; true'),
    },
  }),
);

async function until(met: () => boolean, milliseconds: number): Promise<boolean> {
  for (const end = Date.now() + milliseconds; Date.now() < end; await new Promise((resume) => setTimeout(resume, 50))) if (met()) return true;
  return met();
}

function lives(pid: number): boolean {
  try {
    process.kill(pid, 0);
    // A dead process whose parent is dead too may still be listed where nobody collects it.
    return !/^State:\s+Z/m.test(readFileSync(`/proc/${pid}/status`, 'utf8'));
  } catch {
    return false;
  }
}

async function stopped(script: string, signal: NodeJS.Signals) {
  const name = join(temporary.path, `${script}-${signal}`);
  const npm = spawn('npm', ['run', script], { cwd: temporary.path, env: { ...process.env, NAME: name, CI: 'true' }, stdio: 'ignore' });
  expect(await until(() => existsSync(`${name}.pid`) && readFileSync(`${name}.pid`, 'utf8') !== '', 20_000)).toBe(true);
  const server = Number(readFileSync(`${name}.pid`, 'utf8'));
  expect(lives(server)).toBe(true);
  npm.kill(signal);
  const gone = await until(() => !lives(server), 4000);
  if (!gone) process.kill(server, 'SIGKILL');
  return { gone, closed: existsSync(`${name}.closed`) };
}

test.each([
  ['start', 'SIGTERM'],
  ['start', 'SIGKILL'],
  ['shell-between', 'SIGTERM'],
  ['shell-between', 'SIGKILL'],
] as const)('npm %s ended by %s leaves no server, and the server had time to close', async (script, signal) => {
  expect(await stopped(script, signal)).toEqual({ gone: true, closed: true });
});

test('without the watch a server is left behind, so the watch is what ends it', async () => {
  expect(await stopped('unwatched', 'SIGKILL')).toEqual({ gone: false, closed: false });
});
