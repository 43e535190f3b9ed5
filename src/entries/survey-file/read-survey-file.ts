import type { Entry } from '../entry.ts';
import { decodeEntry } from '../codec/decode-entry.ts';
import { orderEntries } from '../order/order-entries.ts';
import { entriesOf } from './entries-of.ts';
import type { FileReading, Visit } from './file-reading.ts';
import { withoutImpossible } from './impossible-together.ts';
import { parseSurveyTree } from './parse-survey-tree.ts';
import type { PendingCorrection } from './read-corrections.ts';
import { ENROLLED_FIELDS, readHammer, type HammerRead } from './read-hammer.ts';
import { readVisitTime } from './read-stamp.ts';
import { readSection, readVisit, visitOf } from './read-visit.ts';
import { RecordReader } from './record-reader.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';
import { SurveyProblems, type SurveyProblem } from './survey-problem.ts';
import { withoutTabs } from './without-tabs.ts';

export const FILE_FIELDS: readonly string[] = ['tupwise', 'hammer', 'as made', 'visits', 'more'];
export const FILE_VERSION = '1';

/** Longest file that is read; a full survey with years of history takes a fifth of it. */
export const LONGEST_FILE = 300_000;

export interface SurveyRead {
  /** Entries in canonical order; empty where the hammer itself could not be read. */
  readonly entries: readonly Entry[];
  /** Every problem and warning, in the order of the text. */
  readonly problems: readonly SurveyProblem[];
}

export interface SurveyOptions {
  /** Today, ISO; a visit after it is a warning. Left out, no date is too late. */
  readonly asOf?: string;
}

/**
 * Reads a survey of one hammer from its text. Never throws on text; every problem is listed with its line and column, and
 * what is right is kept. Ids follow from the content, so that reading twice gives equal entries.
 * @param text YAML in the shape of the published schema, quantities in shop notation
 */
export function readSurveyFile(text: string, options: SurveyOptions = {}): SurveyRead {
  if (text.length > LONGEST_FILE) {
    const problems = new SurveyProblems('');
    problems.add('', { start: 0, end: 0 }, `${text.length} characters`, 'the file is too long for a survey', `at most ${LONGEST_FILE} characters`);
    return { entries: [], problems: problems.sorted() };
  }
  const { text: clean, tabs } = withoutTabs(text.replace(/^\uFEFF/, ''));
  const problems = new SurveyProblems(clean);
  if (tabs !== undefined) problems.add('', { start: tabs.start, end: tabs.start + 1 }, `${tabs.lines} line${tabs.lines === 1 ? '' : 's'}`, 'lines begin with a tab', 'spaces; two for each level');
  const tree = parseSurveyTree(clean, problems);
  if (tree?.kind !== 'record') {
    problems.add('', tree?.span ?? { start: 0, end: 0 }, tree === undefined ? undefined : nodeWords(tree), 'this is no survey', 'tupwise: 1, hammer and visits');
    return { entries: [], problems: problems.sorted() };
  }
  if (!clean.endsWith('\n')) problems.add('', { start: clean.length, end: clean.length }, clean.slice(-20), 'the last line has no end; the file may be cut off', 'a file that ends with a line end', 'warning');
  const reading: FileReading = { problems, drafts: [], family: undefined, asOf: options.asOf };
  const entries = readFile(reading, new RecordReader(tree, '', FILE_FIELDS, problems));
  return { entries, problems: problems.sorted() };
}

function readFile(reading: FileReading, file: RecordReader): readonly Entry[] {
  const { problems } = reading;
  const version = file.need('tupwise', `${FILE_VERSION}, the version of the file`);
  if (version !== undefined && version !== FILE_VERSION) file.refuse('tupwise', version, FILE_VERSION);
  const node = file.node('hammer');
  if (node === undefined) file.missing('hammer', 'tag, family and class of the hammer');
  const hammer = node === undefined ? undefined : readHammer(node, problems);
  reading.family = hammer?.body.family;
  const visits = file.list('visits').flatMap((visit) => readVisit(reading, visit.node, visit.path) ?? []);
  const enrolled = hammer === undefined ? undefined : enrolledOf(reading, hammer, visits[0]?.visit);
  if (enrolled !== undefined) readSection(reading, file, enrolled, 'as made');
  if (hammer === undefined || enrolled === undefined) return [];
  const corrections: readonly PendingCorrection[] = visits.flatMap((each) => each.corrections);
  const drafts = withoutImpossible(reading.drafts, problems);
  const hammerPath = { path: 'hammer', span: hammer.reader.record.span };
  const entries = entriesOf({ problems, drafts, corrections, enrol: { kind: 'enrol', at: enrolled.at(), by: enrolled.by, body: hammer.body, ...(hammer.id === undefined ? {} : { id: hammer.id }), ...hammerPath } });
  const exact = moreOf(file);
  const said = new Set(exact.map((entry) => entry.id));
  return orderEntries([...entries.filter((entry) => !said.has(entry.id)), ...exact]);
}

/** When and by whom the hammer was enrolled: as said, else at the first visit of the file. */
function enrolledOf(reading: FileReading, hammer: HammerRead, first: Visit | undefined): Visit | undefined {
  const node = hammer.reader.node('enrolled');
  if (node?.kind === 'record') {
    const reader = new RecordReader(node, 'hammer.enrolled', ENROLLED_FIELDS, reading.problems);
    const time = readVisitTime(reader, reading.asOf);
    const by = reader.need('by', 'who enrolled it');
    if (time !== undefined && by !== undefined) return visitOf(time, by);
  } else if (node !== undefined) hammer.reader.refuse('enrolled', nodeWords(node), 'a record with date and by');
  if (first === undefined) hammer.reader.problems.add('visits', hammer.reader.record.span, undefined, 'no usable visit is in the file', 'at least one visit with date and by');
  return first;
}

/** Entries that the short notation cannot say, kept as they are: kinds from a newer version, and values worked out elsewhere. */
function moreOf(file: RecordReader): readonly Entry[] {
  return file.list('more').flatMap(({ node, path }): readonly Entry[] => {
    const decoded = node.kind === 'text' ? decodeText(node) : undefined;
    if (decoded?.ok === true) return [decoded.entry];
    const why = decoded?.ok === false ? decoded.problems.map((problem) => problem.message).join('; ') : 'it is no entry';
    file.problems.add(path, node.span, nodeWords(node).slice(0, 60), why, 'an entry as this program wrote it');
    return [];
  });
}

function decodeText(node: Extract<SurveyNode, { kind: 'text' }>): ReturnType<typeof decodeEntry> | undefined {
  try {
    return decodeEntry(JSON.parse(node.text));
  } catch {
    return undefined;
  }
}
