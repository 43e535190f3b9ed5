import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromSaybolt, gradeLimits, gradeOf, ISO_GRADES, ISO_NEAR_SAE, oilFlow, viscosityAt, type IsoGrade } from '../../../src/methods/power/index.ts';
import { rowsOf, runRows } from '../row.ts';
import { known } from '../units.ts';

const CENTISTOKES = 1e-6;

test('grades of ISO 3448', () => {
  const printed = '22 19.8 24.2; 32 28.8 35.2; 46 41.4 50.6; 68 61.2 74.8; 100 90 110; 150 135 165; 220 198 242; 320 288 352; 460 414 506; 680 612 748; 1000 900 1100; 1500 1350 1650';
  const rows = printed.split('; ').flatMap((line) => {
    const [grade, least, most] = line.split(' ');
    return rowsOf('ISO 3448, three pages that agree', 'read', Number(grade) as IsoGrade, [[`least of ${grade}, mm²/s`, least!], [`most of ${grade}, mm²/s`, most!]]);
  });
  runRows('viscosity grades', rows, (grade, row) => gradeLimits(grade)[row.figure.startsWith('least') ? 'least' : 'most'] / CENTISTOKES);
  expect(ISO_GRADES.slice(0, 6)).toEqual([2.2, 3.2, 4.6, 6.8, 10, 15]);
  expect(gradeOf(68 * CENTISTOKES)).toBe(68);
  expect(gradeOf(61.2 * CENTISTOKES)).toBe(68);
  expect(gradeOf(55 * CENTISTOKES)).toBeUndefined();
  expect([...ISO_NEAR_SAE]).toEqual([[20, 68], [30, 100], [40, 150], [50, 220], [60, 320]]);
});

test('drops and Saybolt seconds', () => {
  runRows('oil', [
    // 15 drops a minute at 20 to 25 drops to the millilitre.
    ...rowsOf('drops to the millilitre', 'from memory', 3.6e9 * oilFlow(15 / 60).least, [['least, mL/h', '36']]),
    ...rowsOf('drops to the millilitre', 'from memory', 3.6e9 * oilFlow(15 / 60).most, [['most, mL/h', '45']]),
    ...rowsOf('engineeringtoolbox.com, 0.226 t - 195/t', 'read', fromSaybolt(60)! / CENTISTOKES, [['60 s, mm²/s', '10.31']]),
    // Two fits of the same table: the proportional one is said to hold to some 2 % there.
    ...rowsOf('ASTM D2161, 4.632 s for each mm²/s above 75 mm²/s', 'from memory', fromSaybolt(500)! / CENTISTOKES, [['500 s, mm²/s', '107.94', { relative: 0.02 }]]),
  ], (actual) => actual);
  expect(fromSaybolt(20)).toBeUndefined();
});

test('viscosity and temperature (ASTM D341): both given points come back, colder is thicker, the double logarithm is straight', () => {
  const temperature = fc.double({ min: 250, max: 400, noNaN: true });
  fc.assert(fc.property(fc.double({ min: 20, max: 1500, noNaN: true }), fc.double({ min: 0.05, max: 0.4, noNaN: true }), temperature, temperature, (cold, share, a, b) => {
    fc.pre(Math.abs(a - b) > 1);
    const points = [{ viscosity: cold * CENTISTOKES, temperature: 313.15 }, { viscosity: Math.max(2.1, share * cold) * CENTISTOKES, temperature: 373.15 }] as const;
    for (const point of points) expect(known(viscosityAt(point.temperature, points)).viscosity / point.viscosity).toBeCloseTo(1, 9);
    const [colder, hotter] = a < b ? [a, b] : [b, a];
    const thick = viscosityAt(colder, points);
    const thin = viscosityAt(hotter, points);
    fc.pre(thick.state === 'known' && thin.state === 'known' && thick.viscosity < 1);
    const [first, second] = [known(thick).viscosity, known(thin).viscosity];
    expect(first).toBeGreaterThan(second);
    // Any two points of the line give the line back.
    const again = viscosityAt(313.15, [{ viscosity: first, temperature: colder }, { viscosity: second, temperature: hotter }]);
    expect(known(again).viscosity / points[0].viscosity).toBeCloseTo(1, 4);
  }), { numRuns: 200, seed: 41 });
  const points = [{ viscosity: 68e-6, temperature: 313.15 }, { viscosity: 8.5e-6, temperature: 373.15 }] as const;
  expect(viscosityAt(500, points).state).toBe('outside-validity');
  expect(viscosityAt(300, [points[0], points[0]]).state).toBe('outside-validity');
  expect(viscosityAt(300, [points[0], { viscosity: 1e-6, temperature: 373.15 }]).state).toBe('outside-validity');
});
