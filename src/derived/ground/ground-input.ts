import type { Estimate } from '../../methods/chance/index.ts';
import { doubtRow, outsideProblems, type InputProblem } from '../capacity/index.ts';
import type { SoilId } from './soil.ts';

/** What a hammer stands on. */
export type GroundKind = 'own-block' | 'slab' | 'timber' | 'belting' | 'soil' | 'trailer' | 'not-known';

/** Hammer, block and ground. SI; an estimate is a value with its standard uncertainty. */
export interface GroundInput {
  readonly kind: GroundKind;
  /** block, slab or timbers; lengths that were not read are left out */
  readonly length?: number;
  readonly width?: number;
  readonly thickness?: number;
  /** foot of the machine */
  readonly baseLength: number;
  readonly baseWidth: number;
  readonly machineMass: Estimate;
  readonly anvilMass: Estimate;
  /** true where the anvil stands on the block by itself, apart from the frame */
  readonly anvilSeparate: boolean;
  readonly ramMass: Estimate;
  readonly impactSpeed: Estimate;
  readonly restitution: Estimate;
  /** left out where nobody knows: all categories are then answered side by side */
  readonly soil?: SoilId;
  /** N/m of what lies between machine and block, where it was chosen or worked out */
  readonly padStiffness?: Estimate;
  readonly edgeGap?: number;
  readonly boltDiameter?: number;
}

/** Everything wrong with an input. */
export function groundProblems(input: GroundInput): readonly InputProblem[] {
  const { machineMass, anvilMass, ramMass, impactSpeed, restitution, padStiffness } = input;
  const problems = outsideProblems([
    ['length', input.length, 0.1, 15, 'm'], ['width', input.width, 0.1, 15, 'm'], ['thickness', input.thickness, 0.01, 4, 'm'], ['baseLength', input.baseLength, 0.2, 6, 'm'], ['baseWidth', input.baseWidth, 0.15, 4, 'm'],
    ['machineMass', machineMass.value, 50, 60_000, 'kg'], ['anvilMass', anvilMass.value, 20, 50_000, 'kg'], ['ramMass', ramMass.value, 3, 1500, 'kg'], ['impactSpeed', impactSpeed.value, 0.1, 30, 'm/s'], ['restitution', restitution.value, 0, 0.95, ''],
    ['padStiffness', padStiffness?.value, 1e5, 1e13, 'N/m'], ['edgeGap', input.edgeGap, 0, 0.3, 'm'], ['boltDiameter', input.boltDiameter, 0.006, 0.08, 'm'],
    doubtRow('machineMass', machineMass), doubtRow('anvilMass', anvilMass), doubtRow('ramMass', ramMass), doubtRow('impactSpeed', impactSpeed), doubtRow('restitution', restitution),
    ...(padStiffness === undefined ? [] : [doubtRow('padStiffness', padStiffness, 3)]),
  ]);
  const contradiction = problems.length === 0 && anvilMass.value > machineMass.value && !input.anvilSeparate;
  return contradiction ? [{ field: 'anvilMass', sentence: `an anvil that is part of the frame cannot outweigh the machine; at most ${machineMass.value.toFixed(0)} kg is allowed: ${anvilMass.value.toFixed(0)}` }] : problems;
}
