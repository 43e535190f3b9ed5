import { interpolate } from '../methods/numerics/index.ts';
import type { Dimension, Quantity } from '../methods/quantity/index.ts';

const LB = 0.45359237;
const IN = 0.0254;
const HP = 745.699872;
const PER_MIN = Math.PI / 30;

/** Ram class in kg against what is usual for it; the doubt is a share of the value (95 %). */
const USUAL: readonly { readonly key: string; readonly title: string; readonly dimension: Dimension; readonly classesKg: readonly number[]; readonly values: readonly number[]; readonly doubt: number; readonly source: string }[] = [
  { key: 'class.rate', title: 'usual greatest rate of the class', dimension: 'rotation', classesKg: [25, 50, 100, 250, 500].map((lb) => lb * LB), values: [400, 350, 300, 250, 200].map((rpm) => rpm * PER_MIN), doubt: 0.1, source: 'common-practice' },
  { key: 'class.working-rate', title: 'usual working rate of the class', dimension: 'rotation', classesKg: [25, 50, 100, 250, 500].map((lb) => lb * LB), values: [375, 315, 275, 225, 180].map((rpm) => rpm * PER_MIN), doubt: 0.1, source: 'common-practice' },
  { key: 'class.motor-power', title: 'usual motor power of the class', dimension: 'power', classesKg: [25, 50, 100, 250, 500].map((lb) => lb * LB), values: [1.25, 2, 3, 6, 10].map((hp) => hp * HP), doubt: 0.3, source: 'common-practice' },
  { key: 'class.largest-bar', title: 'usual largest bar of the class', dimension: 'length', classesKg: [25, 50, 100, 250, 500].map((lb) => lb * LB), values: [1.25, 2, 3, 5, 7].map((inches) => inches * IN), doubt: 0.25, source: 'common-practice' },
  { key: 'class.crank-throw', title: 'usual throw of the class', dimension: 'length', classesKg: [12, 25, 50, 120, 250], values: [0.04, 0.05, 0.062, 0.085, 0.11], doubt: 0.25, source: 'own-model' },
];

/**
 * What is usual for a ram class, interpolated between the classes of the table (common practice, no source; the throw
 * is the program's own proportion). Outside the table the end values hold.
 * @param ramMass nominal ram mass, kg, > 0
 */
export function usualOfClass(ramMass: number): readonly { readonly key: string; readonly title: string; readonly quantity: Quantity; readonly source: string }[] {
  const rows = USUAL.map((row) => {
    const value = interpolate(row.classesKg, row.values, ramMass);
    return { key: row.key, title: row.title, quantity: { dimension: row.dimension, value, uncertainty: (value * row.doubt) / 2 }, source: row.source };
  });
  return [...rows,
    { key: 'class.anvil-ratio', title: 'usual anvil to ram', quantity: { dimension: 'ratio', value: 10, uncertainty: 2.5 }, source: 'common-practice' },
    { key: 'class.ram-mass', title: 'ram weight of the class', quantity: { dimension: 'mass', value: ramMass, uncertainty: ramMass * 0.05 }, source: 'common-practice' }];
}
