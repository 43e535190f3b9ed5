import type { OnsetBands } from './onset-bands.ts';

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
  const places: number[] = [];
  // Elsewhere: the highest rise in windows of the same width at fixed shares of the turn, so that both are maxima.
  for (const time of times) for (const share of [0.3, 0.43, 0.57, 0.7]) places.push(Math.round((time + share * period) * frameRate));
  const weights = bands.rises.map((row) => {
    const at = momentsOf(times.map((t) => highest(row, Math.round(t * frameRate), near)));
    const off = momentsOf(places.filter((p) => p > apart && p < frames - apart).map((p) => highest(row, p, near)));
    return Math.max(0, at.mean - off.mean) / (at.variance + off.variance + 0.5);
  });
  const sum = weights.reduce((a, b) => a + b, 0);
  return sum > 0 ? weights.map((w) => w / sum) : weights.map(() => 1 / weights.length);
}

function highest(row: Float32Array, centre: number, near: number): number {
  let top = 0;
  for (let i = Math.max(0, centre - near); i <= Math.min(row.length - 1, centre + near); i++) top = Math.max(top, row[i]!);
  return top;
}

function momentsOf(values: readonly number[]): { mean: number; variance: number } {
  if (values.length === 0) return { mean: 0, variance: 1 };
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return { mean, variance: values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length };
}
