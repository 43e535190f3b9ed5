import { canonicalJson, type Entry } from '../entries/index.ts';

/** An entry made ready for keeping: its id, and its whole content as text. */
export interface EntryText {
  readonly id: string;
  readonly hammer: string;
  readonly kind: string;
  /** JSON with the keys in order, so that equal entries have equal text. Fields of newer versions stay in it. */
  readonly text: string;
}

/**
 * An entry as canonical JSON.
 * @throws where the entry holds what JSON would lose in silence (NaN, a Date, a function, an empty id): the sender's mistake
 */
export function entryText(entry: Entry): EntryText {
  for (const field of ['id', 'hammer', 'at', 'by', 'kind'] as const) {
    const value: unknown = entry[field];
    // eslint-disable-next-line no-control-regex -- a NUL cannot be kept in a text column
    if (typeof value !== 'string' || value === '' || /[\u0000-\u001f]/.test(value))
      throw new Error(`an entry's ${field} cannot be kept; allowed is text of one line, not empty: ${JSON.stringify(value)}`);
  }
  return { id: entry.id, hammer: entry.hammer, kind: entry.kind, text: canonicalJson(entry, 'entry') };
}
