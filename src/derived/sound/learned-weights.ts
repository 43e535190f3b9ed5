import type { OnsetBands } from './onset-bands.ts';
import { highestOf } from './rises-at.ts';

/** Shares of the turn that hold no blow. */
const ELSEWHERE = [0.3, 0.43, 0.57, 0.7] as const;

/**
 * How much each band tells blows from what lies between them: difference of its mean rise at the blows and elsewhere
 * over the sum of both variances (Fisher's linear discriminant with independent bands), made to sum to one.
 * @param times s, blows found so far
 * @param period s
 */
export function learnedWeights(bands: OnsetBands, times: readonly number[], period: number): number[] {
  const { frameRate, frames } = bands;
  const near = Math.round(0.004 * frameRate);
  const apart = Math.round(0.02 * frameRate);
  const [here, places]: [number[], number[]] = [[], []];
  // Elsewhere: the highest rise in windows of the same width at fixed shares of the turn, so that both are maxima.
  for (const time of times) {
    here.push(Math.round(time * frameRate));
    for (const share of ELSEWHERE) {
      const place = Math.round((time + share * period) * frameRate);
      if (place > apart && place < frames - apart) places.push(place);
    }
  }
  const weights = bands.rises.map((row) => {
    const [at, off] = [momentsAt(row, here, near), momentsAt(row, places, near)];
    return Math.max(0, at.mean - off.mean) / (at.variance + off.variance + 0.5);
  });
  const sum = weights.reduce((a, b) => a + b, 0);
  return sum > 0 ? weights.map((w) => w / sum) : weights.map(() => 1 / weights.length);
}

/** Mean and variance of the highest rises around some places. */
function momentsAt(row: Float32Array, places: readonly number[], near: number): { mean: number; variance: number } {
  const count = places.length;
  if (count === 0) return { mean: 0, variance: 1 };
  const tops = new Float64Array(count);
  let [mean, variance] = [0, 0];
  for (let i = 0; i < count; i++) {
    tops[i] = highestOf(row, places[i]! - near, places[i]! + near);
    mean += tops[i]! / count;
  }
  for (let i = 0; i < count; i++) variance += (tops[i]! - mean) ** 2 / count;
  return { mean, variance };
}
