import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { BlobFolder } from '../../../src/stores/blob-folder.ts';
import { openEmbeddedDatabase, type EmbeddedDatabase } from '../../../src/stores/embedded-database.ts';
import { openEmbeddedStore, START } from '../../../src/stores/index.ts';
import { openPostgresDatabase } from '../../../src/stores/postgres-store.ts';
import { bringUpToDate } from '../../../src/stores/schema.ts';
import type { SqlDatabase } from '../../../src/stores/sql-database.ts';
import { openSqlStore } from '../../../src/stores/sql-store.ts';
import { postgresPrograms, startPostgres, type PostgresServer } from './postgres-server.ts';
import { anEntry } from './store-contract.ts';
import { temporaryFolder } from './temporary-folder.ts';

vi.setConfig({ testTimeout: 180_000 });

const temporary = temporaryFolder();
afterAll(() => temporary.remove());
const blobs = new BlobFolder(join(temporary.path, 'blobs'));
const programs = postgresPrograms();

const tablesIn = (database: SqlDatabase) =>
  database.transaction(async (session) =>
    (
      await session.query<{ name: string }>(
        'select table_name::text as name from information_schema.tables where table_schema = current_schema() order by table_name',
      )
    ).map(({ name }) => name),
  );

describe.each([
  ['embedded', true],
  ['PostgreSQL', programs !== undefined],
] as const)('%s database', (kind, here) => {
  let server: PostgresServer | undefined;
  let database: SqlDatabase;
  beforeAll(async () => {
    if (!here) return;
    if (kind === 'embedded') database = await openEmbeddedDatabase(join(temporary.path, 'schema'));
    else {
      server = await startPostgres(programs!);
      database = await openPostgresDatabase(server.newDatabase());
    }
    await openSqlStore(database, blobs);
  });
  afterAll(async () => {
    await database?.close();
    await server?.stop();
  });
  const reason = here ? '' : ' (skipped: no PostgreSQL server under /usr/lib/postgresql)';

  test.skipIf(!here)(`has three tables and no fourth${reason}`, async () => {
    expect(await tablesIn(database)).toEqual(['blobs', 'entries', 'schema_version']);
    // The same question does find a fourth where there is one.
    await database
      .transaction(async (session) => {
        await session.query('create table verdicts (id text)');
        const [row] = await session.query<{ tables: string }>(
          'select count(*)::text as tables from information_schema.tables where table_schema = current_schema()',
        );
        expect(row?.tables).toBe('4');
        throw new Error('undone');
      })
      .catch((failure: Error) => expect(failure.message).toBe('undone'));
    expect(await tablesIn(database)).toHaveLength(3);
  });

  test.skipIf(!here)(`makes its tables once, however often it is opened${reason}`, async () => {
    await database.transaction(bringUpToDate);
    const rows = await database.transaction((session) => session.query<{ version: number }>('select version from schema_version'));
    expect(rows).toEqual([{ version: 1 }]);
  });

  test.skipIf(!here)(`refuses a database of a newer program, and leaves it as it is${reason}`, async () => {
    const set = (version: number) =>
      database.transaction((session) => session.query('update schema_version set version = $1', [version]));
    await set(99);
    await expect(openSqlStore(database, blobs)).rejects.toThrow('newer Tupwise');
    const [row] = await database.transaction((session) => session.query<{ version: number }>('select version from schema_version'));
    expect(row?.version).toBe(99);
    await set(1);
  });
});

describe('the embedded database', () => {
  let database: EmbeddedDatabase;
  beforeAll(async () => {
    database = await openEmbeddedDatabase(join(temporary.path, 'synced'));
  });
  afterAll(() => database.close());

  test('syncs the disk before it promises: at least once for every append', async () => {
    const store = await openSqlStore(database, blobs);
    const before = database.syncs();
    for (let count = 0; count < 50; count++) await store.append([anEntry()]);
    const syncs = database.syncs() - before;
    console.log(`50 appends, ${syncs} syncs`);
    expect(syncs).toBeGreaterThanOrEqual(50);
    const reading = database.syncs();
    await store.readSince(START);
    expect(database.syncs()).toBe(reading);
  });
});

describe('a yard folder', () => {
  test('takes no database that was being made when the power went', async () => {
    const folder = join(temporary.path, 'half-made');
    const left = join(folder, 'database-in-the-making-1');
    mkdirSync(left, { recursive: true });
    const store = await openEmbeddedStore(folder);
    await store.append([anEntry()]);
    await store.close();
    expect(readdirSync(folder).toSorted()).toEqual(['database']);
  });

  test('names blobs by their SHA-256 and nothing else', async () => {
    const bytes = new TextEncoder().encode('photograph');
    const sha256 = await blobs.put(bytes);
    expect(sha256).toBe(createHash('sha256').update(bytes).digest('hex'));
    expect(readdirSync(join(temporary.path, 'blobs', sha256.slice(0, 2)))).toEqual([sha256]);
  });
});
