import { estimatesOf, putRanged, type Ranged } from '../capacity/index.ts';
import { knownNumber, workOut, type Ledger } from '../ledger.ts';
import type { Known } from '../survey/index.ts';
import type { Outcome } from '../value.ts';
import type { GroundInput, GroundKind } from './ground-input.ts';
import { groundOf, REPORTED, type Ground, type GroundAnswer } from './ground-of.ts';
import type { SoilId } from './soil.ts';

const KEYS = {
  machineMass: 'moving.machine-mass', anvilMass: 'anvil.mass|class.anvil-mass', ramMass: 'ram.mass|class.ram-mass', impactSpeed: 'capacity.impact-speed', restitution: 'practice.restitution-hot', baseLength: 'frame.base-length', baseWidth: 'frame.base-width',
} as const;
const KINDS: readonly GroundKind[] = ['own-block', 'slab', 'timber', 'belting', 'soil', 'trailer', 'not-known'];
const SOURCES = ['barkan-foundations', 'from-memory', 'rigid-body-mechanics'];
const INPUTS = [...Object.values(KEYS), 'foundation.length', 'foundation.width', 'foundation.thickness'];
const UNKNOWN_SOIL = 'Soil not named: from soft clay to dense gravel. Undamped, so the true movement is smaller.';

type Unanswered = Exclude<Outcome, { state: 'known' }>;

/**
 * The input of `groundOf` from a picture's values; or what is missing. After `workOutMoving` and `workOutBlow`.
 * @param soil where somebody knows it
 */
export function groundInputOf(ledger: Ledger, known: Known, soil?: SoilId): GroundInput | Unanswered {
  workOut(ledger, { key: 'class.anvil-mass', title: 'usual anvil of the class', dimension: 'mass', formula: 'usual anvil to ram x ram', sources: ['common-practice'], inputs: ['class.anvil-ratio', 'ram.mass|class.ram-mass'], work: (ratio, ram) => ratio! * ram! });
  const estimates = estimatesOf(ledger, KEYS);
  if (!estimates.ok) return estimates.outcome;
  const { baseLength, baseWidth, ...rest } = estimates.of;
  const answer = known.looks['foundation.kind']?.answer;
  const optional = { length: 'foundation.length', width: 'foundation.width', thickness: 'foundation.thickness', edgeGap: 'foundation.edge-gap', boltDiameter: 'hold-down-bolts.diameter' } as const;
  const read = Object.fromEntries(Object.entries(optional).flatMap(([name, key]) => {
    const value = knownNumber(ledger, key);
    return value === undefined ? [] : [[name, value]];
  }));
  return {
    ...rest, baseLength: baseLength.value, baseWidth: baseWidth.value, kind: KINDS.find((kind) => kind === answer) ?? 'not-known', anvilSeparate: known.looks['anvil.kind']?.answer === 'separate', ...read, ...(soil === undefined ? {} : { soil }),
  };
}

/** Mass of the block, pressure on the soil, and how far block and machine move under a full blow. @param draws 200 where left out */
export function workOutGround(ledger: Ledger, known: Known, seed: number, draws = 200): void {
  const input = groundInputOf(ledger, known);
  const answer: GroundAnswer | Unanswered = 'kind' in input ? groundOf(input, seed, draws) : input;
  const unanswered: Unanswered | undefined = answer.state === 'known' ? undefined : answer.state === 'refused' ? { state: 'outside-validity', because: answer.problems.map((problem) => problem.sentence).join('; ') } : answer;
  const of = (pick: (ground: Ground) => Ranged | undefined, because: string): Ranged | Unanswered => (answer.state === 'known' ? (pick(answer) ?? { state: 'does-not-apply', because }) : unanswered!);
  const fixed = (value: number | undefined, share: number): Ranged | undefined => (value === undefined ? undefined : { state: 'known', value, low: value * (1 - 2 * share), high: value * (1 + 2 * share), uncertainty: value * share, outside: 0 });
  const soilOnly = 'it stands on bare soil, without a block';
  const anvil = knownNumber(ledger, KEYS.anvilMass);
  const common = { sources: SOURCES, inputs: INPUTS, words: UNKNOWN_SOIL } as const;
  const plain = { sources: ['common-practice', 'from-memory'], inputs: INPUTS } as const;
  putRanged(ledger, { ...plain, key: 'ground.block-mass', title: 'mass of the block', dimension: 'mass', formula: 'length x width x thickness x density' }, of((one) => fixed(one.blockMass, 0.04), soilOnly));
  putRanged(ledger, { ...plain, key: 'ground.block-over-anvil', title: 'block to anvil', dimension: 'ratio', formula: 'block mass / anvil mass' }, of((one) => fixed(one.blockMass === undefined || anvil === undefined ? undefined : one.blockMass / anvil, 0.07), soilOnly));
  putRanged(ledger, { ...plain, key: 'ground.rest-pressure', title: 'pressure on the soil at rest', dimension: 'pressure', formula: '(machine + block) x g / area' }, of((one) => fixed(one.restPressure, 0.06), soilOnly));
  const twoMass = 'two masses on two springs struck by the ram, both modes; stiffness of the ground by category, of the pad by kind';
  putRanged(ledger, { ...common, key: 'ground.machine-amplitude', title: 'how far the machine moves under a full blow', dimension: 'length', formula: twoMass, words: `${UNKNOWN_SOIL} ${REPORTED}` }, of((one) => one.overall.machine, ''));
  putRanged(ledger, { ...common, key: 'ground.block-amplitude', title: 'how far the block moves under a full blow', dimension: 'length', formula: twoMass, words: `${UNKNOWN_SOIL} ${REPORTED}` }, of((one) => one.overall.block, ''));
  putRanged(ledger, { ...common, key: 'ground.block-amplitude-lower-mode', title: 'the same, lower mode alone', dimension: 'length', formula: 'as handbooks print it: the lower of the two modes alone' }, of((one) => one.overall.blockLowerMode, ''));
  putRanged(ledger, { ...common, key: 'ground.lower-frequency', title: 'slower natural frequency of hammer and block', dimension: 'frequency', formula: twoMass }, of((one) => one.overall.lowerFrequency, ''));
  putRanged(ledger, { ...common, key: 'ground.upper-frequency', title: 'faster natural frequency of hammer and block', dimension: 'frequency', formula: twoMass }, of((one) => one.overall.upperFrequency, 'without a block there is one mode alone'));
  putRanged(ledger, { ...common, words: 'Per blow; the rest goes into the work and the rebound.', key: 'ground.energy-into-ground', title: 'energy that goes into the ground', dimension: 'energy', formula: 'machine mass x its speed after the blow² / 2' }, of((one) => one.overall.groundEnergy, ''));
}
