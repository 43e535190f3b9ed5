import { betaCdf, betaQuantile } from './beta.ts';
import type { Distribution } from './distribution.ts';
import { exponential, logarithm } from './logarithm.ts';
import { normalCdf, normalQuantile } from './normal.ts';
import { studentCdf, studentQuantile } from './student.ts';

/** Both shapes of the beta distribution behind a three-point estimate (weight `peakedness` on the likely value). */
export const pertShapes = (one: { readonly least: number; readonly likely: number; readonly most: number; readonly peakedness?: number }): readonly [number, number] => {
  const peakedness = one.peakedness ?? 4;
  const share = (one.likely - one.least) / (one.most - one.least);
  return [1 + peakedness * share, 1 + peakedness * (1 - share)];
};

/** Chance that the quantity lies below x, 0 to 1. */
export function cdf(one: Distribution, x: number): number {
  switch (one.kind) {
    case 'certain':
      return x < one.value ? 0 : 1;
    case 'uniform':
      return Math.min(1, Math.max(0, (x - one.from) / (one.to - one.from)));
    case 'normal':
      return normalCdf((x - one.mean) / one.deviation);
    case 'triangular': {
      const { least, likely, most } = one;
      if (x <= least) return 0;
      if (x >= most) return 1;
      if (x < likely) return (x - least) ** 2 / ((most - least) * (likely - least));
      return 1 - (most - x) ** 2 / ((most - least) * (most - likely));
    }
    case 'pert':
      return betaCdf((x - one.least) / (one.most - one.least), ...pertShapes(one));
    case 'lognormal':
      return x <= 0 ? 0 : normalCdf(logarithm(x / one.median) / logarithm(one.factor));
    case 'student':
      return studentCdf((x - one.centre) / one.scale, one.freedom);
    case 'truncated': {
      if (x <= one.from) return 0;
      if (x >= one.to) return 1;
      const [below, kept] = keptShare(one);
      return Math.min(1, Math.max(0, (cdf(one.of, x) - below) / kept));
    }
  }
}

/**
 * The value below which the quantity lies with the given chance.
 * @param chance 0 to 1; the ends are infinite where the distribution is not bounded
 */
export function quantile(one: Distribution, chance: number): number {
  if (!(chance >= 0 && chance <= 1)) throw new Error(`A chance must lie from 0 to 1: ${chance}`);
  switch (one.kind) {
    case 'certain':
      return one.value;
    case 'uniform':
      return one.from + chance * (one.to - one.from);
    case 'normal':
      return one.mean + one.deviation * normalQuantile(chance);
    case 'triangular': {
      const { least, likely, most } = one;
      const turn = (likely - least) / (most - least);
      return chance < turn
        ? least + Math.sqrt(chance * (most - least) * (likely - least))
        : most - Math.sqrt((1 - chance) * (most - least) * (most - likely));
    }
    case 'pert':
      return one.least + (one.most - one.least) * betaQuantile(chance, ...pertShapes(one));
    case 'lognormal':
      return one.median * exponential(logarithm(one.factor) * normalQuantile(chance));
    case 'student':
      if (chance === 0 || chance === 1) return chance === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
      return one.centre + one.scale * studentQuantile(chance, one.freedom);
    case 'truncated': {
      const [below, kept] = keptShare(one);
      return Math.min(one.to, Math.max(one.from, quantile(one.of, Math.min(1, below + chance * kept))));
    }
  }
}

/** Share of the whole distribution below the lower limit, and within both. Throws where the limits hold none of it. */
function keptShare(one: Distribution & { readonly kind: 'truncated' }): readonly [number, number] {
  const below = cdf(one.of, one.from);
  const kept = cdf(one.of, one.to) - below;
  if (!(kept > 0)) throw new Error(`Nothing of the ${one.of.kind} distribution lies within ${one.from} to ${one.to}`);
  return [below, kept];
}
