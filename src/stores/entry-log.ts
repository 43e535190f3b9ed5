import type { Entry } from '../entries/index.ts';
import type { EntryText } from './entry-text.ts';
import { ConflictingEntry, UnknownCursor } from './failures.ts';
import type { Cursor, Reading } from './store.ts';

/** The log in memory: what the memory store is, and what the file store reads its file into. */
export class EntryLog {
  private readonly texts: string[] = [];
  private readonly textById = new Map<string, string>();

  /**
   * Those of the entries that the log does not hold yet, each once, in order. Changes nothing.
   * @throws ConflictingEntry where an id is held with other content, or comes twice with different content
   */
  missing(entries: readonly EntryText[]): readonly EntryText[] {
    const coming = new Map<string, string>();
    return entries.filter(({ id, text }) => {
      const held = this.textById.get(id) ?? coming.get(id);
      if (held === undefined) {
        coming.set(id, text);
        return true;
      }
      if (held !== text) throw new ConflictingEntry(id);
      return false;
    });
  }

  /** Adds entries that `missing` gave. */
  add(entries: readonly EntryText[]): void {
    for (const { id, text } of entries) {
      this.textById.set(id, text);
      this.texts.push(text);
    }
  }

  /** @throws UnknownCursor */
  since(cursor: Cursor): Reading {
    const end = String(this.texts.length);
    const from = positionOf(cursor, end);
    return { entries: this.texts.slice(from).map((text) => JSON.parse(text) as Entry), cursor: end };
  }
}

/**
 * The position that a cursor stands for, 0 or more.
 * @param end the last position that the log has given out
 * @throws UnknownCursor
 */
export function positionOf(cursor: Cursor, end: Cursor): number {
  if (!/^\d{1,15}$/.test(cursor) || Number(cursor) > Number(end)) throw new UnknownCursor(cursor, end);
  return Number(cursor);
}
