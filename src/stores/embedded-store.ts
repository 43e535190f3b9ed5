import { existsSync } from 'node:fs';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { BlobFolder } from './blob-folder.ts';
import { syncFolder, syncTree } from './durable-file.ts';
import { lockFolder } from './folder-lock.ts';
import { openSqlStore } from './sql-store.ts';
import type { Store } from './store.ts';

/**
 * A yard's folder with the embedded database, for one process at a time.
 * @param folder made where it is missing; holds `database/`, `blobs/` and the lock
 * @throws FolderInUse, NewerSchema
 */
export async function openEmbeddedStore(folder: string): Promise<Store> {
  await mkdir(folder, { recursive: true });
  const unlock = await lockFolder(folder);
  try {
    // Loaded only here: the engine is large, and most commands need no store.
    const { openEmbeddedDatabase } = await import('./embedded-database.ts');
    const place = join(folder, 'database');
    if (!existsSync(place)) await makeAside(folder, place, async (aside) => (await openEmbeddedDatabase(aside)).close());
    const database = await openEmbeddedDatabase(place);
    const closing = { ...database, close: () => database.close().finally(unlock) };
    return await openSqlStore(closing, new BlobFolder(join(folder, 'blobs'))).catch(async (failure: unknown) => {
      await database.close();
      throw failure;
    });
  } catch (failure) {
    unlock();
    throw failure;
  }
}

/** A database that was being made when the power went is worse than none: make it aside, and put it in place when whole. */
async function makeAside(folder: string, place: string, make: (aside: string) => Promise<void>): Promise<void> {
  for (const name of await readdir(folder))
    if (name.startsWith('database-in-the-making')) await rm(join(folder, name), { recursive: true, force: true });
  const aside = join(folder, `database-in-the-making-${process.pid}`);
  await make(aside);
  await syncTree(aside);
  await rename(aside, place);
  await syncFolder(folder);
}
