import { demandBetween, demandPositive } from '../../numerics/index.ts';
import { MICROMETRE } from '../source-units.ts';

export type ToleranceGrade = 5 | 6 | 7 | 8 | 9 | 10 | 11;

/** Upper bounds of the steps of nominal size, m; the first begins at 6 mm. */
export const SIZE_STEPS: readonly number[] = [0.01, 0.018, 0.03, 0.05, 0.08, 0.12, 0.18];
export const LEAST_SIZE = 0.006;

/** IT5 to IT11 in micrometres by step (ISO 286-1). Steps 18 to 120 read for IT6 to IT9 in several tables that agree; the rest from memory. */
const TABLE: readonly (readonly number[])[] = [
  [6, 9, 15, 22, 36, 58, 90],
  [8, 11, 18, 27, 43, 70, 110],
  [9, 13, 21, 33, 52, 84, 130],
  [11, 16, 25, 39, 62, 100, 160],
  [13, 19, 30, 46, 74, 120, 190],
  [15, 22, 35, 54, 87, 140, 220],
  [18, 25, 40, 63, 100, 160, 250],
];

/** Multiples of the unit i from IT5 up (ISO 286-1, from memory). */
const MULTIPLES: readonly number[] = [7, 10, 16, 25, 40, 64, 100];

/** Index of the step that holds a size: over the bound before, up to and with its own; -1 outside 6 to 180 mm. */
export const sizeStep = (size: number): number => {
  const held = demandPositive('nominal size', size) * (1 - 1e-12);
  return size <= LEAST_SIZE * (1 + 1e-12) ? -1 : SIZE_STEPS.findIndex((upTo) => held <= upTo);
};

export type ToleranceWidth = { readonly state: 'known'; readonly width: number } | { readonly state: 'outside-validity'; readonly from: number; readonly to: number };

/** Width of a tolerance by the table of ISO 286-1, m. Nominal size in m, over 6 to 180 mm. */
export const toleranceWidth = (size: number, grade: ToleranceGrade): ToleranceWidth => {
  const row = TABLE[sizeStep(size)];
  if (row === undefined) return { state: 'outside-validity', from: LEAST_SIZE, to: SIZE_STEPS[SIZE_STEPS.length - 1]! };
  return { state: 'known', width: row[demandBetween('tolerance grade', grade, 5, 11) - 5]! * MICROMETRE };
};

/**
 * Unit of tolerance i, m: 0.45 D^(1/3) + 0.001 D in micrometres with D in millimetres, the geometric mean of the step (ISO 286-1).
 * @param geometricMean D, m, > 0
 */
export const toleranceUnit = (geometricMean: number): number => {
  const millimetres = demandPositive('geometric mean', geometricMean) / 1e-3;
  return (0.45 * Math.cbrt(millimetres) + 0.001 * millimetres) * MICROMETRE;
};

/** Width by the formula that the table was rounded from, m: 7, 10, 16, 25, 40, 64, 100 i for IT5 to IT11. */
export const toleranceWidthByFormula = (geometricMean: number, grade: ToleranceGrade): number => MULTIPLES[demandBetween('tolerance grade', grade, 5, 11) - 5]! * toleranceUnit(geometricMean);
