import { randomBytes } from 'node:crypto';
import { open, opendir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Makes a folder's list of names outlast a power cut: a file is not safe before the folder that names it is. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Makes all files below a folder, and the folder itself, outlast a power cut. */
export async function syncTree(folder: string): Promise<void> {
  for await (const item of await opendir(folder)) {
    const path = join(folder, item.name);
    if (item.isDirectory()) await syncTree(path);
    else if (item.isFile()) await syncFolder(path);
  }
  await syncFolder(folder);
}

/**
 * Writes a file so that it is there whole or not at all, whatever happens in between.
 * @param path of the file; its folder exists
 */
export async function writeWhole(path: string, bytes: Uint8Array | string): Promise<void> {
  const aside = `${path}.${randomBytes(6).toString('hex')}.part`;
  try {
    const handle = await open(aside, 'wx');
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(aside, path);
  } catch (failure) {
    await rm(aside, { force: true });
    throw failure;
  }
  await syncFolder(dirname(path));
}
