import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimal, ofNumber, rational, stepsIn, toNumber } from '../../src/methods/quantity/rational.ts';
import { fixed } from '../../src/methods/quantity/plain-number.ts';

describe('exact fractions', () => {
  test('give the nearest double of any decimal, as the language itself reads it', () => {
    const digits = fc.bigInt({ min: -(10n ** 25n), max: 10n ** 25n });
    fc.assert(fc.property(digits, fc.integer({ min: -60, max: 60 }), (whole, power) => {
      const text = `${whole}e${power}`;
      expect(toNumber(decimal(text))).toBe(Number(text) + 0);
    }), { numRuns: 5000 });
  });

  test('give the nearest double of a quotient, as division does', () => {
    const whole = fc.integer({ min: 1, max: 2 ** 31 - 1 });
    fc.assert(fc.property(whole, whole, (top, bottom) => {
      expect(toNumber(rational(top, bottom))).toBe(top / bottom);
    }), { numRuns: 5000 });
    // Half way between two doubles and a hair above it: the hair decides.
    const hair = 2n ** 80n;
    expect(toNumber(rational((2n ** 53n + 1n) * hair, hair))).toBe(2 ** 53);
    expect(toNumber(rational((2n ** 53n + 1n) * hair + 1n, hair))).toBe(2 ** 53 + 2);
  });

  test('round halves of the decimal written, not of the double that stands for it', () => {
    expect((34.925).toFixed(2)).toBe('34.92');
    expect(fixed(ofNumber(34.925), 2)).toBe('34.93');
    expect(fixed(ofNumber(1.005), 2)).toBe('1.01');
    expect(fixed(ofNumber(-1.005), 2)).toBe('-1.01');
    expect(fixed(ofNumber(0.1 + 0.2), 17)).toBe('0.30000000000000000');
    expect(fixed(decimal('1250'), -2)).toBe('1300');
    expect(stepsIn(decimal('2.01'), decimal('1'), 'up')).toBe(3n);
    expect(stepsIn(decimal('-2.5'), decimal('1'))).toBe(-3n);
  });

  test('refuse what is no number', () => {
    for (const text of ['', '.', 'x', '1.2.3', '1e9999']) expect(() => decimal(text), text).toThrow();
    expect(() => ofNumber(Number.NaN)).toThrow(/NaN/);
    expect(() => rational(1, 0)).toThrow(/1\/0/);
  });
});
