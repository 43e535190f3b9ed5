import { join } from 'node:path';
import { build } from 'vite';
import { temporaryFolder } from '../stores/temporary-folder.ts';

export const HOME = join(import.meta.dirname, '../../..');

/** Builds the page as it is shipped into a folder of its own. */
export async function builtPage(): Promise<{ readonly path: string; readonly remove: () => void }> {
  const folder = temporaryFolder();
  await buildPage(folder.path);
  return folder;
}

/** Builds the page as it is shipped into a folder that is empty or not there. */
export async function buildPage(into: string): Promise<void> {
  const named = process.env['NODE_ENV'];
  // The test runner says `test`, and the page library would then build its slower, talkative self.
  process.env['NODE_ENV'] = 'production';
  try {
    await build({ root: join(HOME, 'src/app'), configFile: join(HOME, 'vite.config.ts'), logLevel: 'error', build: { outDir: into, emptyOutDir: true } });
  } finally {
    if (named === undefined) delete process.env['NODE_ENV'];
    else process.env['NODE_ENV'] = named;
  }
}
