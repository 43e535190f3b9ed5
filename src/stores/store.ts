import type { Entry } from '../entries/index.ts';

/** A place in the log, to read on from. What it looks like is the store's own business; only `START` is known outside. */
export type Cursor = string;

/** Before the first entry. */
export const START: Cursor = '0';

/** What a reader gets: the entries after its cursor, oldest first, and the cursor to come back with. */
export interface Reading {
  readonly entries: readonly Entry[];
  readonly cursor: Cursor;
}

/** A photograph or a recording as it was put in. */
export interface Blob {
  readonly bytes: Uint8Array;
  readonly mediaType: string;
}

/**
 * Where entries live. It offers append and read-since, and the same for blobs, and nothing else:
 * whatever can be computed from the log is computed again, and is never kept here.
 */
export interface Store {
  /**
   * Keeps entries for good; when the promise resolves they outlast a power cut. All of them are kept, or none.
   * An entry that is there already with the same content is passed over, so that a sender may repeat itself.
   * @param entries in the order in which readers shall get them
   * @throws ConflictingEntry where an id is there already with other content
   */
  append(entries: readonly Entry[]): Promise<void>;
  /**
   * Entries kept after the cursor.
   * @param cursor `START`, or what an earlier reading gave
   * @throws UnknownCursor where the cursor is none of this log's
   */
  readSince(cursor: Cursor): Promise<Reading>;
  /**
   * Keeps a photograph or a recording, once, whatever the number of times that it is put.
   * @param bytes at least one byte
   * @param mediaType such as `image/jpeg`; the first one given stays
   * @returns SHA-256 of the bytes, 64 hexadecimal digits
   */
  putBlob(bytes: Uint8Array, mediaType: string): Promise<string>;
  /**
   * What was put under this SHA-256, or undefined where nothing was.
   * @throws DamagedBlob where the bytes on the disk are no longer those that were put
   */
  getBlob(sha256: string): Promise<Blob | undefined>;
  /** Lets go of files, connections and locks. A second call does nothing. */
  close(): Promise<void>;
}
