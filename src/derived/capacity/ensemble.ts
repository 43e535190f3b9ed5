import { coverageIntervals, draw, seeded, type Distribution, type Estimate } from '../../methods/chance/index.ts';

/** A figure with the interval that holds it with 95 % chance; the value has as much chance above it as below. SI. */
export type Ranged =
  | {
      readonly state: 'known';
      readonly value: number;
      readonly low: number;
      readonly high: number;
      /** standard deviation of the draws */
      readonly uncertainty: number;
      /** share of the draws that lay outside what the formulas hold for; they are left out */
      readonly outside: number;
    }
  | { readonly state: 'outside-validity'; readonly because: string };

export interface EnsembleSettings {
  readonly seed: number;
  /** names the sequence, so that one question added does not move the draws of another */
  readonly stream: string;
  /** at least 100 */
  readonly draws: number;
}

/** A positive quantity of a best estimate and its standard uncertainty: its logarithm is normal, so that no draw is negative. */
export const positive = ({ value, uncertainty }: Estimate): Distribution =>
  uncertainty === 0 ? { kind: 'certain', value } : { kind: 'lognormal', median: value, factor: Math.exp(uncertainty / value) };

/** A best estimate with, where it is known, the interval that holds it in 95 of a hundred; the interval need not lie evenly about it. */
export interface SkewEstimate extends Estimate {
  readonly interval?: readonly [low: number, high: number];
}

/** Standard deviations from the middle to either end of a 95 % interval of a normal quantity. */
const ENDS = 1.959964;

/**
 * Bends a draw of `positive(estimate)` so that each half of the draws reaches as far as the stated interval does. The order of the draws stays.
 * @returns the draw itself where no interval above nothing and about the value is stated
 */
export function bent(drawn: number, { value, uncertainty, interval }: SkewEstimate): number {
  if (interval === undefined || uncertainty === 0 || !(interval[0] > 0 && interval[0] <= value && value <= interval[1])) return drawn;
  const away = (Math.log(drawn / value) / (uncertainty / value)) / ENDS;
  return value * (away < 0 ? value / interval[0] : interval[1] / value) ** away;
}

/**
 * A share of a quantity whose own figures are stated elsewhere: value and ends are those, times what the draws of both say. So two figures
 * that stand side by side never contradict one another by the accident of the draws.
 * @param part of each draw, never above `whole` of the same draw
 */
export function partOfStated(part: Ranged, whole: Ranged, { value, interval }: SkewEstimate): Ranged {
  if (part.state !== 'known' || whole.state !== 'known' || interval === undefined) return part;
  return { ...part, value: (part.value / whole.value) * value, low: (part.low / whole.low) * interval[0], high: (part.high / whole.high) * interval[1] };
}

/** A quantity that may lie on either side of its estimate. */
export const either = ({ value, uncertainty }: Estimate): Distribution => (uncertainty === 0 ? { kind: 'certain', value } : { kind: 'normal', mean: value, deviation: uncertainty });

/**
 * Carries many unknowns through one formula with several results, by seeded Monte Carlo (JCGM 101:2008, clause 7).
 * @param unknowns drawn independently, in the order of their names
 * @param formula results of one draw; one that is not finite counts as outside
 * @returns for each result its finite values in rising order, with the number of draws
 */
export function ensemble<Name extends string, Result extends string>(
  unknowns: Readonly<Record<Name, Distribution>>, settings: EnsembleSettings, formula: (drawn: Record<Name, number>) => Record<Result, number>,
): { readonly of: (result: Result, because: string) => Ranged; readonly chance: (result: Result, holds: (value: number) => boolean) => number | undefined } {
  const { draws } = settings;
  if (!Number.isInteger(draws) || draws < 100) throw new Error(`Draws must be a whole number from 100: ${draws}`);
  const generator = seeded(settings.seed, settings.stream);
  const names = (Object.keys(unknowns) as Name[]).sort();
  const kept = new Map<Result, number[]>();
  for (let i = 0; i < draws; i++) {
    const drawn = {} as Record<Name, number>;
    for (const name of names) drawn[name] = draw(unknowns[name], generator);
    const results = formula(drawn);
    for (const name of Object.keys(results) as Result[]) {
      const list = kept.get(name) ?? [];
      if (Number.isFinite(results[name])) list.push(results[name]);
      kept.set(name, list);
    }
  }
  return {
    of: (result, because) => rangedOf(kept.get(result) ?? [], draws, because),
    chance: (result, holds) => {
      const list = kept.get(result) ?? [];
      return list.length === 0 ? undefined : list.filter(holds).length / list.length;
    },
  };
}

/** Where most draws lie outside, there is no figure. @param because said where that is so */
function rangedOf(values: readonly number[], draws: number, because: string): Ranged {
  if (values.length < draws / 2) return { state: 'outside-validity', because };
  const sorted = Float64Array.from(values).sort();
  const count = sorted.length;
  const mean = sorted.reduce((sum, value) => sum + value, 0) / count;
  const { symmetric } = coverageIntervals(sorted, 0.95);
  return {
    state: 'known', value: (sorted[Math.floor((count - 1) / 2)]! + sorted[Math.ceil((count - 1) / 2)]!) / 2, low: symmetric.low, high: symmetric.high,
    uncertainty: Math.sqrt(sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, count - 1)), outside: 1 - count / draws,
  };
}
