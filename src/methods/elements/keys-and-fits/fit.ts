import { shaftDeviation, type ShaftLetter } from './fundamental-deviation.ts';
import { LEAST_SIZE, SIZE_STEPS, toleranceWidth, type ToleranceGrade } from './tolerance-grade.ts';

/** Clearance holes mirror the shafts of the same letter. Holes for interference (K to S) are not offered: the shop bores H. */
export type HoleLetter = 'D' | 'E' | 'F' | 'G' | 'H';
export type HoleCode = `${HoleLetter}${ToleranceGrade}`;
export type ShaftCode = `${ShaftLetter}${ToleranceGrade}`;

/** Deviations from the nominal size, m, or why there are none. */
export type Deviations = { readonly state: 'known'; readonly lower: number; readonly upper: number } | { readonly state: 'outside-validity'; readonly from: number; readonly to: number };

const OUTSIDE = { state: 'outside-validity', from: LEAST_SIZE, to: SIZE_STEPS[SIZE_STEPS.length - 1]! } as const;
const split = <Letter extends string>(code: string): readonly [Letter, ToleranceGrade] => {
  const match = /^([DEFGHdefghkmnprs])(5|6|7|8|9|10|11)$/.exec(code);
  if (match === null) throw new RangeError(`A tolerance is a letter and a grade; d to h, k, m, n, p, r, s or D to H with 5 to 11 is allowed: ${code}`);
  return [match[1] as Letter, Number(match[2]) as ToleranceGrade];
};

/** Lower and upper deviation of a shaft, m (ISO 286). Nominal size in m, over 6 to 180 mm; `code` as `s6`. */
export const shaftLimits = (size: number, code: ShaftCode): Deviations => {
  const [letter, grade] = split<ShaftLetter>(code);
  const width = toleranceWidth(size, grade);
  const deviation = shaftDeviation(size, letter, grade);
  if (width.state !== 'known' || deviation.state !== 'known') return OUTSIDE;
  const lower = deviation.side === 'lower' ? deviation.deviation : deviation.deviation - width.width;
  return { state: 'known', lower, upper: lower + width.width };
};

/** Lower and upper deviation of a hole, m (ISO 286). Nominal size in m, over 6 to 180 mm; `code` as `H7`. */
export const holeLimits = (size: number, code: HoleCode): Deviations => {
  const [letter, grade] = split<HoleLetter>(code);
  const width = toleranceWidth(size, grade);
  const deviation = shaftDeviation(size, letter.toLowerCase() as 'd' | 'e' | 'f' | 'g' | 'h', grade);
  if (width.state !== 'known' || deviation.state !== 'known') return OUTSIDE;
  const lower = 0 - deviation.deviation;
  return { state: 'known', lower, upper: lower + width.width };
};

/** How a pin or bush sits. */
export type FitOutcome =
  | {
      readonly state: 'known';
      readonly hole: { readonly lower: number; readonly upper: number };
      readonly shaft: { readonly lower: number; readonly upper: number };
      /** Hole less shaft, m; below 0 it is interference. */
      readonly leastClearance: number;
      readonly mostClearance: number;
      readonly kind: 'clearance' | 'transition' | 'interference';
    }
  | { readonly state: 'outside-validity'; readonly from: number; readonly to: number };

/** Clearance between a hole and a shaft of the same nominal size (ISO 286). Size in m, over 6 to 180 mm. */
export const fitOf = (size: number, holeCode: HoleCode, shaftCode: ShaftCode): FitOutcome => {
  const hole = holeLimits(size, holeCode);
  const shaft = shaftLimits(size, shaftCode);
  if (hole.state !== 'known' || shaft.state !== 'known') return OUTSIDE;
  const leastClearance = hole.lower - shaft.upper;
  const mostClearance = hole.upper - shaft.lower;
  return {
    state: 'known', hole: { lower: hole.lower, upper: hole.upper }, shaft: { lower: shaft.lower, upper: shaft.upper }, leastClearance, mostClearance,
    kind: leastClearance >= 0 ? 'clearance' : mostClearance <= 0 ? 'interference' : 'transition',
  };
};
