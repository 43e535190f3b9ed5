import { demandPositive } from '../../numerics/index.ts';

/**
 * Lowest frequency at which the coils surge between two seats, Hz: f = d/(2 π n D²) √(G/(2 ρ)). The same as half the root of
 * rate over active mass, and as fe = 3560 d/(n D²) √(G/ρ) of EN 13906-1 in its mixed units (exactly 3558.8).
 * @param wire d, m
 * @param meanDiameter D, m
 * @param activeCoils n
 * @param shearModulus G, Pa
 * @param density ρ of the wire, kg/m³; 7850 for steel
 */
export const surgeFrequency = (wire: number, meanDiameter: number, activeCoils: number, shearModulus: number, density: number): number =>
  (demandPositive('wire diameter', wire) / (2 * Math.PI * demandPositive('number of active coils', activeCoils) * demandPositive('mean coil diameter', meanDiameter) ** 2)) *
  Math.sqrt(demandPositive('shear modulus', shearModulus) / (2 * demandPositive('density', density)));

/** Mass of the working wire, kg: ρ π² d² D n / 4. Arguments as in `surgeFrequency`. */
export const activeMass = (wire: number, meanDiameter: number, activeCoils: number, density: number): number =>
  (demandPositive('density', density) * Math.PI ** 2 * demandPositive('wire diameter', wire) ** 2 * demandPositive('mean coil diameter', meanDiameter) * demandPositive('number of active coils', activeCoils)) / 4;
