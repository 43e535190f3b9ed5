import { betaDensity } from './beta.ts';
import type { Distribution } from './distribution.ts';
import { exponential, logarithm } from './logarithm.ts';
import { normalDensity } from './normal.ts';
import { cdf, pertShapes, quantile } from './quantile.ts';
import { weightedMoments } from './weights.ts';

/** Density of a distribution at x, per unit of the quantity; 0 outside its range. A certain value has none: 0, or Infinity at the value. */
export function density(one: Distribution, x: number): number {
  switch (one.kind) {
    case 'certain':
      return x === one.value ? Number.POSITIVE_INFINITY : 0;
    case 'uniform':
      return x >= one.from && x <= one.to ? 1 / (one.to - one.from) : 0;
    case 'normal':
      return normalDensity((x - one.mean) / one.deviation) / one.deviation;
    case 'triangular': {
      const { least, likely, most } = one;
      if (x < least || x > most) return 0;
      const peak = 2 / (most - least);
      if (x === likely) return peak;
      return x < likely ? (peak * (x - least)) / (likely - least) : (peak * (most - x)) / (most - likely);
    }
    case 'pert': {
      const range = one.most - one.least;
      return betaDensity((x - one.least) / range, ...pertShapes(one)) / range;
    }
    case 'lognormal': {
      const spread = logarithm(one.factor);
      return x <= 0 ? 0 : normalDensity(logarithm(x / one.median) / spread) / (x * spread);
    }
    case 'student': {
      const t = (x - one.centre) / one.scale;
      const { freedom } = one;
      // Student's t by way of the beta density of t²/(freedom + t²), which carries the normalising constant.
      const share = freedom / (freedom + t * t);
      return (betaDensity(0.5, freedom / 2, 0.5) / (one.scale * Math.sqrt(freedom))) * exponential(((freedom + 1) / 2) * logarithm(share)) * atHalf(freedom);
    }
    case 'truncated':
      return x < one.from || x > one.to ? 0 : density(one.of, x) / (cdf(one.of, one.to) - cdf(one.of, one.from));
  }
}

/** Takes the powers of one half out of the beta density at one half, leaving 1/B(freedom/2, 1/2). */
const atHalf = (freedom: number): number => exponential((freedom / 2 - 1.5) * Math.LN2);

/** Mean and standard deviation, in the unit of the quantity. Student's t needs more than 1 and 2 degrees of freedom for them; else Infinity. */
export function moments(one: Distribution): { readonly mean: number; readonly deviation: number } {
  switch (one.kind) {
    case 'certain':
      return { mean: one.value, deviation: 0 };
    case 'uniform':
      return { mean: (one.from + one.to) / 2, deviation: (one.to - one.from) / Math.sqrt(12) };
    case 'normal':
      return { mean: one.mean, deviation: one.deviation };
    case 'triangular': {
      const { least, likely, most } = one;
      const variance = (least * least + likely * likely + most * most - least * likely - least * most - likely * most) / 18;
      return { mean: (least + likely + most) / 3, deviation: Math.sqrt(Math.max(0, variance)) };
    }
    case 'pert': {
      const [a, b] = pertShapes(one);
      const range = one.most - one.least;
      return { mean: one.least + (range * a) / (a + b), deviation: (range / (a + b)) * Math.sqrt((a * b) / (a + b + 1)) };
    }
    case 'lognormal': {
      const variance = logarithm(one.factor) ** 2;
      const mean = one.median * exponential(variance / 2);
      return { mean, deviation: mean * Math.sqrt(exponential(variance) - 1) };
    }
    case 'student':
      return {
        mean: one.freedom > 1 ? one.centre : Number.POSITIVE_INFINITY,
        deviation: one.freedom > 2 ? one.scale * Math.sqrt(one.freedom / (one.freedom - 2)) : Number.POSITIVE_INFINITY,
      };
    case 'truncated': {
      // No closed form for every kind: 4000 shares of the chance, narrow at both ends where the values run away; five digits or better.
      const shares = 4000;
      const middles = Array.from({ length: shares }, (_, i) => (i + 0.5) / shares);
      const values = middles.map((v) => quantile(one, v * v * (3 - 2 * v)));
      const weights = middles.map((v) => 6 * v * (1 - v));
      return weightedMoments(values, weights);
    }
  }
}
