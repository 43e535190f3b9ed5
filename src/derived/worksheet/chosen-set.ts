import type { ChoiceProblem, Cure } from './best-choice.ts';

/** Jobs chosen so far, each as often as something that was put in needs it, with their running sums. Written in place. */
export interface ChosenSet {
  readonly count: Uint16Array;
  cost: number;
  hours: number;
}

export const emptySet = (problem: ChoiceProblem): ChosenSet => ({ count: new Uint16Array(problem.jobs.length), cost: 0, hours: 0 });

/** Puts jobs in. */
export function putIn(problem: ChoiceProblem, set: ChosenSet, jobs: readonly number[]): void {
  for (const job of jobs) {
    if (set.count[job]! === 0) {
      set.cost += problem.jobs[job]!.cost;
      set.hours += problem.jobs[job]!.hours;
    }
    set.count[job]! += 1;
  }
}

/** Takes out what `putIn` put in. */
export function takeOut(problem: ChoiceProblem, set: ChosenSet, jobs: readonly number[]): void {
  for (const job of jobs) {
    set.count[job]! -= 1;
    if (set.count[job]! === 0) {
      set.cost -= problem.jobs[job]!.cost;
      set.hours -= problem.jobs[job]!.hours;
    }
  }
}

/** True where all jobs are in. */
export const holds = (set: ChosenSet, jobs: readonly number[]): boolean => jobs.every((job) => set.count[job]! > 0);

/** True where the budgets bear these jobs on top. */
export function affords(problem: ChoiceProblem, set: ChosenSet, jobs: readonly number[]): boolean {
  let { cost, hours } = set;
  for (const job of jobs) {
    if (set.count[job]! > 0) continue;
    cost += problem.jobs[job]!.cost;
    hours += problem.jobs[job]!.hours;
  }
  return cost <= problem.budget && hours <= problem.hoursBudget;
}

/** All jobs that a cure needs, those before them included, in rising order. */
export function closureOf(problem: ChoiceProblem, cure: Pick<Cure, 'jobs'>): readonly number[] {
  const found = new Set<number>();
  const open = [...cure.jobs];
  for (let job = open.pop(); job !== undefined; job = open.pop()) {
    if (found.has(job)) continue;
    found.add(job);
    open.push(...problem.jobs[job]!.after);
  }
  return [...found].sort((a, b) => a - b);
}

/** The union of several lists, in rising order. */
export const unionOf = (lists: readonly (readonly number[])[]): readonly number[] => [...new Set(lists.flat())].sort((a, b) => a - b);
