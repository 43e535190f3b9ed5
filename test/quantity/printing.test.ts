import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DIMENSIONS, UNITS, formatParts, formatQuantity, quantity, readQuantity, unitsFor, type Dimension, type FormatOptions, type Quantity, type UnitName } from '../../src/methods/quantity/index.ts';

const INCH = 0.0254;
const inches = (value: number, doubt = 0): Quantity => quantity(value * INCH, 'length', (doubt / 2) * INCH);
const read = (text: string, dimension: Dimension): Quantity => {
  const reading = readQuantity(text, { dimension });
  if (!reading.ok) throw new Error(`"${text}" as ${dimension}: ${reading.problem.message}; ${reading.problem.expected}`);
  return reading.quantity;
};

describe('printing', () => {
  test.each<[Quantity, FormatOptions, string]>([
    [inches(1.375), { resolution: INCH / 32 }, '1 3/8 in'],
    [inches(1.38), { resolution: INCH / 32 }, '1 3/8 in'],
    [inches(0.012), { resolution: INCH / 1000 }, '12 thou'],
    [inches(0.0125), { resolution: INCH / 2000 }, '12.5 thou'],
    [inches(0.0625), { resolution: INCH / 32 }, '1/16 in'],
    [inches(0.115), { resolution: INCH / 1000 }, '0.115 in'],
    [quantity(0.034925, 'length'), { system: 'metric', resolution: 1e-5 }, '34.93 mm'],
    [quantity(0.001005, 'length'), { system: 'metric', resolution: 1e-5 }, '1.01 mm'],
    [quantity(-0.034925, 'length'), { system: 'metric', resolution: 1e-5 }, '-34.93 mm'],
    [quantity(-1e-9, 'length'), { system: 'metric', resolution: 1e-5 }, '0.00 mm'],
    [inches(1.375, 1 / 32), {}, '1 3/8 ± 1/32 in'],
    [inches(1.375, 1 / 32), { doubt: false }, '1 3/8 in'],
    [inches(1.3712, 0.0048), {}, '1.3712 ± 0.0048 in'],
    [inches(1.3712, 0.005), {}, '1.371 ± 0.005 in'],
    [inches(0.0123, 0.0012), {}, '12.3 ± 1.2 thou'],
    [inches(2.9375), {}, '2 15/16 in'],
    [inches(2.9376), {}, '2.938 in'],
    [inches(0), {}, '0 in'],
    [quantity(12_345, 'force', 780), { system: 'metric' }, '12.3 ± 1.6 kN'],
    [quantity(4000, 'force', 78), { system: 'metric' }, '4000 ± 160 N'],
    [quantity(333.15, 'temperature', 1), {}, '140.0 ± 3.6 °F'],
    [quantity(333.15, 'temperature', 1), { system: 'metric' }, '60 ± 2 °C'],
    [quantity(315 / 60, 'rotation'), {}, '315 rpm'],
    [quantity(0.5 / 60, 'rotation'), { resolution: 1 / 60 }, '1 rpm'],
    [quantity(0.85, 'ratio'), {}, '85 %'],
    [quantity(0.0087, 'ratio', 0.0008), {}, '0.87 ± 0.16 %'],
    [quantity(0.0015, 'ratio'), { system: 'metric' }, '0.15 %'],
    [quantity(0.0015, 'taper'), {}, '1.5 thou/in'],
    [quantity(0.0015, 'taper'), { system: 'metric' }, '1.5 mm/m'],
    [quantity(10, 'ratio', 2.5), {}, '10 ± 5'],
    [quantity((15 * Math.PI) / 180, 'angle', Math.PI / 360), {}, '15 ± 1°'],
    [quantity(1 / 96, 'taper'), { resolution: 1 / 96 }, '1/8 in/ft'],
    [quantity(4800, 'time'), {}, '80 min'],
    [quantity(6.096, 'velocity'), { unit: 'ft/min' }, '1200 ft/min'],
    [{ ...inches(1.38, 0.11), interval: [1.3 * INCH, 1.52 * INCH] }, { unit: 'in', resolution: INCH / 100 }, '1.38 in (1.30 to 1.52)'],
  ])('%o with %o is %s', (q, options, text) => {
    expect(formatQuantity(q, options)).toBe(text);
  });

  test('gives the pieces of a true fraction', () => {
    expect(formatParts(inches(-1.375, 1 / 32), { resolution: INCH / 32 })).toMatchObject({ negative: true, whole: '1', numerator: 3, denominator: 8, unit: 'in', unitName: 'in', doubt: { whole: '', numerator: 1, denominator: 32 } });
    expect(formatParts(quantity(0.034925, 'length'), { system: 'metric', resolution: 1e-5 })).toMatchObject({ whole: '34', decimal: '93', unit: 'mm' });
  });

  test('throws where the unit or the resolution makes no sense', () => {
    expect(() => formatQuantity(inches(1), { unit: 'lb' })).toThrow(/lb/);
    expect(() => formatQuantity(inches(1), { resolution: 0 })).toThrow(/0/);
    expect(() => quantity(Number.NaN, 'length')).toThrow(/NaN/);
    expect(() => quantity(1, 'length', -1)).toThrow(/-1/);
  });
});

