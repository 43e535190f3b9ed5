import { makeEntryId, type Entry, type EntryBodies, type EntryKind } from '../../src/entries/index.ts';
import { placeOf } from '../../src/hammer/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';

/** Builds a log by hand for a case: readings in shop notation, looks by their answers. All in an invented yard. */
export class LogOf {
  readonly entries: Entry[] = [];
  readonly #hammer: string;
  #count = 0;

  constructor(ramClass: string, family: EntryBodies['enrol']['family'], readonly day = '2026-05-12') {
    this.#hammer = makeEntryId(Date.parse(`${day}T08:00:00Z`), new Uint8Array(10));
    const ram = readQuantity(ramClass, { dimension: 'mass' });
    if (!ram.ok) throw new Error(ram.problem.message);
    this.entries.push({ id: this.#hammer, hammer: this.#hammer, at: `${day}T08:00:00Z`, by: 'A. Quill', kind: 'enrol', body: { tag: 'CASE', ramClass: { quantity: ram.quantity, asWritten: ramClass }, family, invented: true } });
  }

  put<K extends EntryKind>(kind: K, body: EntryBodies[K], minute = this.#count): Entry {
    this.#count += 1;
    const at = new Date(Date.parse(`${this.day}T09:00:00Z`) + minute * 60_000).toISOString();
    const random = new Uint8Array(10);
    random[9] = this.#count % 256;
    random[8] = Math.floor(this.#count / 256);
    const entry: Entry = { id: makeEntryId(Date.parse(at), random), hammer: this.#hammer, at, by: 'A. Quill', kind, body };
    this.entries.push(entry);
    return entry;
  }

  made(key: string, text: string): this {
    this.put('as-made', { ...this.#place(key), ...written(key, text) });
    return this;
  }

  read(key: string, text: string, way?: string): this {
    this.put('reading', { ...this.#place(key), ...written(key, text), standing: 'measured', ...(way === undefined ? {} : { way }) });
    return this;
  }

  look(key: string, answer: string): this {
    const [look = key, at] = key.split('@');
    this.put('sighting', { look, answer, standing: 'seen', ...(at === undefined ? {} : { at }) });
    return this;
  }

  #place(key: string): { place: string; at?: string } {
    const [place = key, at] = key.split('@');
    return { place, ...(at === undefined ? {} : { at }) };
  }
}

function written(key: string, text: string) {
  const place = placeOf(key.split('@')[0] ?? key)?.place;
  if (place === undefined) throw new Error(`no such measuring place: ${key}`);
  const reading = readQuantity(text, { dimension: place.dimension });
  if (!reading.ok) throw new Error(`${key}: ${reading.problem.message}: ${text}`);
  return { quantity: reading.quantity, asWritten: text };
}
