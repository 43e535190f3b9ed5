import type { Entry } from '../entries/index.ts';

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

/**
 * JSON text that is equal for equal values: keys sorted, absent and undefined alike.
 * @param value plain data
 * @param where what to call the value in a complaint
 */
export function canonicalJson(value: unknown, where: string): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`a number cannot be kept; allowed are finite ones: ${where} = ${value}`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map((item, index) => canonicalJson(item, `${where}[${index}]`)).join(',')}]`;
  if (typeof value === 'object' && (Object.getPrototypeOf(value) === Object.prototype || Object.getPrototypeOf(value) === null)) {
    const fields = Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item, `${where}.${key}`)}`);
    return `{${fields.join(',')}}`;
  }
  throw new Error(`a value cannot be kept; allowed are plain data: ${where} is a ${typeof value}`);
}
