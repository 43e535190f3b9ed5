import { BEFORE_ANY_RUN, SAFE_TO_WORK_ON, SAFETY_FIRST, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Duty } from '../duty/index.ts';
import type { ChoiceProblem, Cure } from './best-choice.ts';

type Needs = Pick<Cure, 'jobs' | 'oneOf'>;
type ChoiceJob = ChoiceProblem['jobs'][number];

/** True for a fault that is cured before a hand goes near for anything else: by a job that makes the hammer safe to work on. */
export const beforeAnyHand = (finding: Finding, { jobs }: Knowledge): boolean => finding.cures.some((id) => jobs.find((job) => job.id === id)?.stage === SAFE_TO_WORK_ON);

/** True for a fault that is cured before anything runs, and before money goes to anything else. */
export const beforeAnyRun = ({ criterion, limits }: Finding): boolean => SAFETY_FIRST.includes(criterion) || limits.some(({ kind }) => BEFORE_ANY_RUN.includes(kind));

/** True where no limit asks for something before the first turn. */
export const runsFreely = ({ limits }: Pick<Duty, 'limits'>): boolean => !limits.some(({ kind }) => BEFORE_ANY_RUN.includes(kind));

/**
 * Lets every job wait for what the matters of safety need, so that no money goes to anything else before it; and those wait
 * for what must be safe before a hand goes near. What safety itself needs beforehand waits for none of it.
 * @param touch needs of what must be safe before a hand goes near @param safety needs of all matters of safety, those included
 */
export function withSafetyFirst(jobs: readonly ChoiceJob[], touch: readonly Needs[], safety: readonly Needs[]): readonly ChoiceJob[] {
  const beforeTouch = reached(jobs, touch);
  const beforeSafety = reached(jobs, safety);
  return jobs.map((job, index): ChoiceJob => {
    const needs = beforeTouch.has(index) ? [] : beforeSafety.has(index) ? touch : safety;
    return waitingFor(job, needs);
  });
}

function waitingFor(job: ChoiceJob, needs: readonly Needs[]): ChoiceJob {
  if (needs.length === 0) return job;
  const lists = [...(job.afterOneOf ?? []), ...needs.flatMap((one) => one.oneOf ?? [])];
  return { ...job, after: [...new Set([...job.after, ...needs.flatMap((one) => one.jobs)])], ...(lists.length === 0 ? {} : { afterOneOf: lists }) };
}

/**
 * Lets what is done by running the hammer wait for everything that stops it.
 * @param runs true for each job that is done by running it @param stops needs of what stands it down
 */
export const withRunsLast = (jobs: readonly ChoiceJob[], runs: readonly boolean[], stops: readonly Needs[]): readonly ChoiceJob[] => {
  const before = reached(jobs, stops);
  return jobs.map((job, index) => (runs[index] === true && !before.has(index) ? waitingFor(job, stops) : job));
};

/** Lets every job bring all that is kept with it: whatever is chosen, what is bought already stays, each itself or what does in its place. */
export const withKept = (jobs: readonly ChoiceJob[], kept: readonly Needs[]): readonly ChoiceJob[] => jobs.map((job) => waitingFor(job, kept));

/** The jobs of some needs, and everything that those wait for. */
function reached(jobs: readonly ChoiceJob[], needs: readonly Needs[]): ReadonlySet<number> {
  const found = new Set<number>();
  const open = needs.flatMap((one) => [...one.jobs, ...(one.oneOf ?? []).flat()]);
  for (let job = open.pop(); job !== undefined; job = open.pop()) {
    if (found.has(job)) continue;
    found.add(job);
    open.push(...jobs[job]!.after, ...(jobs[job]!.afterOneOf ?? []).flat());
  }
  return found;
}
