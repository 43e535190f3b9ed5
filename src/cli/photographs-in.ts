import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Photographs } from '../print/index.ts';
import { BadInput } from './door.ts';
import { reasonOf } from './read-text.ts';

/**
 * Finds photographs of a survey among the files of a folder by what is in them, whatever they are called.
 * @throws BadInput where the folder cannot be read
 */
export async function photographsIn(folder: string): Promise<Photographs> {
  const files = new Map<string, string>();
  try {
    for (const file of await readdir(folder, { withFileTypes: true })) {
      if (file.isFile()) files.set(await fingerprint(join(folder, file.name)), join(folder, file.name));
    }
  } catch (failure) {
    throw new BadInput(`the folder of photographs cannot be read; ${reasonOf(failure)}: ${folder}`);
  }
  return async (sha256) => {
    const file = files.get(sha256);
    return file === undefined ? undefined : { bytes: await readFile(file), mediaType: '' };
  };
}

async function fingerprint(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(file)) hash.update(piece as Uint8Array);
  return hash.digest('hex');
}
