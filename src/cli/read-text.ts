import { readFile, stat } from 'node:fs/promises';
import { LONGEST_FILE } from '../entries/index.ts';
import { BadInput, type Door } from './door.ts';

/** A text is refused unread from four bytes for each sign of the longest survey. */
const MOST_BYTES = 4 * LONGEST_FILE;

/**
 * Reads a text file, or standard input for `-`.
 * @throws BadInput with a sentence where it cannot be read or is too large to be a survey
 */
export async function readText(path: string, door: Door): Promise<string> {
  if (path === '-') return door.standardInput();
  try {
    const { size } = await stat(path);
    if (size > MOST_BYTES) throw new BadInput(`the file is too long for a survey; at most ${MOST_BYTES} bytes: ${path} has ${size}`);
    return await readFile(path, 'utf8');
  } catch (failure) {
    if (failure instanceof BadInput) throw failure;
    throw new BadInput(`the file cannot be read; ${reasonOf(failure)}: ${path}`);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be opened',
  EPERM: 'it may not be opened',
  ENOTDIR: 'a part of the path is no folder',
  EROFS: 'the disk may not be written',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'the name is too long',
};

/** Why the disk said no, in words. */
export function reasonOf(failure: unknown): string {
  const code = (failure as { readonly code?: unknown }).code;
  return typeof code === 'string' ? (REASONS[code] ?? `the system says ${code}`) : 'the system gives no reason';
}
