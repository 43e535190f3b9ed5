import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cantileverRate, energyStored, flatBarSecondMoment, leafDeflection, leafRate, leafStress, leafThickness, restingBeamRate } from '../../../src/methods/elements/index.ts';
import { byFigure, rowsOf, runRows } from '../row.ts';
import { GPa, MPa, inch, lbf, mm, psi } from '../units.ts';

test('semi-elliptic pack, not nipped', () => {
  const inputs = { nf: 2, ng: 10, L: 600, P: 15000, b: 60, t: 12, E: 207, stress: 1500 / 2.5 };
  runRows('semi-elliptic pack', rowsOf('Bhandari, Design of Machine Elements, ex. 10.25', 'transcribed', inputs, [['least thickness, mm', '11.18'], ['deflection, mm', '69.6767']]), byFigure({
    'least thickness, mm': (x) => leafThickness(x.nf + x.ng, x.L * mm, x.b * mm, x.P, x.stress * MPa) / mm,
    'deflection, mm': (x) => leafDeflection({ fullLeaves: x.nf, graduatedLeaves: x.ng, reach: x.L * mm, width: x.b * mm, thickness: x.t * mm, elasticModulus: x.E * GPa }, x.P) / mm,
  }));
});

test('plate held at one end', () => {
  const inputs = { b: 12, h: 1, L: 72, deflection: 4, E: 10e6 };
  const rate = (x: typeof inputs) => cantileverRate(x.E * psi, flatBarSecondMoment(x.b * inch, x.h * inch), x.L * inch);
  runRows('plate held at one end', rowsOf('Wentzell, Machine Design, ex. 8.5 and 8.6, p. 166', 'transcribed', inputs, [
    ['force, lbf', '321.5'], ['rate, lbf/in', '80.38'],
    // The book rounds the force to 322 lbf first: half a pound over half of 4 in, and its own last place.
    ['energy, in lbf', '644', { absolute: 1.5 }],
  ]), byFigure({
    'force, lbf': (x) => (rate(x) * x.deflection * inch) / lbf, 'rate, lbf/in': (x) => (rate(x) * inch) / lbf, 'energy, in lbf': (x) => energyStored(rate(x), x.deflection * inch) / (inch * lbf),
  }));
});

const pack = (fullLeaves: number, graduatedLeaves: number) => ({ fullLeaves, graduatedLeaves, reach: 0.5, width: 0.06, thickness: 0.01, elasticModulus: 207e9 });

test('a pack of graduated leaves gives exactly half as much again as one of full leaves', () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 20 }), fc.double({ min: 1, max: 1e5, noNaN: true }), (n, P) => {
    // Standard beam theory, from memory: triangle 6 P L³/(E n b t³), uniform bar 4 P L³/(E n b t³).
    expect(leafDeflection(pack(0, n), P) / leafDeflection(pack(n, 0), P)).toBeCloseTo(1.5, 14);
    expect(leafDeflection(pack(0, n), P) / ((6 * P * 0.5 ** 3) / (207e9 * n * 0.06 * 0.01 ** 3))).toBeCloseTo(1, 13);
    expect(leafDeflection(pack(n, 0), P) / (P / cantileverRate(207e9, n * flatBarSecondMoment(0.06, 0.01), 0.5))).toBeCloseTo(1, 13);
  }));
});

test('two cantilevers back to back are one beam resting at both ends', () => {
  const I = flatBarSecondMoment(0.06, 0.01);
  expect(restingBeamRate(207e9, I, 1) / (2 * cantileverRate(207e9, I, 0.5))).toBeCloseTo(1, 14);
  expect(leafRate(pack(1, 0)) / restingBeamRate(207e9, I, 1)).toBeCloseTo(1, 14);
});

test('stress: full leaves carry half as much again as graduated, and the moments add up', () => {
  fc.assert(fc.property(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 1, max: 12 }), (nf, ng) => {
    const stress = leafStress(pack(nf, ng), 1000);
    expect(stress.full / stress.graduated).toBeCloseTo(1.5, 14);
    expect((nf * stress.full + ng * stress.graduated) / ((nf + ng) * stress.shared)).toBeCloseTo(1, 13);
  }));
  expect(() => leafDeflection(pack(0, 0), 1000)).toThrow(RangeError);
});
