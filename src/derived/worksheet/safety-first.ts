import type { ChoiceProblem, Cure } from './best-choice.ts';

type Needs = Pick<Cure, 'jobs' | 'oneOf'>;
type ChoiceJob = ChoiceProblem['jobs'][number];

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
    if (needs.length === 0) return job;
    const lists = [...(job.afterOneOf ?? []), ...needs.flatMap((one) => one.oneOf ?? [])];
    return { ...job, after: [...new Set([...job.after, ...needs.flatMap((one) => one.jobs)])], ...(lists.length === 0 ? {} : { afterOneOf: lists }) };
  });
}

/** Lets every job bring all that is kept with it: whatever is chosen, what is bought already stays, each itself or what does in its place. */
export const withKept = (jobs: readonly ChoiceJob[], kept: readonly Needs[]): readonly ChoiceJob[] => (kept.length === 0 ? jobs : jobs.map((job): ChoiceJob => {
  const lists = [...(job.afterOneOf ?? []), ...kept.flatMap((one) => one.oneOf ?? [])];
  return { ...job, after: [...new Set([...job.after, ...kept.flatMap((one) => one.jobs)])], ...(lists.length === 0 ? {} : { afterOneOf: lists }) };
}));

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
