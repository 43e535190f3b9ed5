import { choiceValue, compareChoices, isComplete, type Choice, type ChoiceProblem, type Cure } from './best-choice.ts';
import { chooseFixed, type FixedProblem } from './choose-fixed.ts';

/** Enough for every worksheet tried here, by a wide margin. */
const MOST_NODES = 300_000;

/** Which job serves each list of alternatives that was settled so far, by the name of the list. */
type Settled = ReadonlyMap<string, number>;

/**
 * The best choice of jobs, exactly: first the best verdict that the budgets reach, then the least burden of limits, then
 * the most cured, then the least cost and hours. Where one of several jobs will do, by branch and bound: the choice is made
 * with the open alternatives left out, which is never worse than the truth; where it holds without them it stands, else
 * the first list that it lacks is settled each way.
 * @param mostNodes nodes after which the search is stopped; the choice then says that it is not proven
 */
export function chooseBest(problem: ChoiceProblem, mostNodes = MOST_NODES): Choice {
  let best: Choice = { jobs: [], value: choiceValue(problem, []), proven: true, nodes: 0 };
  let nodes = 0;
  let proven = true;
  const visit = (settled: Settled): void => {
    if (nodes >= mostNodes) {
      proven = false;
      return;
    }
    const eased = chooseFixed(withSettled(problem, settled), mostNodes - nodes);
    nodes += eased.nodes + 1;
    proven &&= eased.proven;
    if (eased.proven && compareChoices(eased.value, best.value) >= 0) return;
    const chosen = problem.jobs.map((_, index) => eased.jobs.includes(index));
    const value = choiceValue(problem, chosen);
    if (isComplete(problem, chosen) && compareChoices(value, best.value) < 0) best = { jobs: eased.jobs, value, proven, nodes };
    const lacking = firstLacking(problem, chosen, settled);
    for (const job of lacking ?? []) visit(new Map([...settled, [nameOf(lacking!), job]]));
  };
  visit(new Map());
  return { ...best, proven, nodes };
}

const nameOf = (some: readonly number[]): string => [...some].sort((a, b) => a - b).join(',');

/** The problem with the settled lists as plain needs, and those still open left out. */
function withSettled(problem: ChoiceProblem, settled: Settled): FixedProblem {
  const serving = (lists: readonly (readonly number[])[] = []): readonly number[] => lists.flatMap((some) => settled.get(nameOf(some)) ?? []);
  return {
    ...problem,
    jobs: problem.jobs.map(({ cost, hours, after, afterOneOf }): FixedProblem['jobs'][number] => ({ cost, hours, after: [...after, ...serving(afterOneOf)] })),
    cures: problem.cures.map(({ jobs, oneOf, points, limits, bars }) => ({ jobs: [...jobs, ...serving(oneOf)], points, limits, bars })),
  };
}

/** The first open list that a choice counts on and has none of. */
function firstLacking(problem: ChoiceProblem, chosen: readonly boolean[], settled: Settled): readonly number[] | undefined {
  const lacks = (lists: readonly (readonly number[])[] = []): readonly number[] | undefined => lists.find((some) => !settled.has(nameOf(some)) && !some.some((job) => chosen[job]));
  const counted = ({ jobs, oneOf }: Cure): boolean => jobs.every((job) => chosen[job]) && (oneOf ?? []).every((some) => { const serves = settled.get(nameOf(some)); return serves === undefined || chosen[serves] === true; });
  for (const [index, job] of problem.jobs.entries()) {
    const open = chosen[index] ? lacks(job.afterOneOf) : undefined;
    if (open !== undefined) return open;
  }
  for (const cure of problem.cures) {
    const open = counted(cure) ? lacks(cure.oneOf) : undefined;
    if (open !== undefined) return open;
  }
  return undefined;
}
