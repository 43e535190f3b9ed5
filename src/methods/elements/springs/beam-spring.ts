import { demandPositive } from '../../numerics/index.ts';

/** Second moment of area of a flat bar, m⁴: b h³ / 12. Width b across, height h in the direction of bending, m, both > 0. */
export const flatBarSecondMoment = (width: number, height: number): number => (demandPositive('width', width) * demandPositive('height', height) ** 3) / 12;

/** Rate of a beam held at one end and loaded at the other, N/m: 3 E I / L³; for a flat bar E b h³/(4 L³). */
export const cantileverRate = (elasticModulus: number, secondMoment: number, reach: number): number =>
  (3 * demandPositive('elastic modulus', elasticModulus) * demandPositive('second moment of area', secondMoment)) / demandPositive('reach', reach) ** 3;

/** Rate of a beam resting at both ends and loaded at the middle, N/m: 48 E I / L³. */
export const restingBeamRate = (elasticModulus: number, secondMoment: number, span: number): number =>
  (48 * demandPositive('elastic modulus', elasticModulus) * demandPositive('second moment of area', secondMoment)) / demandPositive('span', span) ** 3;

/** Energy in a spring whose load rises in step with its deflection, J: k δ² / 2. */
export const energyStored = (rate: number, deflection: number): number => (demandPositive('spring rate', rate) * deflection ** 2) / 2;
