import { demandPositive } from '../../numerics/index.ts';

const demandIndex = (index: number): number => {
  if (!(index > 1 && Number.isFinite(index))) throw new RangeError(`A spring index is outside its range; above 1 is allowed, 4 to 20 is usual: ${index}`);
  return index;
};

/**
 * Wahl's factor for curvature and direct shear: (4C - 1)/(4C - 4) + 0.615/C (A. M. Wahl, Mechanical Springs; Bhandari ch. 10).
 * @param index C = D/d, > 1
 */
export const wahlFactor = (index: number): number => (4 * demandIndex(index) - 1) / (4 * index - 4) + 0.615 / index;

/**
 * Bergsträsser's factor (4C + 2)/(4C - 3), the same thing as k = (w + 0.5)/(w - 0.75) of EN 13906-1:2013. Within about 1 % of
 * Wahl's from index 4 up.
 * @param index C = D/d, > 1
 */
export const bergstrasserFactor = (index: number): number => (4 * demandIndex(index) + 2) / (4 * index - 3);

/**
 * Greatest shear stress in the wire, Pa: τ = K 8 F D / (π d³).
 * @param force F, N, 0 or above
 * @param meanDiameter D, m, > 0
 * @param wire d, m, > 0
 * @param factor K, 1 for none, else from `wahlFactor` or `bergstrasserFactor`
 */
export const helicalStress = (force: number, meanDiameter: number, wire: number, factor: number): number =>
  (factor * 8 * force * demandPositive('mean coil diameter', meanDiameter)) / (Math.PI * demandPositive('wire diameter', wire) ** 3);

/** Force at which the wire reaches a shear stress, N; `helicalStress` turned round. `stress` in Pa, 0 or above. */
export const forceAtStress = (stress: number, meanDiameter: number, wire: number, factor: number): number =>
  stress / helicalStress(1, meanDiameter, wire, demandPositive('curvature factor', factor));

/**
 * Wire diameter, m, at which a force and an index give a stress: d = √(8 F C K / (π τ)).
 * @param force F, N, > 0
 * @param index C, > 1
 * @param stress permissible shear stress τ, Pa, > 0
 * @param factor K for this index
 */
export const wireForLoad = (force: number, index: number, stress: number, factor: number): number =>
  Math.sqrt((8 * demandPositive('force', force) * demandIndex(index) * factor) / (Math.PI * demandPositive('stress', stress)));

/** Permissible shear stress with the coils solid, Pa: 0.56 of the tensile strength, cold-coiled springs (EN 13906-1:2013). */
export const permissibleSolidStress = (tensileStrength: number): number => 0.56 * demandPositive('tensile strength', tensileStrength);
