import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findMinimum, findRoot, interpolate, leastSquares, median, monotoneCubic, theilSen } from '../../../src/methods/numerics/index.ts';

const fitted = <T extends { readonly code: string }>(outcome: T): Extract<T, { readonly code: 'fitted' }> => {
  if (outcome.code !== 'fitted') throw new Error(`A fit was expected: ${JSON.stringify(outcome)}`);
  return outcome as Extract<T, { readonly code: 'fitted' }>;
};

describe('roots', () => {
  test('known roots to the last digits, in few steps', () => {
    const cases: readonly (readonly [string, (x: number) => number, number, number, number])[] = [
      // Dottie number and Wallis's cubic.
      ['cos x = x', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607], ['x³ - 2x - 5', (x) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
      ['steep', (x) => Math.exp(20 * x) - 2, -1, 1, Math.LN2 / 20], ['flat', (x) => (x - 0.3) ** 9, 0, 1, 0.3],
    ];
    for (const [name, f, low, high, root] of cases) {
      const found = findRoot(f, low, high);
      if (found.code !== 'converged') throw new Error(`${name}: ${found.code}`);
      expect(Math.abs(found.x - root), name).toBeLessThan(name === 'flat' ? 1e-3 : 4e-16 * Math.max(1, root));
      console.log(`root of ${name}: ${found.iterations} steps, off by ${Math.abs(found.x - root).toExponential(1)}`);
    }
  });
  test('a monotone function is met whichever way round the bracket is given', () => {
    const value = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(fc.property(value, fc.double({ min: 0.1, max: 3, noNaN: true }), fc.boolean(), (root, bend, turned) => {
      const f = (x: number) => (x - root) + bend * (x ** 3 - root ** 3);
      const found = turned ? findRoot(f, 6, -6) : findRoot(f, -6, 6);
      if (found.code !== 'converged') throw new Error(found.code);
      expect(Math.abs(found.x - root)).toBeLessThan(1e-12);
    }));
  });
  test('no bracket, no number and no patience are answers', () => {
    expect(findRoot((x) => x * x + 1, -1, 1)).toEqual({ code: 'no-bracket', atLow: 2, atHigh: 2 });
    expect(findRoot((x) => (x > 0.2 && x < 0.9 ? Number.NaN : x - 0.5), 0, 1).code).toBe('not-finite');
    expect(findRoot((x) => Math.cos(x) - x, 0, 1, { mostIterations: 2 }).code).toBe('iteration-limit');
    expect(findRoot((x) => x, 0, 1)).toMatchObject({ code: 'converged', x: 0 });
  });
});

test('minimum of a valley', () => {
  fc.assert(fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (place) => {
    const found = findMinimum((x) => Math.abs(x - place) + (x - place) ** 2, -2, 2, 1e-9);
    if (found.code !== 'converged') throw new Error(found.code);
    expect(Math.abs(found.x - place)).toBeLessThan(1e-9);
  }));
  expect(findMinimum((x) => x * x, -1, 1, 1e-9, 3).code).toBe('iteration-limit');
  expect(findMinimum(() => Number.NaN, -1, 1, 1e-9).code).toBe('not-finite');
});

describe('tables', () => {
  const table = fc.array(fc.tuple(fc.double({ min: 0.01, max: 2, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true })), { minLength: 2, maxLength: 9 }).map((steps) => {
    let x = 0;
    let y = -3;
    return steps.map(([dx, dy]) => ({ x: (x += dx), y: (y += dy) }));
  });
  test('both curves go through the rows, and rise wherever the table rises', () => {
    fc.assert(fc.property(table, (rows) => {
      const xs = rows.map(({ x }) => x);
      const ys = rows.map(({ y }) => y);
      const smooth = monotoneCubic(xs, ys);
      rows.forEach(({ x, y }) => {
        expect(smooth(x)).toBeCloseTo(y, 12);
        expect(interpolate(xs, ys, x)).toBeCloseTo(y, 12);
      });
      let before = Number.NEGATIVE_INFINITY;
      for (let i = 0; i <= 300; i += 1) {
        const x = xs[0]! - 0.1 + ((xs[xs.length - 1]! - xs[0]! + 0.2) * i) / 300;
        expect(smooth(x)).toBeGreaterThanOrEqual(before - 1e-12);
        before = smooth(x);
      }
      expect(interpolate(xs, ys, -100)).toBe(ys[0]);
      expect(interpolate(xs, ys, 100)).toBe(ys[ys.length - 1]);
    }));
  });
  test('a straight line comes back, and a smooth one to the third order and better', () => {
    const line = monotoneCubic([0, 1, 3, 4], [1, 3, 7, 9]);
    for (const x of [0.2, 1.7, 3.9]) expect(line(x)).toBeCloseTo(1 + 2 * x, 12);
    const error = (n: number): number => {
      const xs = Array.from({ length: n + 1 }, (_, i) => i / n);
      const curve = monotoneCubic(xs, xs.map(Math.exp));
      let worst = 0;
      for (let i = 0; i <= 1000; i += 1) worst = Math.max(worst, Math.abs(curve(i / 1000) - Math.exp(i / 1000)));
      return worst;
    };
    const order = Math.log2(error(16) / error(32));
    console.log(`smooth curve through exp: order ${order.toFixed(2)}`);
    expect(order).toBeGreaterThan(2.7);
  });
  test('a table must rise and a question must be a number', () => {
    expect(() => interpolate([0, 0], [1, 2], 0)).toThrow(RangeError);
    expect(() => interpolate([0, 1], [1], 0)).toThrow(RangeError);
    expect(() => interpolate([0, 1], [1, 2], Number.NaN)).toThrow(RangeError);
    expect(() => monotoneCubic([0], [1])).toThrow(RangeError);
  });
});

