import type { ChoiceProblem } from './best-choice.ts';
import { affords, closureOf, holds, putIn, takeOut, unionOf, type ChosenSet } from './chosen-set.ts';
import { mostWorth, type Offer } from './relaxed-knapsack.ts';

/** One level to which a kind of limit may be eased: the burden left, and the jobs that it takes. */
interface Level {
  readonly burden: number;
  readonly jobs: readonly number[];
}

/** Job sets that reach the least burden of limits within the budgets, and no more than that. */
export interface LeastBurden {
  readonly burden: number;
  readonly sets: readonly (readonly number[])[];
  readonly nodes: number;
  readonly proven: boolean;
}

/**
 * The least burden that the budgets allow on top of what is chosen, by branch and bound over the kinds of limit: each is
 * eased to one of its levels, which takes the jobs of every cure that holds it above. The bound lets each kind have its
 * jobs at a share of their cost, split among all kinds that want them, and in part.
 */
export function leastBurden(problem: ChoiceProblem, base: ChosenSet, mostNodes: number): LeastBurden {
  const kinds = levelsOf(problem, base).sort((a, b) => spanOf(b) - spanOf(a));
  const shared = problem.jobs.map((_, job) => kinds.filter((levels) => levels.some((level) => level.jobs.includes(job))).length);
  let best = Number.POSITIVE_INFINITY;
  let sets: (readonly number[])[] = [];
  let nodes = 0;
  const visit = (at: number, burden: number, taken: readonly (readonly number[])[]): void => {
    if (nodes >= mostNodes) return;
    nodes += 1;
    const levels = kinds[at];
    if (levels === undefined) {
      if (burden < best) sets = [];
      if (burden <= best) sets.push(unionOf(taken));
      best = Math.min(best, burden);
      return;
    }
    if (burden + leastOf(problem, base, kinds.slice(at), shared) > best) return;
    for (const level of levels) {
      if (!affords(problem, base, level.jobs)) continue;
      putIn(problem, base, level.jobs);
      visit(at + 1, burden + level.burden, [...taken, level.jobs]);
      takeOut(problem, base, level.jobs);
    }
  };
  visit(0, 0, []);
  return { burden: best, sets: distinct(sets), nodes, proven: nodes < mostNodes };
}

const spanOf = (levels: readonly Level[]): number => levels.at(-1)!.burden - levels[0]!.burden;

/** The levels of each kind, mildest first; the last takes no jobs. */
function levelsOf(problem: ChoiceProblem, base: ChosenSet): (readonly Level[])[] {
  return problem.floor.map((floor, kind) => {
    const held = problem.cures.flatMap((cure) => {
      const burden = Math.max(0, ...cure.limits.filter((limit) => limit.kind === kind).map((limit) => limit.burden));
      const jobs = closureOf(problem, cure);
      return burden > floor && !holds(base, jobs) ? [{ burden, jobs }] : [];
    });
    const burdens = [...new Set([floor, ...held.map((one) => one.burden)])].sort((a, b) => a - b);
    return burdens.map((burden) => ({ burden, jobs: unionOf(held.filter((one) => one.burden > burden).map((one) => one.jobs)) }));
  });
}

/** Burden that the kinds keep whatever is done with the rest of the budgets. */
function leastOf(problem: ChoiceProblem, set: ChosenSet, kinds: readonly (readonly Level[])[], shared: readonly number[]): number {
  let whole = 0;
  const money: Offer[] = [];
  const time: Offer[] = [];
  for (const levels of kinds) {
    const open = levels.filter((level) => affords(problem, set, level.jobs));
    const top = open.at(-1)!.burden;
    whole += top;
    const priced = (of: 'cost' | 'hours'): readonly Offer[] => open.map((level) => ({ worth: top - level.burden, price: level.jobs.reduce((sum, job) => (set.count[job]! > 0 ? sum : sum + problem.jobs[job]![of] / shared[job]!), 0) }));
    money.push(...stepsOf(priced('cost')));
    if (Number.isFinite(problem.hoursBudget)) time.push(...stepsOf(priced('hours')));
  }
  const eased = Math.min(mostWorth(money, problem.budget - set.cost), Number.isFinite(problem.hoursBudget) ? mostWorth(time, problem.hoursBudget - set.hours) : Number.POSITIVE_INFINITY);
  return Math.ceil(whole - eased - 1e-6);
}

/** Levels as steps of falling worth for the price: the upper hull, so that taking steps in part never undercuts a level. */
function stepsOf(levels: readonly Offer[]): readonly Offer[] {
  const hull: Offer[] = [{ worth: 0, price: 0 }];
  for (const level of [...levels].sort((a, b) => a.price - b.price || b.worth - a.worth)) {
    if (level.worth <= hull.at(-1)!.worth) continue;
    while (hull.length > 1 && !steeper(hull.at(-2)!, hull.at(-1)!, level)) hull.pop();
    hull.push(level);
  }
  return hull.slice(1).map((level, index) => ({ worth: level.worth - hull[index]!.worth, price: level.price - hull[index]!.price }));
}

const steeper = (a: Offer, b: Offer, c: Offer): boolean => (b.worth - a.worth) * (c.price - b.price) > (c.worth - b.worth) * (b.price - a.price);

function distinct(sets: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return [...new Map(sets.map((set) => [set.join(','), set])).values()];
}
