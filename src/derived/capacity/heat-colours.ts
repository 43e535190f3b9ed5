/** What the eye says of a heat, in a shop that is not bright. */
export interface HeatColour {
  readonly id: string;
  readonly words: string;
  /** K, and how far two smiths may be apart on it as a standard uncertainty */
  readonly temperature: number;
  readonly uncertainty: number;
}

/** Heat colours. Common practice, no source: printed lists differ by some 50 K, and daylight by more. */
export const HEAT_COLOURS: readonly HeatColour[] = [
  { id: 'dull-red', words: 'dull red', temperature: 973, uncertainty: 30 },
  { id: 'cherry-red', words: 'cherry red', temperature: 1053, uncertainty: 30 },
  { id: 'bright-red', words: 'bright red', temperature: 1143, uncertainty: 30 },
  { id: 'orange', words: 'orange', temperature: 1243, uncertainty: 30 },
  { id: 'bright-orange', words: 'bright orange', temperature: 1343, uncertainty: 30 },
  { id: 'yellow', words: 'yellow', temperature: 1423, uncertainty: 30 },
  { id: 'bright-yellow', words: 'bright yellow', temperature: 1513, uncertainty: 35 },
];

/** The colour of that id, or undefined. */
export const heatColour = (id: string): HeatColour | undefined => HEAT_COLOURS.find((one) => one.id === id);

/** Steps by carbon, share of the mass: hottest that does no harm, and where forging stops, K. */
const FORGING_RANGES = [
  { upTo: 0.003, hottest: 1553, finish: 1123 },
  { upTo: 0.006, hottest: 1503, finish: 1123 },
  { upTo: 0.009, hottest: 1423, finish: 1093 },
  { upTo: Number.POSITIVE_INFINITY, hottest: 1373, finish: 1093 },
] as const;

/**
 * Between which temperatures a plain carbon steel is forged, K (common practice, no source; handbooks differ by 30 K and more).
 * @param carbon share of the mass
 */
export function forgingRange(carbon: number): { readonly hottest: number; readonly finish: number } {
  const row = FORGING_RANGES.find((one) => carbon <= one.upTo + 1e-9) ?? FORGING_RANGES[3];
  return { hottest: row.hottest, finish: row.finish };
}
