import type { Span } from '../../knowledge/index.ts';
import { isOpen } from './job-entry.ts';
import type { HeardPrice, Worksheet, WorksheetJob, WorksheetPart } from './worksheet.ts';

/** One thing to be bought or asked of others for a job. Every paper that names it takes it from here. */
export interface BuyLine {
  readonly kind: 'part' | 'work of others' | 'whole job';
  readonly job: string;
  readonly number: number;
  readonly title: string;
  readonly words: string;
  readonly quantity: Pick<WorksheetPart, 'quantity' | 'unit'>;
  readonly cost: Span;
  /** The price behind the cost, or beside it where its money has no rate; absent where nothing was heard. */
  readonly heard?: HeardPrice;
  /** Days until it is there; absent where nothing was said and a part is off the shelf as a rule. */
  readonly wait?: Span;
  readonly waitHeard: boolean;
}

/** What the open jobs use up and ask of others, in the order of the worksheet; its costs add up to the worksheet's. */
export const toBuy = (worksheet: Worksheet): readonly BuyLine[] => worksheet.jobs.filter(isOpen).flatMap(linesOf);

function linesOf(job: WorksheetJob): readonly BuyLine[] {
  const { number, title } = job;
  const common = { job: job.job, number, title };
  const heardFor = (of: string): Pick<BuyLine, 'heard'> => { const heard = job.heard.find((one) => one.of === of); return heard === undefined ? {} : { heard }; };
  const whole = job.heard.find((one) => one.of === job.job);
  const waits = (wait: Span | undefined, heard: HeardPrice | undefined): Pick<BuyLine, 'wait' | 'waitHeard'> => (wait === undefined || (wait.most === 0 && heard?.leadDays === undefined) ? { waitHeard: false } : { wait, waitHeard: heard?.leadDays !== undefined });
  if (job.wholePrice !== undefined) {
    const words = [...job.parts.map((part) => part.words), ...(job.outside === undefined ? [] : [job.outside.words])].join(', ');
    return [{ kind: 'whole job', ...common, words: words === '' ? 'the work itself' : words, quantity: { quantity: 1 }, cost: job.cost, ...heardFor(job.job), ...waits(job.leadDays, whole) }];
  }
  const parts = job.parts.map((part): BuyLine => ({ kind: 'part', ...common, words: part.words, quantity: { quantity: part.quantity, ...(part.unit === undefined ? {} : { unit: part.unit }) }, cost: part.cost, ...heardFor(part.id), ...waits(part.leadDays, heardFor(part.id).heard) }));
  return job.outside === undefined ? parts : [...parts, { kind: 'work of others', ...common, words: job.outside.words, quantity: { quantity: 1 }, cost: job.outside.cost, ...heardFor(job.job), ...waits(whole?.leadDays === undefined ? undefined : job.leadDays, whole) }];
}
