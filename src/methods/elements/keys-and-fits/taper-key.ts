import { demandPositive } from '../../numerics/index.ts';

/** Tapers of keys, height over length: 1/8 in a foot (ANSI B17.1), 1 in 100 (metric), 1/4 in a foot; the first two from memory. */
export const KEY_TAPERS = { 'eighth-per-foot': 1 / 96, 'one-in-hundred': 1 / 100, 'quarter-per-foot': 1 / 48 } as const;

/** Angle between the faces, rad: atan(taper). */
export const taperAngle = (taper: number): number => Math.atan(demandPositive('taper', taper));

/** Difference of thickness over a length, m: taper × length. Also how much tighter a key sits when it goes in by that length. */
export const taperRise = (taper: number, length: number): number => demandPositive('taper', taper) * length;

/** How far a key goes in to take up a gap, m. Gap in m, 0 or above. */
export const driveForGap = (taper: number, gap: number): number => gap / demandPositive('taper', taper);

/** Side force over driving force with the same friction on both faces, no unit: 1/(µ + tan(α + ρ)), tan ρ = µ. */
export const wedgeForceRatio = (taper: number, friction: number): number => 1 / (friction + Math.tan(taperAngle(taper) + Math.atan(friction)));

/** True where a key stays in on its own: the taper angle is below twice the angle of friction. */
export const taperHolds = (taper: number, friction: number): boolean => taperAngle(taper) < 2 * Math.atan(friction);
