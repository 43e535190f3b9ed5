import { interpolate } from '../methods/numerics/index.ts';
import { readQuantity, type Dimension, type Quantity } from '../methods/quantity/index.ts';
import { RAM_CLASSES, type RamClass } from '../knowledge/index.ts';

/** A value that is usual for a ram class, with how to read it off the table of classes. */
interface Usual {
  readonly key: string;
  readonly title: string;
  readonly dimension: Dimension;
  readonly of: (row: RamClass) => readonly [least: number, most: number];
  readonly unit: string;
  /** Which end of the range stands for the class. */
  readonly take: 'middle' | 'most';
}

const USUAL: readonly Usual[] = [
  { key: 'class.rate', title: 'usual greatest rate of the class', dimension: 'rotation', of: (row) => row.bpm, unit: 'rpm', take: 'most' },
  { key: 'class.working-rate', title: 'usual working rate of the class', dimension: 'rotation', of: (row) => row.bpm, unit: 'rpm', take: 'middle' },
  { key: 'class.motor-power', title: 'usual motor power of the class', dimension: 'power', of: (row) => row.motorHorsepower, unit: 'hp', take: 'middle' },
  { key: 'class.largest-bar', title: 'usual largest bar of the class', dimension: 'length', of: (row) => row.practicalBarInches, unit: 'in', take: 'middle' },
];

/** Ram mass, kg, against the throw of the program's own healthy hammers, m. */
const THROWS = { mass: [12, 25, 50, 120, 250], length: [0.04, 0.05, 0.062, 0.085, 0.11] } as const;

/** Doubt of a class default as a share of it (95 %), where the table gives one figure and not a range. */
const LEAST_DOUBT = 0.1;

/**
 * What is usual for a ram class, interpolated between the classes of the table (common practice, no source; the throw
 * is the program's own proportion). Outside the table the end values hold.
 * @param ramMass nominal ram mass, kg, > 0
 */
export function usualOfClass(ramMass: number): readonly { readonly key: string; readonly title: string; readonly quantity: Quantity; readonly source: string }[] {
  const masses = RAM_CLASSES.map((row) => si(row.ramPounds, 'lb', 'mass'));
  const rows = USUAL.map((usual) => {
    const least = interpolate(masses, RAM_CLASSES.map((row) => si(usual.of(row)[0], usual.unit, usual.dimension)), ramMass);
    const most = interpolate(masses, RAM_CLASSES.map((row) => si(usual.of(row)[1], usual.unit, usual.dimension)), ramMass);
    const value = usual.take === 'most' ? most : (least + most) / 2;
    const halfWidth = Math.max((most - least) / 2, value * LEAST_DOUBT);
    return { key: usual.key, title: usual.title, quantity: { dimension: usual.dimension, value, uncertainty: halfWidth / 2 }, source: 'common-practice' };
  });
  const crankThrow = interpolate(THROWS.mass, THROWS.length, ramMass);
  return [
    ...rows,
    { key: 'class.crank-throw', title: 'usual throw of the class', quantity: { dimension: 'length', value: crankThrow, uncertainty: crankThrow * 0.125 }, source: 'own-model' },
    { key: 'class.anvil-ratio', title: 'usual anvil to ram', quantity: { dimension: 'ratio', value: 10, uncertainty: 2.5 }, source: 'common-practice' },
    { key: 'class.ram-mass', title: 'ram weight of the class', quantity: { dimension: 'mass', value: ramMass, uncertainty: ramMass * 0.05 }, source: 'common-practice' },
  ];
}

function si(amount: number, unit: string, dimension: Dimension): number {
  const reading = readQuantity(`${amount} ${unit}`, { dimension, field: 'class table' });
  if (!reading.ok) throw new Error(`knowledge: the table of classes cannot be read: ${reading.problem.message}: ${amount} ${unit}`);
  return reading.quantity.value;
}
