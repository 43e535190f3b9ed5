import { valueName } from './value-name.ts';
import type { KnownEntry } from '../entry.ts';

/** One entry as the file writes it. */
export interface WrittenRecord {
  readonly section: string;
  /** Name in the section; absent where the section is a list. */
  readonly name?: string;
  readonly short: unknown;
}

/** Hour and id, where the record must carry its own. */
export interface OwnStamp {
  readonly time?: string;
  readonly id?: string;
}

type Fields = Readonly<Record<string, unknown>>;

const filled = (fields: Fields): Fields => Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

/** The bare value where it stands alone, else the record. */
const shortOr = (name: string, value: unknown, more: Fields): unknown => {
  const rest = filled(more);
  return Object.keys(rest).length === 0 ? value : { [name]: value, ...rest };
};

/**
 * Writes one entry of the log in the file's notation.
 * @param own hour and id to carry
 */
export function writeRecord(entry: KnownEntry, own: OwnStamp): WrittenRecord {
  switch (entry.kind) {
    case 'reading': {
      const { place, at, asWritten, tool, way, words, saidBy } = entry.body;
      return { section: 'readings', name: valueName(place, at), short: shortOr('value', asWritten, { tool, way, words, 'told by': saidBy, ...own }) };
    }
    case 'as-made': {
      const { place, at, asWritten, from } = entry.body;
      return { section: 'as made', name: valueName(place, at), short: shortOr('value', asWritten, { from, ...own }) };
    }
    case 'setting': {
      const { place, at, asWritten, before, words } = entry.body;
      return { section: 'settings', name: valueName(place, at), short: shortOr('value', asWritten, { before: before?.asWritten, words, ...own }) };
    }
    case 'sighting': {
      const { look, at, answer, words, saidBy, photographs } = entry.body;
      return { section: 'looks', name: valueName(look, at), short: shortOr('answer', answer, { words, 'told by': saidBy, photographs, ...own }) };
    }
    case 'statement': {
      const { words, saidBy, part } = entry.body;
      return { section: 'told', short: shortOr('words', words, { by: saidBy, part, ...own }) };
    }
    case 'photograph':
    case 'recording': {
      const { sha256, mediaType, ...rest } = entry.body;
      return { section: `${entry.kind}s`, short: filled({ sha256, type: mediaType, ...rest, ...own }) };
    }
    case 'price': {
      const { of, price, sourceKind, quantity, unit, on, saidBy, leadDays, words } = entry.body;
      const money = price.currency === 'unit' ? String(price.amount) : `${price.amount} ${price.currency}`;
      return { section: 'prices', short: filled({ of, price: money, source: sourceKind, quantity: quantity === 1 ? undefined : quantity, unit, on, 'told by': saidBy, 'lead days': leadDays, words, ...own }) };
    }
    case 'job-progress': {
      const { job, state, hours, words } = entry.body;
      return { section: 'jobs', name: job, short: shortOr('state', state, { hours: hours === undefined ? undefined : `${hours} h`, words, ...own }) };
    }
    case 'hours':
      return { section: 'hours', name: 'hours', short: shortOr('value', entry.body.asWritten, { ...own }) };
    case 'override': {
      const { criterion, at, step, author, reason } = entry.body;
      return { section: 'overrides', name: valueName(criterion, at), short: filled({ from: step?.asWritten, grade: step?.grade, author, reason, ...own }) };
    }
    case 'correction':
      return { section: 'corrections', short: filled({ ...entry.body, ...own }) };
    case 'enrol':
      throw new RangeError(`an enrol entry is the hammer block itself; any other kind: ${entry.id}`);
  }
}
