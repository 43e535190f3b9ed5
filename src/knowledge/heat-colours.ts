/** What the eye says of a heat, in a shop that is not bright. */
export interface HeatColour {
  readonly id: string;
  readonly words: string;
  /** K, and how far two smiths may be apart on it as a standard uncertainty */
  readonly temperature: number;
  readonly uncertainty: number;
  readonly source: string;
}

const row = (id: string, words: string, temperature: number, uncertainty = 30): HeatColour => ({ id, words, temperature, uncertainty, source: 'common-practice' });

/** Heat colours. Printed lists differ by some 50 K, and daylight by more. */
export const HEAT_COLOURS: readonly HeatColour[] = [
  row('dull-red', 'dull red', 973), row('cherry-red', 'cherry red', 1053), row('bright-red', 'bright red', 1143), row('orange', 'orange', 1243),
  row('bright-orange', 'bright orange', 1343), row('yellow', 'yellow', 1423), row('bright-yellow', 'bright yellow', 1513, 35),
];

/** Up to a share of carbon: hottest that does no harm, and where forging stops, K. Handbooks differ by 30 K and more. */
export interface ForgingRange {
  readonly upTo: number;
  readonly hottest: number;
  readonly finish: number;
  readonly source: string;
}

/** Plain carbon steels by carbon, share of the mass; the last holds for all above. */
export const FORGING_RANGES: readonly [ForgingRange, ForgingRange, ForgingRange, ForgingRange] = [
  { upTo: 0.003, hottest: 1553, finish: 1123, source: 'common-practice' },
  { upTo: 0.006, hottest: 1503, finish: 1123, source: 'common-practice' },
  { upTo: 0.009, hottest: 1423, finish: 1093, source: 'common-practice' },
  { upTo: Number.POSITIVE_INFINITY, hottest: 1373, finish: 1093, source: 'common-practice' },
];
