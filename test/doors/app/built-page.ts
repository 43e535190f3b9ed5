import { join } from 'node:path';
import { build } from 'vite';
import { temporaryFolder } from '../stores/temporary-folder.ts';

export const HOME = join(import.meta.dirname, '../../..');

/** Builds the page as it is shipped into a folder of its own. */
export async function builtPage(): Promise<{ readonly path: string; readonly remove: () => void }> {
  const folder = temporaryFolder();
  // The test runner says `test`, and the page library would then build its slower, talkative self.
  process.env['NODE_ENV'] = 'production';
  await build({ root: join(HOME, 'src/app'), configFile: join(HOME, 'vite.config.ts'), logLevel: 'error', build: { outDir: folder.path, emptyOutDir: true } });
  return folder;
}
