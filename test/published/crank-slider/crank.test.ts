import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crankSeries, crankSlider, seriesGreatestSpeedAngle, strokeOf } from '../../../src/methods/elements/index.ts';
import { findRoot } from '../../../src/methods/numerics/index.ts';
import { byFigure, digits, rowsOf, runRows } from '../row.ts';
import { degree, rpm } from '../units.ts';

describe('crank and slider against worked examples', () => {
  test('speed and acceleration at an angle', () => {
    const inputs = { r: 0.3, l: 1.5, n: 180, angle: 40 };
    type Gear = typeof inputs;
    const series = (x: Gear) => crankSeries(x.r, x.l, x.angle * degree, x.n * rpm);
    const exact = (x: Gear) => crankSlider({ crank: x.r, rod: x.l }, x.angle * degree, x.n * rpm);
    const still = (x: Gear): number => {
      const root = findRoot((angle) => crankSeries(x.r, x.l, angle, 1).acceleration, 0, Math.PI);
      return root.code === 'converged' ? root.x / degree : Number.NaN;
    };
    runRows('slider at an angle', [
      ...rowsOf('Khurmi and Gupta, Theory of Machines, ex. 15.4, p. 528', 'transcribed', inputs, [
        ['speed by series, m/s', '4.19'],
        // Printed 85.36 as well as, unrounded, 85.3559.
        ['acceleration by series, m/s²', '85.36'], ['angle of no acceleration, degrees', '79.27'], ['the same by its formula, degrees', '79.27'], ['the other, degrees', '280.73'],
      ]),
      ...rowsOf('the same, series worked again', 'recomputed', inputs, [['speed by series, m/s', '4.19177'], ['acceleration by series, m/s²', '85.3559']]),
      ...rowsOf('the same, exact closed form', 'recomputed', inputs, [['speed, m/s', '4.19643'], ['acceleration, m/s²', '85.5989']]),
    ], byFigure({
      'speed by series, m/s': (x) => series(x).velocity, 'acceleration by series, m/s²': (x) => series(x).acceleration, 'angle of no acceleration, degrees': still,
      'the same by its formula, degrees': (x) => seriesGreatestSpeedAngle(x.r, x.l) / degree, 'the other, degrees': (x) => 360 - still(x),
      'speed, m/s': (x) => -exact(x).velocity, 'acceleration, m/s²': (x) => -exact(x).acceleration,
    }));
  });

  test('greatest speed', () => {
    const inputs = { r: 0.3, l: 1, n: 200, angle: 75 };
    runRows('greatest speed of a slider', [
      ...rowsOf('Khurmi and Gupta, Theory of Machines, ex. 15.3, p. 527', 'transcribed', inputs, [['greatest speed by series, m/s', '6.54'], ['its angle, degrees', '75']]),
      ...rowsOf('the same, exact closed form at 75 degrees', 'recomputed', inputs, [['speed at the angle, m/s', '6.56146']]),
    ], byFigure({
      'greatest speed by series, m/s': (x) => crankSeries(x.r, x.l, seriesGreatestSpeedAngle(x.r, x.l), x.n * rpm).velocity, 'its angle, degrees': (x) => seriesGreatestSpeedAngle(x.r, x.l) / degree,
      'speed at the angle, m/s': (x) => -crankSlider({ crank: x.r, rod: x.l }, x.angle * degree, x.n * rpm).velocity,
    }));
  });

  test('inertia force', () => {
    const inputs = { r: 0.1, l: 0.4, omega: 52.4, mass: 180, angle: 60 };
    runRows('inertia force', [
      // The book rounds on the way to its 18.53; the graphical answer beside it is 18.78.
      ...rowsOf('Khurmi and Gupta, Theory of Machines, ex. 15.6', 'transcribed', inputs, [['by series, kN', '18.53', digits('18.53', 2)]]),
    ], byFigure({ 'by series, kN': (x) => (x.mass * crankSeries(x.r, x.l, x.angle * degree, x.omega).acceleration) / 1000 }));
  });
});

