import { findRoot } from '../numerics/index.ts';

/** Work under the dies: the volume that is squeezed and its height. SI, positive; friction not negative. */
export interface Bite {
  /** m³ between the dies */
  readonly volume: number;
  /** m */
  readonly height: number;
  /** mean flow stress over the blow, Pa */
  readonly flowStress: number;
  readonly friction: number;
}

/** Energy of an upset without friction, J: V Y ln(h0/h1). @param newHeight m, 0 to the height, above 0 */
export const idealWork = (bite: Bite, newHeight: number): number => bite.volume * bite.flowStress * Math.log(bite.height / newHeight);

/**
 * Energy of an upset with friction, J: the force Y A (1 + 2μr/3h) integrated over the way, the volume kept,
 * V Y [ln(h0/h1) + (4μ/9) √(V/π) (h1^-1.5 - h0^-1.5)]; r is the radius of the circle of the same area.
 * @param newHeight m, above 0, at most the height
 */
export function upsetWork(bite: Bite, newHeight: number): number {
  const drag = ((4 * bite.friction) / 9) * Math.sqrt(bite.volume / Math.PI) * (newHeight ** -1.5 - bite.height ** -1.5);
  return bite.volume * bite.flowStress * (Math.log(bite.height / newHeight) + drag);
}

/** What one blow does to the bite. SI. */
export interface Reduction {
  readonly newHeight: number;
  /** m */
  readonly reduction: number;
  /** reduction over the height before */
  readonly share: number;
  /** ln(h0/h1) */
  readonly strain: number;
}

/**
 * Height after a blow that puts an energy into the work: `upsetWork` solved for it. There is always one: thin work takes ever more energy.
 * @param energy that goes into the work, J (blow energy times efficiency), not negative
 */
export function reductionByBlow(bite: Bite, energy: number): Reduction {
  if (!(energy >= 0 && energy < Number.POSITIVE_INFINITY)) throw new Error(`The energy of a blow must not be negative: ${energy}`);
  if (!(bite.volume > 0 && bite.height > 0 && bite.flowStress > 0 && bite.friction >= 0)) {
    throw new Error(`A bite needs positive volume, height and flow stress: ${bite.volume}, ${bite.height}, ${bite.flowStress}, friction ${bite.friction}`);
  }
  // The ideal strain is an upper bound: friction only takes from it.
  const greatest = energy / (bite.volume * bite.flowStress);
  const root = findRoot((strain) => upsetWork(bite, bite.height * Math.exp(-strain)) - energy, 0, Math.min(greatest, 200), { width: 1e-15 });
  if (root.code === 'no-bracket' || root.code === 'not-finite') throw new Error(`No height takes up the blow: ${energy} J on ${JSON.stringify(bite)}`);
  const strain = root.x;
  const share = -Math.expm1(-strain);
  return { newHeight: bite.height * Math.exp(-strain), reduction: bite.height * share, share, strain };
}

/**
 * Blows that bring a bite to a height, by repeated `reductionByBlow` at constant flow stress.
 * @param most where to stop counting, positive
 * @returns undefined where that many are not enough
 */
export function blowsTo(bite: Bite, newHeight: number, energy: number, most = 1000): number | undefined {
  let height = bite.height;
  for (let blows = 0; blows <= most; blows++) {
    if (height <= newHeight * (1 + 1e-12)) return blows;
    height = reductionByBlow({ ...bite, height }, energy).newHeight;
  }
  return undefined;
}

/**
 * Peak force of a blow on work, N: 3E/(2s), the force rising in a straight line from a third of its peak over the stopping way
 * (ASM Handbook vol. 14, Hammers and Presses for Forging, eq. 13). Not for die on die, where the machine's own give stops the ram.
 * @param energy put into the work, J @param way in which the ram is stopped, m, positive
 */
export const peakForce = (energy: number, way: number): number => (3 * energy) / (2 * way);

/** Share of the energy of a blow that reaches the work (ibid. eq. 11): soft blows on thick hot work, and hard blows on thin or cooling work. */
export const BLOW_EFFICIENCY = { soft: { least: 0.8, most: 0.9 }, hard: { least: 0.2, most: 0.5 }, source: 'ASM Handbook vol. 14, Hammers and Presses for Forging' } as const;

/** Energy of a driven ram, J: (m g + p A) H (power hammers). @param drive mean driving force p A, N @param fall m */
export const drivenRamEnergy = (mass: number, gravity: number, drive: number, fall: number): number => (mass * gravity + drive) * fall;
