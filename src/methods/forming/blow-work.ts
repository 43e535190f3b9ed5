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
export const upsetWork = (bite: Bite, newHeight: number): number => workAtStrain(bite, Math.log(bite.height / newHeight));

/** The same by logarithmic strain, which keeps its digits for the lightest tap. */
function workAtStrain(bite: Bite, strain: number): number {
  const drag = ((4 * bite.friction) / 9) * Math.sqrt(bite.volume / Math.PI) * bite.height ** -1.5 * Math.expm1(1.5 * strain);
  return bite.volume * bite.flowStress * (strain + drag);
}

/** Greatest strain that one blow is reckoned to: beyond it (87 % off the height) flow stress, temperature and dies have long changed. */
export const GREATEST_STRAIN_OF_BLOW = 2;

/** What one blow does to the bite. SI. */
export type Reduction =
  | {
      readonly state: 'known';
      readonly newHeight: number;
      /** m */
      readonly reduction: number;
      /** reduction over the height before */
      readonly share: number;
      /** ln(h0/h1) */
      readonly strain: number;
    }
  | { readonly state: 'outside-validity'; readonly because: string };

/**
 * Height after a blow that puts an energy into the work: `upsetWork` solved for it.
 * @param energy that goes into the work, J (blow energy times efficiency), not negative
 */
export function reductionByBlow(bite: Bite, energy: number): Reduction {
  if (!(energy >= 0 && energy < Number.POSITIVE_INFINITY)) throw new Error(`The energy of a blow must not be negative: ${energy}`);
  if (!(bite.volume > 0 && bite.height > 0 && bite.flowStress > 0 && bite.friction >= 0)) {
    throw new Error(`A bite needs positive volume, height and flow stress: ${bite.volume}, ${bite.height}, ${bite.flowStress}, friction ${bite.friction}`);
  }
  if (energy > workAtStrain(bite, GREATEST_STRAIN_OF_BLOW)) {
    return { state: 'outside-validity', because: `the blow is too heavy for so small a bite; up to ${workAtStrain(bite, GREATEST_STRAIN_OF_BLOW).toPrecision(3)} J is allowed: ${energy.toPrecision(3)} J` };
  }
  const strain = strainTaking(bite, energy);
  const share = -Math.expm1(-strain);
  return { state: 'known', newHeight: bite.height * Math.exp(-strain), reduction: bite.height * share, share, strain };
}

function strainTaking(bite: Bite, energy: number): number {
  const ideal = energy / (bite.volume * bite.flowStress);
  if (bite.friction === 0 || energy === 0) return ideal;
  // The ideal strain is an upper bound, as friction only takes from it; a hair beyond, for the rounding.
  const root = findRoot((strain) => workAtStrain(bite, strain) - energy, 0, ideal * (1 + 1e-9));
  if (root.code !== 'converged') throw new Error(`No height takes up the blow (${root.code}): ${energy} J on ${JSON.stringify(bite)}`);
  return root.x;
}

/**
 * Blows that bring a bite to a height, by repeated `reductionByBlow` at constant flow stress.
 * @param most where to stop counting, positive
 * @returns undefined where that many are not enough, or where a blow is too heavy to reckon with
 */
export function blowsTo(bite: Bite, newHeight: number, energy: number, most = 1000): number | undefined {
  let height = bite.height;
  for (let blows = 0; blows <= most; blows++) {
    if (height <= newHeight * (1 + 1e-12)) return blows;
    const after = reductionByBlow({ ...bite, height }, energy);
    if (after.state !== 'known') return undefined;
    height = after.newHeight;
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
