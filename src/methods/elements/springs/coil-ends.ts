import { demandPositive } from '../../numerics/index.ts';

/**
 * How a spring is made and ended. The first four are those of EN 13906-1: cold or hot coiled, ends closed, ground or not.
 * The last three are the plain (open) ends, plain ground ends and squared ends of Shigley, Table 10-1 (from memory).
 */
export type CoilEnds = 'cold-ground' | 'cold-unground' | 'hot-ground' | 'hot-unground' | 'plain' | 'plain-ground' | 'squared';

/** Coils that add to the total count for the length when solid, in wire diameters. */
const SOLID: Record<CoilEnds, number> = { 'cold-ground': 0, 'cold-unground': 1.5, 'hot-ground': -0.3, 'hot-unground': 1.1, plain: 1, 'plain-ground': 0, squared: 1 };

/** Dead coils. Hot-coiled ends count 1.5 (EN 13906-1), the others as in Shigley's table. */
const DEAD: Record<CoilEnds, number> = { 'cold-ground': 2, 'cold-unground': 2, 'hot-ground': 1.5, 'hot-unground': 1.5, plain: 0, 'plain-ground': 1, squared: 2 };

/**
 * Length with all coils touching, m: nt d, (nt + 1.5) d, (nt - 0.3) d or (nt + 1.1) d by EN 13906-1:2013; (nt + 1) d, nt d,
 * (nt + 1) d for the ends of Shigley's table. The two give different answers for closed ends left unground.
 * @param wire d, m, > 0
 * @param totalCoils nt, > 0
 */
export const solidLength = (wire: number, totalCoils: number, ends: CoilEnds): number =>
  (demandPositive('number of coils', totalCoils) + SOLID[ends]) * demandPositive('wire diameter', wire);

/** Coils that do not work, for these ends. */
export const deadCoils = (ends: CoilEnds): number => DEAD[ends];

/** Working coils of `totalCoils`; 0 or below means that the count and the ends do not agree. */
export const activeCoils = (totalCoils: number, ends: CoilEnds): number => totalCoils - DEAD[ends];

/**
 * Least sum of gaps between the active coils at the greatest load, m: Sa = n (0.0015 D²/d + 0.1 d) cold, 0.02 n (D + d) hot;
 * under moving load 1.5 times cold and twice hot (EN 13906-1:2013).
 * @param activeCoilCount n, > 0
 * @param moving true for a spring that works at every stroke
 */
export const leastCoilGaps = (wire: number, meanDiameter: number, activeCoilCount: number, coiled: 'cold' | 'hot', moving: boolean): number => {
  demandPositive('wire diameter', wire);
  demandPositive('mean coil diameter', meanDiameter);
  demandPositive('number of active coils', activeCoilCount);
  return coiled === 'cold'
    ? (moving ? 1.5 : 1) * activeCoilCount * ((0.0015 * meanDiameter ** 2) / wire + 0.1 * wire)
    : (moving ? 2 : 1) * 0.02 * activeCoilCount * (meanDiameter + wire);
};
