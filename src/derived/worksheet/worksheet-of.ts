import { TRIAL_JOB, type Knowledge } from '../../knowledge/index.ts';
import { curesHere, type Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { mayBeNeeded, jobsAsked, WEIGHT, type Chosen } from './asked-jobs.ts';
import { usableCauses, type Cause } from './cause.ts';
import { causesOfReadings } from './causes-of-readings.ts';
import { sumSpans } from './cost-of.ts';
import { isOpen, jobEntry } from './job-entry.ts';
import { findingKey, insteadOf } from './cure-needs.ts';
import type { MoneyOptions } from './currency.ts';
import { orderRound } from './order-round.ts';
import { waitsFor } from './waits-for.ts';
import { priceBook } from './price-book.ts';
import { withRoom } from './room-for-dies.ts';
import type { MayBeJob, Worksheet, WorksheetJob } from './worksheet.ts';

export interface WorksheetOptions extends MoneyOptions {
  /** Causes beyond what the readings themselves leave open, each with its chance: from a diagnosis. */
  readonly causes?: readonly Cause[];
}

/**
 * Jobs that cure the findings, in an order that the machine allows: the datum chain first, then what each job itself
 * must wait for. Jobs that somebody planned, started or finished are on it too, and the trial wherever work is open.
 * What only may be needed stands apart with its chance.
 * @param options currency and rates for the sums of money, and causes of a diagnosis
 */
export function worksheetOf(known: Known, findings: readonly Finding[], knowledge: Knowledge, options: WorksheetOptions = {}): Worksheet {
  const { causes, problems } = usableCauses([...causesOfReadings(findings, knowledge).map((cause) => ({ ...cause, jobs: curesHere(known.looks, knowledge.jobs)(cause.jobs) })).filter((cause) => cause.jobs.length > 0), ...(options.causes ?? [])], knowledge);
  const noted = [...(known.notCounted ?? []), ...problems];
  const asked = withRoom(known, findings, knowledge, jobsAsked(known, findings, knowledge, causes, noted));
  const mayBe = mayBeNeeded(known, knowledge, causes, asked);
  const chosen = withTrial(known, knowledge, asked);
  const everything = [...chosen, ...mayBe];
  const byId = new Map(everything.map((one) => [one.job.id, one]));
  const onIt = new Set(chosen.map((one) => one.job.id));
  const open = chosen.filter((one) => isOpen(one) && one.job.id !== TRIAL_JOB).map((one) => one.job.id);
  const waitsOf = (one: Chosen, among: { has(id: string): boolean }): readonly string[] => [...new Set([...waitsFor(one, byId).filter((id) => among.has(id)), ...(one.job.id === TRIAL_JOB ? open : [])])];
  const ordered = (some: readonly Chosen[], among: { has(id: string): boolean }) => orderRound(some.map((one) => ({ id: one.job.id, rank: one.job.stage * 10 - WEIGHT[one.urgency], after: waitsOf(one, among) })));
  const { order, after, rings } = ordered(chosen, onIt);
  for (const ring of rings) noted.push(`These jobs each wait for the other, and no order keeps all their reasons: ${ring.join(', ')}`);
  const book = priceBook(known, knowledge, options);
  const bench = { known, knowledge, book, all: byId };
  const entry = (id: string, number: number, waits: readonly string[]): WorksheetJob => {
    const one = byId.get(id);
    if (one === undefined) throw new Error(`job ${id} was ordered and never chosen`);
    return jobEntry(bench, one, number, waits);
  };
  const jobs = order.map((id, index) => entry(id, index + 1, after.get(id) ?? []));
  const whole = ordered(everything, byId);
  const numberBefore = (id: string): number => jobs.find((job) => whole.order.indexOf(job.job) > whole.order.indexOf(id))?.number ?? jobs.length + 1;
  const parts = new Map(findings.map((finding) => [findingKey(finding), finding.part]));
  const makesPointless = (by: string, job: WorksheetJob): boolean => job.cures.length > 0 && job.cures.every((key) => insteadOf(job.job, parts.get(key) ?? '', knowledge).some((other) => other.id === by));
  const maybes = whole.order.flatMap((id): readonly MayBeJob[] => {
    if (onIt.has(id)) return [];
    const { need, ...job } = entry(id, numberBefore(id), whole.after.get(id) ?? []);
    return need === undefined ? [] : [{ ...job, need, takesPlaceOf: jobs.filter((other) => makesPointless(id, other)).map((other) => other.job) }];
  });
  const left = jobs.filter(isOpen);
  return {
    jobs, mayBe: maybes, ifFound: left.flatMap((job) => followingOf(job.job, bench)), hours: sumSpans(left.map((job) => job.hours)), cost: sumSpans(left.map((job) => job.cost)), expected: expectedOf([...left, ...maybes]),
    problems: [...noted, ...book.problems], currency: book.currency, prices: book,
  };
}

/** Mean of a three-point estimate, by the weights of the beta distribution that the draws use. */
const meanOf = ({ least, likely, most }: WorksheetJob['cost']): number => (least + 4 * likely + most) / 6;

function expectedOf(jobs: readonly WorksheetJob[]): { readonly hours: number; readonly cost: number } {
  const sum = (of: (job: WorksheetJob) => number): number => jobs.reduce((total, job) => total + (job.need?.chance ?? 1) * of(job), 0);
  return { hours: sum((job) => Math.max(0, meanOf(job.hours) - (job.hoursSpent ?? 0))), cost: sum((job) => meanOf(job.cost)) };
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
  return [...others, { job, cures: held?.cures ?? [], urgency: held?.urgency ?? 'watch', state: 'open', causes: [], ...again }];
}

/** The job to which a look leads where it finds the fault, priced. */
function followingOf(look: string, bench: Parameters<typeof jobEntry>[0]): readonly WorksheetJob[] {
  const next = bench.knowledge.jobs.find((job) => job.id === bench.knowledge.jobs.find((one) => one.id === look)?.mayLeadTo);
  return next === undefined || bench.all.has(next.id) ? [] : [jobEntry(bench, { job: next, cures: [], urgency: 'watch', state: 'open', causes: [] }, 0, [look])];
}
