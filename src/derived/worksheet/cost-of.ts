import type { Job, Span } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import type { WorksheetJob } from './worksheet.ts';

export interface JobCost {
  readonly parts: WorksheetJob['parts'];
  readonly total: Span;
  readonly heard: WorksheetJob['heard'];
}

const times = (span: Span, factor: number): Span => ({ least: span.least * factor, likely: span.likely * factor, most: span.most * factor });
const plus = (a: Span, b: Span): Span => ({ least: a.least + b.least, likely: a.likely + b.likely, most: a.most + b.most });
const NOTHING: Span = { least: 0, likely: 0, most: 0 };

/**
 * What a job costs in parts and outside work. A price that was paid, quoted or heard replaces the range for its part;
 * one for the whole job replaces all of it. The latest of the same thing counts.
 */
export function costOf(known: Known, job: Job): JobCost {
  const latest = (of: string) => known.prices.filter((price) => price.of === of).at(-1);
  const whole = latest(job.id);
  const heard = [whole, ...job.parts.map((part) => latest(part.id))].flatMap((price) => (price === undefined ? [] : [{ price: price.price, entry: price.entry, sourceKind: price.sourceKind }]));
  const parts = job.parts.map((part) => {
    const price = latest(part.id);
    const each = price === undefined ? undefined : price.price.amount / Math.max(1, price.quantity);
    return {
      id: part.id, words: part.words, quantity: part.quantity, heard: price !== undefined, source: price === undefined ? part.source : price.sourceKind,
      cost: each === undefined ? times(part.priceEach, part.quantity) : times({ least: each, likely: each, most: each }, part.quantity),
    };
  });
  if (whole !== undefined) return { parts, heard, total: { least: whole.price.amount, likely: whole.price.amount, most: whole.price.amount } };
  const total = parts.reduce((sum, part) => plus(sum, part.cost), job.outside?.price ?? NOTHING);
  return { parts, heard, total };
}
