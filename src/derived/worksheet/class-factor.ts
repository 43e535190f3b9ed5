import { interpolate } from '../../methods/numerics/index.ts';

/** Nominal ram masses of 25, 50, 100, 250 and 500 lb, kg, with the hours of each against a 50 lb hammer. */
const MASSES = [11.34, 22.68, 45.36, 113.4, 226.8] as const;
const FACTORS = [0.8, 1, 1.5, 2.5, 4] as const;

/**
 * Hours of a class against those of a 50 lb hammer: 1.5 at 100 lb and 2.5 at 250 lb are common practice, no source;
 * the ends are carried on from memory.
 * @param ramMass nominal ram mass, kg, > 0
 */
export const classFactor = (ramMass: number): number => interpolate(MASSES, FACTORS, ramMass);
