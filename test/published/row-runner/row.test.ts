import { describe, expect, test } from 'vitest';
import { compare, digits, runRows, type Row } from '../row.ts';

const row: Row<number> = { source: 'invented', status: 'recomputed', figure: 'twice the input', inputs: 2, expected: 4, tolerance: { relative: 0.01 } };

describe('the row runner', () => {
  test('takes half a unit of the last printed place', () => {
    const width = (printed: string): number => (digits(printed) as { absolute: number }).absolute;
    expect(width('41.203')).toBeCloseTo(0.0005, 9);
    expect(width('2500')).toBeCloseTo(0.5, 6);
    expect(width('.0446')).toBeCloseTo(0.00005, 12);
    expect(width('1.6e-3')).toBeCloseTo(0.00005, 12);
    expect(() => digits('about 4')).toThrow();
    expect(() => digits('')).toThrow();
  });

  test('never lets a figure through that is not finite', () => {
    for (const actual of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(compare({ ...row, tolerance: { absolute: Number.MAX_VALUE } }, actual).holds).toBe(false);
      expect(() => runRows('not finite', [row], () => actual)).toThrow();
    }
  });

  test('fails a row outside its tolerance and holds one inside', () => {
    expect(() => runRows('outside', [row], (x) => 2.03 * x)).toThrow();
    expect(runRows('inside', [row], (x) => 2.01 * x)[0]!.holds).toBe(true);
    expect(() => runRows('empty', [] as Row<number>[], (x) => x)).toThrow();
    expect(() => runRows('no tolerance', [{ ...row, tolerance: { absolute: Number.NaN } }], (x) => 2 * x)).toThrow();
  });
});
