import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { integrate } from '../../src/methods/integrate/index.ts';
import type { EventRule } from '../../src/methods/integrate/index.ts';

const g = 9.80665;
const falling = (y: Float64Array, d: Float64Array): void => {
  for (let i = 0; i < y.length; i += 2) {
    d[i] = y[i + 1]!;
    d[i + 1] = -g;
  }
};
const floor = (e: number, at = 0, name = 'floor'): EventRule => ({
  name,
  direction: -1,
  wall: true,
  guard: (y) => y[at]!,
  reset: (y) => y.map((v, i) => (i === at ? 0 : i === at + 1 ? -e * v : v)),
});
const tolerance = { relative: 1e-9, absolute: 1e-9 };

describe('a bouncing ball', () => {
  it('without loss: every bounce over 10 000 s is counted and it never falls below the floor', () => {
    const h = 50;
    const s = integrate({ slopes: falling, state: [h, 0], from: 0, to: 10_000, events: [floor(1)] }, { tolerance });
    const first = Math.sqrt((2 * h) / g);
    expect(s.code).toBe('reached-end');
    expect(s.events.length).toBe(Math.floor((10_000 - first) / (2 * first)) + 1);
    let lowest = Infinity;
    for (let t = 0; t < 10_000; t += 0.377) lowest = Math.min(lowest, s.trajectory.at(t)[0]!);
    const late = Math.max(...s.events.map((v, n) => Math.abs(v.time - (2 * n + 1) * first)));
    console.log(`bounces ${s.events.length}, lowest ${lowest.toExponential(1)} m, latest ${late.toExponential(1)} s out`);
    expect(lowest).toBeGreaterThan(-1e-9);
    expect(late).toBeLessThan(1e-6);
  });

  it('dropped 1 m on a still anvil with e = 0.5: rests after 1.354571 s, its hops halving', () => {
    // N. B. Tufillaro, T. Abbott and J. Reilly, An Experimental Approach to Nonlinear Dynamics and Chaos (1992),
    // section 1.2: the hops are a geometric series. Numbers worked from it with g = 9.81; six decimals, so half of the sixth.
    const fall981 = (y: Float64Array, d: Float64Array): void => { d[0] = y[1]!; d[1] = -9.81; };
    const s = integrate({ slopes: fall981, state: [1, 0], from: 0, to: 2, events: [floor(0.5)] }, { tolerance });
    expect(s.code).toBe('events-accumulate');
    expect(Math.abs(s.time - 1.354571)).toBeLessThan(0.5e-6);
    expect(Math.abs(s.events[0]!.time - 0.451524)).toBeLessThan(0.5e-6);
    let worst = 0;
    for (let n = 2; n < 15; n++) {
      const ratio = (s.events[n]!.time - s.events[n - 1]!.time) / (s.events[n - 1]!.time - s.events[n - 2]!.time);
      worst = Math.max(worst, Math.abs(ratio - 0.5));
    }
    console.log(`rest at ${s.time} s, worst hop ratio off by ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-6);
  });

  it('with a very dead floor is not lost through it, even when the hop is a thousandth of the step', () => {
    const s = integrate({ slopes: falling, state: [10, 0], from: 0, to: 4, events: [floor(1e-3)] }, { tolerance });
    expect(s.code).toBe('events-accumulate');
    expect(s.events.length).toBeGreaterThan(3);
    expect(s.state[0]!).toBeGreaterThan(-1e-9);
  });

  it('any height and any liveliness: hops come at the times of the series', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 20, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true }), (h, e) => {
        const s = integrate({ slopes: falling, state: [h, 0], from: 0, to: 30, events: [{ ...floor(e), stopAfter: 6 }] }, { tolerance });
        const fall = Math.sqrt((2 * h) / g);
        let t = fall;
        for (let n = 0; n < s.events.length; n++) {
          expect(Math.abs(s.events[n]!.time - t)).toBeLessThan(1e-7 * (1 + t));
          t += 2 * fall * e ** (n + 1);
        }
        expect(s.events.length).toBeGreaterThan(t > 29 ? 0 : 3);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});

describe('several events', () => {
  it('at the same instant are all taken, over and over', () => {
    const s = integrate(
      { slopes: falling, state: [2, 0, 2, 0, 2, 0], from: 0, to: 100, events: [floor(1, 0, 'a'), floor(1, 2, 'b'), floor(1, 4, 'c')] },
      { tolerance },
    );
    const fall = Math.sqrt(4 / g);
    const bounces = Math.floor((100 - fall) / (2 * fall)) + 1;
    for (const name of ['a', 'b', 'c']) expect(s.events.filter((v) => v.name === name).length).toBe(bounces);
    for (let n = 0; n < s.events.length; n += 3) expect(s.events[n + 2]!.time - s.events[n]!.time).toBeLessThan(1e-9);
  });

  it('in both directions, forward and backward in time', () => {
    const circle = (y: Float64Array, d: Float64Array): void => { d[0] = y[1]!; d[1] = -y[0]!; };
    const crossing: EventRule = { name: 'zero', direction: 0, guard: (y) => y[0]! };
    const up: EventRule = { name: 'up', direction: 1, guard: (y) => y[0]! };
    for (const sign of [1, -1]) {
      const s = integrate({ slopes: circle, state: [0, 1], from: 0, to: sign * 100.1, events: [crossing, up] }, { tolerance: { relative: 1e-11, absolute: 1e-11 } });
      const zeros = s.events.filter((v) => v.name === 'zero');
      expect(zeros.length).toBe(31);
      zeros.forEach((v, n) => expect(Math.abs(v.time - sign * (n + 1) * Math.PI)).toBeLessThan(1e-8));
      // Backward, x sets out downward and rises through zero at odd multiples of pi.
      expect(s.events.filter((v) => v.name === 'up').length).toBe(sign > 0 ? 15 : 16);
      expect(Math.abs(s.state[0]! - Math.sin(sign * 100.1))).toBeLessThan(1e-8);
    }
  });
});
