import { cautionsFor, type Knowledge } from '../../knowledge/index.ts';
import { motorToFit } from '../power/index.ts';
import type { Known } from '../survey/index.ts';
import type { Chosen } from './asked-jobs.ts';
import { classFactor } from './class-factor.ts';
import { costOf } from './cost-of.ts';
import { needOf } from './need-of.ts';
import type { PriceBook } from './price-book.ts';
import type { WorksheetJob } from './worksheet.ts';

/** True for a job that is still to be done. */
export const isOpen = (job: { readonly state: WorksheetJob['state'] }): boolean => job.state !== 'done' && job.state !== 'dropped';

/** What an entry of the worksheet is made from. */
export interface Bench {
  readonly known: Known;
  readonly knowledge: Knowledge;
  readonly book: PriceBook;
  /** By id, for the titles of what it waits for. */
  readonly all: ReadonlyMap<string, { readonly job: { readonly title: string } }>;
}

/** A chosen job with its hours, its cost and its place. @param after what it waits for, of `all` */
export function jobEntry({ known, knowledge, book, all }: Bench, chosen: Chosen, number: number, after: readonly string[]): WorksheetJob {
  const { job } = chosen;
  const factor = classFactor(known.identity.ramClass.quantity.value);
  const stage = knowledge.stages.find((one) => one.number === job.stage);
  const because = job.after.filter((before) => after.includes(before.job)).map((before) => `after "${all.get(before.job)?.job.title ?? before.job}": ${before.because}`);
  const spent = known.progress[job.id]?.hours;
  const hours = { least: job.hours.least * factor, likely: job.hours.likely * factor, most: job.hours.most * factor };
  const said = costOf(book, job, hours);
  // A motor is ordered by its power, and that goes by the class.
  const sized = new Set(job.parts.filter((part) => part.sized === 'motor').map((part) => part.id));
  const cost = sized.size === 0 ? said : { ...said, parts: said.parts.map((part) => (sized.has(part.id) ? { ...part, words: `${part.words}, ${motorToFit(known.identity.ramClass.quantity.value).words} at the least` } : part)) };
  const need = needOf(chosen.causes);
  return {
    job: job.id, number, title: job.title, ...(job.words === undefined || job.words === knowledge.jobs.find((one) => one.id === job.id)?.words ? {} : { ownWords: job.words }), part: job.part, cures: chosen.cures, urgency: chosen.urgency,
    whyHere: [...because, ...(stage === undefined ? [] : [`step ${stage.number}, ${stage.title.toLowerCase()}: ${stage.because}`])].join(' '),
    after, stage: job.stage,
    hours, skill: job.skill, helpers: job.helpers, ...cost, cautions: cautionsFor(job.cautions, known.identity.family),
    state: chosen.state,
    ...(spent === undefined || chosen.again !== undefined ? {} : { hoursSpent: spent }), ...(chosen.again === undefined ? {} : { again: chosen.again }), ...(need === undefined || chosen.state === 'started' || !isOpen(chosen) ? {} : { need }),
  };
}
