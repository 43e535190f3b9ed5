import type { Entry } from '../../entries/index.ts';

const BASE = 'tupwise';
const SHELF = 'entries';

/** What this device last saw of the yard; empty where nothing was kept or the browser keeps nothing. */
export async function readKeptYard(): Promise<readonly unknown[]> {
  try {
    return await withShelf('readonly', (shelf) => shelf.getAll());
  } catch {
    return [];
  }
}

/**
 * Keeps entries for the next opening without a server.
 * @param afresh first forgets what was kept: the server has told everything
 */
export async function keepYard(entries: readonly Entry[], afresh: boolean): Promise<void> {
  try {
    await withShelf('readwrite', (shelf) => {
      if (afresh) shelf.clear();
      for (const entry of entries) shelf.put(entry);
      return shelf.count();
    });
  } catch {
    // A full or forbidding browser: the yard then needs its server, and what waits is kept elsewhere.
  }
}

async function withShelf<T>(mode: IDBTransactionMode, act: (shelf: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const base = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open(BASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(SHELF, { keyPath: 'id' });
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error ?? new Error('the browser opened no database'));
  });
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = base.transaction(SHELF, mode);
      const asked = act(transaction.objectStore(SHELF));
      transaction.oncomplete = () => resolve(asked.result);
      transaction.onabort = () => reject(transaction.error ?? new Error('the browser did not keep it'));
    });
  } finally {
    base.close();
  }
}
