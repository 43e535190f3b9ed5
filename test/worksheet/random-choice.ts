import type { ChoiceProblem, ChoiceValue, Cure } from '../../src/derived/worksheet/best-choice.ts';
import { choiceValue, compareChoices } from '../../src/derived/worksheet/best-choice.ts';
import { nextBelow, seeded, type Generator } from '../../src/methods/chance/index.ts';

const KINDS = 8;

/**
 * A worksheet as chance makes it: jobs with waits, cures that may need several, limits that several hold, a trial to pay;
 * and alternatives, of which one will do: for a cure, for what a job waits for, the same pair in several places.
 * @param alternatives false for a worksheet without any
 */
export function randomChoice(seed: number, jobCount: number, alternatives = true): ChoiceProblem {
  const generator = seeded(seed, 'random-choice');
  const below = (count: number): number => nextBelow(generator, count);
  const pairs = alternatives ? Array.from({ length: 1 + below(4) }, () => distinct(below, jobCount, 2 + below(2))) : [];
  const someOf = (chance: number): readonly (readonly number[])[] => pairs.filter(() => below(chance) === 0);
  const jobs = Array.from({ length: jobCount }, (_, index) => ({
    cost: below(5) === 0 ? 0 : 100 * below(40), hours: 10 + below(800),
    after: Array.from({ length: index }, (__, before) => before).filter(() => below(jobCount) === 0),
    ...(alternatives && below(4) === 0 ? { afterOneOf: someOf(3).filter((some) => !some.includes(index)) } : {}),
  }));
  const cures = Array.from({ length: 1 + below(2 * jobCount) }, (): Cure => {
    const cure = randomCure(generator, jobCount);
    const oneOf = someOf(3);
    return oneOf.length === 0 ? cure : { ...cure, oneOf, jobs: below(2) === 0 ? cure.jobs.slice(1) : cure.jobs };
  });
  const cost = jobs.reduce((sum, job) => sum + job.cost, 0);
  const hours = jobs.reduce((sum, job) => sum + job.hours, 0);
  return {
    jobs, cures, fixed: { cost: 100 * below(5), hours: below(200) },
    budget: Math.floor((cost * below(110)) / 100),
    hoursBudget: below(3) === 0 ? Math.floor((hours * below(110)) / 100) : Number.POSITIVE_INFINITY,
    floor: Array.from({ length: KINDS }, () => (below(4) === 0 ? below(3) * 300 : 0)),
    stands: { down: below(10) === 0, unknown: below(4) === 0, limited: below(4) === 0 },
  };
}

const distinct = (below: (count: number) => number, jobCount: number, count: number): readonly number[] => [...new Set(Array.from({ length: count }, () => below(jobCount)))];

function randomCure(generator: Generator, jobCount: number): Cure {
  const below = (count: number): number => nextBelow(generator, count);
  const jobs = [...new Set(Array.from({ length: 1 + below(3) }, () => below(jobCount)))];
  const grade = below(7);
  const limits = grade < 4 ? Array.from({ length: below(4) }, () => ({ kind: below(KINDS), burden: 300 * (1 + below(4)) })) : [];
  return { jobs, limits, points: grade === 6 ? 100 : grade < 3 ? 10 : 1, bars: grade === 6 ? 'stand-down' : grade < 3 || limits.length > 0 ? 'limited' : 'nothing' };
}

/** The best of all sets of jobs, each tried: no bound, no order, nothing of the search under test but the worth of one set. */
export function bestOfAll(problem: ChoiceProblem): { readonly value: ChoiceValue; readonly tried: number } {
  const count = problem.jobs.length;
  let best = choiceValue(problem, []);
  let tried = 1;
  for (let mask = 1; mask < 2 ** count; mask++) {
    const chosen = problem.jobs.map((_, index) => (mask & (1 << index)) !== 0);
    if (!feasible(problem, chosen)) continue;
    tried += 1;
    const value = choiceValue(problem, chosen);
    if (compareChoices(value, best) < 0) best = value;
  }
  return { value: best, tried };
}

/** Within both budgets, the trial paid, and every job with those that it waits for, or one of those of which one will do. */
export function feasible(problem: ChoiceProblem, chosen: readonly boolean[]): boolean {
  let cost = 0;
  let hours = 0;
  for (const [index, job] of problem.jobs.entries()) {
    if (!chosen[index]) continue;
    if (job.after.some((before) => !chosen[before])) return false;
    if ((job.afterOneOf ?? []).some((some) => !some.some((before) => chosen[before]))) return false;
    cost += job.cost;
    hours += job.hours;
  }
  const any = chosen.includes(true);
  return !any || (cost + problem.fixed.cost <= problem.budget && hours + problem.fixed.hours <= problem.hoursBudget);
}
