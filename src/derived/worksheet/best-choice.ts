/** What can be cured: all of `jobs` must be chosen, and one of each list of `oneOf`. Numbers are whole. */
export interface Cure {
  /** indices of jobs; at least one here or in `oneOf` */
  readonly jobs: readonly number[];
  /** lists of jobs of which any one will do: shims taken out or a bearing poured anew */
  readonly oneOf?: readonly (readonly number[])[];
  /** what it is worth to have it cured, once verdict and limits are equal */
  readonly points: number;
  /** limits that it imposes until it is cured: kind as an index, burden above nought */
  readonly limits: readonly { readonly kind: number; readonly burden: number }[];
  /** the hammer stands down, or is limited, until it is cured */
  readonly bars: 'stand-down' | 'limited' | 'nothing';
}

/** A choice of jobs under a budget. All money and hours in whole small units, not negative. */
export interface ChoiceProblem {
  readonly jobs: readonly { readonly cost: number; readonly hours: number; /** indices that must be chosen with it */ readonly after: readonly number[]; /** and one of each of these lists */ readonly afterOneOf?: readonly (readonly number[])[] }[];
  readonly cures: readonly Cure[];
  /** paid once as soon as anything is chosen */
  readonly fixed: { readonly cost: number; readonly hours: number };
  readonly budget: number;
  readonly hoursBudget: number;
  /** burden of each kind of limit that no job lifts */
  readonly floor: readonly number[];
  /** what no job mends */
  readonly stands: { readonly down: boolean; readonly unknown: boolean; readonly limited: boolean };
}

/** Compared in this order: verdict (greater is better), burden (less), points (more), cost (less), hours (less). */
export interface ChoiceValue {
  readonly verdict: 0 | 1 | 2 | 3;
  readonly burden: number;
  readonly points: number;
  readonly cost: number;
  readonly hours: number;
}

export interface Choice {
  readonly jobs: readonly number[];
  readonly value: ChoiceValue;
  /** false where the search was stopped before every other choice was ruled out */
  readonly proven: boolean;
  /** nodes of the search */
  readonly nodes: number;
}

/** Negative where `a` is better. */
export const compareChoices = (a: ChoiceValue, b: ChoiceValue): number =>
  b.verdict - a.verdict || a.burden - b.burden || b.points - a.points || a.cost - b.cost || a.hours - b.hours;

/** True where a set of jobs has everything that a cure needs. */
export const isCuredBy = (cure: Cure, chosen: readonly boolean[]): boolean =>
  cure.jobs.every((job) => chosen[job]) && (cure.oneOf ?? []).every((some) => some.some((job) => chosen[job]));

/** True where every chosen job has with it what it must not come before. */
export const isComplete = (problem: Pick<ChoiceProblem, 'jobs'>, chosen: readonly boolean[]): boolean =>
  problem.jobs.every((job, index) => !chosen[index] || (job.after.every((before) => chosen[before]) && (job.afterOneOf ?? []).every((some) => some.some((before) => chosen[before]))));

/** What a set of jobs is worth. @param chosen true for each job chosen */
export function choiceValue(problem: ChoiceProblem, chosen: readonly boolean[]): ChoiceValue {
  const burdens = [...problem.floor];
  let { down, limited } = problem.stands;
  let points = 0;
  for (const cure of problem.cures) {
    if (isCuredBy(cure, chosen)) {
      points += cure.points;
      continue;
    }
    for (const { kind, burden } of cure.limits) burdens[kind] = Math.max(burdens[kind] ?? 0, burden);
    if (cure.bars === 'stand-down') down = true;
    if (cure.bars === 'limited') limited = true;
  }
  const taken = problem.jobs.filter((_, index) => chosen[index]);
  const any = taken.length > 0;
  return {
    verdict: down ? 0 : problem.stands.unknown ? 1 : limited ? 2 : 3,
    burden: burdens.reduce((sum, burden) => sum + burden, 0), points,
    cost: taken.reduce((sum, job) => sum + job.cost, any ? problem.fixed.cost : 0),
    hours: taken.reduce((sum, job) => sum + job.hours, any ? problem.fixed.hours : 0),
  };
}
