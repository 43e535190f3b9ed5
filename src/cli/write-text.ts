import { rename, rm, writeFile } from 'node:fs/promises';
import { BadInput, type Door } from './door.ts';
import { reasonOf } from './read-text.ts';

/**
 * Writes a paper to a file, whole or not at all, or to standard output where no file is named.
 * @throws BadInput with a sentence where the file cannot be written
 */
export async function writeText(path: string | undefined, text: string, door: Door): Promise<void> {
  if (path === undefined || path === '-') {
    door.out(text.endsWith('\n') ? text : `${text}\n`);
    return;
  }
  const aside = `${path}.${process.pid}.part`;
  try {
    await writeFile(aside, text);
    await rename(aside, path);
  } catch (failure) {
    await rm(aside, { force: true }).catch(() => undefined);
    throw new BadInput(`the file cannot be written; ${reasonOf(failure)}: ${path}`);
  }
  door.err(`written: ${path}\n`);
}
