import { FORGING_RANGES, HEAT_COLOURS, type HeatColour } from '../../knowledge/index.ts';

export { HEAT_COLOURS, type HeatColour };

/** The colour of that id, or undefined. */
export const heatColour = (id: string): HeatColour | undefined => HEAT_COLOURS.find((one) => one.id === id);

/**
 * Between which temperatures a plain carbon steel is forged, K (common practice, no source; handbooks differ by 30 K and more).
 * @param carbon share of the mass
 */
export function forgingRange(carbon: number): { readonly hottest: number; readonly finish: number } {
  const { hottest, finish } = FORGING_RANGES.find((one) => carbon <= one.upTo + 1e-9) ?? FORGING_RANGES[3];
  return { hottest, finish };
}
