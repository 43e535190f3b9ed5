import { PRICE_UNITS, type JobProgressBody, type Money, type PriceBody } from '../entry.ts';
import { instantMs } from '../instant.ts';
import { namesAllowed } from '../names-allowed.ts';
import { addDraft, STAMP_FIELDS, type FileReading, type Visit } from './file-reading.ts';
import { RecordReader } from './record-reader.ts';
import type { NamedNode } from './read-values.ts';
import { stamped } from './stamped.ts';
import { nodeWords, type SurveyNode } from './survey-tree.ts';
import { readWrittenField, readWrittenNode } from './read-written.ts';

export const PRICE_FIELDS: readonly string[] = ['of', 'price', 'source', 'quantity', 'unit', 'on', 'told by', 'lead days', 'words', ...STAMP_FIELDS];
export const PRICE_SOURCES = ['paid', 'quoted', 'heard', 'listed'] as const;
export const JOB_FIELDS: readonly string[] = ['state', 'hours', 'words', ...STAMP_FIELDS];
export const JOB_STATES = ['planned', 'started', 'done', 'dropped'] as const;
export const HOURS_FIELDS: readonly string[] = ['value', ...STAMP_FIELDS];

const DOTTED = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;
const MONEY_RIGHT = 'an amount and three letters such as 120 USD, or a bare amount for the yard\'s own unit';

/** Reads one price: of what, how much, and whether it was paid, quoted, heard or listed. */
export function readPrice(reading: FileReading, visit: Visit, node: SurveyNode, path: string): void {
  if (node.kind !== 'record') {
    reading.problems.add(path, node.span, nodeWords(node), 'a price is a record', 'of, price and source');
    return;
  }
  const reader = new RecordReader(node, path, PRICE_FIELDS, reading.problems);
  const of = reader.need('of', 'the job or part that the price is for');
  const price = readMoney(reader);
  const sourceKind = reader.word('source', PRICE_SOURCES) ?? 'heard';
  const quantity = readNumber(reader, 'quantity', 0.001, 1e6, 'how many the price is for');
  const unit = reader.word('unit', PRICE_UNITS);
  const on = reader.text('on', 'the day of the price, such as 2026-05-12');
  if (on !== undefined && instantMs(`${on}T00:00:00Z`) === undefined) reader.refuse('on', on, 'a day of the calendar such as 2026-05-12');
  const leadDays = readNumber(reader, 'lead days', 0, 3650, 'days until it is there');
  const saidBy = reader.text('told by');
  const words = reader.text('words');
  if (of !== undefined && !DOTTED.test(of)) reader.refuse('of', of, 'a job or part in small letters, such as upper-die');
  if (of === undefined || !DOTTED.test(of) || price === undefined) return;
  const body: PriceBody = {
    of, price, sourceKind, quantity: quantity ?? 1,
    ...(unit === undefined ? {} : { unit }), ...(on === undefined || instantMs(`${on}T00:00:00Z`) === undefined ? {} : { on }), ...(saidBy === undefined ? {} : { saidBy }), ...(leadDays === undefined ? {} : { leadDays }), ...(words === undefined ? {} : { words }),
  };
  addDraft<'price'>(reading, { kind: 'price', ...stamped(reader, visit), name: of, path, span: node.span, body });
}

function readMoney(reader: RecordReader): Money | undefined {
  const text = reader.need('price', MONEY_RIGHT);
  if (text === undefined) return undefined;
  const found = /^(\d{1,9}(?:\.\d{1,4})?)(?: ?([A-Z]{3}|unit))?$/.exec(text);
  if (found !== null) return { amount: Number(found[1]), currency: found[2] ?? 'unit' };
  reader.refuse('price', text, MONEY_RIGHT);
  return undefined;
}

function readNumber(reader: RecordReader, name: string, least: number, most: number, expected: string): number | undefined {
  const text = reader.text(name, expected);
  if (text === undefined) return undefined;
  const number = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (number >= least && number <= most) return number;
  reader.refuse(name, text, `${expected}: a number from ${least} to ${most}`);
  return undefined;
}

/** Reads how far one job has come: `job: done`, or with hours and words. */
export function readJob(reading: FileReading, visit: Visit, named: NamedNode): void {
  const { problems } = reading;
  const { name, node, path, key } = named;
  if (!DOTTED.test(name)) {
    problems.add(path, key, name, 'this is no name of a job', 'small letters and hyphens, such as clutch-reline');
    return;
  }
  const reader = node.kind === 'record' ? new RecordReader(node, path, JOB_FIELDS, problems) : undefined;
  if (reader !== undefined && reader.node('state') === undefined) reader.missing('state', `one of ${JOB_STATES.join(', ')}`);
  const state = reader === undefined ? JOB_STATES.find((word) => node.kind === 'text' && word === node.text.trim()) : reader.word('state', JOB_STATES);
  if (reader === undefined && state === undefined) problems.add(path, node.span, nodeWords(node), 'the state of the job cannot be used', namesAllowed(nodeWords(node), JOB_STATES, problems.full));
  const hours = reader?.node('hours') === undefined ? undefined : readWrittenField(reader, 'hours', { dimension: 'time' });
  const words = reader?.text('words');
  if (state === undefined) return;
  const body: JobProgressBody = { job: name, state, ...(hours === undefined ? {} : { hours: hours.quantity.value / 3600 }), ...(words === undefined ? {} : { words }) };
  addDraft<'job-progress'>(reading, { kind: 'job-progress', ...stamped(reader, visit), name, path, span: key, body });
}

/** Reads the running time since the last such line. */
export function readHours(reading: FileReading, visit: Visit, node: SurveyNode, path: string): void {
  const reader = node.kind === 'record' ? new RecordReader(node, path, HOURS_FIELDS, reading.problems) : undefined;
  const written = reader === undefined ? readWrittenNode(reading.problems, path, node, { dimension: 'time' }) : readWrittenField(reader, 'value', { dimension: 'time' });
  if (written === undefined) return;
  if (written.quantity.value < 0) {
    reading.problems.add(path, node.span, written.asWritten, 'running time cannot be negative', 'a time from zero on, such as 6 h');
    return;
  }
  addDraft<'hours'>(reading, { kind: 'hours', ...stamped(reader, visit), name: 'hours', path, span: node.span, body: written });
}
