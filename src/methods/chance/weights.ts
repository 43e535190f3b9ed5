import { exponential } from './logarithm.ts';

/** Weights need not sum to 1; negative or not finite ones are a mistake of the caller. Throws unless their sum is positive. */
function sumOf(weights: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i]!;
    if (!(weight >= 0 && weight < Number.POSITIVE_INFINITY)) throw new Error(`A weight must be a number not below 0: ${weight} at ${i}`);
    sum += weight;
  }
  if (!(sum > 0)) throw new Error(`Weights must not all be 0: ${weights.length} of them`);
  return sum;
}

/** How many equally weighted draws the weighted ones are worth: (sum w)² / sum w² (Kish); from 1 to their number. */
export function effectiveSampleSize(weights: ArrayLike<number>): number {
  const sum = sumOf(weights);
  let squares = 0;
  for (let i = 0; i < weights.length; i++) squares += (weights[i]! / sum) ** 2;
  return 1 / squares;
}

/**
 * Weights that sum to 1 from logarithms of weights, without overflow.
 * @param logarithms natural logarithms, -Infinity for impossible
 * @returns undefined where every one is impossible
 */
export function weightsFromLogarithms(logarithms: ArrayLike<number>): Float64Array | undefined {
  const weights = Float64Array.from(logarithms);
  const greatest = weights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (greatest === Number.NEGATIVE_INFINITY) return undefined;
  if (!Number.isFinite(greatest)) throw new Error(`A logarithm of a weight must be finite or -Infinity: ${greatest}`);
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] = exponential(weights[i]! - greatest);
  return weights.map((weight) => weight / sum);
}

/** Weighted mean and standard deviation of the values, in their unit. @param weights as many as values, not negative */
export function weightedMoments(values: ArrayLike<number>, weights: ArrayLike<number>): { readonly mean: number; readonly deviation: number } {
  const sum = sumOf(weights);
  let mean = 0;
  for (let i = 0; i < values.length; i++) mean += (weights[i]! / sum) * values[i]!;
  let square = 0;
  for (let i = 0; i < values.length; i++) square += (weights[i]! / sum) * (values[i]! - mean) ** 2;
  return { mean, deviation: Math.sqrt(square) };
}

/**
 * Weighted quantiles: each value stands for its weight's share of the chance, at the middle of that share, straight between.
 * @param values finite, any order @param weights as many, not negative @param chances 0 to 1
 */
export function weightedQuantiles(values: ArrayLike<number>, weights: ArrayLike<number>, chances: readonly number[]): number[] {
  if (values.length !== weights.length) throw new Error(`Each value needs a weight: ${values.length} and ${weights.length}`);
  const sum = sumOf(weights);
  const order = Array.from({ length: values.length }, (_, i) => i).filter((i) => weights[i]! > 0);
  order.sort((i, j) => values[i]! - values[j]! || i - j);
  let before = 0;
  const middles = order.map((i) => {
    const middle = (before + weights[i]! / 2) / sum;
    before += weights[i]!;
    return middle;
  });
  return chances.map((chance) => {
    if (!(chance >= 0 && chance <= 1)) throw new Error(`A chance must lie from 0 to 1: ${chance}`);
    let low = 0;
    let high = order.length - 1;
    if (chance <= middles[low]!) return values[order[low]!]!;
    if (chance >= middles[high]!) return values[order[high]!]!;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (middles[middle]! <= chance) low = middle;
      else high = middle;
    }
    const share = (chance - middles[low]!) / (middles[high]! - middles[low]!);
    return values[order[low]!]! * (1 - share) + values[order[high]!]! * share;
  });
}

/**
 * Indices of an equally weighted population that stands for the weighted one (systematic resampling: one draw, evenly spaced
 * pointers, so each member comes its expected number of times, give or take less than one).
 * @param pointer 0 to below 1, from the generator @param count how many to take, positive
 */
export function resampled(weights: ArrayLike<number>, count: number, pointer: number): number[] {
  const sum = sumOf(weights);
  const chosen: number[] = [];
  let index = 0;
  let reached = weights[0]! / sum;
  for (let i = 0; i < count; i++) {
    const at = (i + pointer) / count;
    while (reached <= at && index < weights.length - 1) reached += weights[++index]! / sum;
    // Rounding may leave the last pointer beyond the last share: step back to a member that has weight.
    while (weights[index] === 0 && index > 0) index--;
    chosen.push(index);
  }
  return chosen;
}
