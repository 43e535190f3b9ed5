import { LOOKING_JOBS, type Knowledge } from '../../knowledge/index.ts';
import { isFault, type Finding, type Limit } from '../condition/index.ts';
import { dutyOf, type Duty } from '../duty/index.ts';
import type { Known } from '../survey/index.ts';
import { cureWays, findingKey } from './cure-needs.ts';
import { limitBurden } from './limit-burden.ts';
import { settledBy } from './settled-by-trial.ts';

/** The duty that would follow from some jobs, beside the duty of today. It is a promise, to be proven by measuring. */
export interface DutyAfter {
  /** Jobs taken as done. */
  readonly jobs: readonly string[];
  readonly before: Duty;
  readonly after: Duty;
  /** Says that it is a promise, and what would break it. */
  readonly promise: string;
  /** Findings taken as sound. */
  readonly cured: readonly string[];
  /** Findings that some of these jobs work on, and what they still want. */
  readonly stillWant: readonly { readonly finding: string; readonly jobs: readonly string[] }[];
  /** Findings that a job only looks at: it may clear them or find worse. */
  readonly hangsOn: readonly { readonly finding: string; readonly job: string; readonly sentence: string }[];
  /** The duty where every such look finds the fault; the same as `after` where nothing hangs on a look. */
  readonly ifLooksFindWorse: Duty;
  /** Matters of safety that nobody has checked yet and that the trial, or a look among the jobs, answers. */
  readonly toSettle: readonly { readonly finding: string; readonly title: string; readonly job: string; readonly jobTitle: string }[];
  /** The duty where each of them is found good; the same as `after` where there is none. */
  readonly ifSettledGood: Duty;
  readonly lifted: readonly Limit[];
  readonly eased: readonly { readonly before: Limit; readonly after: Limit }[];
  /** What to read or look at again, so that the promise becomes a finding. */
  readonly toProve: readonly string[];
  readonly problems: readonly string[];
}

/**
 * Findings as they would stand once jobs are done: a finding is taken as sound when every job that it asks for is among
 * them, or another that does in its place. What is not known stays not known: no job makes up for a look that nobody took.
 */
export function findingsAfter(known: Known, findings: readonly Finding[], jobs: ReadonlySet<string>, knowledge: Knowledge): readonly Finding[] {
  return findings.map((finding) => (isCured(known, finding, jobs, knowledge) ? promisedSound(finding) : finding));
}

function isCured(known: Known, finding: Finding, jobs: ReadonlySet<string>, knowledge: Knowledge): boolean {
  const ways = cureWays(finding, knowledge, known.identity.family);
  return ways !== undefined && ways.every((serving) => serving.some((job) => jobs.has(job.id)));
}

const promisedSound = (finding: Finding): Finding => ({
  ...finding, grade: 'sound', limits: [], cures: [], chances: { watch: 0, limited: 0, standDown: 0 }, sure: 1,
  sureWords: 'promised, not measured', reason: 'Taken as sound once the work is done; measure or look again to prove it.', shown: '',
});

/**
 * The verdict and the limits once some jobs are done, against those of today.
 * @param jobs ids of the jobs taken as done; one that this version does not know is said and counts for nothing
 */
export function dutyAfter(known: Known, findings: readonly Finding[], jobs: readonly string[], knowledge: Knowledge): DutyAfter {
  const done = new Set(jobs);
  const problems = [...done].filter((id) => !knowledge.jobs.some((job) => job.id === id)).map((id) => `A job is named that this version does not know: ${id}`);
  const later = findingsAfter(known, findings, done, knowledge);
  const cured = findings.filter((finding, index) => later[index] !== finding);
  const hangsOn = cured.flatMap((finding) => looksOnly(known, finding, knowledge));
  const doubtful = new Set(hangsOn.map((one) => one.finding));
  const before = dutyOf(findings);
  const after = dutyOf(later);
  const stillWant = findings.filter((finding) => isFault(finding) && !cured.includes(finding)).flatMap((finding) => {
    const ways = cureWays(finding, knowledge, known.identity.family) ?? [];
    const open = ways.filter((serving) => !serving.some((job) => done.has(job.id)));
    return open.length < ways.length ? [{ finding: findingKey(finding), jobs: open.flatMap((serving) => serving[0]?.id ?? []) }] : [];
  });
  const toSettle = toSettleOf(findings, jobs, knowledge);
  return {
    jobs: [...done], before, after, toSettle, ifSettledGood: toSettle.length === 0 ? after : dutyOf(settledGood(later, jobs, knowledge)), cured: cured.map(findingKey), stillWant, hangsOn, problems,
    promise: promiseOf(cured.length, hangsOn.length),
    ifLooksFindWorse: hangsOn.length === 0 ? after : dutyOf(findings.map((finding, index) => (doubtful.has(findingKey(finding)) ? finding : (later[index] ?? finding)))),
    lifted: before.limits.filter((limit) => !after.limits.some((other) => other.kind === limit.kind)),
    eased: before.limits.flatMap((limit) => {
      const other = after.limits.find((one) => one.kind === limit.kind);
      return other !== undefined && limitBurden(other) < limitBurden(limit) ? [{ before: limit, after: other }] : [];
    }),
    toProve: [...new Set(cured.flatMap((finding) => finding.from))],
  };
}

function toSettleOf(findings: readonly Finding[], jobs: readonly string[], knowledge: Knowledge): DutyAfter['toSettle'] {
  return findings.filter((finding) => finding.gate).flatMap((finding) => {
    const job = settledBy(finding, jobs, knowledge);
    return job === undefined ? [] : [{ finding: findingKey(finding), title: finding.title, job, jobTitle: knowledge.jobs.find((one) => one.id === job)?.title ?? job }];
  });
}

/** Findings with every open matter of safety that one of the jobs answers taken as answered well. */
export const settledGood = (findings: readonly Finding[], jobs: readonly string[], knowledge: Knowledge): readonly Finding[] =>
  findings.map((finding) => (finding.gate && settledBy(finding, jobs, knowledge) !== undefined ? promisedSound(finding) : finding));

function looksOnly(known: Known, finding: Finding, knowledge: Knowledge): DutyAfter['hangsOn'] {
  const needs = (cureWays(finding, knowledge, known.identity.family) ?? []).flatMap((serving) => serving[0] ?? []);
  const [first] = needs;
  if (first === undefined || !needs.every((job) => LOOKING_JOBS.includes(job.id))) return [];
  return [{ finding: findingKey(finding), job: first.id, sentence: `"${first.title}" only looks: it clears "${finding.title}" or finds that more has to be done.` }];
}

function promiseOf(cured: number, hanging: number): string {
  if (cured === 0) return 'These jobs cure no finding of today by themselves.';
  const taken = `A promise, not a finding: ${cured === 1 ? 'one finding is' : `${cured} findings are`} taken as sound once the work is done, and each is proven only by measuring or looking again after it.`;
  return hanging === 0 ? taken : `${taken} ${hanging === 1 ? 'One of them hangs' : `${hanging} of them hang`} on a look that may find worse.`;
}
