import { TRIAL_JOB, type Knowledge, type LimitKind } from '../../knowledge/index.ts';
import { isFault, type Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import type { ChoiceProblem, Cure } from './best-choice.ts';
import { chooseBest } from './choose-best.ts';
import { closersOf, comingAlong, doneForOf } from './comes-along.ts';
import { cureWays, findingKey, insteadOf } from './cure-needs.ts';
import { dutyAfter, type DutyAfter } from './duty-after.ts';
import { insteadJobs } from './instead-jobs.ts';
import { isOpen } from './job-entry.ts';
import { dutyBurden, limitBurden } from './limit-burden.ts';
import { orderRound } from './order-round.ts';
import { runsIt } from './runs-it.ts';
import { beforeAnyHand, beforeAnyRun, runsFreely, withKept, withRunsLast, withSafetyFirst } from './safety-first.ts';
import { settledBy } from './settled-by-trial.ts';
import type { InsteadJob, Worksheet, WorksheetJob } from './worksheet.ts';

export interface Budget {
  /** In the worksheet's currency, not below zero. */
  readonly money: number;
  /** Hours of work, not below zero; as many as it takes where left out. */
  readonly hours?: number;
  /** Which end of each job's range is reckoned with: `likely` unless said, `most` to be on the safe side. */
  readonly reckon?: 'likely' | 'most';
  /** What is wanted: the best duty that it reaches (unless said), or only what makes the hammer run at all, and no more. */
  readonly wanted?: 'best duty' | 'safe to run';
  /** Jobs that are bought already and stay bought, each itself or what does in its place: where one sum follows on another. */
  readonly keeping?: readonly string[];
  /** The only jobs that may be chosen, any where left out: on the way to a greater sum nothing is bought beside it. */
  readonly among?: readonly string[];
}

/** What to do first with a budget, and what it buys in duty. */
export interface BestUse {
  readonly budget: Budget;
  /** Jobs to do, in the order of the worksheet, the trial at the end where they let it run; its money is kept back in any case. */
  readonly jobs: readonly string[];
  /** Those of them that take the place of jobs on the worksheet. */
  readonly instead: readonly InsteadJob[];
  /** Of the jobs, what the matters of safety ask for: they come first in every choice. */
  readonly safety: readonly string[];
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
 * findings cured, then the least money and hours. A job takes with it the jobs that must come before it, and what the
 * matters of safety ask for: nothing is bought before isolator and guards. A finding is cured only by all jobs that it asks
 * for, and the money for the trial is kept back with the first job. Where another job would do in the place of one, either
 * may be chosen. What a job opens is closed again with it, what is done for another job's sake is done with that, and what
 * is free comes along as soon as all that it waits for is chosen.
 */
export function bestUse(known: Known, findings: readonly Finding[], worksheet: Worksheet, knowledge: Knowledge, budget: Budget): BestUse {
  const problems = budgetProblems(budget);
  const instead = insteadJobs(known, findings, knowledge, worksheet);
  const open = [...worksheet.jobs.filter((job) => isOpen(job) && job.job !== TRIAL_JOB), ...instead].filter((job) => budget.among?.includes(job.job) ?? true);
  const trial = worksheet.jobs.find((job) => isOpen(job) && job.job === TRIAL_JOB);
  const sheet = { known, findings, knowledge, open, trial, end: budget.reckon ?? 'likely' } as const;
  const all = problemOf(sheet, problems.length > 0 ? { ...budget, money: 0, hours: 0 } : budget);
  const choice = chooseBest(budget.wanted === 'safe to run' ? onlyToRun(all) : all);
  const along = budget.wanted === 'safe to run' ? [] : freeWith(sheet, all, choice.jobs, choice.value.hours);
  const chosen = inOrderOfWork([...choice.jobs, ...along].sort((a, b) => a - b).map((index) => open[index]!));
  // What still may not run, or runs no better for it, is not tried, and its trial waits with its money.
  const tried = chosen.length > 0 && trial !== undefined && isWorthATrial(sheet, dutyAfter(known, findings, [...chosen, trial.job], knowledge));
  const jobs = tried ? [...chosen, trial.job] : chosen;
  const duty = dutyAfter(known, findings, jobs, knowledge);
  const kept = chosen.length > 0 && !tried ? all.fixed : { cost: 0, hours: 0 };
  const toRun = leastMoney(sheet, all, (finding) => finding.grade === 'stand-down');
  const toCureAll = leastMoney(sheet, all, isFault);
  return {
    budget, jobs, instead: instead.filter((job) => jobs.includes(job.job)), cost: (choice.value.cost - kept.cost) / HUNDREDTHS, hours: (choice.value.hours + along.reduce((sum, index) => sum + all.jobs[index]!.hours, 0) - kept.hours) / HUNDREDTHS, duty,
    safety: safetyJobs(sheet).flatMap((index) => open[index]!.job).filter((job) => jobs.includes(job)), problems, proven: choice.proven,
    stays: findings.filter((finding) => isFault(finding) && !duty.cured.includes(findingKey(finding))).map(findingKey),
    ...(toRun === undefined ? {} : { toRun }), ...(toCureAll === undefined ? {} : { toCureAll }),
  };
}

/** True where a hammer may run once some jobs are done, guarded as far as jobs can do it, and its duty is another than before them. */
function isWorthATrial(sheet: Sheet, { before, after, ifSettledGood, cured }: DutyAfter): boolean {
  const safe = sheet.findings.every((finding) => !isFault(finding) || !isSafety(sheet)(finding) || needsOf(sheet, finding) === undefined || cured.includes(findingKey(finding)));
  return safe && after.verdict !== 'stand-down' && runsFreely(after) && (ifSettledGood.verdict !== before.verdict || dutyBurden(ifSettledGood) < dutyBurden(before));
}

const inOrderOfWork = (jobs: readonly WorksheetJob[]): readonly string[] => {
  const chosen = new Set(jobs.map((job) => job.job));
  return orderRound(jobs.map((job) => ({ id: job.job, rank: job.stage * 10 - URGENT[job.urgency], after: job.after.filter((before) => chosen.has(before)) }))).order;
};

/** As the worksheet ranks them. */
const URGENT = { watch: 0, limited: 1, 'stand-down': 2 } as const;

/** Only what stands the hammer down counts; limits and watched things stay as they are. */
const onlyToRun = (problem: ChoiceProblem): ChoiceProblem => ({
  ...problem, floor: problem.floor.map(() => 0), cures: problem.cures.filter((cure) => cure.bars === 'stand-down').map((cure) => ({ ...cure, limits: [] })),
});

function budgetProblems(budget: Budget): readonly string[] {
  const problems: string[] = [];
  if (!Number.isFinite(budget.money) || budget.money < 0) problems.push(`A budget is a number not below zero, and nothing is chosen: ${budget.money}`);
  if (budget.hours !== undefined && !(budget.hours >= 0)) problems.push(`The hours of a budget are not below zero, and nothing is chosen: ${budget.hours}`);
  return problems;
}

interface Sheet {
  readonly known: Known;
  readonly findings: readonly Finding[];
  readonly knowledge: Knowledge;
  /** Everything that may be chosen, the trial aside. */
  readonly open: readonly WorksheetJob[];
  readonly trial: WorksheetJob | undefined;
  readonly end: 'likely' | 'most';
}

function problemOf(sheet: Sheet, budget: Budget): ChoiceProblem {
  const { findings, knowledge, open, trial, end } = sheet;
  const small = (job: WorksheetJob) => ({ cost: Math.round(job.cost[end] * HUNDREDTHS), hours: Math.round(Math.max(0, job.hours[end] - (job.hoursSpent ?? 0)) * HUNDREDTHS) });
  const kinds: LimitKind[] = [...new Set(findings.flatMap((finding) => finding.limits.map((limit) => limit.kind)))];
  const floor = kinds.map(() => 0);
  const stands = { down: false, unknown: findings.some((finding) => finding.gate && finding.grade === 'not-known' && settledBy(finding, trial === undefined ? [] : [trial.job], knowledge) === undefined), limited: false };
  const cures: Cure[] = [];
  for (const finding of findings) {
    const limits = finding.limits.map((limit) => ({ kind: kinds.indexOf(limit.kind), burden: limitBurden(limit) }));
    const bars = finding.grade === 'stand-down' ? 'stand-down' : finding.grade === 'limited' || limits.length > 0 ? 'limited' : 'nothing';
    const needs = needsOf(sheet, finding);
    const { grade } = finding;
    if (needs !== undefined && (grade === 'watch' || grade === 'limited' || grade === 'stand-down')) {
      cures.push({ ...needs, limits, bars, points: POINTS[grade] });
      continue;
    }
    for (const { kind, burden } of limits) floor[kind] = Math.max(floor[kind] ?? 0, burden);
    if (bars === 'stand-down') stands.down = true;
    if (bars === 'limited') stands.limited = true;
  }
  const plain = open.map((job) => ({ ...small(job), ...waitsOf(sheet, job) }));
  const safe = withRunsLast(withSafetyFirst(plain, needsOfAll(sheet, isBeforeAnyHand(sheet)), needsOfAll(sheet, isSafety(sheet))), open.map((job) => runsIt(job.job, knowledge)), needsOfAll(sheet, (finding) => finding.grade === 'stand-down'));
  return {
    jobs: withKept(safe, keptNeeds(sheet, budget.keeping ?? [])),
    cures, fixed: trial === undefined ? { cost: 0, hours: 0 } : small(trial), floor, stands,
    budget: Math.floor(budget.money * HUNDREDTHS + 1e-6), hoursBudget: budget.hours === undefined ? Number.POSITIVE_INFINITY : Math.floor(budget.hours * HUNDREDTHS + 1e-6),
  };
}

const placeOf = ({ open }: Sheet, id: string): readonly number[] => { const at = open.findIndex((job) => job.job === id); return at < 0 ? [] : [at]; };

/** What a finding needs, as indices; undefined where something that it needs cannot be chosen. */
function needsOf(sheet: Sheet, finding: Finding): Pick<Cure, 'jobs' | 'oneOf'> | undefined {
  const ways = cureWays(finding, sheet.knowledge, sheet.known.identity.family)?.map((serving) => serving.flatMap((job) => placeOf(sheet, job.id)));
  if (ways === undefined || ways.some((serving) => serving.length === 0)) return undefined;
  return { jobs: ways.flatMap((serving) => (serving.length === 1 ? serving : [])), oneOf: ways.filter((serving) => serving.length > 1) };
}

/** What some faults need; those that no job cures are left out. */
const needsOfAll = (sheet: Sheet, which: (finding: Finding) => boolean): readonly Pick<Cure, 'jobs' | 'oneOf'>[] =>
  sheet.findings.filter((finding) => isFault(finding) && which(finding)).flatMap((finding) => needsOf(sheet, finding) ?? []);

const isBeforeAnyHand = ({ knowledge }: Sheet) => (finding: Finding): boolean => beforeAnyHand(finding, knowledge);
const isSafety = (sheet: Sheet) => (finding: Finding): boolean => beforeAnyRun(finding) || isBeforeAnyHand(sheet)(finding);

const safetyJobs = (sheet: Sheet): readonly number[] => [...new Set(needsOfAll(sheet, isSafety(sheet)).flatMap((one) => [...one.jobs, ...(one.oneOf ?? []).flat()]))];

/** What is bought already, as needs that every other job waits for: the job itself, or one that makes it pointless wherever it is asked for. */
const keptNeeds = (sheet: Sheet, keeping: readonly string[]): readonly Pick<Cure, 'jobs' | 'oneOf'>[] => keeping.flatMap((id) => {
  const serving = servingFor(sheet, id);
  return serving.length === 0 ? [] : [serving.length === 1 ? { jobs: serving } : { jobs: [], oneOf: [serving] }];
});

/** A job and those that do in its place on every part for which it is asked, as indices; none where it is not open. */
function servingFor(sheet: Sheet, id: string): readonly number[] {
  const self = placeOf(sheet, id);
  if (self.length === 0) return [];
  const parts = [...partsAsking(sheet, id)];
  const others = parts.length === 0 ? [] : sheet.knowledge.jobs.filter((one) => parts.every((part) => insteadOf(id, part, sheet.knowledge).includes(one)));
  return [...self, ...others.flatMap((one) => placeOf(sheet, one.id))];
}

const partsAsking = (sheet: Sheet, id: string): ReadonlySet<string> => new Set(sheet.findings.filter((finding) => isFault(finding) && (finding.ownCures ?? finding.cures).includes(id)).map((finding) => finding.part));

/**
 * What a job waits for, of what findings ask for: the job itself, or one that does in its place on every part for which it
 * is asked. A job that is only another way is waited for where it is chosen, and is no reason to choose it.
 */
function waitsOf(sheet: Sheet, job: WorksheetJob): Pick<ChoiceProblem['jobs'][number], 'after' | 'afterOneOf'> {
  const orderOnly = new Set(sheet.knowledge.jobs.find((one) => one.id === job.job)?.after.filter((before) => before.onlyInOrder === true).map((before) => before.job));
  const lists: (readonly number[])[] = job.after.flatMap((before): readonly (readonly number[])[] => {
    if (orderOnly.has(before)) return [];
    const self = placeOf(sheet, before);
    if (self.length === 0 || (partsAsking(sheet, before).size === 0 && sheet.open[self[0]!]?.number === 0)) return [];
    return [servingFor(sheet, before)];
  });
  for (const other of [...closersOf(job.job, sheet.open, sheet.knowledge), ...doneForOf(job.job, sheet.open, sheet.knowledge)]) lists.push(servingFor(sheet, other));
  return { after: lists.flatMap((serving) => (serving.length === 1 ? serving : [])), afterOneOf: lists.filter((serving) => serving.length > 1) };
}

/** Indices of what is free and follows on the chosen jobs, as long as the hours last. */
function freeWith(sheet: Sheet, problem: ChoiceProblem, chosen: readonly number[], hours: number): readonly number[] {
  let spent = hours;
  const ids = new Set(chosen.map((index) => sheet.open[index]!.job));
  const isFree = (id: string): boolean => {
    const { cost, hours: own } = problem.jobs[placeOf(sheet, id)[0]!]!;
    if (cost > 0 || spent + own > problem.hoursBudget) return false;
    spent += own;
    return true;
  };
  const served = (id: string): boolean => servingFor(sheet, id).some((index) => ids.has(sheet.open[index]!.job));
  return comingAlong([...ids], sheet.open, isFree, served).flatMap((id) => placeOf(sheet, id));
}

/** Least money for curing every finding of a sort, the jobs before and the trial included; undefined where there is none, or one that no job cures. */
function leastMoney(sheet: Sheet, problem: ChoiceProblem, which: (finding: Finding) => boolean): number | undefined {
  const needs = sheet.findings.filter(which).map((finding) => needsOf(sheet, finding));
  const cures = needs.flatMap((one): readonly Cure[] => (one === undefined ? [] : [{ ...one, limits: [], bars: 'stand-down', points: 1 }]));
  if (cures.length === 0 || cures.length < needs.length) return undefined;
  const free: ChoiceProblem = { ...problem, cures, floor: [], stands: { down: false, unknown: false, limited: false }, budget: Number.POSITIVE_INFINITY, hoursBudget: Number.POSITIVE_INFINITY };
  return chooseBest(free).value.cost / HUNDREDTHS;
}
