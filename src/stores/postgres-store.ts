import { BlobFolder } from './blob-folder.ts';
import type { SqlDatabase, SqlSession } from './sql-database.ts';
import { openSqlStore } from './sql-store.ts';
import type { Store } from './store.ts';

/**
 * The store on a PostgreSQL server, 15 or newer.
 * @param databaseUrl such as `postgres://user@host/database`
 * @param blobFolder where the bytes of photographs and recordings lie; the database keeps only their names and types
 */
export async function openPostgresStore(databaseUrl: string, blobFolder: string): Promise<Store> {
  const database = await openPostgresDatabase(databaseUrl);
  try {
    return await openSqlStore(database, new BlobFolder(blobFolder));
  } catch (failure) {
    await database.close();
    throw failure;
  }
}

/** A few connections to a PostgreSQL server. */
export async function openPostgresDatabase(databaseUrl: string): Promise<SqlDatabase> {
  const { default: pg } = await import('pg');
  const pool = new pg.Pool({ connectionString: databaseUrl, max: 4, connectionTimeoutMillis: 10_000 });
  // An idle connection that the server drops is replaced at the next use; without a listener it would end the process.
  pool.on('error', () => undefined);
  return {
    transaction: async (work) => {
      const client = await pool.connect();
      const session: SqlSession = {
        query: async (statement, parameters = []) => (await client.query(statement, [...parameters])).rows,
      };
      try {
        await client.query('begin');
        const result = await work(session);
        await client.query('commit');
        client.release();
        return result;
      } catch (failure) {
        const broken = await client.query('rollback').then(() => undefined, (lost: Error) => lost);
        client.release(broken);
        throw failure;
      }
    },
    close: () => pool.end(),
  };
}
