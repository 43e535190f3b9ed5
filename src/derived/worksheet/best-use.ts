import { TRIAL_JOB, type Knowledge, type LimitKind } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import type { ChoiceProblem, Cure } from './best-choice.ts';
import { chooseBest } from './choose-best.ts';
import { cureNeeds, findingKey, isFault } from './cure-needs.ts';
import { dutyAfter, type DutyAfter } from './duty-after.ts';
import { limitBurden } from './limit-burden.ts';
import { isOpen } from './worksheet-of.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

export interface Budget {
  /** In the worksheet's currency, not below zero. */
  readonly money: number;
  /** Hours of work, not below zero; as many as it takes where left out. */
  readonly hours?: number;
  /** Which end of each job's range is reckoned with: `likely` unless said, `most` to be on the safe side. */
  readonly reckon?: 'likely' | 'most';
}

/** What to do first with a budget, and what it buys in duty. */
export interface BestUse {
  readonly budget: Budget;
  /** Jobs to do, in the order of the worksheet, the trial at the end. */
  readonly jobs: readonly string[];
  readonly cost: number;
  readonly hours: number;
  readonly duty: DutyAfter;
  /** Open faults that stay. */
  readonly stays: readonly string[];
  /** Least money that makes the hammer run at all, or cures every fault, with the trial; absent where no job does it or nothing is wanted. */
  readonly toRun?: number;
  readonly toCureAll?: number;
  /** False where the search was stopped before every other choice was ruled out. */
  readonly proven: boolean;
  readonly problems: readonly string[];
}

/** Worth of a cured finding once verdict and limits are equal: ten that are watched count as one that limits. */
const POINTS = { 'stand-down': 100, limited: 10, watch: 1 } as const;
/** Money and hours are reckoned in whole hundredths. */
const HUNDREDTHS = 100;

/**
 * The best use of a budget, exactly: first the best verdict that it reaches, then the least weight of limits, then the most
 * findings cured, then the least money and hours. A job takes with it the jobs that must come before it, a finding is cured
 * only by all jobs that it asks for, and the trial is paid with the first job.
 */
export function bestUse(known: Known, findings: readonly Finding[], worksheet: Worksheet, knowledge: Knowledge, budget: Budget): BestUse {
  const problems = budgetProblems(budget);
  const open = worksheet.jobs.filter((job) => isOpen(job) && job.job !== TRIAL_JOB);
  const trial = worksheet.jobs.find((job) => isOpen(job) && job.job === TRIAL_JOB);
  const problem = problemOf(known, findings, open, trial, knowledge, problems.length > 0 ? { ...budget, money: 0, hours: 0 } : budget);
  const choice = chooseBest(problem);
  const jobs = [...choice.jobs.map((index) => open[index]!.job), ...(choice.jobs.length > 0 && trial !== undefined ? [trial.job] : [])];
  const duty = dutyAfter(known, findings, jobs, knowledge);
  const needed = (which: (finding: Finding) => boolean) => priceOf(known, findings, knowledge, problem, open, which);
  const toRun = needed((finding) => finding.grade === 'stand-down');
  const toCureAll = needed(isFault);
  return {
    budget, jobs, cost: choice.value.cost / HUNDREDTHS, hours: choice.value.hours / HUNDREDTHS, duty, problems, proven: choice.proven,
    stays: findings.filter((finding) => isFault(finding) && !duty.cured.includes(findingKey(finding))).map(findingKey),
    ...(toRun === undefined ? {} : { toRun }), ...(toCureAll === undefined ? {} : { toCureAll }),
  };
}

function budgetProblems(budget: Budget): readonly string[] {
  const problems: string[] = [];
  if (!Number.isFinite(budget.money) || budget.money < 0) problems.push(`A budget is a number not below zero, and nothing is chosen: ${budget.money}`);
  if (budget.hours !== undefined && !(budget.hours >= 0)) problems.push(`The hours of a budget are not below zero, and nothing is chosen: ${budget.hours}`);
  return problems;
}

function problemOf(known: Known, findings: readonly Finding[], open: readonly WorksheetJob[], trial: WorksheetJob | undefined, knowledge: Knowledge, budget: Budget): ChoiceProblem {
  const end = budget.reckon ?? 'likely';
  const place = new Map(open.map((job, index) => [job.job, index]));
  const small = (job: WorksheetJob) => ({ cost: Math.round(job.cost[end] * HUNDREDTHS), hours: Math.round(Math.max(0, job.hours[end] - (job.hoursSpent ?? 0)) * HUNDREDTHS) });
  const kinds: LimitKind[] = [...new Set(findings.flatMap((finding) => finding.limits.map((limit) => limit.kind)))];
  const floor = kinds.map(() => 0);
  const stands = { down: false, unknown: findings.some((finding) => finding.gate && finding.grade === 'not-known'), limited: false };
  const cures: Cure[] = [];
  for (const finding of findings) {
    const limits = finding.limits.map((limit) => ({ kind: kinds.indexOf(limit.kind), burden: limitBurden(limit) }));
    const bars = finding.grade === 'stand-down' ? 'stand-down' : finding.grade === 'limited' || limits.length > 0 ? 'limited' : 'nothing';
    const needs = cureNeeds(finding, knowledge, known.identity.family)?.map((job) => place.get(job.id));
    const { grade } = finding;
    if (needs !== undefined && needs.every((index) => index !== undefined) && (grade === 'watch' || grade === 'limited' || grade === 'stand-down')) {
      cures.push({ jobs: needs, limits, bars, points: POINTS[grade] });
      continue;
    }
    for (const { kind, burden } of limits) floor[kind] = Math.max(floor[kind] ?? 0, burden);
    if (bars === 'stand-down') stands.down = true;
    if (bars === 'limited') stands.limited = true;
  }
  return {
    jobs: open.map((job) => ({ ...small(job), after: job.after.flatMap((before) => place.get(before) ?? []) })),
    cures, fixed: trial === undefined ? { cost: 0, hours: 0 } : small(trial), floor, stands,
    budget: Math.floor(budget.money * HUNDREDTHS + 1e-6), hoursBudget: budget.hours === undefined ? Number.POSITIVE_INFINITY : Math.floor(budget.hours * HUNDREDTHS + 1e-6),
  };
}

/** Money for curing every finding of a sort, the jobs before and the trial included; undefined where there is none, or one that no job cures. */
function priceOf(known: Known, findings: readonly Finding[], knowledge: Knowledge, problem: ChoiceProblem, open: readonly WorksheetJob[], which: (finding: Finding) => boolean): number | undefined {
  const wanted = findings.filter(which);
  const place = new Map(open.map((job, index) => [job.job, index]));
  const taken = new Set<number>();
  for (const finding of wanted) {
    for (const job of cureNeeds(finding, knowledge, known.identity.family) ?? [undefined]) {
      const index = job === undefined ? undefined : place.get(job.id);
      if (index === undefined) return undefined;
      taken.add(index);
    }
  }
  if (taken.size === 0) return undefined;
  for (const index of taken) problem.jobs[index]!.after.forEach((before) => taken.add(before));
  return [...taken].reduce((sum, index) => sum + problem.jobs[index]!.cost, problem.fixed.cost) / HUNDREDTHS;
}