describe('fits', () => {
  test('a straight line worked by hand: x 0 1 2 3, y 1 3 2 5', () => {
    const fit = fitted(leastSquares([0, 1, 2, 3].map((x) => [1, x]), [1, 3, 2, 5]));
    expect(fit.coefficients[0]).toBeCloseTo(1.1, 13);
    expect(fit.coefficients[1]).toBeCloseTo(1.1, 13);
    expect(fit.residualSum).toBeCloseTo(2.7, 13);
    // s² = 1.35; var(b) = s²/5, var(a) = s² (1/4 + 1.5²/5), cov = -s² 1.5/5.
    expect(fit.covariance[1]![1]).toBeCloseTo(1.35 / 5, 13);
    expect(fit.covariance[0]![0]).toBeCloseTo(1.35 * (0.25 + 2.25 / 5), 13);
    expect(fit.covariance[0]![1]).toBeCloseTo((-1.35 * 1.5) / 5, 13);
    expect(fit.freedom).toBe(2);
  });
  test('a steep polynomial keeps its digits', () => {
    // NIST Statistical Reference Datasets, Wampler1: fifth degree on 0 to 20, y exact, certified coefficients all 1 (from memory).
    const xs = Array.from({ length: 21 }, (_, i) => i);
    const fit = fitted(leastSquares(xs.map((x) => [1, x, x ** 2, x ** 3, x ** 4, x ** 5]), xs.map((x) => 1 + x + x ** 2 + x ** 3 + x ** 4 + x ** 5)));
    const worst = Math.max(...fit.coefficients.map((value) => Math.abs(value - 1)));
    console.log(`Wampler1: worst coefficient off by ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-8);
  });
  test('weights count as repeated rows, and columns that depend on each other are refused', () => {
    const xs = [0, 1, 2, 4];
    const ys = [1, 2.2, 2.8, 5.1];
    const weighted = fitted(leastSquares(xs.map((x) => [1, x]), ys, [1, 3, 2, 1]));
    const repeated = fitted(leastSquares([0, 1, 1, 1, 2, 2, 4].map((x) => [1, x]), [1, 2.2, 2.2, 2.2, 2.8, 2.8, 5.1], [1, 1, 1, 1, 1, 1, 1]));
    weighted.coefficients.forEach((value, i) => expect(value).toBeCloseTo(repeated.coefficients[i]!, 12));
    weighted.covariance.flat().forEach((value, i) => expect(value).toBeCloseTo(repeated.covariance.flat()[i]!, 12));
    expect(leastSquares(xs.map((x) => [1, x, 2 * x - 1]), ys)).toEqual({ code: 'rank-deficient', column: 2 });
    expect(() => leastSquares([[1, 2]], [1])).toThrow(RangeError);
  });
  test('a robust line does not move for a quarter of wild readings', () => {
    fc.assert(fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 4, maxLength: 4 }), (slope, wild) => {
      const xs = Array.from({ length: 20 }, (_, i) => i);
      const ys = xs.map((x) => 5 + slope * x);
      [3, 8, 13, 18].forEach((place, i) => { ys[place] = wild[i]!; });
      const line = fitted(theilSen(xs, ys));
      expect(line.slope).toBeCloseTo(slope, 9);
      expect(line.intercept).toBeCloseTo(5, 8);
    }));
    expect(theilSen([1, 1], [2, 3]).code).toBe('too-few-places');
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
  });
});
