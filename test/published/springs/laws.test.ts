import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  activeMass, bergstrasserFactor, coilsForRate, forceAtStress, helicalRate, helicalStress, nestUnderLoad, orderHelicalSpring, surgeFrequency, wahlFactor, wireForLoad,
} from '../../../src/methods/elements/index.ts';

const wire = fc.double({ min: 1e-3, max: 0.03, noNaN: true });
const index = fc.double({ min: 3, max: 20, noNaN: true });
const coils = fc.double({ min: 2, max: 30, noNaN: true });
const close = (a: number, b: number, share = 1e-9): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.max(Math.abs(a), Math.abs(b)));

describe('laws of helical springs', () => {
  test('a formula turned round gives back what went in', () => {
    fc.assert(fc.property(wire, index, coils, fc.double({ min: 1, max: 1e5, noNaN: true }), (d, C, n, F) => {
      close(coilsForRate(80e9, d, C * d, helicalRate(80e9, d, C * d, n)), n);
      const K = wahlFactor(C);
      close(forceAtStress(helicalStress(F, C * d, d, K), C * d, d, K), F);
      close(wireForLoad(F, C, helicalStress(F, C * d, d, K), K), d);
    }));
  });
  test('rate goes with the fourth power of the wire and against the cube of the coil', () => {
    fc.assert(fc.property(wire, index, coils, (d, C, n) => {
      close(helicalRate(80e9, 2 * d, 4 * C * d, n), (16 / 64) * helicalRate(80e9, d, C * d, n));
    }));
  });
  test('surge is half the root of rate over active mass', () => {
    fc.assert(fc.property(wire, index, coils, (d, C, n) => {
      close(surgeFrequency(d, C * d, n, 80e9, 7850), 0.5 * Math.sqrt(helicalRate(80e9, d, C * d, n) / activeMass(d, C * d, n, 7850)));
    }));
  });
  test('the two curvature factors fall with the index, tend to 1 and stay within 2 % from index 4 on', () => {
    fc.assert(fc.property(fc.double({ min: 4, max: 1000, noNaN: true }), (C) => {
      for (const factor of [wahlFactor, bergstrasserFactor]) {
        expect(factor(C)).toBeGreaterThan(1);
        expect(factor(C * 1.01)).toBeLessThan(factor(C));
      }
      close(wahlFactor(C), bergstrasserFactor(C), 0.02);
    }));
    expect(wahlFactor(1e9)).toBeCloseTo(1, 8);
    expect(bergstrasserFactor(1e9)).toBeCloseTo(1, 8);
    expect(() => wahlFactor(1)).toThrow(RangeError);
    expect(() => bergstrasserFactor(Number.NaN)).toThrow(RangeError);
  });
  test('the loads of a nest add up, in any order, whichever springs carry', () => {
    const spring = fc.record({ rate: fc.double({ min: 1e3, max: 1e6, noNaN: true }), freeLength: fc.double({ min: 0.05, max: 0.3, noNaN: true }) });
    fc.assert(fc.property(fc.array(spring, { minLength: 1, maxLength: 4 }), fc.double({ min: 0, max: 1e5, noNaN: true }), (springs, load) => {
      const nest = nestUnderLoad(springs, load);
      expect(Math.abs(nest.shares.reduce((sum, share) => sum + share.load, 0) - load)).toBeLessThanOrEqual(1e-7 * (load + 1));
      const turned = nestUnderLoad([...springs].reverse(), load);
      expect(Math.abs(turned.length - nest.length)).toBeLessThanOrEqual(1e-12 + 1e-9 * Math.abs(nest.length));
      nest.shares.forEach((share, i) => expect(share.load > 0).toBe(nest.length < springs[i]!.freeLength));
    }));
  });
  test('a spring to order holds its load within the stress, and says so when the wire is not to be had', () => {
    const wanted = { rate: 4e4, index: 6, stress: 545e6, shearModulus: 81.37e9, ends: 'cold-ground', gap: 1e-3, wires: [5e-3, 7e-3, 10e-3] } as const;
    fc.assert(fc.property(fc.double({ min: 100, max: 2500, noNaN: true }), (load) => {
      const made = orderHelicalSpring({ ...wanted, load });
      if (made.state !== 'known') throw new Error('the wire can be had');
      expect(helicalStress(load, made.meanDiameter, made.wire, wahlFactor(made.meanDiameter / made.wire))).toBeLessThanOrEqual(545e6 * (1 + 1e-12));
      close(made.freeLength - made.deflection - made.solidLength, (made.totalCoils - 1) * 1e-3, 1e-6);
    }));
    expect(orderHelicalSpring({ ...wanted, load: 1e5 }).state).toBe('does-not-apply');
  });
});
