import type { Cursor } from './store.ts';

/** Two different entries claim one id. Entries are immutable, so one of the senders is broken. */
export class ConflictingEntry extends Error {
  override readonly name = 'ConflictingEntry';
  constructor(readonly id: string) {
    super(`an entry with this id is in the log with other content; entries are never changed, send a correction with an id of its own: ${id}`);
  }
}

/** The cursor belongs to another log, or the log that it belonged to is gone. */
export class UnknownCursor extends Error {
  override readonly name = 'UnknownCursor';
  constructor(readonly cursor: Cursor, end: Cursor) {
    super(`the cursor is not of this log; allowed are whole numbers from 0 to ${end}: ${cursor}`);
  }
}

/** The disk gave back other bytes than it was given. */
export class DamagedBlob extends Error {
  override readonly name = 'DamagedBlob';
  constructor(readonly sha256: string, found: string) {
    super(`a photograph or recording was changed on the disk (its bytes now have the SHA-256 ${found}); it is not shown: ${sha256}`);
  }
}

/** Somebody else has the folder open. */
export class FolderInUse extends Error {
  override readonly name = 'FolderInUse';
}

/** A newer program wrote the database. */
export class NewerSchema extends Error {
  override readonly name = 'NewerSchema';
  constructor(found: number, known: number) {
    super(`the database was written by a newer Tupwise; this one reads schema versions up to ${known}: ${found}`);
  }
}
