import type { ChoiceProblem } from './best-choice.ts';
import { affords, closureOf, holds, putIn, takeOut, type ChosenSet } from './chosen-set.ts';
import { leastPrice, mostWorth, type Offer } from './relaxed-knapsack.ts';

/** Cures that take the very same jobs, together. */
interface Bundle {
  readonly jobs: readonly number[];
  readonly points: number;
}

/** The best found so far: points, then price. Written by the search. */
export interface Incumbent {
  points: number;
  /** cost and hours in one whole number, cost first */
  price: number;
  jobs: readonly number[];
  nodes: number;
  readonly mostNodes: number;
}

interface Priced extends Offer {
  readonly bundle: number;
}

/**
 * Cures as much as the budgets allow on top of what is chosen, and among equals at the least cost, then hours: branch and
 * bound over the bundles. The bound lets each bundle have its jobs at a share of their price, split among all bundles that
 * want them, and in part. Improves `incumbent`; leaves `base` as it was.
 */
export function mostCured(problem: ChoiceProblem, base: ChosenSet, incumbent: Incumbent): void {
  const bundles = bundlesOf(problem);
  const shared = problem.jobs.map((_, job) => Math.max(1, bundles.filter((bundle) => bundle.jobs.includes(job)).length));
  const hourScale = 1 + problem.jobs.reduce((sum, job) => sum + job.hours, 0);
  const timed = Number.isFinite(problem.hoursBudget);
  const priceOf = (cost: number, hours: number): number => cost * hourScale + hours;
  const left = bundles.map(() => false);

  const visit = (): void => {
    if (incumbent.nodes >= incumbent.mostNodes) return;
    incumbent.nodes += 1;
    let points = 0;
    const money: Offer[] = [];
    const time: Offer[] = [];
    const both: Priced[] = [];
    for (const [index, bundle] of bundles.entries()) {
      if (holds(base, bundle.jobs)) {
        // The branch in which it was put in holds this set too.
        if (left[index]) return;
        points += bundle.points;
      } else if (!left[index] && affords(problem, base, bundle.jobs)) {
        let cost = 0;
        let hours = 0;
        for (const job of bundle.jobs) {
          if (base.count[job]! > 0) continue;
          cost += problem.jobs[job]!.cost / shared[job]!;
          hours += problem.jobs[job]!.hours / shared[job]!;
        }
        money.push({ worth: bundle.points, price: cost });
        if (timed) time.push({ worth: bundle.points, price: hours });
        both.push({ worth: bundle.points, price: priceOf(cost, hours), bundle: index });
      }
    }
    const price = priceOf(base.cost, base.hours);
    if (points > incumbent.points || (points === incumbent.points && price < incumbent.price)) {
      incumbent.points = points;
      incumbent.price = price;
      incumbent.jobs = problem.jobs.flatMap((_, job) => (base.count[job]! > 0 ? [job] : []));
    }
    const more = Math.min(mostWorth(money, problem.budget - base.cost), timed ? mostWorth(time, problem.hoursBudget - base.hours) : Number.POSITIVE_INFINITY);
    const most = Math.floor(points + more + 1e-6);
    if (most < incumbent.points || both.length === 0) return;
    if (most === incumbent.points && price + leastPrice(both, incumbent.points - points) > incumbent.price - 0.5) return;
    const next = both.reduce((best, one) => (one.worth * best.price > best.worth * one.price ? one : best));
    const { jobs } = bundles[next.bundle]!;
    putIn(problem, base, jobs);
    visit();
    takeOut(problem, base, jobs);
    left[next.bundle] = true;
    visit();
    left[next.bundle] = false;
  };
  visit();
}

function bundlesOf(problem: ChoiceProblem): readonly Bundle[] {
  const byJobs = new Map<string, { jobs: readonly number[]; points: number }>();
  for (const cure of problem.cures) {
    const jobs = closureOf(problem, cure);
    const key = jobs.join(',');
    const held = byJobs.get(key);
    if (held === undefined) byJobs.set(key, { jobs, points: cure.points });
    else held.points += cure.points;
  }
  return [...byJobs.values()];
}
