import { demandPositive } from '../../numerics/index.ts';

/**
 * Spring index C = D / d.
 * @param meanDiameter mean coil diameter D (outside less one wire), m, > 0
 * @param wire wire diameter d, m, > 0; D must be above it
 */
export const springIndex = (meanDiameter: number, wire: number): number => {
  const index = demandPositive('mean coil diameter', meanDiameter) / demandPositive('wire diameter', wire);
  if (index <= 1) throw new RangeError(`The mean coil diameter must be above the wire; above ${wire} m is allowed: ${meanDiameter} m`);
  return index;
};

/**
 * Rate of a helical spring of round wire, N/m: k = G d⁴ / (8 D³ n) (EN 13906-1:2013; Bhandari, Design of Machine Elements, ch. 10).
 * Good for index 4 to 20 and a pitch angle below about 7.5 degrees.
 * @param shearModulus G, Pa, > 0
 * @param wire d, m, > 0
 * @param meanDiameter D, m, > 0
 * @param activeCoils n, > 0
 */
export const helicalRate = (shearModulus: number, wire: number, meanDiameter: number, activeCoils: number): number =>
  (demandPositive('shear modulus', shearModulus) * demandPositive('wire diameter', wire) ** 4) /
  (8 * demandPositive('mean coil diameter', meanDiameter) ** 3 * demandPositive('number of active coils', activeCoils));

/** Active coils that give a rate; the same formula turned round. Arguments as in `helicalRate`, rate in N/m. */
export const coilsForRate = (shearModulus: number, wire: number, meanDiameter: number, rate: number): number =>
  helicalRate(shearModulus, wire, meanDiameter, 1) / demandPositive('spring rate', rate);

/**
 * By how much the outside diameter grows when the spring goes solid with its ends free to turn, m:
 * ΔDe = 0.1 (m² - 0.8 m d - 0.2 d²) / D (EN 13906-1:2013).
 * @param pitch distance between active coils of the free spring, m, >= wire
 */
export const diameterGrowth = (pitch: number, wire: number, meanDiameter: number): number => {
  if (!(pitch >= wire)) throw new RangeError(`The pitch cannot be below the wire; ${wire} m and above is allowed: ${pitch} m`);
  return (0.1 * (pitch ** 2 - 0.8 * pitch * wire - 0.2 * wire ** 2)) / demandPositive('mean coil diameter', meanDiameter);
};
