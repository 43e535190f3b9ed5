import { demandPositive } from '../../numerics/index.ts';

/**
 * The textbook's two-term series for a slider in line with the crank centre, speed counted inward: v = ω r (sin θ + sin 2θ/(2 n)),
 * a = ω² r (cos θ + cos 2θ/n), n = l/r (Khurmi and Gupta, Theory of Machines, ch. 15). Kept to hold against the textbook's figures;
 * `crankSlider` is exact, and differs by 1 in 1000 at n = 5.
 */
export const crankSeries = (crank: number, rod: number, angle: number, angularSpeed: number): { readonly velocity: number; readonly acceleration: number } => {
  const n = demandPositive('rod length', rod) / demandPositive('crank radius', crank);
  return {
    velocity: angularSpeed * crank * (Math.sin(angle) + Math.sin(2 * angle) / (2 * n)),
    acceleration: angularSpeed ** 2 * crank * (Math.cos(angle) + Math.cos(2 * angle) / n),
  };
};

/** Crank angle, rad, at which the series has no acceleration, so its greatest speed: cos θ = (√(n² + 8) - n)/4. */
export const seriesGreatestSpeedAngle = (crank: number, rod: number): number => {
  const n = demandPositive('rod length', rod) / demandPositive('crank radius', crank);
  return Math.acos((Math.sqrt(n ** 2 + 8) - n) / 4);
};
