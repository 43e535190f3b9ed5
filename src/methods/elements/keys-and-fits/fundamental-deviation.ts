import { demandPositive } from '../../numerics/index.ts';
import { MICROMETRE } from '../source-units.ts';
import { LEAST_SIZE, SIZE_STEPS, sizeStep } from './tolerance-grade.ts';

export type ShaftLetter = 'd' | 'e' | 'f' | 'g' | 'h' | 'k' | 'm' | 'n' | 'p' | 'r' | 's';

/** Upper deviations below the line of nought, in micrometres by step (ISO 286-1, from memory). */
const UPPER: Readonly<Record<'d' | 'e' | 'f' | 'g' | 'h', readonly number[]>> = {
  d: [-40, -50, -65, -80, -100, -120, -145],
  e: [-25, -32, -40, -50, -60, -72, -85],
  f: [-13, -16, -20, -25, -30, -36, -43],
  g: [-5, -6, -7, -9, -10, -12, -14],
  h: [0, 0, 0, 0, 0, 0, 0],
};

/** Lower deviations on or above the line of nought (ISO 286-1, from memory); k for grades 5 to 7, above these it is 0. */
const LOWER: Readonly<Record<'k' | 'm' | 'n' | 'p', readonly number[]>> = {
  k: [1, 1, 2, 2, 2, 3, 3],
  m: [6, 7, 8, 9, 11, 13, 15],
  n: [10, 12, 15, 17, 20, 23, 27],
  p: [15, 18, 22, 26, 32, 37, 43],
};

/** Press fits change in finer steps: up to, m; r and s, micrometres (ISO 286-1, from memory; s at 50 mm as in Bhandari ex. 3.3). */
const PRESS: readonly (readonly [upTo: number, r: number, s: number])[] = [
  [0.01, 19, 23], [0.018, 23, 28], [0.03, 28, 35], [0.05, 34, 43], [0.065, 41, 53], [0.08, 43, 59], [0.1, 51, 71], [0.12, 54, 79],
  [0.14, 63, 92], [0.16, 65, 100], [0.18, 68, 108],
];

/** The deviation nearest the line of nought: upper for d to h, lower for k to s. */
export type FundamentalDeviation =
  | { readonly state: 'known'; readonly side: 'upper' | 'lower'; readonly deviation: number }
  | { readonly state: 'outside-validity'; readonly from: number; readonly to: number };

/** Fundamental deviation of a shaft, m. Nominal size in m, over 6 to 180 mm; grade 5 to 11 (only k asks for it). */
export const shaftDeviation = (size: number, letter: ShaftLetter, grade: number): FundamentalDeviation => {
  const step = sizeStep(size);
  if (step < 0) return { state: 'outside-validity', from: LEAST_SIZE, to: SIZE_STEPS[SIZE_STEPS.length - 1]! };
  if (letter === 'd' || letter === 'e' || letter === 'f' || letter === 'g' || letter === 'h') return { state: 'known', side: 'upper', deviation: UPPER[letter][step]! * MICROMETRE };
  if (letter === 'r' || letter === 's') {
    const row = PRESS.find(([upTo]) => demandPositive('nominal size', size) * (1 - 1e-12) <= upTo)!;
    return { state: 'known', side: 'lower', deviation: row[letter === 'r' ? 1 : 2] * MICROMETRE };
  }
  return { state: 'known', side: 'lower', deviation: letter === 'k' && grade > 7 ? 0 : LOWER[letter][step]! * MICROMETRE };
};
