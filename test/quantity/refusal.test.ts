import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DIMENSIONS, readQuantity, unitsFor, type Dimension, type ReadOptions } from '../../src/methods/quantity/index.ts';

type Line = [text: string, dimension: Dimension, message: RegExp, expected: RegExp, options?: Partial<ReadOptions>];

const LINES: readonly Line[] = [
  ['4 lb', 'length', /a weight, not a length/, /in, ft, thou, mm/],
  ['4 in', 'mass', /a length, not a weight/, /lb/],
  ['1/0 in', 'length', /zero below the line/, /5\/8/],
  ['3 1/0 in', 'length', /zero below the line/, /5\/8/],
  ['1/0', 'length', /zero below the line/, /5\/8/],
  ['4 5/', 'length', /not finished/, /4 5\/8/],
  ['4 5/ in', 'length', /not finished/, /4 5\/8/],
  ['2 9/8 in', 'length', /cannot stand after a whole/, /2 5\/8/],
  ['2 8/8 in', 'length', /cannot stand after a whole/, /2 5\/8/],
  ['1.2.3 in', 'length', /two decimal points/, /4\.625/],
  ['1,2,3 in', 'length', /two decimal points/, /4\.625/],
  ['4..5 in', 'length', /two decimal points/, /4\.625/],
  ['', 'length', /nothing is written/, /4 5\/8 in/],
  ['   ', 'length', /nothing is written/, /4 5\/8 in/],
  ['about', 'length', /nothing|begin/, /in/],
  ['±', 'length', /no number after/, /± 0\.2/],
  ['± 1 in', 'length', /nothing is written/, /in/],
  ['Infinity in', 'length', /not a number/, /4 5\/8/],
  ['-∞ in', 'length', /not a number/, /4 5\/8/],
  ['NaN', 'length', /not a number/, /4 5\/8/],
  ['1,500 mm', 'length', /thousands or a decimal comma/, /1500 for thousands, or 1\.500 for decimals/],
  ['1,234,567 mm', 'length', /thousands/, /1234567/],
  ['1 500 mm', 'length', /two numbers/, /unit/],
  ['4 inn', 'length', /did you mean in\?/, /in, ft/],
  ['40 psl', 'pressure', /did you mean psi\?/, /psi/],
  ['3 furlongs', 'length', /not a unit/, /in, ft/],
  ['3 to 4 in', 'length', /range/, /± half/],
  ['3-4 in', 'length', /range/, /± half/],
  ['3 in to 4 in', 'length', /range/, /± half/],
  ['47.5 mm +0.2/-0.1', 'length', /not even/, /one ±/],
  ['3 ± 1 ± 2 in', 'length', /more than one ±/, /one ±/],
  ['3 in ± -1', 'length', /less than zero/, /zero or more/],
  ['3 in ± 2 lb', 'length', /a weight, not a length/, /in/],
  ['5 ft 14 in', 'length', /whole ft/, /5 ft 3 in/],
  ['3 in 2 ft', 'length', /cannot follow/, /greater unit first/],
  ['5.5 ft 3 in', 'length', /a part of a ft/, /whole number/],
  ['3 in 4', 'length', /two numbers/, /unit/],
  ['3 ft 2 mm', 'length', /do not make one quantity/, /belong together/],
  ['5 mil', 'length', /thousandth of an inch to some/, /in/],
  ['3 tons', 'mass', /2240 lb/, /lb/],
  ['300 mPa', 'pressure', /MPa/, /psi/],
  ['5 mN', 'force', /not a unit/, /N/],
  ['220 HB', 'hardness', /conversion table/, /HRC/],
  ['93', 'level', /no unit/, /dB/],
  ['1:0', 'taper', /zero/, /1:96/],
  ['9e99 mm', 'length', /beyond anything/, /tool can read/],
  ['-3 mm', 'length', /less than the least/, /at least 0 mm/, { min: 0 }],
  ['-3 in', 'length', /less than the least/, /at least 0 in/, { min: 0 }],
  ['99 in', 'length', /more than the greatest/, /at most 1\.969 in/, { max: 0.05 }],
  ['99 mm', 'length', /more than the greatest/, /at most 50 mm/, { max: 0.05 }],
  ['400 °F', 'temperature', /more than the greatest/, /at most 350\.3 °F/, { max: 450 }],
  ['x'.repeat(201), 'length', /too long/, /200 characters/],
  [`${'9'.repeat(199)} `, 'length', /no unit/, /in/],
];

describe('what cannot be read', () => {
  test.each(LINES)('%s as %s is refused', (text, dimension, message, expected, options) => {
    const reading = readQuantity(text, { dimension, field: 'seat.depth', ...options });
    expect(reading.ok).toBe(false);
    if (reading.ok) return;
    expect(reading.problem.field).toBe('seat.depth');
    expect(reading.problem.message).toMatch(message);
    expect(reading.problem.expected).toMatch(expected);
    expect(text.startsWith(reading.problem.value.replace('…', ''))).toBe(true);
  });

  test('never throws and always says field, value, what is wrong and what is right', () => {
    let read = 0;
    let refused = 0;
    const holds = (text: string, dimension: Dimension): void => {
      const reading = readQuantity(text, { dimension, field: 'a.place' });
      if (reading.ok) {
        read += 1;
        expect(Number.isFinite(reading.quantity.value)).toBe(true);
        expect(reading.quantity.uncertainty).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(reading.quantity.uncertainty)).toBe(true);
        expect(reading.resolution).toBeGreaterThan(0);
      } else {
        refused += 1;
        expect(reading.problem.field).toBe('a.place');
        expect(reading.problem.value.length).toBeLessThanOrEqual(61);
        expect(reading.problem.message.length).toBeGreaterThan(8);
        expect(reading.problem.expected.length).toBeGreaterThan(0);
      }
    };
    const dimension = fc.constantFrom(...DIMENSIONS);
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 240 }), dimension, holds), { numRuns: 3000 });
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), dimension, holds), { numRuns: 2000 });
    const pieces = fc.constantFrom('1', '5', '0', '12', '.', ',', '/', '-', '−', ' ', '±', '+/-', '½', '⅞', '"', "'", 'in', 'ft', 'mm', 'lb', 'oz', 'h', 'min', '°', '%', '~', '?', 'about ', ' to ', '(', ')', 'e', ':', '²', '³', '\ud800', 'rpm', 'thou', '\u00a0');
    fc.assert(fc.property(fc.array(pieces, { maxLength: 12 }), fc.constantFrom<Dimension>('length', 'length', 'length', 'count', 'time', 'angle', 'mass', 'ratio'), (words, one) => holds(words.join(''), one)), { numRuns: 8000 });
    const near = fc.tuple(fc.constantFrom('1', '12', '4 5/8', '.015', '47,5', '-3'), fc.constantFrom('', ' ', '\u00a0', '-'), pieces, fc.constantFrom('', ' ± 1', '?', ' ± 5 %')).map((words) => words.join(''));
    fc.assert(fc.property(near, fc.constantFrom<Dimension>('length', 'mass', 'count', 'time'), holds), { numRuns: 4000 });
    expect(read).toBeGreaterThan(300);
    expect(refused).toBeGreaterThan(5000);
  });

  test('a default unit of another dimension is the programmer’s mistake', () => {
    expect(() => readQuantity('3', { dimension: 'length', defaultUnit: 'lb' })).toThrow(/lb/);
  });

  test('every dimension has a unit', () => {
    for (const dimension of DIMENSIONS) expect(unitsFor(dimension).length, dimension).toBeGreaterThan(0);
  });
});
