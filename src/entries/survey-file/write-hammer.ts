import type { EntryOf, KnownEntry } from '../entry.ts';
import { derivedId } from './draft.ts';
import { NOON, UTC } from './read-stamp.ts';

/** The parts of an instant as the file writes them. */
export interface WrittenTime {
  readonly date: string;
  readonly time?: string;
  readonly zone?: string;
}

/** Takes an ISO instant apart. */
export function timeParts(at: string): { readonly date: string; readonly time: string; readonly zone: string } {
  const [date = '', rest = ''] = at.split('T');
  const zone = /(Z|[+-]\d{2}:\d{2})$/.exec(rest)?.[0] ?? UTC;
  return { date, time: rest.slice(0, rest.length - zone.length), zone };
}

/** An hour as the file writes it: whole minutes without their seconds. */
export const shortTime = (time: string): string => time.replace(/^(\d{2}:\d{2}):00$/, '$1');

/** An instant as the file writes it; noon and UTC are left out, as they are put in when read. */
export const writtenTime = (at: string): WrittenTime => {
  const { date, time, zone } = timeParts(at);
  return { date, ...(time === NOON ? {} : { time: shortTime(time) }), ...(zone === UTC ? {} : { zone }) };
};

/**
 * The block that says which hammer it is. When and by whom it was enrolled is written only where it differs from the first
 * visit, and its id only where it does not follow from the content.
 * @param known all entries that are written in short notation, in order
 * @param keepId write the id in any case
 */
export function hammerBlock(enrol: EntryOf<'enrol'>, known: readonly KnownEntry[], keepId: boolean): Readonly<Record<string, unknown>> {
  const { tag, name, family, ramClass, maker, serial, year, place, words, invented } = enrol.body;
  const first = known.find((entry) => !(entry.kind === 'as-made' && entry.at === enrol.at && entry.by === enrol.by));
  const sameVisit = first !== undefined && first.at === enrol.at && first.by === enrol.by;
  const derived = !keepId && derivedId({ kind: enrol.kind, at: enrol.at, by: enrol.by, body: enrol.body }, 0) === enrol.id;
  const fields: Record<string, unknown> = {
    tag, name, family, class: ramClass.asWritten, maker, serial, year, place, words, invented,
    enrolled: sameVisit ? undefined : { ...writtenTime(enrol.at), by: enrol.by },
    id: derived ? undefined : enrol.id,
  };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
