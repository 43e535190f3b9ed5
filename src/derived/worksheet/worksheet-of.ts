import { TRIAL_JOB, type Job, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { classFactor } from './class-factor.ts';
import { costOf, sumSpans } from './cost-of.ts';
import { findingKey, isFault } from './cure-needs.ts';
import type { MoneyOptions } from './currency.ts';
import { orderRound } from './order-round.ts';
import { priceBook, type PriceBook } from './price-book.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

type Urgency = WorksheetJob['urgency'];

interface Chosen {
  readonly job: Job;
  readonly cures: readonly string[];
  readonly urgency: Urgency;
  readonly state: WorksheetJob['state'];
  readonly again?: string;
}

const WEIGHT: Readonly<Record<Urgency, number>> = { watch: 0, limited: 1, 'stand-down': 2 };

/** True for a job that is still to be done. */
export const isOpen = (job: { readonly state: WorksheetJob['state'] }): boolean => job.state !== 'done' && job.state !== 'dropped';

/**
 * Jobs that cure the findings, in an order that the machine allows: the datum chain first, then what each job itself
 * must wait for. Jobs that somebody planned, started or finished are on it too, and the trial wherever work is open.
 * @param options currency and rates for the sums of money
 */
export function worksheetOf(known: Known, findings: readonly Finding[], knowledge: Knowledge, options: MoneyOptions = {}): Worksheet {
  const problems: string[] = [];
  const chosen = withTrial(known, knowledge, choose(known, findings, knowledge, problems));
  const byId = new Map(chosen.map((one) => [one.job.id, one]));
  const open = chosen.filter((one) => isOpen(one) && one.job.id !== TRIAL_JOB).map((one) => one.job.id);
  const waitsOf = ({ job }: Chosen): readonly string[] => [...new Set([...job.after.map((before) => before.job).filter((id) => byId.has(id)), ...(job.id === TRIAL_JOB ? open : [])])];
  const { order, after, rings } = orderRound(chosen.map((one) => ({ id: one.job.id, rank: one.job.stage * 10 - WEIGHT[one.urgency], after: waitsOf(one) })));
  for (const ring of rings) problems.push(`These jobs each wait for the other, and no order keeps all their reasons: ${ring.join(', ')}`);
  const book = priceBook(known, knowledge, options);
  const jobs = order.map((id, index) => {
    const one = byId.get(id);
    if (one === undefined) throw new Error(`job ${id} was ordered and never chosen`);
    return entryOf({ known, knowledge, book, all: byId }, one, index + 1, after.get(id) ?? []);
  });
  const left = jobs.filter(isOpen);
  return {
    jobs, hours: sumSpans(left.map((job) => job.hours)), cost: sumSpans(left.map((job) => job.cost)), problems: [...problems, ...book.problems],
    currency: book.currency, prices: book,
  };
}

function choose(known: Known, findings: readonly Finding[], knowledge: Knowledge, problems: string[]): readonly Chosen[] {
  const jobs = new Map(knowledge.jobs.map((job) => [job.id, job]));
  const cures = new Map<string, { cures: string[]; urgency: Urgency }>();
  for (const finding of findings) {
    const { grade } = finding;
    if (!isFault(finding) || grade === 'sound' || grade === 'not-known' || grade === 'does-not-apply') continue;
    for (const id of finding.cures) {
      const held = cures.get(id) ?? { cures: [], urgency: 'watch' };
      held.cures.push(findingKey(finding));
      if (WEIGHT[grade] > WEIGHT[held.urgency]) held.urgency = grade;
      cures.set(id, held);
    }
  }
  for (const id of Object.keys(known.progress)) if (!cures.has(id)) cures.set(id, { cures: [], urgency: 'watch' });
  return [...cures].flatMap(([id, one]) => {
    const job = jobs.get(id);
    if (job === undefined) {
      problems.push(`A job is named that this version does not know: ${id}`);
      return [];
    }
    return job.families.includes(known.identity.family) ? [{ job, ...one, ...stateOf(known, id, one.cures.length > 0) }] : [];
  });
}

/** A finding is judged only on what was seen after a repair, so one that asks for a finished job asks for it again. */
function stateOf(known: Known, id: string, asked: boolean): Pick<Chosen, 'state' | 'again'> {
  const progress = known.progress[id];
  if (progress === undefined) return { state: 'open' };
  if (progress.state !== 'done' || !asked) return { state: progress.state };
  return { state: 'open', again: `Done on ${progress.when.slice(0, 10)}, and found again since.` };
}

/** A repair counts when the machine has shown it: any open job brings the trial with it, also where one was run before. */
function withTrial(known: Known, knowledge: Knowledge, chosen: readonly Chosen[]): readonly Chosen[] {
  const job = knowledge.jobs.find((one) => one.id === TRIAL_JOB);
  const others = chosen.filter((one) => one.job.id !== TRIAL_JOB);
  if (job === undefined || !others.some(isOpen)) return chosen;
  const held = chosen.find((one) => one.job.id === TRIAL_JOB);
  const before = known.progress[TRIAL_JOB];
  if (held !== undefined && isOpen(held)) return chosen;
  const again = before?.state === 'done' ? { again: `Run on ${before.when.slice(0, 10)}; the work now open has to be shown too.` } : {};
  return [...others, { job, cures: held?.cures ?? [], urgency: held?.urgency ?? 'watch', state: 'open', ...again }];
}

interface Bench {
  readonly known: Known;
  readonly knowledge: Knowledge;
  readonly book: PriceBook;
  readonly all: ReadonlyMap<string, Chosen>;
}

function entryOf({ known, knowledge, book, all }: Bench, chosen: Chosen, number: number, after: readonly string[]): WorksheetJob {
  const { job } = chosen;
  const factor = classFactor(known.identity.ramClass.quantity.value);
  const stage = knowledge.stages.find((one) => one.number === job.stage);
  const because = job.after.filter((before) => after.includes(before.job)).map((before) => `after "${all.get(before.job)?.job.title ?? before.job}": ${before.because}`);
  const spent = known.progress[job.id]?.hours;
  return {
    job: job.id, number, title: job.title, words: job.words, part: job.part, cures: chosen.cures, urgency: chosen.urgency,
    whyHere: [...because, ...(stage === undefined ? [] : [`step ${stage.number}, ${stage.title.toLowerCase()}: ${stage.because}`])].join(' '),
    after, stage: job.stage,
    hours: { least: job.hours.least * factor, likely: job.hours.likely * factor, most: job.hours.most * factor },
    skill: job.skill, helpers: job.helpers, ...costOf(book, job), cautions: job.cautions,
    state: chosen.state, ...(job.cheaper === undefined ? {} : { cheaper: job.cheaper }),
    ...(spent === undefined || chosen.again !== undefined ? {} : { hoursSpent: spent }), ...(chosen.again === undefined ? {} : { again: chosen.again }),
  };
}
