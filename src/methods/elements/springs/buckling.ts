import { demandPositive } from '../../numerics/index.ts';

/** Length factor ν of EN 13906-1: how the ends are held. */
export const SEATING = { 'fixed-fixed': 0.5, 'fixed-hinged': 0.7, 'hinged-hinged': 1, 'fixed-free': 2 } as const;
export type Seating = keyof typeof SEATING;

/** Whether the spring can bow out sideways, and at what deflection from free. */
export type Buckling = { readonly state: 'cannot-buckle'; readonly criticalLength: number } | { readonly state: 'can-buckle'; readonly deflection: number; readonly criticalLength: number };

const stiffnessRatio = (shearModulus: number, elasticModulus: number): number => {
  const ratio = demandPositive('shear modulus', shearModulus) / demandPositive('elastic modulus', elasticModulus);
  if (ratio >= 1) throw new RangeError(`The shear modulus must be below the elastic modulus; below ${elasticModulus} Pa is allowed: ${shearModulus} Pa`);
  return ratio;
};

/**
 * Longest free length that can never buckle, m: L0 = (π D / ν) √((1 - G/E)/(0.5 + G/E)), where the root in EN 13906-1 turns
 * real. It is the same as (π D / ν) √(2 (E - G)/(2 G + E)) of Shigley, eq. 10-12.
 */
export const criticalFreeLength = (meanDiameter: number, seating: Seating, shearModulus: number, elasticModulus: number): number => {
  const ratio = stiffnessRatio(shearModulus, elasticModulus);
  return ((Math.PI * demandPositive('mean coil diameter', meanDiameter)) / SEATING[seating]) * Math.sqrt((1 - ratio) / (0.5 + ratio));
};

/**
 * Deflection at which a free-standing spring buckles, m: s_K = L0 · 0.5/(1 - G/E) · [1 - √(1 - (1 - G/E)/(0.5 + G/E) · (π D/(ν L0))²)]
 * (EN 13906-1:2013). A spring on a bolt or in a box is held, and only rubs.
 * @param freeLength L0, m, > 0
 * @param meanDiameter D, m, > 0
 * @param shearModulus G, Pa, below `elasticModulus` E, Pa
 */
export const buckling = (freeLength: number, meanDiameter: number, seating: Seating, shearModulus: number, elasticModulus: number): Buckling => {
  const ratio = stiffnessRatio(shearModulus, elasticModulus);
  const criticalLength = criticalFreeLength(meanDiameter, seating, shearModulus, elasticModulus);
  const share = criticalLength / demandPositive('free length', freeLength);
  if (share > 1) return { state: 'cannot-buckle', criticalLength };
  // 1 - √(1 - x²) loses its digits for long springs; x²/(1 + √(1 - x²)) is the same and does not.
  return { state: 'can-buckle', deflection: (freeLength * (0.5 / (1 - ratio)) * share ** 2) / (1 + Math.sqrt(1 - share ** 2)), criticalLength };
};
