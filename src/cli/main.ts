import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { startServer } from '../server/index.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const program = new Command('tupwise').description('What one old belt-driven forging hammer may do today, and what it needs');

program
  .command('serve')
  .description('open the yard in the browser, on this machine only')
  .option('--port <number>', 'port on the loopback address', '4700')
  .option('--folder <path>', 'where the yard lives', 'yard-data')
  .action(async ({ port, folder }: { port: string; folder: string }) => {
    const server = await startServer({
      folder,
      databaseUrl: process.env['DATABASE_URL'],
      port: Number(port),
      appFolder: here('../app'),
      examplesFolder: here('../../examples'),
      say: (words) => console.log(words),
    });
    console.log(`The yard is open at ${server.address}`);
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => void server.close().then(() => process.exit(0)));
  });

await program.parseAsync();
