import { mkdir, open, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Entry } from '../entries/index.ts';
import { BlobFolder } from './blob-folder.ts';
import { syncFolder, writeWhole } from './durable-file.ts';
import { EntryLog } from './entry-log.ts';
import { entryText } from './entry-text.ts';
import { lockFolder } from './folder-lock.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { checkBlob, isSha256, sha256Of } from './sha256-of.ts';
import type { Store } from './store.ts';

/** A store in a folder, with what was wrong in the folder when it was opened. */
export interface FileStore extends Store {
  /** One sentence for each line of the log that could not be read. The line is kept aside or left where it is. */
  readonly problems: readonly string[];
}

/**
 * A folder with the log as one append-only file of JSON lines, `entries.jsonl`, and the blobs beside it.
 * One line is one append, an array of entries: a line is there whole or torn, so an append is kept whole or not at all.
 * @param folder made where it is missing
 * @throws FolderInUse
 */
export async function openFileStore(folder: string): Promise<FileStore> {
  await mkdir(folder, { recursive: true });
  const unlock = await lockFolder(folder);
  try {
    return await openLocked(folder, unlock);
  } catch (failure) {
    unlock();
    throw failure;
  }
}

async function openLocked(folder: string, unlock: () => void): Promise<FileStore> {
  const log = new EntryLog();
  const { goodLength, problems } = await readLog(folder, log);
  const file = await open(join(folder, 'entries.jsonl'), 'a');
  await file.truncate(goodLength);
  await file.sync();
  await syncFolder(folder);
  const blobs = new BlobFolder(join(folder, 'blobs'));
  const inTurn = oneAtATime();
  let length = goodLength;
  let closed = false;

  return {
    problems,
    append: (entries) =>
      inTurn(async () => {
        const missing = log.missing(entries.map(entryText));
        if (missing.length === 0) return;
        const line = Buffer.from(`[${missing.map(({ text }) => text).join(',')}]\n`);
        try {
          await file.appendFile(line);
          await file.sync();
        } catch (failure) {
          // A full disk leaves half a line behind; what was not promised must not be found later.
          await file.truncate(length);
          throw failure;
        }
        length += line.length;
        log.add(missing);
      }),
    readSince: async (cursor) => log.since(cursor),
    putBlob: async (bytes, mediaType) => {
      checkBlob(bytes, mediaType);
      const typePath = join(folder, 'blobs', `${sha256Of(bytes)}.type`);
      await mkdir(join(folder, 'blobs'), { recursive: true });
      // The type first: the bytes are the sign that the blob is there.
      if ((await readFile(typePath).catch(() => undefined)) === undefined) await writeWhole(typePath, mediaType);
      return blobs.put(bytes);
    },
    getBlob: async (sha256) => {
      const bytes = isSha256(sha256) ? await blobs.get(sha256) : undefined;
      return bytes && { bytes, mediaType: await readFile(join(folder, 'blobs', `${sha256}.type`), 'utf8') };
    },
    close: () =>
      inTurn(async () => {
        if (closed) return;
        closed = true;
        await file.close();
        unlock();
      }),
  };
}

/** Reads the log file; a torn last line is put aside and cut off, since nobody was told that it is kept. */
async function readLog(folder: string, log: EntryLog): Promise<{ goodLength: number; problems: string[] }> {
  const bytes = await readFile(join(folder, 'entries.jsonl')).catch((failure: NodeJS.ErrnoException) => {
    if (failure.code === 'ENOENT') return Buffer.alloc(0);
    throw failure;
  });
  const problems: string[] = [];
  const goodLength = bytes.lastIndexOf(0x0a) + 1;
  for (const [index, line] of bytes.subarray(0, goodLength).toString('utf8').split('\n').slice(0, -1).entries()) {
    try {
      log.add(log.missing((JSON.parse(line) as Entry[]).map(entryText)));
    } catch (failure) {
      problems.push(`line ${index + 1} of entries.jsonl cannot be read and is passed over; allowed is an array of entries: ${(failure as Error).message}`);
    }
  }
  if (goodLength < bytes.length) {
    const aside = `torn-at-${goodLength}.txt`;
    await writeWhole(join(folder, aside), bytes.subarray(goodLength));
    problems.push(`the last line of entries.jsonl was torn while it was written, so its entries were never kept; its ${bytes.length - goodLength} bytes are put aside in ${aside}`);
  }
  return { goodLength, problems };
}
