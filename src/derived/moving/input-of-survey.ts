import { defaultGeometry, type GeometryName } from '../../hammer/index.ts';
import type { Estimate } from '../../methods/chance/index.ts';
import type { Known } from '../survey/index.ts';
import type { Value } from '../value.ts';
import type { FloorRating } from './floor.ts';
import { machineMassOfClass } from './machine-mass.ts';
import type { MovingInput } from './moving-input.ts';

const LENGTHS = [
  ['overallHeight', 'overall-height', 'frame.height', 'overall height'], ['seatHeight', 'seat-height', 'frame.seat-height', 'height of the die seat'], ['shaftHeight', 'shaft-height', 'main-shaft.height', 'height of the shaft'],
  ['baseLength', 'base-length', 'frame.base-length', 'length of the base'], ['baseWidth', 'base-width', 'frame.base-width', 'width of the base'],
] as const satisfies readonly (readonly [string, GeometryName, string, string])[];

/** Where a class lies outside the proportions, its nearest end is taken. */
const PROPORTIONED = { least: 5, most: 500 } as const;
const ANVIL_RATIO: Estimate = { value: 10, uncertainty: 2.5 };

/** A value's quantity, or undefined where it is not known. */
const quantityOf = (values: Readonly<Record<string, Value>>, key: string): Estimate | undefined => {
  const outcome = values[key]?.outcome;
  return outcome?.state === 'known' ? outcome.quantity : undefined;
};

/**
 * What a move needs from a survey: readings where they are, proportions of the class where not, each named.
 * @param asked door and floor, which belong to places and not to the hammer
 */
export function movingInputOf(values: Readonly<Record<string, Value>>, known: Known, asked: { readonly door?: { readonly width: number; readonly height: number }; readonly floor?: FloorRating } = {}): MovingInput {
  const ramClass = known.identity.ramClass.quantity.value;
  const { family } = known.identity;
  const usual = defaultGeometry(family, Math.min(PROPORTIONED.most, Math.max(PROPORTIONED.least, ramClass)));
  const assumedLengths: string[] = [];
  const lengths = Object.fromEntries(LENGTHS.map(([name, geometry, place, words]) => {
    const read = quantityOf(values, place);
    if (read === undefined) assumedLengths.push(words);
    return [name, read?.value ?? usual[geometry] ?? 1];
  })) as Record<(typeof LENGTHS)[number][0], number>;
  // A frame that was measured says more of its shaft than the class does.
  if (quantityOf(values, 'main-shaft.height') === undefined) {
    lengths.shaftHeight = (lengths.overallHeight * (usual['shaft-height'] ?? 1)) / (usual['overall-height'] ?? 1);
  }
  const ram = quantityOf(values, 'ram.mass') ?? { value: ramClass, uncertainty: 0.05 * ramClass };
  const mass = quantityOf(values, 'whole-machine.mass');
  const anvil = quantityOf(values, 'anvil.mass') ?? { value: ANVIL_RATIO.value * ram.value, uncertainty: ANVIL_RATIO.uncertainty * ram.value };
  const kind = known.looks['anvil.kind']?.answer;
  return {
    family, mass: mass ?? machineMassOfClass(ramClass), weighed: mass !== undefined, ramMass: ram, anvilMass: anvil,
    anvilKind: kind === 'in-frame' || kind === 'separate' || kind === 'hollow' ? kind : 'not-known', ...lengths, assumedLengths,
    ...(asked.door === undefined ? {} : { door: asked.door }), ...(asked.floor === undefined ? {} : { floor: asked.floor }),
  };
}
