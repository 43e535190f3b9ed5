import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { buildPage } from './built-page.ts';

/**
 * The page as it is shipped, built once in each run of the tests; whoever asks while it is being built waits for it.
 * @returns its folder, which nobody changes; it goes away with the run
 */
export async function sharedPage(): Promise<string> {
  const page = join(inject('runFolder'), 'page');
  const begun = `${page}-begun`;
  for (;;) {
    if (existsSync(page)) return page;
    if (isFirst(begun)) break;
    await new Promise((resume) => setTimeout(resume, 100));
  }
  const aside = `${page}-in-the-making`;
  try {
    await buildPage(aside);
    renameSync(aside, page);
  } catch (failure) {
    // Whoever waits tries by himself, and fails in his own test.
    rmSync(begun, { recursive: true, force: true });
    throw failure;
  }
  return page;
}

/** Of several processes one alone makes a folder. */
function isFirst(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (failure) {
    if ((failure as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw failure;
  }
}
