import type { Distribution } from './distribution.ts';
import { drawTogether, triangleOf } from './draw.ts';
import { seeded } from './generator.ts';

/** An interval in the unit of the result. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** What a formula gives for many draws of its inputs. */
export interface Simulated {
  /** mean and standard deviation of the results (JCGM 101:2008, 7.6) */
  readonly value: number;
  readonly uncertainty: number;
  /** as much chance below it as above (7.7.2) */
  readonly symmetric: Interval;
  /** the shortest that covers as much (5.3.4) */
  readonly shortest: Interval;
  /** results in rising order; only those that were finite */
  readonly sorted: Float64Array;
  /** share of the draws for which the formula gave no finite figure; they are left out of everything above */
  readonly outside: number;
}

export interface SimulationSettings {
  readonly seed: number;
  /** draws, at least 100; 200 000 unless said. A 95 % interval to two digits wants about 10^6 (JCGM 101:2008, 7.2.2) */
  readonly draws?: number;
  /** share of the results that the intervals cover; 0.95 unless said */
  readonly coverage?: number;
  /** between the normal scores of the inputs, see `drawTogether` */
  readonly correlations?: readonly (readonly number[])[];
}

/**
 * Carries whole distributions through a formula by a seeded Monte Carlo of fixed size (JCGM 101:2008, clause 7).
 * @param formula result for one draw of the inputs; may be not finite where a draw lies outside its validity
 * @returns undefined where no draw at all gave a finite figure
 */
export function monteCarlo(formula: (inputs: number[]) => number, inputs: readonly Distribution[], settings: SimulationSettings): Simulated | undefined {
  const { seed, draws = 200_000, coverage = 0.95, correlations } = settings;
  if (!Number.isInteger(draws) || draws < 100) throw new Error(`Draws must be a whole number from 100: ${draws}`);
  if (!(coverage > 0 && coverage < 1)) throw new Error(`A coverage must lie between 0 and 1: ${coverage}`);
  const triangle = correlations === undefined ? undefined : triangleOf(correlations);
  if (correlations !== undefined && triangle === undefined) throw new Error(`No quantities can have these correlations: ${JSON.stringify(correlations)}`);
  const generator = seeded(seed, 'monte-carlo');
  const results = new Float64Array(draws);
  let count = 0;
  for (let i = 0; i < draws; i++) {
    const result = formula(drawTogether(inputs, generator, triangle));
    if (Number.isFinite(result)) results[count++] = result;
  }
  if (count === 0) return undefined;
  const sorted = results.subarray(0, count).sort();
  // Summed from the first result, so that a small scatter on a large figure keeps its digits.
  const shift = sorted[0]!;
  let sum = 0;
  for (const result of sorted) sum += result - shift;
  const mean = sum / count;
  let square = 0;
  for (const result of sorted) square += (result - shift - mean) ** 2;
  const { symmetric, shortest } = coverageIntervals(sorted, coverage);
  return { value: shift + mean, uncertainty: count > 1 ? Math.sqrt(square / (count - 1)) : 0, symmetric, shortest, sorted, outside: 1 - count / draws };
}

/**
 * Both coverage intervals of results in rising order (JCGM 101:2008, 7.7).
 * @param sorted at least one, rising @param coverage between 0 and 1
 */
export function coverageIntervals(sorted: ArrayLike<number>, coverage: number): { readonly symmetric: Interval; readonly shortest: Interval } {
  const count = sorted.length;
  const covered = Math.min(count - 1, Math.floor(coverage * count + 0.5));
  const at = (start: number): Interval => ({ low: sorted[start]!, high: sorted[start + covered]! });
  let best = 0;
  for (let start = 1; start + covered < count; start++) {
    if (sorted[start + covered]! - sorted[start]! < sorted[best + covered]! - sorted[best]!) best = start;
  }
  return { symmetric: at(Math.floor((count - covered) / 2)), shortest: at(best) };
}
