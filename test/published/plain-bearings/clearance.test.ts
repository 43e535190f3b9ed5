import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CLEARANCE_RULES, capShims, clearanceByRule, clearanceBySubtraction, clearanceShare } from '../../../src/methods/elements/index.ts';
import { rowsOf, runRows } from '../row.ts';
import { inch } from '../units.ts';

const rule = (id: string) => CLEARANCE_RULES.find((candidate) => candidate.id === id)!;
const thou = inch / 1000;

test('clearance of babbitted bearings by the published rules, on a shaft of two inches', () => {
  type Ask = { readonly id: string; readonly d: number; readonly end: 'least' | 'most' | 'service' };
  const SHEET = 'industry summary sheet of babbitt bearing clearances, vi.scribd.com/document/359468220';
  const row = (source: string, id: string, end: Ask['end'], printed: string) => rowsOf<Ask>(source, 'read', { id, d: 2, end }, [[`${id}, ${end}, in`, printed]]);
  runRows('babbitt clearances', [
    ...row(SHEET, 'general', 'least', '.003'), ...row(SHEET, 'general', 'most', '.004'), ...row(SHEET, 'general', 'service', '.008'),
    ...row(SHEET, 'slow-long', 'least', '.004'), ...row(SHEET, 'slow-long', 'service', '.008'),
    ...row(SHEET, 'motor-shop', 'least', '.005'), ...row(SHEET, 'motor-shop', 'most', '.007'),
    ...row('workshop rule, forum.hetclub.org/discussion/172786', 'workshop', 'least', '.002'), ...row('workshop rule, forum.hetclub.org/discussion/172786', 'workshop', 'most', '.0025'),
  ], ({ id, d, end }) => (end === 'service' ? rule(id).mostInService! * d : clearanceByRule(rule(id), d * inch)[end] / inch));
});

test('clearance by subtraction', () => {
  runRows('clearance by subtraction', rowsOf('vi.scribd.com/document/397529702', 'read', { bore: 5.009, shaft: 5 }, [['on the diameter, in', '.009']]), (x) => clearanceBySubtraction(x.bore * inch, x.shaft * inch) / inch);
  expect(clearanceShare(9 * thou, 5 * inch)).toBeCloseTo(0.0018, 12);
});

test('shims come out alike at both sides, each as thick as the cap is to come down', () => {
  // 8 thou on the diameter, 4 wanted, 10 in the pack: 4 from each side, 8 in all, 6 left.
  const shims = capShims(8 * thou, 4 * thou, 10 * thou);
  expect(shims.state).toBe('enough');
  expect(shims.removeEachSide / thou).toBeCloseTo(4, 9);
  expect(shims.removeInAll / thou).toBeCloseTo(8, 9);
  expect(shims.leftEachSide / thou).toBeCloseTo(6, 9);
  expect(capShims(8 * thou, 4 * thou, 3 * thou).state).toBe('not-enough-left');
  expect(capShims(3 * thou, 4 * thou, 3 * thou).state).toBe('tighter-than-wanted');
  expect(() => capShims(Number.NaN, 0, 0)).toThrow(RangeError);
  const length = fc.double({ min: 0, max: 1e-3, noNaN: true });
  fc.assert(fc.property(length, length, length, (now, wanted, pack) => {
    const answer = capShims(now, wanted, pack);
    // The cap comes down by what leaves each side, and what was there is still there.
    expect(now - answer.removeEachSide).toBeCloseTo(wanted, 15);
    expect(answer.leftEachSide + answer.removeEachSide).toBeCloseTo(pack, 15);
  }));
});
