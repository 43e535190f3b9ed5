import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/entries/index.ts';
import { ConflictingEntry, START, UnknownCursor, type Store } from '../../../src/stores/index.ts';

/** One kind of store under test. */
export interface StoreKind {
  /** An empty store. */
  fresh(): Promise<Store>;
  /** The same place again after `close`; absent where a store forgets. */
  again?(): Promise<Store>;
  /** Where the contract needs bytes on the disk to spoil; absent where there are none. */
  blobPath?(sha256: string): string;
}

let made = 0;

/** An entry unlike any other; what it says does not matter to a store. */
export function anEntry(body: unknown = { words: 'dog-leg crack' }, more: Partial<Entry> = {}): Entry {
  const id = `01TEST${String(++made).padStart(8, '0')}`;
  return { id, hammer: 'hammer-1', at: '2026-03-01T10:00:00+01:00', by: 'a tester', kind: 'statement', body, ...more };
}

/** What every store promises, whatever it is made of. */
export function storeContract(name: string, kind: StoreKind): void {
  describe(`${name} store`, () => {
    let store: Store;
    beforeAll(async () => {
      store = await kind.fresh();
    });
    afterAll(async () => {
      await store?.close();
    });
    const end = async () => (await store.readSince(START)).cursor;

    test('gives back what was appended, in order, from the cursor on', async () => {
      const before = await end();
      const [a, b, c] = [anEntry(), anEntry(), anEntry()];
      await store.append([a, b]);
      const first = await store.readSince(before);
      expect(first.entries).toEqual([a, b]);
      await store.append([c]);
      expect((await store.readSince(first.cursor)).entries).toEqual([c]);
      expect((await store.readSince(before)).entries).toEqual([a, b, c]);
      expect((await store.readSince(await end())).entries).toEqual([]);
    });

    test('passes over an entry that it has, and takes the new ones beside it', async () => {
      const [a, b] = [anEntry({ x: 1, y: 2 }), anEntry()];
      await store.append([a]);
      const before = await end();
      await store.append([{ ...a, body: { y: 2, x: 1 } }, b, b]);
      expect((await store.readSince(before)).entries).toEqual([b]);
    });

    test('refuses the same id with other content, names it, and keeps nothing of that append', async () => {
      const [a, b] = [anEntry(), anEntry()];
      await store.append([a]);
      const before = await end();
      const wrong = { ...a, body: { words: 'no crack' } };
      await expect(store.append([b, wrong])).rejects.toThrow(ConflictingEntry);
      await expect(store.append([b, wrong])).rejects.toThrow(a.id);
      await expect(store.append([b, { ...b, by: 'another' }])).rejects.toThrow(b.id);
      expect((await store.readSince(before)).entries).toEqual([]);
      await store.append([b]);
      expect((await store.readSince(before)).entries).toEqual([b]);
    });

    test('keeps any plain data, unknown kinds and fields of newer versions included', async () => {
      const body = fc.jsonValue({ maxDepth: 4 });
      await fc.assert(
        fc.asyncProperty(fc.array(fc.tuple(body, fc.string({ unit: 'binary' })), { minLength: 1, maxLength: 5 }), async (bodies) => {
          const before = await end();
          const entries = bodies.map(([value, text]) => ({ ...anEntry({ value, text }), kind: 'from-the-future', device: 'new' }));
          await store.append(entries);
          expect((await store.readSince(before)).entries).toEqual(JSON.parse(JSON.stringify(entries)));
        }),
        { numRuns: 40, seed: 7 },
      );
    });

    test('refuses what JSON would lose in silence', async () => {
      const before = await end();
      for (const lost of [{ depth: Number.NaN }, { when: new Date(0) }, { f: () => 1 }, { n: 1n }])
        await expect(store.append([anEntry(lost)])).rejects.toThrow('cannot be written');
      await expect(store.append([{ ...anEntry(), id: '' }])).rejects.toThrow('id cannot be kept');
      expect(await end()).toBe(before);
    });

    test('refuses a cursor of another log', async () => {
      for (const cursor of ['999999999', '-1', 'abc', '', '1.5']) await expect(store.readSince(cursor)).rejects.toThrow(UnknownCursor);
    });

    test('what a reader gets is its own: changing it changes nothing', async () => {
      const before = await end();
      const entry = anEntry({ list: [1] });
      await store.append([entry]);
      const got = (await store.readSince(before)).entries[0]!.body as { list: number[] };
      got.list.push(2);
      expect((await store.readSince(before)).entries[0]!.body).toEqual({ list: [1] });
    });

    test('a reader that keeps coming misses nothing while several write', async () => {
      let cursor = await end();
      const seen: string[] = [];
      const writers = Array.from({ length: 4 }, async () => {
        const ids: string[] = [];
        for (let round = 0; round < 8; round++) {
          const entries = [anEntry(), anEntry()];
          await store.append(entries);
          ids.push(...entries.map(({ id }) => id));
        }
        return ids;
      });
      let writing = true;
      const reader = (async () => {
        for (let last = false; !last; ) {
          last = !writing;
          const reading = await store.readSince(cursor);
          cursor = reading.cursor;
          seen.push(...reading.entries.map(({ id }) => id));
          await new Promise((resume) => setTimeout(resume, 1));
        }
      })();
      const written = (await Promise.all(writers)).flat();
      writing = false;
      await reader;
      expect(seen.toSorted()).toEqual(written.toSorted());
      expect(written).toHaveLength(64);
    });

    test('keeps a blob once, by its SHA-256', async () => {
      const bytes = new TextEncoder().encode('abc');
      const sha256 = await store.putBlob(bytes, 'image/png');
      // FIPS 180-4, the example of the standard for the message "abc".
      expect(sha256).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
      expect(await store.putBlob(bytes, 'image/jpeg')).toBe(sha256);
      expect(await store.getBlob(sha256)).toEqual({ bytes, mediaType: 'image/png' });
      expect(await store.getBlob('0'.repeat(64))).toBeUndefined();
      expect(await store.getBlob('../../etc/passwd')).toBeUndefined();
      await expect(store.putBlob(new Uint8Array(), 'image/png')).rejects.toThrow('cannot be kept');
      await expect(store.putBlob(bytes, 'a photograph')).rejects.toThrow('media type cannot be kept');
    });

    test('keeps 5 MB whole', async () => {
      const bytes = new Uint8Array(5_000_000).map((_, index) => (index * 2_654_435_761) >>> 13);
      const sha256 = await store.putBlob(bytes, 'audio/wav');
      const back = await store.getBlob(sha256);
      expect(Buffer.from(back!.bytes).equals(Buffer.from(bytes))).toBe(true);
    });

    if (kind.blobPath)
      test('says so when a blob was changed on the disk, and takes it anew', async () => {
        const { writeFileSync } = await import('node:fs');
        const bytes = new TextEncoder().encode('a photograph of a key');
        const sha256 = await store.putBlob(bytes, 'image/png');
        writeFileSync(kind.blobPath!(sha256), 'a photograph of a cat');
        await expect(store.getBlob(sha256)).rejects.toThrow(sha256);
        await store.putBlob(bytes, 'image/png');
        expect((await store.getBlob(sha256))?.bytes).toEqual(bytes);
      });

    if (kind.again)
      test('has everything when it is opened again', async () => {
        const entry = anEntry();
        await store.append([entry]);
        const before = await store.readSince(START);
        const sha256 = await store.putBlob(new Uint8Array([1, 2, 3]), 'image/png');
        await store.close();
        await store.close();
        store = await kind.again!();
        expect(await store.readSince(START)).toEqual(before);
        expect((await store.getBlob(sha256))?.bytes).toEqual(new Uint8Array([1, 2, 3]));
        await store.append([entry]);
        expect((await store.readSince(before.cursor)).entries).toEqual([]);
      });
  });
}
