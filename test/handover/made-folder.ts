import { readFileSync, readdirSync, rmSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { EXAMPLES, typed, type Heard } from '../cli/at-the-door.ts';

/** The five invented hammers, by the file of each. */
export const HAMMERS: readonly string[] = readdirSync(EXAMPLES).filter((name) => name.endsWith('.yaml')).sort();

export interface MadeFolder {
  readonly path: string;
  readonly heard: Heard;
  readonly seconds: number;
  readonly files: readonly string[];
  readonly read: (name: string) => Buffer;
}

/** A folder of its own for one test file. */
export function workplace(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), 'tupwise-handover-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** Makes a hand-over folder by the command. */
export async function madeFolder(path: string, file: string, ...more: readonly string[]): Promise<MadeFolder> {
  const started = performance.now();
  const heard = await typed(['handover', join(EXAMPLES, file), '-o', path, ...more]);
  return { path, heard, seconds: (performance.now() - started) / 1000, files: filesIn(path), read: (name) => readFileSync(join(path, name)) };
}

/** All files below a folder, with `/` between; nothing where it is not there. */
export function filesIn(path: string): readonly string[] {
  try {
    return readdirSync(path, { recursive: true, withFileTypes: true }).filter((one) => one.isFile()).map((one) => join(one.parentPath, one.name).slice(path.length + 1)).sort();
  } catch {
    return [];
  }
}
