import type { LinkageFamily } from '../../hammer/index.ts';
import type { Estimate } from '../../methods/chance/index.ts';
import { doubtRow, outsideProblems, type InputProblem } from '../capacity/index.ts';
import type { FloorRating } from './floor.ts';

/** The machine that is to be moved. SI. */
export interface MovingInput {
  readonly family: LinkageFamily;
  readonly mass: Estimate;
  /** true where it was weighed; else it is the usual mass of its class */
  readonly weighed: boolean;
  readonly ramMass: Estimate;
  readonly anvilMass: Estimate;
  readonly anvilKind: 'in-frame' | 'separate' | 'hollow' | 'not-known';
  readonly overallHeight: number;
  readonly seatHeight: number;
  readonly shaftHeight: number;
  readonly baseLength: number;
  readonly baseWidth: number;
  /** names of the lengths that are proportions of the class and were not read */
  readonly assumedLengths: readonly string[];
  readonly door?: { readonly width: number; readonly height: number };
  readonly floor?: FloorRating;
}

/** Everything wrong with an input. */
export function movingProblems(input: MovingInput): readonly InputProblem[] {
  const { mass, ramMass, anvilMass } = input;
  return outsideProblems([
    ['mass', mass.value, 50, 60_000, 'kg'], ['ramMass', ramMass.value, 3, 1500, 'kg'], ['anvilMass', anvilMass.value, 0, 50_000, 'kg'], ['overallHeight', input.overallHeight, 0.4, 6, 'm'], ['seatHeight', input.seatHeight, 0.1, 2.5, 'm'],
    ['shaftHeight', input.shaftHeight, 0.1, 6, 'm'], ['baseLength', input.baseLength, 0.2, 6, 'm'], ['baseWidth', input.baseWidth, 0.15, 4, 'm'], ['door.width', input.door?.width, 0.3, 20, 'm'], ['door.height', input.door?.height, 0.5, 20, 'm'],
    ['floor.rating', input.floor?.rating, 100, 1e7, 'Pa'], doubtRow('mass', mass), doubtRow('ramMass', ramMass), doubtRow('anvilMass', anvilMass),
  ]);
}
