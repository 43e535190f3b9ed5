import { demandPositive } from '../../numerics/index.ts';

/**
 * Tight over slack tension of a flat belt about to slip, no unit: e^(µ θ) (the capstan; Khurmi and Gupta, Theory of Machines, ch. 11).
 * @param friction µ, 0 or above
 * @param wrap θ, rad, 0 or above
 */
export const capstanRatio = (friction: number, wrap: number): number => {
  if (!(friction >= 0 && wrap >= 0)) throw new RangeError(`Friction and wrap are outside their range; 0 and above is allowed: ${friction}, ${wrap}`);
  return Math.exp(friction * wrap);
};

/** What a belt about to slip carries. */
export interface BeltPull {
  readonly tight: number;
  readonly slack: number;
  /** Useful pull at the rim, N. */
  readonly pull: number;
  /** W. */
  readonly power: number;
}

/**
 * Slack tension, pull and power of a flat belt about to slip. The tension from its own flight, m v², takes no part in the grip.
 * @param tight tight-side tension, N, > 0
 * @param speed belt speed, m/s, 0 or above
 * @param massPerLength kg/m; 0 unless said
 */
export const beltPull = (tight: number, friction: number, wrap: number, speed: number, massPerLength = 0): BeltPull => {
  const flight = massPerLength * speed ** 2;
  const gripping = Math.max(0, demandPositive('tight-side tension', tight) - flight);
  const slack = tight - gripping + gripping / capstanRatio(friction, wrap);
  return { tight, slack, pull: tight - slack, power: (tight - slack) * speed };
};

/** Speed at which a belt of given tight tension carries most, m/s: √(T/(3 m)). */
export const speedOfGreatestPower = (tight: number, massPerLength: number): number => Math.sqrt(demandPositive('tension', tight) / (3 * demandPositive('mass per length', massPerLength)));
