import { describe, expect, test } from 'vitest';
import { readQuantity, type Dimension, type ReadOptions, type UnitName } from '../../src/methods/quantity/index.ts';

type Line = [text: string, dimension: Dimension, value: number, options?: Partial<ReadOptions>];
const INCH = 0.0254;
const LB = 0.45359237;
const LBF = 4.4482216152605;
const DEGREE = Math.PI / 180;

/** One value as different hands write it. */
const LINES: readonly Line[] = [
  ['4 5/8 in', 'length', 4.625 * INCH], ['4-5/8"', 'length', 4.625 * INCH], ['4 - 5/8 in', 'length', 4.625 * INCH], ['4⅝ in', 'length', 4.625 * INCH],
  ['4 5⁄8″', 'length', 4.625 * INCH], ['4\u00a05/8\u00a0in', 'length', 4.625 * INCH], ['4 5/8-in', 'length', 4.625 * INCH], ['4 5/8 in.', 'length', 4.625 * INCH],
  ['4 5/8 inches', 'length', 4.625 * INCH], ['4 5/8IN', 'length', 4.625 * INCH], ['４ 5/8 in', 'length', 4.625 * INCH], ["4 5/8''", 'length', 4.625 * INCH],
  ['1-3/16 in', 'length', 1.1875 * INCH], ['½ in', 'length', 0.5 * INCH], ['⅜”', 'length', 0.375 * INCH], ['1½"', 'length', 1.5 * INCH], ['9/8 in', 'length', 1.125 * INCH],
  ["5'", 'length', 60 * INCH], ['5’', 'length', 60 * INCH], ['5′ 3 1/2″', 'length', 63.5 * INCH], ["5'-3 1/2\"", 'length', 63.5 * INCH], ['5 ft 3 in', 'length', 63 * INCH], ['5ft 3in', 'length', 63 * INCH],
  ['12 thou', 'length', 0.012 * INCH], ['15 thousandths', 'length', 0.015 * INCH], ['15 thousandths of an inch', 'length', 0.015 * INCH], ['0.015 in', 'length', 0.015 * INCH], ['.015 in', 'length', 0.015 * INCH], ['12 1/2 thou', 'length', 0.0125 * INCH],
  ['.015', 'length', 0.015 * INCH, { defaultUnit: 'in' }], ['.015', 'length', 0.015 * INCH, { defaultUnit: 'thou' }], ['15', 'length', 0.015 * INCH, { defaultUnit: 'thou' }], ['.015', 'length', 15e-6, { defaultUnit: 'mm' }],
  ['47.5 mm', 'length', 0.0475], ['47,5 mm', 'length', 0.0475], ['47,5mm', 'length', 0.0475], ['0,500 mm', 'length', 0.0005], ['1.2 m', 'length', 1.2], ['1 m 20 cm', 'length', 1.2],
  ['2 hp', 'power', 1100 * 0.3048 * LBF], ['1 1/2 hp', 'power', 825 * 0.3048 * LBF], ['1.5 kW', 'power', 1500],
  ['320 rpm', 'rotation', 320 / 60], ['320 blows/min', 'rotation', 320 / 60], ['320 blows a minute', 'rotation', 320 / 60], ['320 RPM', 'rotation', 320 / 60], ['320 min⁻¹'.replace('⁻¹', '-1'), 'rotation', 320 / 60], ['5 Hz', 'rotation', 5], ['1750 r/min', 'rotation', 1750 / 60],
  ['65 lb', 'mass', 65 * LB], ['65 lbs.', 'mass', 65 * LB], ['65#', 'mass', 65 * LB], ['2 lb 12 oz', 'mass', 2.75 * LB], ['2lb12oz', 'mass', 2.75 * LB], ['30 kg', 'mass', 30], ['1.5 t', 'mass', 1500],
  ['65 lb', 'force', 65 * LBF], ['2500 lbf', 'force', 2500 * LBF], ['12 kN', 'force', 12_000], ['30 kg', 'force', 30 * 9.80665],
  ['3000 lb/in', 'stiffness', (3000 * LBF) / INCH], ['3000 lb. per inch', 'stiffness', (3000 * LBF) / INCH], ['40 N/mm', 'stiffness', 40_000],
  ['60 psi', 'pressure', (60 * LBF) / INCH ** 2], ['60 lb/in²', 'pressure', (60 * LBF) / INCH ** 2], ['60 lb/sq. in.', 'pressure', (60 * LBF) / INCH ** 2], ['20 ksi', 'pressure', (20_000 * LBF) / INCH ** 2], ['300 MPa', 'pressure', 3e8], ['300 N/mm²', 'pressure', 3e8],
  ['212 °F', 'temperature', 373.15], ['212°F', 'temperature', 373.15], ['212 ℉', 'temperature', 373.15], ['60 C', 'temperature', 333.15], ['60 deg C', 'temperature', 333.15], ['−5 °C', 'temperature', 268.15], ['–5 °C', 'temperature', 268.15],
  ['230 V', 'voltage', 230], ['6.8 A', 'current', 6.8], ['6.8 amps', 'current', 6.8], ['50 Hz', 'frequency', 50],
  ['15 °', 'angle', 15 * DEGREE], ['15°', 'angle', 15 * DEGREE], ['15º', 'angle', 15 * DEGREE], ['15 deg', 'angle', 15 * DEGREE], ["15° 30'", 'angle', 15.5 * DEGREE], ['15° 30′ 36″', 'angle', 15.51 * DEGREE], ['3 1/2 turns', 'angle', 7 * Math.PI],
  ['3 1/2 turns', 'count', 3.5], ['8', 'count', 8], ['8 1/4 coils', 'count', 8.25],
  ['1/8 in/ft', 'taper', 1 / 96], ['1/8" per foot'.replace('"', ' in'), 'taper', 1 / 96], ['1:96', 'taper', 1 / 96], ['1 in 96', 'taper', 1 / 96], ['1 : 96', 'taper', 1 / 96], ['10 mm/m', 'taper', 0.01],
  ['1200 ft/min', 'velocity', 6.096], ['1200 fpm', 'velocity', 6.096], ['6 m/s', 'velocity', 6],
  ['93 dB', 'level', 93], ['93 dBA', 'level', 93], ['93 dB(A)', 'level', 93], ['50 HRC', 'hardness', 50],
  ['85 %', 'ratio', 0.85], ['85%', 'ratio', 0.85], ['0.85', 'ratio', 0.85], ['1.5 thou/in', 'ratio', 0.0015], ['0.0015 in/in', 'ratio', 0.0015],
  ['8 h', 'time', 28_800], ['30 min', 'time', 1800], ['90 s', 'time', 90], ['1 h 20 min', 'time', 4800], ['1h20min', 'time', 4800],
  ['30 ft-lb', 'torque', 30 * 0.3048 * LBF], ['30 lbf·ft', 'torque', 30 * 0.3048 * LBF], ['30 Nm', 'torque', 30], ['200 ft·lbf', 'energy', 200 * 0.3048 * LBF], ['200 J', 'energy', 200],
  ['0.284 lb/in³', 'density', (0.284 * LB) / INCH ** 3], ['7850 kg/m³', 'density', 7850], ['100 mPa·s', 'viscosity', 0.1], ['12 kg·m²', 'inertia', 12], ['3 sq. in.', 'area', 3 * INCH ** 2], ['2 cu ft', 'volume', 2 * 0.3048 ** 3],
];