describe('laws of crank and slider', () => {
  const gears = fc.record({ crank: fc.double({ min: 0.02, max: 0.3, noNaN: true }), ratio: fc.double({ min: 1.5, max: 8, noNaN: true }), aside: fc.double({ min: -0.4, max: 0.4, noNaN: true }) })
    .map(({ crank, ratio, aside }) => ({ crank, rod: crank * ratio, offset: crank * aside }));
  const angle = fc.double({ min: -10, max: 10, noNaN: true });

  test('speed and acceleration are the slopes of position and speed, also while the crank gains speed', () => {
    let worst = 0;
    fc.assert(fc.property(gears, angle, fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -200, max: 200, noNaN: true }), (gear, theta, omega, alpha) => {
      const at = (t: number) => crankSlider(gear, theta + omega * t + 0.5 * alpha * t * t, omega + alpha * t, alpha);
      // Fourth-order central differences over a ten-thousandth of a radian or so.
      const h = 1e-3 / (1 + Math.abs(omega) + Math.sqrt(Math.abs(alpha)));
      const slope = (f: (t: number) => number) => (8 * (f(h) - f(-h)) - (f(2 * h) - f(-2 * h))) / (12 * h);
      const state = at(0);
      const speedScale = gear.crank * (1 + Math.abs(omega));
      const forceScale = gear.crank * (1 + omega ** 2 + Math.abs(alpha));
      const speedError = Math.abs(slope((t) => at(t).position) - state.velocity) / speedScale;
      const forceError = Math.abs(slope((t) => at(t).velocity) - state.acceleration) / forceScale;
      worst = Math.max(worst, speedError, forceError);
      expect(speedError).toBeLessThan(1e-7);
      expect(forceError).toBeLessThan(1e-7);
    }), { numRuns: 500 });
    console.log(`crank and slider against numeric slopes: worst ${worst.toExponential(2)} of the scale of speed or acceleration`);
  });

  test('the rod keeps its length', () => {
    fc.assert(fc.property(gears, angle, (gear, theta) => {
      const { position, rodAngle } = crankSlider(gear, theta, 1);
      const along = position - gear.crank * Math.cos(theta);
      const aside = gear.crank * Math.sin(theta) - gear.offset;
      expect(Math.hypot(along, aside) / gear.rod).toBeCloseTo(1, 12);
      expect(Math.tan(rodAngle)).toBeCloseTo(aside / along, 9);
    }));
  });

  test('the stroke is what the slider travels, and twice the crank without offset', () => {
    fc.assert(fc.property(gears, (gear) => {
      expect(strokeOf({ crank: gear.crank, rod: gear.rod })).toBeCloseTo(2 * gear.crank, 12);
      let most = Number.NEGATIVE_INFINITY;
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i < 7200; i += 1) {
        const { position } = crankSlider(gear, (i * Math.PI) / 3600, 0);
        most = Math.max(most, position);
        least = Math.min(least, position);
      }
      expect(Math.abs(most - least - strokeOf(gear))).toBeLessThan(2e-6 * gear.crank);
    }), { numRuns: 30 });
  });

  test('without offset the motion is even about dead centre; with it the mirror image is the offset to the other side', () => {
    fc.assert(fc.property(gears, angle, (gear, theta) => {
      const here = crankSlider(gear, theta, 3);
      const mirrored = crankSlider({ ...gear, offset: -gear.offset }, -theta, 3);
      expect(mirrored.position).toBeCloseTo(here.position, 12);
      expect(mirrored.velocity).toBeCloseTo(-here.velocity, 10);
      expect(mirrored.acceleration).toBeCloseTo(here.acceleration, 9);
    }));
  });

  test('the series nears the exact motion as the rod lengthens, by the cube of the ratio', () => {
    const gap = (n: number): number => {
      let worst = 0;
      for (let i = 0; i < 360; i += 1) worst = Math.max(worst, Math.abs(crankSeries(1, n, i * degree, 1).velocity + crankSlider({ crank: 1, rod: n }, i * degree, 1).velocity));
      return worst;
    };
    expect(Math.log2(gap(10) / gap(20))).toBeCloseTo(3, 1);
    expect(() => crankSlider({ crank: 1, rod: 1 }, 0, 1)).toThrow(RangeError);
  });
});
