import { demandPositive } from '../numerics/index.ts';

/** A round of metal squeezed cold between flat dies. SI. */
export interface ColdRound {
  readonly diameter: number;
  readonly height: number;
  /** Pa: K of the flow stress K εⁿ, and n; 0 for a metal that does not harden */
  readonly strength: number;
  readonly hardening: number;
  /** Coulomb's coefficient between metal and die, not negative */
  readonly friction: number;
}

/** Steps of the integration over the strain; the sum is then right to a ten thousandth. */
const STEPS = 200;

/**
 * Work that upsets a round to a height, J: the mean pressure K εⁿ (1 + 2μr/3h) over the way, volume kept (pressure as in Kalpakjian
 * and Schmid, Manufacturing Engineering and Technology, ch. 14; without friction V K εⁿ⁺¹/(n + 1)).
 * @param after height after, m, above 0 and not above the height before
 */
export function coldUpsetWork({ diameter, height, strength, hardening, friction }: ColdRound, after: number): number {
  const volume = (Math.PI / 4) * demandPositive('diameter', diameter) ** 2 * demandPositive('height', height);
  const strain = Math.log(height / demandPositive('height after', after));
  if (strain < 0) throw new RangeError(`The height after is outside its range; above 0 and up to ${height} m is allowed: ${after}`);
  const slope = (friction * diameter) / (3 * height);
  // Written in u = εⁿ⁺¹, in which the hardening is even and the middle of each step hits it however steeply it starts.
  const end = strain ** (hardening + 1);
  let sum = 0;
  for (let step = 0; step < STEPS; step++) {
    const at = (((step + 0.5) / STEPS) * end) ** (1 / (hardening + 1));
    sum += 1 + slope * Math.exp(1.5 * at);
  }
  return (volume * strength * end * sum) / ((hardening + 1) * STEPS);
}
