import { expect, test } from 'vitest';
import { propFor, RAM_PROP_STRENGTH, RAM_PROPS } from '../../../src/methods/ground/index.ts';
import { digits, runRows, type Row } from '../row.ts';
import { inch, known, lbf, psi } from '../units.ts';

const pound = 0.45359237;

test('table O-11 as printed', () => {
  const printed = ['4 16 80000 8000 44', '6 36 180000 18000 66', '8 64 320000 32000 88', '10 100 500000 50000 100', '12 144 720000 72000 132'];
  const rows = printed.flatMap((line, i): Row<number>[] => {
    const [side, area, load, hammer, length] = line.split(' ');
    const prop = RAM_PROPS[i]!;
    const row = (figure: string, text: string, inputs: number): Row<number> => ({ source: '29 CFR 1910.218, table O-11', status: 'read', figure: `${side} x ${side}: ${figure}`, inputs, expected: Number(text), tolerance: digits(text) });
    return [
      row('side, in', side!, prop.side / inch), row('area, in²', area!, prop.area / inch ** 2), row('load, lbf', load!, prop.shortColumnLoad / lbf),
      row('hammer, lb', hammer!, prop.hammerMass / pound), row('length, in', length!, prop.length / inch),
    ];
  });
  runRows('wood ram props', rows, (actual) => actual);
});

test('the table follows its rule but for the length of the 10 x 10, where the table governs', () => {
  for (const prop of RAM_PROPS) {
    expect(prop.shortColumnLoad / (RAM_PROP_STRENGTH * prop.area)).toBeCloseTo(1, 6);
    expect((prop.hammerMass / pound) * lbf).toBeCloseTo(prop.shortColumnLoad / 10, 6);
    expect(prop.length / prop.side).toBeCloseTo(prop.name === '10 x 10' ? 10 : 11, 9);
  }
  expect(RAM_PROP_STRENGTH / psi).toBeCloseTo(5000, 6);
  // 105 in would be allowed by eleven times the side, and is not by the table.
  expect(known(propFor(1000, 105 * inch)).prop.name).toBe('12 x 12');
});

test('the smallest timber that serves, or that none does', () => {
  expect(known(propFor(8000 * pound, 44 * inch)).prop.name).toBe('4 x 4');
  expect(known(propFor(8001 * pound, 44 * inch)).prop.name).toBe('6 x 6');
  expect(known(propFor(50 * pound, 45 * inch)).prop.name).toBe('6 x 6');
  const none = propFor(100, 4);
  expect(none.state === 'outside-validity' && none.because).toMatch(/3.35 m: 100 kg at 4 m/);
});
