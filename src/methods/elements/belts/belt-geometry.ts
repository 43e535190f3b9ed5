import { demandPositive } from '../../numerics/index.ts';

const leaning = (small: number, large: number, centres: number): number => {
  demandPositive('pulley diameter', small);
  demandPositive('pulley diameter', large);
  demandPositive('centre distance', centres);
  if (centres <= (small + large) / 2) throw new RangeError(`The pulleys would touch; a centre distance above ${(small + large) / 2} m is allowed: ${centres} m`);
  return Math.asin((large - small) / (2 * centres));
};

/**
 * Length of an open belt along its inside, m, exact: 2 C cos α + D (π/2 + α) + d (π/2 - α), sin α = (D - d)/(2 C).
 * @param small d, m; @param large D, m (either may be the larger)
 * @param centres C, m, above (d + D)/2
 */
export const openBeltLength = (small: number, large: number, centres: number): number => {
  const lean = leaning(small, large, centres);
  return 2 * centres * Math.cos(lean) + large * (Math.PI / 2 + lean) + small * (Math.PI / 2 - lean);
};

/** The handbook's short formula for the same, m: 2 C + π (D + d)/2 + (D - d)²/(4 C). Within (D - d)⁴/(100 C³) of the exact length. */
export const openBeltLengthShort = (small: number, large: number, centres: number): number => {
  leaning(small, large, centres);
  return 2 * centres + (Math.PI * (large + small)) / 2 + (large - small) ** 2 / (4 * centres);
};

/** Angle of wrap on the first pulley of an open belt, rad: π - 2 asin((D - d)/(2 C)). Below π on the smaller one. */
export const openBeltWrap = (small: number, large: number, centres: number): number => Math.PI - 2 * leaning(small, large, centres);

/** Centre distance for a belt length by the short formula, m; undefined where the belt is too short to go round. */
export const openBeltCentres = (small: number, large: number, length: number): number | undefined => {
  const rest = demandPositive('belt length', length) - (Math.PI * (demandPositive('pulley diameter', small) + demandPositive('pulley diameter', large))) / 2;
  const root = rest ** 2 - 2 * (large - small) ** 2;
  if (rest <= 0 || root < 0) return undefined;
  const centres = (rest + Math.sqrt(root)) / 4;
  return centres > (small + large) / 2 ? centres : undefined;
};

/** Belt speed, m/s: half the pulley diameter, m, times its angular speed, rad/s. Thickness of the belt left out. */
export const beltSpeed = (pulleyDiameter: number, angularSpeed: number): number => (demandPositive('pulley diameter', pulleyDiameter) / 2) * angularSpeed;
