/** How likely each value of a quantity is. Every number is in the unit of the quantity unless said. */
export type Distribution =
  /** known without doubt */
  | { readonly kind: 'certain'; readonly value: number }
  /** equally likely anywhere between two limits, `from` below `to` */
  | { readonly kind: 'uniform'; readonly from: number; readonly to: number }
  /** `deviation` positive */
  | { readonly kind: 'normal'; readonly mean: number; readonly deviation: number }
  /** `least` <= `likely` <= `most`, `least` below `most` */
  | { readonly kind: 'triangular'; readonly least: number; readonly likely: number; readonly most: number }
  /** beta on `least` to `most` with its peak at `likely`; `peakedness` positive, 4 unless said */
  | { readonly kind: 'pert'; readonly least: number; readonly likely: number; readonly most: number; readonly peakedness?: number }
  /** logarithm is normal: `median` positive; `factor` above 1, two thirds of all values lie within median/factor to median x factor */
  | { readonly kind: 'lognormal'; readonly median: number; readonly factor: number }
  /** scaled and shifted Student's t, for a mean of few readings: `scale` and `freedom` positive */
  | { readonly kind: 'student'; readonly centre: number; readonly scale: number; readonly freedom: number }
  /** another distribution, known to lie within limits that hold some of it */
  | { readonly kind: 'truncated'; readonly of: Distribution; readonly from: number; readonly to: number };

/**
 * What is wrong with a distribution, one sentence each, or an empty list.
 * A truncation is checked for order here; one that holds none of the distribution is caught when it is drawn from.
 */
export function distributionProblems(one: Distribution): readonly string[] {
  const problems: string[] = [];
  const want = (holds: boolean, sentence: string): void => void (holds || problems.push(sentence));
  const numbers = Object.values(one).filter((value) => typeof value === 'number');
  // A truncation may be open on one side.
  const finite = one.kind === 'truncated' ? numbers.every((x) => !Number.isNaN(x)) : numbers.every((x) => Number.isFinite(x));
  want(finite, `a ${one.kind} distribution needs finite numbers: ${numbers.join(', ')}`);
  switch (one.kind) {
    case 'certain':
      break;
    case 'uniform':
      want(one.from < one.to, `the lower limit must lie below the upper: ${one.from} to ${one.to}`);
      break;
    case 'normal':
      want(one.deviation > 0, `the deviation must be positive: ${one.deviation}`);
      break;
    case 'triangular':
    case 'pert':
      want(one.least < one.most, `the least must lie below the most: ${one.least} to ${one.most}`);
      want(one.least <= one.likely && one.likely <= one.most, `the likely value must lie from ${one.least} to ${one.most}: ${one.likely}`);
      if (one.kind === 'pert') want((one.peakedness ?? 4) > 0, `the peakedness must be positive: ${one.peakedness}`);
      break;
    case 'lognormal':
      want(one.median > 0, `the median must be positive: ${one.median}`);
      want(one.factor > 1, `the factor must be above 1: ${one.factor}`);
      break;
    case 'student':
      want(one.scale > 0 && one.freedom > 0, `scale and degrees of freedom must be positive: ${one.scale}, ${one.freedom}`);
      break;
    case 'truncated':
      want(one.from < one.to, `the lower limit must lie below the upper: ${one.from} to ${one.to}`);
      problems.push(...distributionProblems(one.of));
  }
  return problems;
}

/** The distribution that the knowledge of a best estimate and its standard uncertainty alone supports (JCGM 101:2008, 6.4.7): normal, or certain where the uncertainty is 0. */
export const fromEstimate = (estimate: { readonly value: number; readonly uncertainty: number }): Distribution =>
  estimate.uncertainty === 0 ? { kind: 'certain', value: estimate.value } : { kind: 'normal', mean: estimate.value, deviation: estimate.uncertainty };
