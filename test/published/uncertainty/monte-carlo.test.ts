import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monteCarlo, propagate, triangleOf, type Distribution } from '../../../src/methods/chance/index.ts';
import { runRows, type Row } from '../row.ts';

const sum = (x: number[]): number => x.reduce((total, one) => total + one, 0);
const ROOT_THREE = Math.sqrt(3);
const rectangular = (deviation: number): Distribution => ({ kind: 'uniform', from: -ROOT_THREE * deviation, to: ROOT_THREE * deviation });
const normal = (deviation: number): Distribution => ({ kind: 'normal', mean: 0, deviation });

describe('additive model, JCGM 101:2008, 9.2', () => {
  interface Model {
    readonly inputs: readonly Distribution[];
    readonly quantity: 'uncertainty' | 'half-width' | 'shortest half-width';
  }
  test('a million draws give the published intervals', () => {
    const four = [1, 1, 1, 1];
    const row = (clause: string, inputs: readonly Distribution[], quantity: Model['quantity'], expected: number, absolute: number): Row<Model> => ({
      source: `JCGM 101:2008, ${clause}`, status: 'from memory', figure: quantity, inputs: { inputs, quantity }, expected, tolerance: { absolute },
    });
    const normals = four.map(normal);
    const rectangles = four.map(rectangular);
    const dominated = [1, 1, 1, 10].map(rectangular);
    // Tolerances: half the last printed digit, plus three standard deviations of an end of the interval at 10^6 draws (about 0.004 here, 0.02 where one rectangle dominates).
    const cache = new Map<readonly Distribution[], ReturnType<typeof monteCarlo>>();
    runRows('Monte Carlo of the additive model', [
      row('9.2.2', normals, 'uncertainty', 2, 0.01), row('9.2.2', normals, 'half-width', 3.92, 0.017),
      row('9.2.3', rectangles, 'uncertainty', 2, 0.01), row('9.2.3', rectangles, 'half-width', 3.88, 0.017), row('9.2.3', rectangles, 'shortest half-width', 3.88, 0.017),
      row('9.2.4', dominated, 'uncertainty', 10.15, 0.025), row('9.2.4', dominated, 'half-width', 17, 0.11), row('9.2.4', dominated, 'half-width', 17.01, 0.065),
    ], ({ inputs, quantity }) => {
      if (!cache.has(inputs)) cache.set(inputs, monteCarlo(sum, inputs, { seed: 1, draws: 1_000_000 }));
      const { uncertainty, symmetric, shortest } = cache.get(inputs)!;
      if (quantity === 'uncertainty') return uncertainty;
      const { low, high } = quantity === 'half-width' ? symmetric : shortest;
      return (high - low) / 2;
    });
  });

  test('the law of propagation overstates the interval where a rectangle dominates: 19.9 for 17.0', () => {
    const { uncertainty } = propagate(sum, [1, 1, 1, 10].map((one) => ({ value: 0, uncertainty: one })));
    const rows: Row<number>[] = [
      { source: 'JCGM 101:2008, 9.2.4', status: 'from memory', figure: 'u', inputs: uncertainty, expected: 10.15, tolerance: { absolute: 0.005 } },
      { source: 'JCGM 101:2008, 9.2.4', status: 'from memory', figure: 'half-width by propagation', inputs: 1.959964 * uncertainty, expected: 19.9, tolerance: { absolute: 0.05 } },
      { source: 'JCGM 101:2008, 9.2.4', status: 'recomputed', figure: 'half-width by propagation', inputs: 1.959964 * uncertainty, expected: 19.89, tolerance: { absolute: 0.005 } },
    ];
    runRows('propagation in the additive model', rows, (actual) => actual);
  });
});

test('where the formula is straight, Monte Carlo tends to the law of propagation', () => {
  const input = fc.record({ slope: fc.double({ min: -5, max: 5, noNaN: true }), mean: fc.double({ min: -50, max: 50, noNaN: true }), deviation: fc.double({ min: 0.1, max: 10, noNaN: true }), square: fc.boolean() });
  fc.assert(
    fc.property(fc.array(input, { minLength: 1, maxLength: 4 }), fc.integer({ min: 0, max: 1e9 }), (inputs, seed) => {
      fc.pre(inputs.some((one) => Math.abs(one.slope) > 0.1));
      const formula = (x: number[]): number => x.reduce((total, one, i) => total + inputs[i]!.slope * one, 3);
      const straight = propagate(formula, inputs.map(({ mean, deviation }) => ({ value: mean, uncertainty: deviation })));
      const draws = 20_000;
      const drawn = monteCarlo(formula, inputs.map(({ mean, deviation, square }): Distribution => (square ? { kind: 'uniform', from: mean - ROOT_THREE * deviation, to: mean + ROOT_THREE * deviation } : { kind: 'normal', mean, deviation })), { seed, draws })!;
      // Six standard deviations of a mean and of a deviation.
      expect(Math.abs(drawn.value - straight.value)).toBeLessThan((6 * straight.uncertainty) / Math.sqrt(draws));
      expect(Math.abs(drawn.uncertainty / straight.uncertainty - 1)).toBeLessThan(6 / Math.sqrt(2 * draws));
      expect(drawn.outside).toBe(0);
    }),
    { numRuns: 40, seed: 11 },
  );
});

test('correlated draws show the correlations asked for, and impossible ones are refused', () => {
  const inputs: Distribution[] = [{ kind: 'normal', mean: 3, deviation: 2 }, { kind: 'normal', mean: -1, deviation: 0.5 }];
  const correlations = [[1, -0.7], [-0.7, 1]];
  const straight = propagate(sum, [{ value: 3, uncertainty: 2 }, { value: -1, uncertainty: 0.5 }], correlations);
  const drawn = monteCarlo(sum, inputs, { seed: 4, correlations })!;
  expect(Math.abs(drawn.uncertainty / straight.uncertainty - 1)).toBeLessThan(0.008);
  expect(triangleOf([[1, 0.9, -0.9], [0.9, 1, 0.9], [-0.9, 0.9, 1]])).toBeUndefined();
  expect(triangleOf([[1, 1], [1, 1]])).toEqual([[1], [1, 0]]);
});

test('draws outside the formula are counted and left out; none at all is said', () => {
  const half = monteCarlo(([x]) => Math.sqrt(x!), [{ kind: 'uniform', from: -1, to: 1 }], { seed: 2, draws: 40_000 })!;
  expect(half.outside).toBeCloseTo(0.5, 1);
  expect(half.value).toBeCloseTo(2 / 3, 1);
  expect(monteCarlo(() => Number.NaN, [{ kind: 'certain', value: 1 }], { seed: 2, draws: 100 })).toBeUndefined();
});

test('the shortest interval of a one-sided quantity starts at its end', () => {
  const { shortest, symmetric } = monteCarlo(([x]) => x!, [{ kind: 'triangular', least: 0, likely: 0, most: 1 }], { seed: 3 })!;
  // P(x < t) = 1 - (1 - t)²: the shortest 95 % is 0 to 1 - sqrt(0.05).
  expect(shortest.low).toBeLessThan(0.002);
  expect(shortest.high).toBeCloseTo(1 - Math.sqrt(0.05), 2);
  expect(symmetric.low).toBeCloseTo(1 - Math.sqrt(0.975), 2);
  expect(symmetric.high).toBeCloseTo(1 - Math.sqrt(0.025), 2);
});
