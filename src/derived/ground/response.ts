import type { Distribution } from '../../methods/chance/index.ts';
import { anvilSpeed, foundationResponse, padStress } from '../../methods/ground/index.ts';
import { either, ensemble, positive, type Ranged } from '../capacity/index.ts';
import type { GroundInput } from './ground-input.ts';
import { groundStiffness } from './soil.ts';
import type { Underneath } from './underneath.ts';

/** How machine and block answer a full blow. SI, each with a 95 % interval. */
export interface Response {
  /** m/s of machine, or of a separate anvil, just after the blow */
  readonly startSpeed: Ranged;
  readonly lowerFrequency: Ranged;
  /** absent where there is no block, and so no second mode */
  readonly upperFrequency?: Ranged;
  /** m, greatest movement with both modes: this is the figure that the program reports */
  readonly machine: Ranged;
  readonly block: Ranged;
  /** m, the lower mode alone, as the usual handbooks print it: the smaller figure */
  readonly machineLowerMode: Ranged;
  readonly blockLowerMode: Ranged;
  /** J that the machine, or the separate anvil, carries into block and ground */
  readonly groundEnergy: Ranged;
  /** Pa in the pad, greatest, both modes */
  readonly padStress: Ranged;
}

const TURN = 2 * Math.PI;

/**
 * Response of a hammer on its block for a range of ground.
 * @param compression coefficient of the ground for 10 m², N/m³ @param stream names the draws
 */
export function responseOf(input: GroundInput, under: Underneath, compression: Distribution, seed: number, draws: number): Response {
  const { block } = under;
  const foot = input.baseLength * input.baseWidth;
  const unknowns = {
    machine: positive(input.machineMass), anvil: positive(input.anvilMass), ram: positive(input.ramMass), speed: positive(input.impactSpeed), restitution: either(input.restitution), compression,
    density: block?.density ?? ({ kind: 'certain', value: 1 } as const), pad: input.padStiffness === undefined ? under.pad.perArea : positive(input.padStiffness),
  };
  const drawn = ensemble(unknowns, { seed, stream: 'ground', draws }, (x) => {
    const upper = input.anvilSeparate ? x.anvil : x.machine;
    const start = anvilSpeed(x.ram, upper, x.speed, Math.min(0.95, Math.max(0, x.restitution)));
    const energy = (upper * start ** 2) / 2;
    if (block === undefined) {
      const frequency = Math.sqrt(groundStiffness(x.compression, foot) / upper);
      const amplitude = start / frequency;
      return { start, lower: frequency / TURN, upper: Number.NaN, machine: amplitude, block: amplitude, machineLower: amplitude, blockLower: amplitude, energy, stress: (amplitude * groundStiffness(x.compression, foot)) / foot };
    }
    const area = block.length * block.width;
    // A frame that stands apart from its anvil rides on the block.
    const blockMass = area * block.thickness * x.density + (input.anvilSeparate ? Math.max(0, x.machine - x.anvil) : 0);
    const padStiffness = input.padStiffness === undefined ? x.pad * foot : x.pad;
    const found = foundationResponse({ anvilMass: upper, blockMass, padStiffness, groundStiffness: groundStiffness(x.compression, area) }, start);
    const [low, high] = found.modes;
    return {
      start, lower: low.frequency / TURN, upper: high.frequency / TURN, machine: found.exact.anvil, block: found.exact.block, machineLower: found.lowerModeOnly.anvil, blockLower: found.lowerModeOnly.block,
      energy, stress: padStress(found.padSqueeze.exact, padStiffness, foot),
    };
  });
  const because = 'the masses and stiffnesses given do not fit together';
  return {
    startSpeed: drawn.of('start', because), lowerFrequency: drawn.of('lower', because), ...(block === undefined ? {} : { upperFrequency: drawn.of('upper', because) }),
    machine: drawn.of('machine', because), block: drawn.of('block', because), machineLowerMode: drawn.of('machineLower', because), blockLowerMode: drawn.of('blockLower', because), groundEnergy: drawn.of('energy', because), padStress: drawn.of('stress', because),
  };
}
