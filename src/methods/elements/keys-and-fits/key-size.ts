import { demandPositive } from '../../numerics/index.ts';
import { INCH } from '../source-units.ts';

/** Key for a shaft. */
export type KeySize =
  | {
      readonly state: 'known';
      /** Width, and height where square, m. */
      readonly width: number;
      /** Height of the flat key of the same width, m. */
      readonly flatHeight: number;
      readonly shaftOver: number;
      readonly shaftUpTo: number;
      /** The square sizes for shafts over 7/8 to 3 1/4 in were read in a shop reference; the others are from memory. */
      readonly standing: 'read' | 'from memory';
    }
  | { readonly state: 'outside-validity'; readonly from: number; readonly to: number };

/** Shaft up to, key width, height of the flat key, in inches; the first row begins at 5/16. ANSI B17.1. Flat heights from memory. */
const ROWS = [
  [7 / 16, 3 / 32, 3 / 32, 'from memory'],
  [9 / 16, 1 / 8, 3 / 32, 'from memory'],
  [7 / 8, 3 / 16, 1 / 8, 'from memory'],
  [1.25, 1 / 4, 3 / 16, 'read'],
  [1.375, 5 / 16, 1 / 4, 'read'],
  [1.75, 3 / 8, 1 / 4, 'read'],
  [2.25, 1 / 2, 3 / 8, 'read'],
  [2.75, 5 / 8, 7 / 16, 'read'],
  [3.25, 3 / 4, 1 / 2, 'read'],
  [3.75, 7 / 8, 5 / 8, 'from memory'],
  [4.5, 1, 3 / 4, 'from memory'],
  [5.5, 1.25, 7 / 8, 'from memory'],
  [6.5, 1.5, 1, 'from memory'],
] as const;
const FIRST = 5 / 16;

/**
 * Parallel or taper key for a shaft (ANSI B17.1; Shop Reference, Industrial Press, globalspec.com/reference/77011). A shaft exactly at a
 * step takes the smaller key: the table reads "over ... to and including".
 * @param shaftDiameter m, > 0; over 5/16 to 6 1/2 in
 */
export const keySize = (shaftDiameter: number): KeySize => {
  // A shaft given in millimetres to four places must not fall over a step by its last binary digit.
  const inches = (demandPositive('shaft diameter', shaftDiameter) / INCH) * (1 - 1e-12);
  const at = inches <= FIRST ? -1 : ROWS.findIndex(([upTo]) => inches <= upTo);
  const row = ROWS[at];
  if (row === undefined) return { state: 'outside-validity', from: FIRST * INCH, to: ROWS[ROWS.length - 1]![0] * INCH };
  const [upTo, width, flat, standing] = row;
  return { state: 'known', width: width * INCH, flatHeight: flat * INCH, shaftOver: (ROWS[at - 1]?.[0] ?? FIRST) * INCH, shaftUpTo: upTo * INCH, standing };
};
