/** A column's value as both engines give it back: text and whole numbers of 32 bits; anything wider is cast to text. */
export type SqlValue = string | number | null;

/** What a statement may be given. */
export type SqlParameter = string | number | readonly string[];

/** One transaction. */
export interface SqlSession {
  /** One statement with `$1`, `$2`, ...; the rows that it gives. */
  query<Row extends Record<string, SqlValue>>(statement: string, parameters?: readonly SqlParameter[]): Promise<Row[]>;
}

/** The little that the SQL store asks of an engine. */
export interface SqlDatabase {
  /** Runs the work in one transaction: all of it is kept, or, where it throws, none. */
  transaction<T>(work: (session: SqlSession) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}
