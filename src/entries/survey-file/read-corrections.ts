import type { Entry } from '../entry.ts';
import { STAMP_FIELDS, type Visit } from './file-reading.ts';
import { namesAllowed } from '../names-allowed.ts';
import { RecordReader } from './record-reader.ts';
import { stamped } from './stamped.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';
import type { SurveyProblems } from './survey-problem.ts';

export const CORRECTION_FIELDS: readonly string[] = ['visit', 'of', 'entry', 'why', ...STAMP_FIELDS];

/** An entry of the file with the name by which a correction may point at it. */
export interface Named {
  readonly entry: Entry;
  readonly name: string;
}

/** What a correction says, before its target is looked up. */
export interface PendingCorrection {
  readonly at: string;
  readonly by: string;
  readonly id?: string;
  readonly path: string;
  readonly reader: RecordReader;
}

/** Reads the frame of a correction; its target is looked up when all other entries have their ids. */
export function readCorrection(problems: SurveyProblems, visit: Visit, node: SurveyNode, path: string): PendingCorrection | undefined {
  if (node.kind !== 'record') {
    problems.add(path, node.span, nodeWords(node), 'a correction is a record', 'visit, of and why');
    return undefined;
  }
  const reader = new RecordReader(node, path, CORRECTION_FIELDS, problems);
  return { ...stamped(reader, visit), path, reader };
}

/** Entries of a file by the day seen and by their name, so that a long file of corrections stays quick. */
export class NamedEntries {
  readonly #days = new Map<string, Map<string, Entry[]>>();

  add({ entry, name }: Named): void {
    const date = entry.at.slice(0, 10);
    const day = this.#days.get(date) ?? new Map<string, Entry[]>();
    this.#days.set(date, day);
    const bearers = day.get(name) ?? [];
    day.set(name, bearers);
    bearers.push(entry);
  }

  days(): readonly string[] {
    return [...this.#days.keys()];
  }

  names(date: string): readonly string[] {
    return [...(this.#days.get(date)?.keys() ?? [])];
  }

  find(date: string, name: string): readonly Entry[] {
    return this.#days.get(date)?.get(name) ?? [];
  }
}

/**
 * Finds what a correction points at, by the day of the visit and the name in it, or by the id.
 * @param named entries of the file that have a name
 * @returns the id and the reason, or undefined with the problem listed
 */
export function resolveCorrection(pending: PendingCorrection, named: NamedEntries): { readonly entry: string; readonly why: string } | undefined {
  const { reader } = pending;
  const why = reader.need('why', 'what was wrong');
  const entry = targetOf(reader, named);
  return why === undefined || entry === undefined ? undefined : { entry, why };
}

function targetOf(reader: RecordReader, named: NamedEntries): string | undefined {
  const id = reader.text('entry', 'the id of the entry that was wrong');
  if (id !== undefined) {
    if (/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/.test(id)) return id;
    reader.refuse('entry', id, 'the id of an entry, 26 signs');
    return undefined;
  }
  const visit = reader.need('visit', 'the day of the visit that was wrong, such as 2026-04-11');
  const of = reader.need('of', 'what was wrong, such as upper-die.height or frame.crack');
  if (visit === undefined || of === undefined) return undefined;
  const [date = '', time] = visit.split(/[ T]/);
  const names = named.names(date);
  if (names.length === 0) {
    reader.refuse('visit', visit, `the day of a visit in this file, one of ${named.days().slice(0, 12).join(', ')}`);
    return undefined;
  }
  const found = named.find(date, of).filter(({ at }) => time === undefined || at.startsWith(`${date}T${time.padStart(5, '0')}`));
  if (found.length === 1) return found[0]?.id;
  reader.refuse('of', of, found.length > 1 ? 'one entry alone; give the hour too, such as 2026-04-11 09:30' : namesAllowed(of, names, reader.problems.full));
  return undefined;
}