describe('what a survey writes', () => {
  test.each(LINES)('%s is read as %s', (text, dimension, value, options) => {
    const reading = readQuantity(text, { dimension, ...options });
    if (!reading.ok) throw new Error(`${reading.problem.message}; ${reading.problem.expected}`);
    expect(Math.abs(reading.quantity.value - value)).toBeLessThanOrEqual(4e-15 * Math.abs(value));
    expect(reading.quantity.dimension).toBe(dimension);
    expect(reading.asWritten).toBe(text.trim());
  });

  test('one reading has the size of its last place', () => {
    const placeOf = (text: string, dimension: Dimension = 'length', defaultUnit?: UnitName): number => {
      const reading = readQuantity(text, { dimension, ...(defaultUnit === undefined ? {} : { defaultUnit }) });
      if (!reading.ok) throw new Error(reading.problem.message);
      return reading.resolution;
    };
    expect(placeOf('4 3/16 in')).toBe(0.0015875);
    expect(placeOf('47.50 mm')).toBe(1e-5);
    expect(placeOf('12 thou')).toBe(2.54e-5);
    expect(placeOf('5 ft 3 1/2 in')).toBe(0.0127);
    expect(placeOf('212 °F', 'temperature')).toBe(5 / 9);
    expect(placeOf('1:96', 'taper')).toBeCloseTo(1 / 96 / 96, 12);
  });

  test('a small bare decimal is inches where the survey is kept in thou, and refused where nothing is said', () => {
    const bare = readQuantity('.015', { dimension: 'length', field: 'guide.play' });
    expect(bare).toEqual({ ok: false, problem: { field: 'guide.play', value: '.015', message: 'there is no unit', expected: 'a unit after the number: in, ft, thou, mm, cm, m or yd' } });
    const small = readQuantity('.015', { dimension: 'length', defaultUnit: 'thou' });
    expect(small.ok && small.unit).toBe('in');
  });
});
