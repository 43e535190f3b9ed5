import { FORGING_RANGES, HEAT_COLOURS, type HeatColour } from '../../knowledge/index.ts';

export { HEAT_COLOURS, type HeatColour };

/** The colour of that id, or undefined. */
export const heatColour = (id: string): HeatColour | undefined => HEAT_COLOURS.find((one) => one.id === id);

/** Heat at the first blow where nobody wrote down the colour of the test bar. */
const USUAL_HEAT = 'bright-orange';

/**
 * Heat of the bar of a strike test at its first blow, K, by the colour that somebody saw; bright orange where nobody said.
 * @param looks answers by the look, as they are known today
 */
export function heatOfTestBar(looks: Readonly<Record<string, { readonly answer: string }>> = {}): { readonly value: number; readonly uncertainty: number } {
  const colour = heatColour(looks['running.test-bar-heat']?.answer ?? USUAL_HEAT) ?? heatColour(USUAL_HEAT);
  if (colour === undefined) throw new Error('the table of heat colours has no bright orange');
  return { value: colour.temperature, uncertainty: colour.uncertainty };
}

/**
 * Between which temperatures a plain carbon steel is forged, K (common practice, no source; handbooks differ by 30 K and more).
 * @param carbon share of the mass
 */
export function forgingRange(carbon: number): { readonly hottest: number; readonly finish: number } {
  const { hottest, finish } = FORGING_RANGES.find((one) => carbon <= one.upTo + 1e-9) ?? FORGING_RANGES[3];
  return { hottest, finish };
}
