import { homedir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Command } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { BadInput, EXIT, type Door } from './door.ts';

interface ServeOptions {
  readonly port: string;
  readonly folder?: string;
}

/** The folder of the program: two above the source, and two above the built file. */
const HOME = fileURLToPath(new URL('../../', import.meta.url));

/** `serve`: the local server with the page in it. */
export const serveCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  program.command('serve')
    .description('open the yard on this machine: the page in a browser, the entries in a folder or in the database that DATABASE_URL names')
    .option('--port <number>', 'port on the loopback address', '4650')
    .option('--folder <folder>', 'where the yard lives; a folder in the home folder where it is left out')
    .action(async (options: ServeOptions) => {
      const port = /^\d{1,5}$/.test(options.port) ? Number(options.port) : Number.NaN;
      if (!(port >= 0 && port <= 65_535)) throw new BadInput(`the port cannot be used; a whole number from 0 to 65535: ${options.port}`);
      const { startServer } = await import('../server/index.ts');
      const running = await opened(port, () => startServer({
        folder: options.folder ?? join(homedir(), 'tupwise-yard'),
        databaseUrl: process.env['DATABASE_URL'],
        port,
        appFolder: join(HOME, 'dist', 'app'),
        version: about.version,
        examplesFolder: join(HOME, 'examples'),
        say: (words) => door.err(`${words}\n`),
      }));
      door.out(`Tupwise is open at ${running.address}\n`);
      await closed();
      await running.close();
      ended(EXIT.fine);
    });
};

/** Opens it, or says in a sentence that the port is taken. */
async function opened<T>(port: number, open: () => Promise<T>): Promise<T> {
  try {
    return await open();
  } catch (failure) {
    if ((failure as { readonly code?: unknown }).code !== 'EADDRINUSE') throw failure;
    throw new BadInput(`the port is in use, perhaps by another Tupwise; stop that one, or choose another with --port ${port + 1}: ${port}`);
  }
}

/** Waits until somebody asks the program to stop. */
const closed = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
