import { NewerSchema } from './failures.ts';
import type { SqlSession } from './sql-database.ts';

/**
 * The database has these three tables and no fourth: what was seen, where the photographs are, and how the tables look.
 * Step N brings version N-1 to N. Steps make and widen tables; they never touch what entries say.
 * Plain SQL that PostgreSQL 15 and newer take.
 */
const STEPS: readonly string[] = [
  `create table entries (
     position bigint generated always as identity primary key,
     id text not null unique,
     hammer text not null,
     kind text not null,
     content text not null
   );
   create table blobs (
     sha256 text primary key,
     size bigint not null,
     media_type text not null
   )`,
];

export const SCHEMA_VERSION = STEPS.length;

/**
 * Makes the tables where they are missing and brings older ones up to date, in the transaction of the session.
 * @throws NewerSchema
 */
export async function bringUpToDate(session: SqlSession): Promise<void> {
  await session.query('create table if not exists schema_version (version integer not null)');
  const [row] = await session.query<{ version: number }>('select version from schema_version');
  const found = row?.version ?? 0;
  if (found > SCHEMA_VERSION) throw new NewerSchema(found, SCHEMA_VERSION);
  for (const step of STEPS.slice(found)) for (const statement of step.split(';')) await session.query(statement);
  if (row === undefined) await session.query('insert into schema_version (version) values ($1)', [SCHEMA_VERSION]);
  else if (found < SCHEMA_VERSION) await session.query('update schema_version set version = $1', [SCHEMA_VERSION]);
}
