import type { FileReading, Visit } from './file-reading.ts';
import { readPhotograph, readRecording } from './read-blobs.ts';
import { readCorrection, type PendingCorrection } from './read-corrections.ts';
import { readLook } from './read-looks.ts';
import { readOverride } from './read-overrides.ts';
import { instantOf, readVisitTime, type VisitTime } from './read-stamp.ts';
import { readTold } from './read-told.ts';
import { readValue, type ValueSection } from './read-values.ts';
import { readHours, readJob, readPrice } from './read-work.ts';
import { RecordReader } from './record-reader.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';

export const VISIT_FIELDS: readonly string[] = [
  'date', 'time', 'zone', 'by', 'as made', 'readings', 'looks', 'settings', 'told', 'photographs', 'recordings', 'hours', 'jobs', 'prices', 'overrides', 'corrections',
];

/** Instant and author of a visit. */
export const visitOf = (time: VisitTime, by: string): Visit => ({ by, at: (ownTime) => instantOf(ownTime === undefined ? time : { ...time, time: ownTime }) });

/**
 * Reads one visit: all that was read, seen, heard, set, done and decided at one time by one person.
 * @returns the visit and its corrections, or undefined where date or author is missing: its records then have no time and are not kept
 */
export function readVisit(reading: FileReading, node: SurveyNode, path: string): { readonly visit: Visit; readonly corrections: readonly PendingCorrection[] } | undefined {
  const { problems } = reading;
  if (node.kind !== 'record') {
    problems.add(path, node.span, nodeWords(node), 'a visit is a record', 'date, by, readings and looks');
    return undefined;
  }
  const reader = new RecordReader(node, path, VISIT_FIELDS, problems);
  const time = readVisitTime(reader, reading.asOf);
  const by = reader.need('by', 'who made the visit');
  // Without a day or an author nothing of the visit can be kept, but what else is wrong in it is still worth saying.
  const scratch = time === undefined || by === undefined;
  const into: FileReading = scratch ? { ...reading, drafts: [] } : reading;
  const visit = visitOf(time ?? { date: '2000-01-01', time: '12:00:00', zone: 'Z' }, by ?? 'nobody');
  readRecords(into, reader, visit);
  const corrections = reader.list('corrections').flatMap(({ node: each, path: at }) => readCorrection(problems, visit, each, at) ?? []);
  return scratch ? undefined : { visit, corrections };
}

const VALUE_WORDS = 'lines such as upper-die.height: 2 3/4 in';

function readRecords(reading: FileReading, reader: RecordReader, visit: Visit): void {
  for (const section of ['as made', 'readings', 'settings'] as const) readSection(reading, reader, visit, section);
  const looks = new Set<string>();
  for (const named of reader.entries('looks', 'lines such as frame.crack: none')) readLook(reading, visit, named, looks);
  for (const { node, path } of reader.list('told')) readTold(reading, visit, node, path);
  for (const { node, path } of reader.list('photographs')) readPhotograph(reading, visit, node, path);
  for (const { node, path } of reader.list('recordings')) readRecording(reading, visit, node, path);
  const hours = reader.node('hours');
  if (hours !== undefined) readHours(reading, visit, hours, reader.pathOf('hours'));
  for (const named of reader.entries('jobs', 'lines such as clutch-reline: done')) readJob(reading, visit, named);
  for (const { node, path } of reader.list('prices')) readPrice(reading, visit, node, path);
  for (const named of reader.entries('overrides', 'a criterion with reason and author')) readOverride(reading, visit, named);
}

/** Reads one section of named values. */
export function readSection(reading: FileReading, reader: RecordReader, visit: Visit, section: ValueSection): void {
  const taken = new Set<string>();
  for (const named of reader.entries(section, VALUE_WORDS)) readValue(reading, section, visit, named, taken);
}