describe('printing and reading again', () => {
  test('every sixty-fourth to 100 in comes back to the same double', () => {
    for (let parts = 0; parts <= 6400; parts += 1) {
      const value = Number(`${parts * 396_875}e-9`);
      for (const resolution of [INCH / 64, undefined]) {
        const text = formatQuantity(quantity(value, 'length'), { unit: 'in', ...(resolution === undefined ? {} : { resolution }) });
        expect(read(text, 'length').value, text).toBe(value);
      }
    }
  });

  const units = DIMENSIONS.flatMap((dimension) => unitsFor(dimension).map((unit): [Dimension, UnitName] => [dimension, unit]));
  const amount = fc.double({ min: -9999, max: 9999, noNaN: true });
  const share = fc.oneof(fc.constant(0), fc.double({ min: 1e-4, max: 0.9, noNaN: true }));

  /** SI value of a number of the unit, by the factor and not by the reader. */
  const si = (number: number, unit: UnitName): number => {
    const { factor, offset, pi } = UNITS[unit];
    return (number + Number(offset.numerator) / Number(offset.denominator)) * (Number(factor.numerator) / Number(factor.denominator)) * (pi ? Math.PI : 1);
  };
  const near = (q: Quantity, options: FormatOptions): void => {
    const text = formatQuantity(q, options);
    const parts = formatParts(q, options);
    const again = read(text, q.dimension);
    const slack = 1e-11 * Math.max(Math.abs(q.value), 1e-3 * Math.abs(si(1, parts.unitName)));
    expect(Math.abs(again.value - q.value), text).toBeLessThanOrEqual(parts.resolution * 0.5 + slack);
    if (parts.doubt !== undefined) {
      // Rounded up, never down, and by less than half.
      expect(again.uncertainty, text).toBeGreaterThanOrEqual(q.uncertainty * (1 - 1e-9));
      expect(again.uncertainty, text).toBeLessThanOrEqual(q.uncertainty * 1.5 + 1e-300 + (parts.unit === 'in' ? INCH / 128 : 0));
    }
  };

  test('holds for every unit of every dimension', () => {
    expect(units.length).toBeGreaterThan(100);
    for (const [dimension, unit] of units) {
      fc.assert(fc.property(amount, share, (number, part) => {
        const value = si(number, unit);
        near(quantity(value, dimension, Math.abs(value) * part), { unit });
      }), { numRuns: 60 });
    }
  });

  test('holds for both systems, with and without a resolution', () => {
    for (const dimension of DIMENSIONS) {
      for (const system of ['inch', 'metric'] as const) {
        fc.assert(fc.property(fc.double({ min: -6, max: 6, noNaN: true }), fc.boolean(), share, fc.option(fc.integer({ min: -4, max: 1 }), { nil: undefined }), (power, minus, part, place) => {
          const first = unitsFor(dimension)[0]!;
          const value = (minus && dimension !== 'temperature' ? -1 : 1) * si(10 ** power, first);
          const resolution = place === undefined ? {} : { resolution: Math.abs(value) * 10 ** place };
          near(quantity(value, dimension, Math.abs(value) * part), { system, ...resolution });
        }), { numRuns: 120 });
      }
    }
  });

  test('a reading printed in its own unit and place is what was written', () => {
    for (const text of ['4 5/8 in', '1 3/16 in', '12 thou', '47.50 mm', '320 rpm', '1 1/2 hp', '3 1/2 turns', '1/8 in/ft', '-5 °C', '15°', '85 %', '0.015 in', '2500 lbf', '93 dB']) {
      const dimension = DIMENSIONS.find((one) => readQuantity(text, { dimension: one }).ok && !(one === 'angle' && text.endsWith('turns')))!;
      const reading = readQuantity(text, { dimension });
      expect(reading.ok && formatQuantity(reading.quantity, { unit: reading.unit, resolution: reading.resolution, doubt: false })).toBe(text);
    }
  });
});
