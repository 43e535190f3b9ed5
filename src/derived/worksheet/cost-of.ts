import type { Job, JobPart, Span } from '../../knowledge/index.ts';
import type { PriceBook, PriceLine } from './price-book.ts';
import type { HeardPrice, WorksheetJob, WorksheetPart } from './worksheet.ts';

export type JobCost = Pick<WorksheetJob, 'parts' | 'cost' | 'heard' | 'outside' | 'wholePrice' | 'leadDays'>;

const times = (span: Span, factor: number): Span => ({ least: span.least * factor, likely: span.likely * factor, most: span.most * factor });
const fixed = (value: number): Span => ({ least: value, likely: value, most: value });

/** Sums of least, likely and most. The true spread of a sum is narrower: not everything goes wrong at once. */
export const sumSpans = (spans: readonly Span[]): Span =>
  spans.reduce((sum, span) => ({ least: sum.least + span.least, likely: sum.likely + span.likely, most: sum.most + span.most }), fixed(0));

/**
 * What a job costs in parts and outside work, in the book's currency. A price that was paid, quoted, listed or heard
 * replaces the range of its part; one for the whole job replaces all of it, and one by the hour its outside work.
 * @param hours of the job on this hammer
 */
export function costOf(book: PriceBook, job: Job, hours: Span): JobCost {
  const lines = new Map(book.lines.map((line) => [line.of, line]));
  const whole = lines.get(job.id);
  const parts = job.parts.map((part) => partOf(book, part, lines.get(part.id)));
  const heard = [whole, ...job.parts.map((part) => lines.get(part.id))]
    .flatMap((line): readonly HeardPrice[] => (line === undefined ? [] : [heardOf(line)]));
  const waits = whole?.latest.leadDays === undefined ? parts.flatMap((part) => part.leadDays ?? []) : [fixed(whole.latest.leadDays)];
  const leadDays = waits.length === 0 ? {} : { leadDays: { least: greatest(waits, 'least'), likely: greatest(waits, 'likely'), most: greatest(waits, 'most') } };
  if (whole?.each !== undefined && whole.unit === 'hour') return { parts, heard, cost: sumSpans([...parts.map((part) => part.cost), times(hours, whole.each)]), outside: { words: 'work paid by the hour', cost: times(hours, whole.each), source: whole.latest.sourceKind }, ...leadDays };
  if (whole?.each !== undefined) return { parts, heard, cost: fixed(whole.each), wholePrice: whole.latest.sourceKind, ...leadDays };
  const outside = job.outside === undefined ? undefined : { words: job.outside.words, cost: times(job.outside.price, book.unitWorth), source: job.outside.source };
  return { parts, heard, cost: sumSpans([...parts.map((part) => part.cost), ...(outside === undefined ? [] : [outside.cost])]), ...(outside === undefined ? {} : { outside }), ...leadDays };
}

const heardOf = ({ of, each, latest: { price, quantity, when, entry, sourceKind, saidBy, words, leadDays } }: PriceLine): HeardPrice =>
  ({ of, price, quantity, when, entry, sourceKind, ...(saidBy === undefined ? {} : { saidBy }), ...(words === undefined ? {} : { words }), ...(leadDays === undefined ? {} : { leadDays }), counted: each !== undefined });

const greatest = (spans: readonly Span[], end: keyof Span): number => Math.max(...spans.map((span) => span[end]));

function partOf(book: PriceBook, part: JobPart, line: PriceLine | undefined): WorksheetPart {
  const each = line?.each;
  const lead = line?.latest.leadDays === undefined ? part.leadDays : fixed(line.latest.leadDays);
  return {
    id: part.id, words: part.words, quantity: part.quantity, ...(part.unit === undefined ? {} : { unit: part.unit }), heard: each !== undefined, source: each === undefined ? part.source : (line?.latest.sourceKind ?? part.source),
    cost: times(each === undefined ? times(part.priceEach, book.unitWorth) : fixed(each), part.quantity), ...(lead === undefined ? {} : { leadDays: lead }),
  };
}
