import type { Distribution } from '../../methods/chance/index.ts';
import { blockLimits, STANDARD_GRAVITY, type BlockLimits } from '../../methods/ground/index.ts';
import type { InputProblem, Ranged } from '../capacity/index.ts';
import { againstRules, type AgainstRule } from './against-rules.ts';
import { BOLT_ADVICE } from './bolts.ts';
import { groundProblems, type GroundInput } from './ground-input.ts';
import { feltAt, VIBRATION_SOURCE, type Felt } from './neighbours.ts';
import { responseOf, type Response } from './response.ts';
import { SOILS, SOIL_SOURCE, type Soil } from './soil.ts';
import { underneathOf, type Underneath } from './underneath.ts';

/** One category of ground and what happens on it. */
export interface OnSoil {
  readonly soil: Soil;
  readonly response: Response;
  /** pressure at rest over what the category may carry: against the least of it and against the most */
  readonly restShare: { readonly ofLeast: number; readonly ofMost: number };
}

export interface Ground {
  readonly state: 'known';
  readonly under: Underneath;
  /** kg of block alone; absent on bare soil */
  readonly blockMass?: number;
  /** m³ */
  readonly blockVolume?: number;
  /** Pa on the soil at rest */
  readonly restPressure: number;
  readonly bySoil: readonly OnSoil[];
  /** the ground not known, from weak to strong; or the one category that was named */
  readonly overall: Response;
  readonly limits: BlockLimits;
  readonly rules: readonly AgainstRule[];
  /** what may arrive at neighbours, whatever the soil between */
  readonly felt: readonly Felt[];
  /** stress in the pad against what it carries, where that is known */
  readonly pad?: { readonly stress: Ranged; readonly allowed: number; readonly words: string };
  /** which amplitude the figures are */
  readonly reported: string;
  readonly bolts: readonly string[];
  readonly notKnown: readonly string[];
  readonly sources: readonly string[];
}

export type GroundAnswer =
  | Ground
  | { readonly state: 'refused'; readonly problems: readonly InputProblem[] }
  | { readonly state: 'not-known'; readonly missing: readonly string[] }
  | { readonly state: 'does-not-apply'; readonly because: string };

export const REPORTED = 'Amplitudes are of the exact undamped two-mass system, both modes together, from rest to the greatest movement; the lower mode alone, which handbooks print, stands beside them and is smaller. Ground damps much, so the true movement is below both.';

/** m at which a neighbour is asked about */
const DISTANCES = [3, 10, 30, 100] as const;
const DRAWS = 500;

/** From the softest of the weak to the stiffest of the strong, the middle likeliest. */
const ANY_SOIL: Distribution = { kind: 'lognormal', median: 39e6, factor: 1.6 };

/**
 * What a hammer does to the ground under it, and what is not known about that.
 * @param seed whole number @param draws at least 100
 */
export function groundOf(input: GroundInput, seed: number, draws = DRAWS): GroundAnswer {
  const problems = groundProblems(input);
  if (problems.length > 0) return { state: 'refused', problems };
  const under = underneathOf(input);
  if (under.state !== 'known') return under;
  const { block } = under;
  const area = block === undefined ? input.baseLength * input.baseWidth : block.length * block.width;
  const density = block?.density.kind === 'triangular' ? block.density.likely : 0;
  const blockVolume = block === undefined ? undefined : area * block.thickness;
  const blockMass = blockVolume === undefined ? undefined : blockVolume * density;
  const restPressure = ((input.machineMass.value + (blockMass ?? 0)) * STANDARD_GRAVITY) / area;
  const named = SOILS.find((soil) => soil.id === input.soil);
  const uniform = ([from, to]: Soil['compression']): Distribution => ({ kind: 'uniform', from, to });
  const bySoil = (named === undefined ? SOILS : [named]).map((soil): OnSoil => {
    const response = responseOf(input, under, uniform(soil.compression), seed, draws);
    return { soil, response, restShare: { ofLeast: restPressure / soil.bearing[0], ofMost: restPressure / soil.bearing[1] } };
  });
  const overall = named === undefined ? responseOf(input, under, ANY_SOIL, seed, draws) : bySoil[0]!.response;
  return {
    state: 'known', under, restPressure, bySoil, overall, limits: blockLimits(input.ramMass.value), rules: againstRules(input, blockMass), reported: REPORTED, felt: feltAt(DISTANCES, overall.groundEnergy), bolts: BOLT_ADVICE,
    ...(blockMass === undefined || blockVolume === undefined ? {} : { blockMass, blockVolume }),
    ...(under.pad.allowed === undefined ? {} : { pad: { stress: overall.padStress, allowed: under.pad.allowed.pressure, words: under.pad.allowed.words } }),
    notKnown: [
      ...(named === undefined ? ['the soil: nobody named it, so each category is answered'] : []), ...under.taken,
      ...(input.padStiffness === undefined ? [`the pad: ${under.pad.words}`] : []), ...(input.edgeGap === undefined && input.kind === 'own-block' ? ['the gap between block and floor'] : []),
      ...(input.boltDiameter === undefined ? ['the hold-down bolts'] : ['number and depth of the bolts']), 'damping of the ground: left out, so that the movement is the greatest possible', 'where the centre of gravity stands over the block; a code asks for within 5 % of its side',
    ],
    sources: [SOIL_SOURCE, VIBRATION_SOURCE, 'D. D. Barkan, Dynamics of Bases and Foundations, two masses on two springs', blockLimits(input.ramMass.value).source],
  };
}
