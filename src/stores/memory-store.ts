import { EntryLog } from './entry-log.ts';
import { entryText } from './entry-text.ts';
import { checkBlob, sha256Of } from './sha256-of.ts';
import type { Blob, Store } from './store.ts';

/** A store that forgets when the process ends: for tests, and for one sitting with a survey file. */
export function openMemoryStore(): Store {
  const log = new EntryLog();
  const blobs = new Map<string, Blob>();
  return {
    append: async (entries) => log.add(log.missing(entries.map(entryText))),
    readSince: async (cursor) => log.since(cursor),
    putBlob: async (bytes, mediaType) => {
      checkBlob(bytes, mediaType);
      const sha256 = sha256Of(bytes);
      if (!blobs.has(sha256)) blobs.set(sha256, { bytes: bytes.slice(), mediaType });
      return sha256;
    },
    getBlob: async (sha256) => {
      const blob = blobs.get(sha256);
      return blob && { bytes: blob.bytes.slice(), mediaType: blob.mediaType };
    },
    close: async () => undefined,
  };
}
