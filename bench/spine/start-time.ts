import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const HOME = join(import.meta.dirname, '../..');
const PATIENCE_MS = 120_000;

/**
 * Seconds from `npm start` to the first answer of its page, once to set up and then `rounds` times again on the same yard.
 * @returns the first and the later ones
 */
export async function startTimes(rounds: number): Promise<{ readonly first: number; readonly again: readonly number[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'tupwise-bench-'));
  try {
    const first = await startOnce(folder);
    const again: number[] = [];
    for (let round = 0; round < rounds; round += 1) again.push(await startOnce(folder));
    return { first, again };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function startOnce(folder: string): Promise<number> {
  const port = await freePort();
  const started = performance.now();
  // A group of its own, so that npm and what it starts end together; no CI=... so that it runs as at home, but no window.
  const program = spawn('npm', ['start', '--silent', '--', '--port', String(port), '--folder', join(folder, 'yard')], { cwd: HOME, detached: true, stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, TUPWISE_NO_BROWSER: '1' } });
  let said = '';
  program.stdout.on('data', (piece: Buffer) => (said += piece.toString()));
  program.stderr.on('data', (piece: Buffer) => (said += piece.toString()));
  const ended = new Promise<void>((resolve) => program.once('exit', () => resolve()));
  try {
    for (;;) {
      const answer = await fetch(`http://localhost:${port}/`).catch(() => undefined);
      if (answer?.ok === true && (await answer.text()).includes('id="app"')) return (performance.now() - started) / 1000;
      if (performance.now() - started > PATIENCE_MS || program.exitCode !== null) throw new Error(`npm start gave no page; it said: ${said.slice(-600)}`);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  } finally {
    if (program.pid !== undefined && program.exitCode === null) process.kill(-program.pid, 'SIGTERM');
    await ended;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
}

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
