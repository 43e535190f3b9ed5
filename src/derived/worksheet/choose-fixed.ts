import { choiceValue, compareChoices, type Choice, type ChoiceProblem, type Cure } from './best-choice.ts';
import { affords, closureOf, emptySet, putIn, takeOut, unionOf, type ChosenSet } from './chosen-set.ts';
import { leastBurden } from './least-burden.ts';
import { mostCured, type Incumbent } from './most-cured.ts';

/** A choice without alternatives: every list of which one will do is settled, or left out. */
export interface FixedProblem extends ChoiceProblem {
  readonly jobs: readonly (Omit<ChoiceProblem['jobs'][number], 'afterOneOf'> & { readonly afterOneOf?: never })[];
  readonly cures: readonly (Omit<Cure, 'oneOf'> & { readonly oneOf?: never })[];
}

/**
 * The best choice of jobs where nothing has an alternative, exactly: first the best verdict that the budgets reach, then the least burden of limits, then
 * the most cured, then the least cost and hours. Each step keeps what the one before it won; where several sets win the
 * burden, the last step tries them all.
 * @param mostNodes nodes after which the search is stopped; the choice then says that it is not proven
 */
export function chooseFixed(problem: FixedProblem, mostNodes: number): Choice {
  const within = { ...problem, budget: problem.budget - problem.fixed.cost, hoursBudget: problem.hoursBudget - problem.fixed.hours };
  const nothing: Choice = { jobs: [], value: choiceValue(problem, []), proven: true, nodes: 0 };
  if (within.budget < 0 || within.hoursBudget < 0) return nothing;
  const base = emptySet(within);
  putIn(within, base, forcedBy(within, base));
  const eased = leastBurden(within, base, mostNodes);
  const incumbent: Incumbent = { points: -1, price: Number.POSITIVE_INFINITY, jobs: [], nodes: 0, mostNodes };
  // Where the search for the burden was stopped before it came to any set, the cures are still sought.
  for (const jobs of eased.sets.length > 0 ? eased.sets : [[]]) {
    putIn(within, base, jobs);
    mostCured(within, base, incumbent);
    takeOut(within, base, jobs);
  }
  const chosen = problem.jobs.map((_, index) => incumbent.jobs.includes(index));
  const choice: Choice = {
    jobs: incumbent.jobs, value: choiceValue(problem, chosen), proven: eased.proven && incumbent.nodes < mostNodes, nodes: eased.nodes + incumbent.nodes,
  };
  return compareChoices(choice.value, nothing.value) <= 0 ? choice : { ...nothing, proven: choice.proven, nodes: choice.nodes };
}

/** Jobs that the best verdict in reach asks for: everything that stands the hammer down, and for `fit` everything that limits it. */
function forcedBy(problem: ChoiceProblem, set: ChosenSet): readonly number[] {
  const { stands } = problem;
  if (stands.down) return [];
  const down = jobsOf(problem, (cure) => cure.bars === 'stand-down');
  if (!affords(problem, set, down)) return [];
  const all = jobsOf(problem, (cure) => cure.bars !== 'nothing');
  return !stands.unknown && !stands.limited && affords(problem, set, all) ? all : down;
}

const jobsOf = (problem: ChoiceProblem, which: (cure: Cure) => boolean): readonly number[] =>
  unionOf(problem.cures.filter(which).map((cure) => closureOf(problem, cure)));
