import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crankSlider, toggleRatio, toggleRatioByLengths } from '../../../src/methods/elements/index.ts';
import { byFigure, rowsOf, runRows } from '../row.ts';

test('toggle with equal arms', () => {
  const inputs = { F: 883, a: 1983, h: 258 };
  const ways = byFigure<typeof inputs>({ 'force, N': (x) => x.F * toggleRatioByLengths(x.a / 1000, x.h / 1000), ratio: (x) => toggleRatioByLengths(x.a / 1000, x.h / 1000) });
  runRows('toggle', [
    ...rowsOf('engineeringtoolbox.com/toggle-joint-d_2077.html', 'read', inputs, [['force, N', '3393'], ['ratio', '3.8']]),
    ...rowsOf('the same, worked again', 'recomputed', inputs, [['force, N', '3393.4']]),
  ], ways);
  // A formula of F/tan α, printed in places, gives twice as much; ours must be half of it.
  expect(883 * toggleRatioByLengths(1.983, 0.258)).toBeCloseTo((883 * 1.983) / 0.258 / 2, 9);
  expect(toggleRatio(0.2)).toBeCloseTo(0.5 / Math.tan(0.2), 14);
});

const lean = fc.double({ min: 0.01, max: 1.5, noNaN: true });

test('the work put in at the pin comes out along the line', () => {
  // Arms of unit length, the middle pin guided on a cross line: P ds = F dh, with the geometry alone.
  fc.assert(fc.property(lean, (alpha) => {
    const span = (h: number): number => 2 * Math.sqrt(1 - h ** 2);
    const h = Math.sin(alpha);
    const d = 1e-5 * Math.min(h, 1 - h);
    const gain = -(span(h + d) - span(h - d)) / (2 * d);
    expect((toggleRatio(alpha) * gain) / 1).toBeCloseTo(1, 6);
  }));
});

test('unequal arms, by statics and by the crank', () => {
  // Unequal leans by statics at the pin: both arms carry the same force along the line.
  fc.assert(fc.property(lean, lean, (alpha, beta) => {
    const along = toggleRatio(alpha, beta);
    expect(along * Math.tan(alpha) + along * Math.tan(beta)).toBeCloseTo(1, 12);
    expect(toggleRatio(beta, alpha)).toBe(along);
  }));
  // A crank square to a rod of equal length ratio is the same two arms: speed of the slider over speed of the pin across the line.
  const gear = { crank: 0.3, rod: 0.5 };
  const theta = 0.4;
  const { velocity, rodAngle } = crankSlider(gear, theta, 1);
  expect(-velocity / (gear.crank * Math.cos(theta)) / (Math.tan(theta) + Math.tan(rodAngle))).toBeCloseTo(1, 12);
  expect(() => toggleRatio(0)).toThrow(RangeError);
});
