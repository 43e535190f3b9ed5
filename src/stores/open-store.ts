import { join } from 'node:path';
import { openEmbeddedStore } from './embedded-store.ts';
import { openPostgresStore } from './postgres-store.ts';
import type { Store } from './store.ts';

/** Where a door's entries shall live. */
export interface StorePlace {
  /** The yard's folder: the embedded database and the blobs, or the blobs alone where there is a server. */
  readonly folder: string;
  /** A PostgreSQL server's address, usually the variable `DATABASE_URL`; absent or empty for the embedded database. */
  readonly databaseUrl?: string | undefined;
}

/**
 * Opens the store that the place asks for.
 * @throws FolderInUse, NewerSchema, or the engine's own failure to connect
 */
export function openStore({ folder, databaseUrl }: StorePlace): Promise<Store> {
  return databaseUrl ? openPostgresStore(databaseUrl, join(folder, 'blobs')) : openEmbeddedStore(folder);
}
