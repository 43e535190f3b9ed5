import { normalCdf } from '../../methods/chance/index.ts';
import { readQuantity, type Dimension, type Quantity } from '../../methods/quantity/index.ts';
import type { Grade, LimitRule, MeasuredRule } from '../../knowledge/index.ts';

/** A step with its threshold read into SI. */
export interface ReadStep {
  readonly grade: Exclude<Grade, 'sound'>;
  readonly from: number;
  readonly text: string;
  readonly source: string;
  readonly because: string;
  readonly limits: readonly LimitRule[];
  /** Jobs that this grade asks for; absent where the criterion's own list holds. */
  readonly cures?: readonly string[];
}

export interface Graded {
  readonly grade: Grade;
  readonly chances: { readonly watch: number; readonly limited: number; readonly standDown: number };
  /** Chance of this very grade. */
  readonly sure: number;
  readonly nextWorse?: { readonly grade: Grade; readonly chance: number };
}

const ORDER: readonly Grade[] = ['sound', 'watch', 'limited', 'stand-down'];

/** Steps with thresholds in SI. Throws where knowledge itself cannot be read: that is a mistake of ours, not of the survey. */
export function readSteps(rule: MeasuredRule, dimension: Dimension): readonly ReadStep[] {
  return rule.steps.map((step) => {
    const reading = readQuantity(step.from, { dimension, field: rule.value });
    if (!reading.ok) throw new Error(`knowledge: a step of ${rule.value} cannot be read: ${reading.problem.message}: ${step.from}`);
    return { grade: step.grade, from: reading.quantity.value, text: step.from, source: step.source, because: step.because, limits: step.limits ?? [], ...(step.cures === undefined ? {} : { cures: step.cures }) };
  });
}

/**
 * Grades a quantity against its steps. A step holds at its threshold and beyond; a hair of rounding (1e-9) is forgiven.
 * The chances take the doubt as normal (JCGM 106:2012, clause 7: probability of conformity).
 */
export function gradeMeasured(quantity: Quantity, steps: readonly ReadStep[], worse: 'more' | 'less'): Graded {
  const sign = worse === 'more' ? 1 : -1;
  const hair = (threshold: number): number => 1e-9 * Math.max(Math.abs(threshold), Math.abs(quantity.value));
  const beyond = (step: ReadStep): boolean => sign * (quantity.value - step.from) >= -hair(step.from);
  const chanceBeyond = (step: ReadStep): number => {
    if (quantity.uncertainty <= 0) return beyond(step) ? 1 : 0;
    return normalCdf((sign * (quantity.value - step.from)) / quantity.uncertainty);
  };
  const chanceOf = (grade: Grade): number => {
    const level = ORDER.indexOf(grade);
    return Math.max(0, ...steps.filter((step) => ORDER.indexOf(step.grade) >= level).map(chanceBeyond));
  };
  const reached = steps.filter(beyond).map((step) => step.grade);
  const grade = reached.reduce<Grade>((worst, one) => (ORDER.indexOf(one) > ORDER.indexOf(worst) ? one : worst), 'sound');
  const worseSteps = steps.filter((step) => ORDER.indexOf(step.grade) > ORDER.indexOf(grade)).sort((a, b) => ORDER.indexOf(a.grade) - ORDER.indexOf(b.grade));
  const [next] = worseSteps;
  const atLeastThis = grade === 'sound' ? 1 : chanceOf(grade);
  const beyondThis = next === undefined ? 0 : chanceBeyond(next);
  return {
    grade,
    chances: { watch: chanceOf('watch'), limited: chanceOf('limited'), standDown: chanceOf('stand-down') },
    sure: Math.max(0, atLeastThis - beyondThis),
    ...(next === undefined ? {} : { nextWorse: { grade: next.grade, chance: beyondThis } }),
  };
}
