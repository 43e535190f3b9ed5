import { demandPositive } from '../../numerics/index.ts';

/** A crank, a rod and a slider on a straight line. */
export interface CrankSlider {
  /** Crank radius r: half the stroke where the line goes through the crank centre, m, > 0. */
  readonly crank: number;
  /** Rod length l between pins, m, above r + |offset|. */
  readonly rod: number;
  /** By how much the line of the slider passes the crank centre, m, on the side to which the crank turns first; 0 unless said. */
  readonly offset?: number;
}

/** The slider at one crank angle, measured along its line from the crank centre, outward positive. */
export interface SliderState {
  readonly position: number;
  readonly velocity: number;
  readonly acceleration: number;
  /** Lean of the rod against the line, rad. */
  readonly rodAngle: number;
}

const demandTurning = ({ crank, rod, offset = 0 }: CrankSlider): number => {
  if (!(demandPositive('rod length', rod) > demandPositive('crank radius', crank) + Math.abs(offset))) {
    throw new RangeError(`The crank cannot turn right round; a rod above ${crank + Math.abs(offset)} m is allowed: ${rod} m`);
  }
  return offset;
};

/**
 * Exact motion of the slider: x = r cos θ + √(l² - (r sin θ - c)²) and its derivatives by time.
 * @param angle θ, rad, 0 where crank and line point the same way (outer dead centre if there is no offset)
 * @param angularSpeed ω, rad/s
 * @param angularAcceleration rad/s²; 0 unless said
 */
export const crankSlider = (gear: CrankSlider, angle: number, angularSpeed: number, angularAcceleration = 0): SliderState => {
  const { crank, rod } = gear;
  const aside = crank * Math.sin(angle) - demandTurning(gear);
  const along = crank * Math.cos(angle);
  const reach = Math.sqrt(rod ** 2 - aside ** 2);
  // d(aside)/dθ is `along`, so dx/dθ = -r sin θ - aside·along/reach, and once more for the second derivative.
  const first = -crank * Math.sin(angle) - (aside * along) / reach;
  const second = -along - (along ** 2 - aside * crank * Math.sin(angle)) / reach - (aside * along) ** 2 / reach ** 3;
  return {
    position: along + reach,
    velocity: first * angularSpeed,
    acceleration: second * angularSpeed ** 2 + first * angularAcceleration,
    rodAngle: Math.asin(aside / rod),
  };
};

/** Distance between the ends of travel, m: √((l + r)² - c²) - √((l - r)² - c²); twice the crank radius without offset. */
export const strokeOf = (gear: CrankSlider): number => {
  const offset = demandTurning(gear);
  return Math.sqrt((gear.rod + gear.crank) ** 2 - offset ** 2) - Math.sqrt((gear.rod - gear.crank) ** 2 - offset ** 2);
};
