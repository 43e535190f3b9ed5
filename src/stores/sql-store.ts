import type { Entry } from '../entries/index.ts';
import type { BlobFolder } from './blob-folder.ts';
import { EntryLog, positionOf } from './entry-log.ts';
import { entryText } from './entry-text.ts';
import { bringUpToDate } from './schema.ts';
import { checkBlob } from './sha256-of.ts';
import type { SqlDatabase, SqlSession } from './sql-database.ts';
import type { Store } from './store.ts';

/** Any number will do, as long as every Tupwise takes the same one: `tupwise` on a telephone's keys. */
const APPEND_LOCK = 8879473;

/**
 * The store over SQL: entries in one table, bytes in files named by their SHA-256, names and types of the files in another.
 * @param database is closed with the store
 * @param blobs where the bytes lie
 */
export async function openSqlStore(database: SqlDatabase, blobs: BlobFolder): Promise<Store> {
  await database.transaction(async (session) => {
    await oneWriter(session);
    await bringUpToDate(session);
  });
  let closed = false;

  return {
    append: async (entries) => {
      const coming = new EntryLog().missing(entries.map(entryText));
      if (coming.length === 0) return;
      await database.transaction(async (session) => {
        await oneWriter(session);
        const held = new EntryLog();
        held.add(await heldAmong(session, coming.map(({ id }) => id)));
        const missing = held.missing(coming);
        if (missing.length === 0) return;
        await session.query(
          `insert into entries (id, hammer, kind, content)
           select id, hammer, kind, content
           from unnest($1::text[], $2::text[], $3::text[], $4::text[]) with ordinality as new (id, hammer, kind, content, place)
           order by place`,
          [missing.map((e) => e.id), missing.map((e) => e.hammer), missing.map((e) => e.kind), missing.map((e) => e.text)],
        );
      });
    },
    readSince: (cursor) =>
      database.transaction(async (session) => {
        const [last] = await session.query<{ position: string }>('select coalesce(max(position), 0)::text as position from entries');
        const end = last?.position ?? '0';
        const rows = await session.query<{ content: string }>(
          'select content from entries where position > $1::bigint and position <= $2::bigint order by position',
          [String(positionOf(cursor, end)), end],
        );
        return { entries: rows.map(({ content }) => JSON.parse(content) as Entry), cursor: end };
      }),
    putBlob: async (bytes, mediaType) => {
      checkBlob(bytes, mediaType);
      const sha256 = await blobs.put(bytes);
      await database.transaction((session) =>
        session.query('insert into blobs (sha256, size, media_type) values ($1, $2, $3) on conflict (sha256) do nothing', [
          sha256,
          bytes.length,
          mediaType,
        ]),
      );
      return sha256;
    },
    getBlob: async (sha256) => {
      const [row] = await database.transaction((session) =>
        session.query<{ media_type: string }>('select media_type from blobs where sha256 = $1', [sha256]),
      );
      const bytes = row && (await blobs.get(sha256));
      return row && bytes && { bytes, mediaType: row.media_type };
    },
    close: async () => {
      if (closed) return;
      closed = true;
      await database.close();
    },
  };
}

/** Writers wait for each other, so that positions become visible in their order and a reader's cursor never skips one. */
async function oneWriter(session: SqlSession): Promise<void> {
  await session.query('select 1 as taken from (select pg_advisory_xact_lock($1)) as waiting', [APPEND_LOCK]);
}

async function heldAmong(session: SqlSession, ids: readonly string[]) {
  const rows = await session.query<{ id: string; content: string }>('select id, content from entries where id = any($1::text[])', [ids]);
  return rows.map(({ id, content }) => ({ id, hammer: '', kind: '', text: content }));
}
