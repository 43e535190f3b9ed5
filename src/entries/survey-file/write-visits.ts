import type { EntryOf, KnownEntry } from '../entry.ts';
import { CopyCounter, derivedId } from './draft.ts';
import { shortTime, timeParts, writtenTime } from './write-hammer.ts';
import { writeRecord, type WrittenRecord } from './write-record.ts';

type Fields = Record<string, unknown>;

/** One visit while it is being written: sections filled record by record. */
interface Block {
  readonly head: Fields;
  readonly sections: Map<string, Map<string, unknown> | unknown[]>;
  hours?: unknown;
}

export const SECTION_ORDER: readonly string[] = ['as made', 'readings', 'looks', 'settings', 'told', 'photographs', 'recordings', 'hours', 'jobs', 'prices', 'overrides', 'corrections'];

/**
 * Writes the entries of a hammer as visits: those of one day and one person together, in order; a name that comes twice
 * opens another visit, since a visit reads each place once.
 * @returns the visits, and the as-made values that stand at the top because they came with the enrolment
 */
export function visitBlocks(enrol: EntryOf<'enrol'>, known: readonly KnownEntry[]): { readonly visits: readonly Fields[]; readonly asMade: Fields } {
  const ids = idsToWrite(enrol, known);
  const top = new Map<string, unknown>();
  const blocks: { readonly key: string; readonly block: Block; readonly at: string }[] = [];
  for (const entry of known) {
    const id = ids.get(entry.id);
    const record = writeRecord(entry, id === undefined ? {} : { id });
    if (entry.kind === 'as-made' && entry.at === enrol.at && entry.by === enrol.by && record.name !== undefined && !top.has(record.name)) {
      top.set(record.name, record.short);
      continue;
    }
    const { date, time, zone } = timeParts(entry.at);
    const key = `${date} ${zone} ${entry.by}`;
    const last = blocks.findLast((each) => each.key === key);
    const free = last !== undefined && fits(last.block, record) ? last : undefined;
    const into = free ?? { key, at: entry.at, block: { head: { ...writtenTime(entry.at), by: entry.by }, sections: new Map() } };
    if (free === undefined) blocks.push(into);
    put(into.block, into.at === entry.at ? record : writeRecord(entry, { time: shortTime(time), ...(id === undefined ? {} : { id }) }));
  }
  return { visits: blocks.map(({ block }) => fieldsOf(block)), asMade: Object.fromEntries(top) };
}

const fits = (block: Block, record: WrittenRecord): boolean => {
  if (record.section === 'hours') return block.hours === undefined;
  const section = block.sections.get(record.section);
  return !(section instanceof Map) || record.name === undefined || !section.has(record.name);
};

function put(block: Block, record: WrittenRecord): void {
  if (record.section === 'hours') {
    block.hours = record.short;
    return;
  }
  if (record.name === undefined) {
    const list = (block.sections.get(record.section) as unknown[] | undefined) ?? [];
    list.push(record.short);
    block.sections.set(record.section, list);
    return;
  }
  const section = (block.sections.get(record.section) as Map<string, unknown> | undefined) ?? new Map<string, unknown>();
  section.set(record.name, record.short);
  block.sections.set(record.section, section);
}

function fieldsOf(block: Block): Fields {
  const fields: Fields = { ...block.head };
  for (const name of SECTION_ORDER) {
    const section = block.sections.get(name);
    if (name === 'hours' && block.hours !== undefined) fields[name] = block.hours;
    else if (section !== undefined) fields[name] = section instanceof Map ? Object.fromEntries([...section].sort(([one], [other]) => (one < other ? -1 : 1))) : section;
  }
  return fields;
}

/** Ids that must be written, because reading would derive another one. */
function idsToWrite(enrol: EntryOf<'enrol'>, known: readonly KnownEntry[]): ReadonlyMap<string, string> {
  const copies = new CopyCounter();
  const written = new Map<string, string>();
  for (const entry of known) {
    const { kind, at, by, body } = entry;
    if (derivedId({ kind, at, by, body, hammer: enrol.id }, copies.count({ kind, at, by, body })) !== entry.id) written.set(entry.id, entry.id);
  }
  return written;
}
