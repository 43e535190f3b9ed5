import type { FEATURES } from './second-evidence.ts';

/**
 * Weights of the logistic model by which a place of the folded turn is judged, in the order of its features. Fitted by
 * bench/sound/fit-second.ts on made-up recordings with known truth; no recording of a real hammer was to be had.
 */
const WEIGHTS: Record<(typeof FEATURES)[number], number> = { usual: 1.418, drawn: 0.647, halves: 0.449, kept: 0.707, aboveRest: 0.992, likeBlow: 7.24, early: -0.294 };
const CONSTANT = -14.011;

/** Natural logarithm of the odds that a second sound lies at a place. @param features as `featuresAt` gives them */
export function oddsOfSecond(features: readonly number[]): number {
  return Object.values(WEIGHTS).reduce((sum, weight, i) => sum + weight * features[i]!, CONSTANT);
}

export const chanceOf = (odds: number): number => 1 / (1 + Math.exp(-odds));
