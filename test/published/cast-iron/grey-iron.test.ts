import { expect, test } from 'vitest';
import { GREY_IRON, greyIronClass } from '../../../src/methods/elements/index.ts';
import { byFigure, digits, rowsOf, runRows } from '../row.ts';
import { MPa, ksi } from '../units.ts';

test('strength of grey iron by class', () => {
  const iron = (ironClass: number) => {
    const found = greyIronClass(ironClass);
    if (!found) throw new Error(`Class ${ironClass} is not in the table`);
    return found;
  };
  const TABLE = "Shigley's Mechanical Engineering Design, Table A-24 (from memory)";
  const classes = [[20, '22', '83', '156'], [25, '26', '97', '174'], [30, '31', '109', '201'], [35, '36.5', '124', '212'], [40, '42.5', '140', '235']] as const;
  runRows('grey iron', [
    ...rowsOf('makeitfrom.com, ASTM grade 20 grey iron', 'read', 20, [['compressive, ksi', '83'], ['compressive, MPa', '570', digits('57e1')]]),
    ...rowsOf('liquisearch.com/gray_iron/classifications', 'read', 30, [['compressive, ksi', '109']]),
    ...rowsOf('liquisearch.com/gray_iron/classifications', 'read', 40, [['compressive, ksi', '140']]),
    ...classes.flatMap(([ironClass, tensile, compressive, brinell]) => rowsOf(TABLE, 'from memory', ironClass as number, [['tensile, ksi', tensile], ['compressive, ksi', compressive], ['Brinell', brinell]])),
  ], byFigure({
    'compressive, ksi': (x) => iron(x).compressiveStrength / ksi, 'compressive, MPa': (x) => iron(x).compressiveStrength / MPa, 'tensile, ksi': (x) => iron(x).tensileStrength / ksi, Brinell: (x) => iron(x).brinell,
  }));
  // A page that prints 33 ksi for class 20 would make it weaker in compression than class 25 by a factor of three.
  expect(iron(20).compressiveStrength / ksi).toBeGreaterThan(2 * 33);
});

test('a higher class is stronger and harder, and iron bears over three times as much in compression as in tension', () => {
  GREY_IRON.forEach((iron, i) => {
    const next = GREY_IRON[i + 1];
    if (next) {
      expect(next.tensileStrength).toBeGreaterThan(iron.tensileStrength);
      expect(next.compressiveStrength).toBeGreaterThan(iron.compressiveStrength);
      expect(next.brinell).toBeGreaterThan(iron.brinell);
    }
    expect(iron.compressiveStrength / iron.tensileStrength).toBeGreaterThan(3);
    expect(iron.compressiveStrength / iron.tensileStrength).toBeLessThan(4);
    // The class names the least tensile strength in ksi.
    expect(iron.tensileStrength / ksi).toBeGreaterThanOrEqual(iron.ironClass);
  });
  expect(greyIronClass(33)).toBeUndefined();
});

test('hardness of each class lies in the range of the automotive grade of that strength', () => {
  // SAE grades by tensile strength in ksi, iron-foundry.com, read.
  for (const [ironClass, least, most] of [[25, 170, 229], [30, 187, 241], [35, 207, 255], [40, 217, 269]] as const) {
    expect(greyIronClass(ironClass)!.brinell).toBeGreaterThanOrEqual(least);
    expect(greyIronClass(ironClass)!.brinell).toBeLessThanOrEqual(most);
  }
});
