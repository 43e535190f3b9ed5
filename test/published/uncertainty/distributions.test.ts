import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  betaQuantile, cdf, density, distributionProblems, draw, effectiveSampleSize, exponential, logarithm, moments, nextBelow, nextUniform, nextWord, normalCdf,
  normalQuantile, quantile, resampled, seeded, studentQuantile, weightedMoments, weightedQuantiles, weightsFromLogarithms, type Distribution,
} from '../../../src/methods/chance/index.ts';
import { runRows, type Row } from '../row.ts';

test('the generator is the published one', () => {
  // Ten words of the reference program xoshiro128starstar.c (version 1.1) from the state 1, 2, 3, 4.
  const published = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804];
  const generator = { a: 1, b: 2, c: 3, d: 4 };
  expect(published.map(() => nextWord(generator))).toEqual(published);
});

test('a seed gives the same draws, a copy replays them, streams differ', () => {
  const words = (seed: number, stream?: string): number[] => {
    const generator = seeded(seed, stream);
    return Array.from({ length: 4 }, () => nextWord(generator));
  };
  expect(words(7)).toEqual(words(7));
  expect(words(7)).not.toEqual(words(8));
  expect(words(7, 'likenesses')).not.toEqual(words(7, 'costs'));
  expect(words(7 + 2 ** 32)).not.toEqual(words(7));
  const generator = seeded(9);
  const copy = { ...generator };
  expect(nextUniform(generator)).toBe(nextUniform(copy));
  expect(() => seeded(-1)).toThrow('-1');
});

test('uniform draws fill their boxes evenly', () => {
  const generator = seeded(5);
  const boxes = Array.from({ length: 100 }, () => 0);
  for (let i = 0; i < 100_000; i++) boxes[Math.floor(100 * nextUniform(generator))]! += 1;
  const chiSquare = boxes.reduce((total, count) => total + (count - 1000) ** 2 / 1000, 0);
  // 99 degrees of freedom: 61 to 149 in all but one case of a thousand.
  expect(chiSquare).toBeGreaterThan(61);
  expect(chiSquare).toBeLessThan(149);
  expect(new Set(Array.from({ length: 200 }, () => nextBelow(generator, 6)))).toEqual(new Set([0, 1, 2, 3, 4, 5]));
});

