import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedTime, GREATEST_PEAK_DECIBELS, levelsTogether, NIOSH, noiseDose, OSHA, timeWeightedAverage, type ExposureRule } from '../../../src/methods/power/index.ts';
import { digits, rowsOf, runRows, type Row } from '../row.ts';

const hour = 3600;
const minute = 60;

test('allowed times', () => {
  interface At { readonly level: number; readonly rule: ExposureRule; readonly unit: number }
  const table = (source: string, status: Row<At>['status'], rule: ExposureRule, unit: number, printed: readonly (readonly [number, string])[]): Row<At>[] =>
    printed.map(([level, text]) => ({ source, status, figure: `${level} dB(A), ${unit === hour ? 'h' : 'min'}`, inputs: { level, rule, unit }, expected: Number(text), tolerance: digits(text) }));
  // This table halves for twice the energy, 3.0103 dB, and not for 3 dB: it prints 0.64 h at 98 dB(A), where 3 dB would give 0.63.
  const equalEnergy87: ExposureRule = { id: 'equal energy from 87', criterion: 87, exchange: 10 * Math.log10(2), threshold: 0, source: 'njc-cnm.gc.ca, directive d7, s813' };
  runRows('allowed times of exposure', [
    // The appendix exists in two page versions, 21.1 and 21.2 h at 83 dB; the formula gives 21.11.
    ...table('29 CFR 1910.95 appendix A, table G-16a', 'read', OSHA, hour, [
      [80, '32'], [83, '21.1'], [85, '16'], [90, '8'], [92, '6.1'], [95, '4'], [97, '3.0'], [100, '2'], [102, '1.5'], [105, '1'], [110, '.5'], [115, '.25'], [120, '.125'], [130, '.031'],
    ]),
    ...table('NIOSH recommended limit, cdc.gov noise page and engineeringtoolbox.com table', 'read', NIOSH, hour, [[82, '16'], [85, '8'], [88, '4'], [91, '2'], [94, '1']]),
    ...table('NIOSH recommended limit, cdc.gov noise page and engineeringtoolbox.com table', 'read', NIOSH, minute, [[97, '30'], [100, '15'], [103, '7.5'], [106, '3.75']]),
    ...table(equalEnergy87.source, 'read', equalEnergy87, hour, [[83, '20'], [84, '16'], [85, '13'], [86, '10'], [87, '8.0'], [88, '6.4'], [89, '5.0'], [90, '4.0'], [91, '3.2'], [92, '2.5'], [93, '2.0'], [94, '1.6'], [95, '1.3'], [96, '1.0'], [97, '0.80'], [98, '0.64'], [99, '0.50'], [100, '0.40'], [101, '0.32']]),
  ], ({ level, rule, unit }) => allowedTime(level, rule) / unit);
});

test('dose of a day and the level that stands for it', () => {
  const eight = [{ level: 92, time: 8 * hour }];
  runRows('noise dose', [
    // The worked example takes the table's rounded 6.1 h.
    ...rowsOf('29 CFR 1910.95 appendix A, worked example', 'read', 100 * (8 / 6.1), [['8 h at 92 dB with 6.1 h from the table, %', '131']]),
    ...rowsOf('29 CFR 1910.95 appendix A, formula', 'recomputed', 100 * noiseDose(eight, OSHA), [['8 h at 92 dB, %', '131.95']]),
    ...rowsOf('29 CFR 1910.95 appendix A, table A-1', 'read', timeWeightedAverage(1.5, OSHA)!, [['level for 150 %, dB', '92.92']]),
  ], (actual) => actual);
  expect(timeWeightedAverage(noiseDose(eight, OSHA), OSHA)).toBeCloseTo(92, 9);
  expect(timeWeightedAverage(0, OSHA)).toBeUndefined();
  expect(noiseDose([{ level: 79.9, time: 24 * hour }], OSHA)).toBe(0);
  expect(GREATEST_PEAK_DECIBELS).toBe(140);
  expect(levelsTogether([95, 95])).toBeCloseTo(98.01, 2);
});

describe('laws of the dose', () => {
  const level = fc.double({ min: 70, max: 130, noNaN: true });
  const time = fc.double({ min: 0, max: 8 * hour, noNaN: true });
  const day = fc.array(fc.record({ level, time }), { maxLength: 8 });
  const rule = fc.constantFrom(OSHA, NIOSH);
  test('doses add, in any order, and a stretch may be cut in two', () => {
    fc.assert(fc.property(day, day, rule, fc.double({ min: 0, max: 1, noNaN: true }), (first, second, by, cut) => {
      const whole = noiseDose([...second, ...first], by);
      const close = (other: number): void => expect(Math.abs(other - whole)).toBeLessThanOrEqual(1e-9 * (1 + whole));
      close(noiseDose(first, by) + noiseDose(second, by));
      close(noiseDose([...first, ...second].flatMap((one) => [{ ...one, time: cut * one.time }, { ...one, time: (1 - cut) * one.time }]), by));
    }), { numRuns: 300, seed: 31 });
  });
  test('the allowed time is a whole dose, and one exchange step up halves it', () => {
    fc.assert(fc.property(fc.double({ min: 80, max: 130, noNaN: true }), rule, (at, by) => {
      expect(noiseDose([{ level: at, time: allowedTime(at, by) }], by)).toBeCloseTo(1, 9);
      expect(allowedTime(at + by.exchange, by) / allowedTime(at, by)).toBeCloseTo(0.5, 9);
      expect(allowedTime(at, NIOSH)).toBeLessThan(allowedTime(at, OSHA));
    }), { numRuns: 200, seed: 32 });
  });
});
