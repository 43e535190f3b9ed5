import { median } from './median.ts';

/** A straight line that a few wild readings do not move, or why there is none. */
export type RobustLine =
  | { readonly code: 'fitted'; readonly slope: number; readonly intercept: number; readonly pairs: number }
  | { readonly code: 'too-few-places' };

/**
 * Slope as the median of the slopes of all pairs at different places, intercept as the median of what is left
 * (P. K. Sen, J. Amer. Stat. Assoc. 63, 1968, 1379). Holds while fewer than 29 in 100 readings are wild.
 * @param xs places, in any order, finite
 * @param ys readings, as many
 */
export const theilSen = (xs: readonly number[], ys: readonly number[]): RobustLine => {
  if (xs.length !== ys.length) throw new RangeError(`A line needs one reading per place: ${ys.length} readings, ${xs.length} places`);
  const slopes: number[] = [];
  for (let i = 0; i < xs.length; i += 1) {
    for (let j = i + 1; j < xs.length; j += 1) {
      if (xs[i] !== xs[j]) slopes.push((ys[j]! - ys[i]!) / (xs[j]! - xs[i]!));
    }
  }
  if (slopes.length === 0) return { code: 'too-few-places' };
  const slope = median(slopes);
  return { code: 'fitted', slope, intercept: median(ys.map((y, i) => y - slope * xs[i]!)), pairs: slopes.length };
};
