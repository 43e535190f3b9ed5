import { demandBetween, demandPositive, findRoot } from '../../numerics/index.ts';

const demandEccentricity = (eccentricity: number): number => {
  if (!(eccentricity > 0 && eccentricity < 1)) throw new RangeError(`An eccentricity is outside its range; above 0 and below 1 is allowed: ${eccentricity}`);
  return eccentricity;
};

/**
 * S (l/d)² of a short bearing, no unit: (1 - ε²)² / (π ε √(π² (1 - ε²) + 16 ε²)) (F. W. Ocvirk, NACA TN 2808, 1952; from memory).
 * Good for l/d up to 1/2, and for 1 at light load.
 * @param eccentricity ε, above 0 and below 1
 */
export const shortBearingNumber = (eccentricity: number): number => {
  const e2 = demandEccentricity(eccentricity) ** 2;
  return (1 - e2) ** 2 / (Math.PI * eccentricity * Math.sqrt(Math.PI ** 2 * (1 - e2) + 16 * e2));
};

/** Angle from the load to the least film, rad: tan φ = π √(1 - ε²) / (4 ε). */
export const shortBearingAttitude = (eccentricity: number): number => Math.atan2(Math.PI * Math.sqrt(1 - demandEccentricity(eccentricity) ** 2), 4 * eccentricity);

/**
 * Eccentricity of a short bearing, between 0 and 1; the formula turned round.
 * @param number S (l/d)², 1e-9 to 1e6
 */
export const shortBearingEccentricity = (number: number): number => {
  demandBetween('S (l/d)²', demandPositive('S (l/d)²', number), 1e-9, 1e6);
  const root = findRoot((e) => Math.log(shortBearingNumber(e) / number), 1e-9, 1 - 1e-7);
  if (root.code !== 'converged') throw new Error(`The eccentricity of a short bearing at ${number} was not found: ${root.code}`);
  return root.x;
};
