import { describe, expect, it } from 'vitest';
import { bootstrap, median, medianSlope, NORMAL_CONSISTENCY, peaks, quantile, quantileOf, robustSpread, runningMedian, straightLine, trimmedMean, vertex } from '../../../src/methods/signal/index.ts';
import { noiseSource } from '../../../bench/sound/synthesiser/noise-source.ts';

describe('robust statistics', () => {
  it('follow their definitions', () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
    // Type 7: h = (n - 1) p.
    expect(quantile([10, 20, 30, 40], 0.4)).toBeCloseTo(22, 12);
    for (const share of [0, 0.1, 0.4, 0.5, 0.99, 1]) expect(quantileOf(Float64Array.of(40, 10, 30, 20, 20), share)).toBeCloseTo(quantile([10, 20, 20, 30, 40], share), 12);
    expect(trimmedMean([100, 1, 2, 3, -50], 0.2)).toBe(2);
    expect([...runningMedian([1, 9, 2, 8, 3], 1)]).toEqual([5, 2, 8, 3, 5.5]);
    expect(robustSpread([1, 1, 2, 2, 4, 6, 9])).toBeCloseTo(NORMAL_CONSISTENCY, 12); // distances 1 1 0 0 2 4 7: median 1
  });

  it('give the normal its own spread, and do not mind a tenth of nonsense', () => {
    const draw = noiseSource(5);
    const values = Array.from({ length: 20_000 }, () => 3 * draw.normal());
    expect(Math.abs(robustSpread(values) - 3)).toBeLessThan(0.09);
    values.fill(1e9, 0, 2000);
    expect(robustSpread(values)).toBeLessThan(3.6);
    // The constant itself: 1 / 0.6744897501960817, the upper quartile of the normal distribution.
    expect(NORMAL_CONSISTENCY * 0.6744897501960817).toBeCloseTo(1, 12);
  });

  it('gives the slope of a line in spite of a wild point (Sen 1968)', () => {
    expect(medianSlope([0, 1, 2, 3, 4], [1, 3, 5, 7, 100])).toBe(2);
    expect(medianSlope([1, 1], [0, 5])).toBeUndefined();
    const line = straightLine([0, 1, 2, 3], [1, 3, 5, 7]);
    expect(line).toEqual({ middle: 1.5, intercept: 4, slope: 2, spreadOfX: 5 });
  });
});

describe('peaks and draws', () => {
  it('finds the top of a parabola between the places', () => {
    const row = Array.from({ length: 30 }, (_, i) => 10 - (i - 12.3) ** 2);
    const [peak] = peaks(row, 0, 3);
    expect(peak!.at).toBeCloseTo(12.3, 12);
    expect(vertex(1, 1, 1)).toBe(0);
    expect(peaks([0, 5, 5, 0], 1, 1).map((p) => Math.round(p.at))).toEqual([2]);
  });

  it('is the same for the same seed, even, and normal where it says so', () => {
    const [a, b] = [noiseSource(7), noiseSource(7)];
    expect(Array.from({ length: 5 }, () => a.uniform())).toEqual(Array.from({ length: 5 }, () => b.uniform()));
    const draw = noiseSource(99);
    let [mean, square, fourth] = [0, 0, 0];
    const n = 200_000;
    for (let i = 0; i < n; i++) {
      const x = draw.normal();
      mean += x / n;
      square += (x * x) / n;
      fourth += x ** 4 / n;
    }
    expect(Math.abs(mean)).toBeLessThan(0.012);
    expect(Math.abs(square - 1)).toBeLessThan(0.015);
    expect(Math.abs(fourth - 3)).toBeLessThan(0.12);
  });

  it('bootstraps the mean to its textbook spread', () => {
    const draw = noiseSource(4);
    const values = Array.from({ length: 400 }, () => draw.normal());
    const means = bootstrap(400, 2000, () => draw.uniform(), (chosen) => chosen.reduce((s, i) => s + values[i]!, 0) / 400);
    const width = quantile(means, 0.975) - quantile(means, 0.025);
    expect(Math.abs(width / (2 * 1.96 * 0.05) - 1)).toBeLessThan(0.15);
  });
});
