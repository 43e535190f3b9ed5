import { PGlite } from '@electric-sql/pglite';
import type { SqlDatabase, SqlSession } from './sql-database.ts';
import { SyncingNodeFS } from './syncing-node-fs.ts';

/** The embedded engine, with a count of its syncs for whoever doubts them. */
export interface EmbeddedDatabase extends SqlDatabase {
  readonly syncs: () => number;
}

/**
 * Opens PostgreSQL inside this process, every commit synced to the disk before it is told.
 * @param folder the database's own; made where it is missing; locked by the caller, since the engine takes no lock
 * @throws where the engine would not sync
 */
export async function openEmbeddedDatabase(folder: string): Promise<EmbeddedDatabase> {
  const files = new SyncingNodeFS(folder);
  const engine = await PGlite.create({ fs: files, startParams: syncingParameters(PGlite.defaultStartParams) });
  const { rows } = await engine.query<{ fsync: string; method: string }>(
    `select current_setting('fsync') as fsync, current_setting('wal_sync_method') as method`,
  );
  if (rows[0]?.fsync !== 'on' || rows[0].method !== 'fsync') {
    await engine.close();
    throw new Error(`the embedded database does not sync; allowed is fsync on by method fsync: ${JSON.stringify(rows[0])}`);
  }
  return {
    syncs: () => files.syncs,
    transaction: (work) =>
      engine.transaction(async (transaction) => {
        const session: SqlSession = {
          query: async <Row>(statement: string, parameters: readonly unknown[] = []) =>
            (await transaction.query<Row>(statement, [...parameters])).rows,
        };
        return work(session);
      }),
    close: () => engine.close(),
  };
}

/** The engine's own parameters without the one that forbids syncing, and with the one method that its file layer can carry out. */
function syncingParameters(own: readonly string[]): string[] {
  return [...own.filter((parameter) => parameter !== '-F'), '-c', 'fsync=on', '-c', 'wal_sync_method=fsync'];
}