test('logarithm and exponential agree with the engine to the last digits', () => {
  let worst = 0;
  for (let i = -7000; i <= 7000; i++) {
    const x = i / 10;
    worst = Math.max(worst, Math.abs(exponential(x) / Math.exp(x) - 1), x === 0 ? 0 : Math.abs(logarithm(Math.exp(x)) / x - 1));
  }
  console.log(`logarithm and exponential: worst relative difference from the engine's ${worst.toExponential(2)}`);
  expect(worst).toBeLessThan(1e-14);
  expect(logarithm(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(exponential(-800)).toBe(0);
  expect(exponential(800)).toBe(Number.POSITIVE_INFINITY);
});

describe('against an independent program', () => {
  const SCIPY = 'SciPy 1.17.1';
  test('normal', () => {
    const row = (figure: string, inputs: () => number, expected: number): Row<() => number> => ({ source: SCIPY, status: 'recomputed', figure, inputs, expected, tolerance: { relative: 1e-12 } });
    runRows('normal distribution', [
      row('cdf(-10)', () => normalCdf(-10), 7.61985302416047e-24), row('cdf(-2.5)', () => normalCdf(-2.5), 0.006209665325776132),
      row('quantile(1e-300)', () => normalQuantile(1e-300), -37.0470962993612), row('quantile(1e-20)', () => normalQuantile(1e-20), -9.262340089798409),
      row('quantile(1e-8)', () => normalQuantile(1e-8), -5.612001244174789), row('quantile(0.001)', () => normalQuantile(0.001), -3.090232306167813),
      row('quantile(0.02425)', () => normalQuantile(0.02425), -1.972961051311885), row('quantile(0.3)', () => normalQuantile(0.3), -0.5244005127080409),
      row('quantile(0.9)', () => normalQuantile(0.9), 1.2815515655446004), row('quantile(0.99999)', () => normalQuantile(0.99999), 4.264890793923841),
    ], (figure) => figure());
    expect(normalQuantile(0.5)).toBe(0);
  });
  test('Student and beta', () => {
    const row = (figure: string, inputs: () => number, expected: number): Row<() => number> => ({ source: SCIPY, status: 'recomputed', figure, inputs, expected, tolerance: { relative: 1e-10 } });
    const student = (freedom: number, high: number, higher: number): Row<() => number>[] => [
      row(`t(0.975, ${freedom})`, () => studentQuantile(0.975, freedom), high), row(`t(0.9995, ${freedom})`, () => studentQuantile(0.9995, freedom), higher),
    ];
    const beta = (a: number, b: number, values: readonly number[]): Row<() => number>[] =>
      [1e-6, 0.05, 0.5, 0.95].map((chance, i) => row(`beta(${chance}; ${a}, ${b})`, () => betaQuantile(chance, a, b), values[i]!));
    runRows('Student and beta quantiles', [
      ...student(0.5, 164.55767348048818, 411396.462526262), ...student(1, 12.706204736174694, 636.6192487687897), ...student(2, 4.302652729749462, 31.599054576445365),
      ...student(3, 3.1824463052837078, 12.923978636687961), ...student(7.5, 2.333039626864974, 5.20772565580064), ...student(16.656, 2.1131398047490326, 3.9814930846189425),
      ...student(40, 2.021075390306273, 3.550965760863349), ...student(300, 1.9679030112610865, 3.3232515129742195),
      ...beta(1, 5, [2.0000008000004803e-7, 0.010206218313011496, 0.12944943670387585, 0.450719728346941]),
      ...beta(2.5, 3.5, [0.0015348460460181976, 0.12777559948359624, 0.40684494089319373, 0.7393662913208028]),
      ...beta(4.2, 1.8, [0.0269822650654397, 0.3787232759838096, 0.7233277406074812, 0.9410226123881827]),
      ...beta(50, 120, [0.14963480456160935, 0.2381942240172743, 0.29330860390078073, 0.35280309006631294]),
      row('t density(0.7, 5)', () => density({ kind: 'student', centre: 0, scale: 1, freedom: 5 }, 0.7), 0.2867654575766979),
    ], (figure) => figure());
  });
});

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const threeNumbers = fc.tuple(number(-100, 100), number(0, 1), number(0.1, 50)).map(([least, share, range]) => ({ least, likely: least + share * range, most: least + range }));
const plain: fc.Arbitrary<Distribution> = fc.oneof(
  fc.tuple(number(-100, 100), number(0.1, 50)).map(([from, range]): Distribution => ({ kind: 'uniform', from, to: from + range })),
  fc.tuple(number(-100, 100), number(0.01, 50)).map(([mean, deviation]): Distribution => ({ kind: 'normal', mean, deviation })),
  threeNumbers.map((one): Distribution => ({ kind: 'triangular', ...one })),
  threeNumbers.map((one): Distribution => ({ kind: 'pert', ...one })),
  fc.tuple(number(0.01, 100), number(1.01, 3)).map(([median, factor]): Distribution => ({ kind: 'lognormal', median, factor })),
  fc.tuple(number(-100, 100), number(0.1, 10), number(1, 60)).map(([centre, scale, freedom]): Distribution => ({ kind: 'student', centre, scale, freedom })),
);
const any = fc.oneof(plain, fc.tuple(plain, number(0.02, 0.45), number(0.55, 0.98)).map(([of, low, high]): Distribution => ({ kind: 'truncated', of, from: quantile(of, low), to: quantile(of, high) })));

describe('laws of every distribution', () => {
  test('the chance of its quantile is the chance asked for', () => {
    fc.assert(fc.property(any, number(0.001, 0.999), (one, chance) => {
      expect(distributionProblems(one)).toEqual([]);
      expect(Math.abs(cdf(one, quantile(one, chance)) - chance)).toBeLessThan(1e-8);
    }), { numRuns: 400, seed: 12 });
  });
  test('quantiles rise', () => {
    fc.assert(fc.property(any, number(0.001, 0.5), number(0.001, 0.49), (one, chance, more) => {
      expect(quantile(one, chance + more)).toBeGreaterThanOrEqual(quantile(one, chance));
    }), { numRuns: 300, seed: 13 });
  });
  test('density is the slope of the chance', () => {
    fc.assert(fc.property(any, number(0.1, 0.9), (one, chance) => {
      const x = quantile(one, chance);
      const step = 1e-4 * (quantile(one, 0.75) - quantile(one, 0.25));
      const slope = (cdf(one, x + step) - cdf(one, x - step)) / (2 * step);
      // A triangle has a kink at its peak: the slope there is taken across it.
      expect(Math.abs(density(one, x) / slope - 1)).toBeLessThan(0.001);
    }), { numRuns: 300, seed: 14 });
  });
  test('draws have the mean and deviation stated', () => {
    fc.assert(fc.property(any.filter((one) => one.kind !== 'student' && one.kind !== 'pert'), fc.integer({ min: 0, max: 1e6 }), (one, seed) => {
      const generator = seeded(seed);
      const drawn = Array.from({ length: 4000 }, () => draw(one, generator));
      const { mean, deviation } = moments(one);
      const { mean: seen } = weightedMoments(drawn, drawn.map(() => 1));
      expect(Math.abs(seen - mean)).toBeLessThan((5 * deviation) / Math.sqrt(4000) + 1e-3 * deviation);
    }), { numRuns: 60, seed: 15 });
  });
  test('moments of a whole kept almost untruncated are those of the whole', () => {
    for (const of of [{ kind: 'pert', least: 2, likely: 3, most: 9 }, { kind: 'lognormal', median: 4, factor: 1.4 }] as const) {
      const kept = moments({ kind: 'truncated', of, from: quantile(of, 1e-9), to: quantile(of, 1 - 1e-9) });
      expect(kept.mean / moments(of).mean).toBeCloseTo(1, 6);
      expect(kept.deviation / moments(of).deviation).toBeCloseTo(1, 5);
    }
  });
  test('what is wrong with one is said', () => {
    expect(distributionProblems({ kind: 'uniform', from: 2, to: 1 })).toEqual(['the lower limit must lie below the upper: 2 to 1']);
    expect(distributionProblems({ kind: 'pert', least: 1, likely: 5, most: 3 })).toHaveLength(1);
    expect(distributionProblems({ kind: 'normal', mean: Number.NaN, deviation: 1 })).toHaveLength(1);
    expect(() => draw({ kind: 'truncated', of: { kind: 'uniform', from: 0, to: 1 }, from: 2, to: 3 }, seeded(1))).toThrow('2 to 3');
  });
});

describe('weights', () => {
  test('effective number and quantiles of weighted draws', () => {
    expect(effectiveSampleSize([1, 1, 1, 1])).toBeCloseTo(4, 12);
    expect(effectiveSampleSize([0, 5, 0])).toBeCloseTo(1, 12);
    expect(weightedQuantiles([30, 10, 20], [1, 1, 1], [0, 0.5, 1, 1 / 3])).toEqual([10, 20, 30, expect.closeTo(15, 9)]);
    // A value counted three times weighs as much as three of it.
    expect(weightedQuantiles([1, 2, 3], [1, 0, 3], [0.125, 0.625])).toEqual([1, 3]);
    expect(() => effectiveSampleSize([0, 0])).toThrow();
    expect(() => effectiveSampleSize([1, Number.NaN])).toThrow();
  });
  test('weights from logarithms neither overflow nor vanish', () => {
    expect([...weightsFromLogarithms([-1000, -1000 - Math.log(3)])!]).toEqual([expect.closeTo(0.75, 12), expect.closeTo(0.25, 12)]);
    expect(weightsFromLogarithms([Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY])).toBeUndefined();
  });
  test('resampling takes each member its expected number of times, give or take one, and none without weight', () => {
    fc.assert(fc.property(fc.array(fc.oneof(fc.constant(0), number(0, 10)), { minLength: 1, maxLength: 30 }), number(0, 0.999999), fc.integer({ min: 1, max: 200 }), (weights, pointer, count) => {
      const total = weights.reduce((sum, one) => sum + one, 0);
      fc.pre(total > 1e-6);
      const chosen = resampled(weights, count, pointer);
      expect(chosen).toHaveLength(count);
      weights.forEach((weight, index) => {
        const times = chosen.filter((one) => one === index).length;
        expect(Math.abs(times - (count * weight) / total)).toBeLessThan(1 + 1e-6);
        if (weight === 0) expect(times).toBe(0);
      });
    }), { numRuns: 300, seed: 16 });
  });
});
