import type { Distribution } from './distribution.ts';
import { nextUniform, type Generator } from './generator.ts';
import { normalCdf, normalQuantile } from './normal.ts';
import { quantile } from './quantile.ts';

/** One value of the distribution; takes exactly one number from the generator whatever the kind, so that streams stay in step. */
export const draw = (one: Distribution, generator: Generator): number => quantile(one, nextUniform(generator));

/** A lower triangular matrix whose product with its transpose is the matrix given. */
export type Triangle = readonly (readonly number[])[];

/**
 * Cholesky's triangle of a correlation matrix.
 * @param correlations square, symmetric, ones on the diagonal; linear dependence (a correlation of exactly 1) is allowed
 * @returns the triangle, or undefined where no set of quantities can have such correlations (the matrix is not positive)
 */
export function triangleOf(correlations: readonly (readonly number[])[]): Triangle | undefined {
  const size = correlations.length;
  const triangle: number[][] = [];
  for (let i = 0; i < size; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const r = correlations[i]?.[j];
      if (r === undefined || r !== correlations[j]?.[i] || !(Math.abs(r) <= 1) || (i === j && r !== 1)) {
        throw new Error(`Correlations must be symmetric, from -1 to 1, with ones on the diagonal: row ${i}, column ${j} is ${r}`);
      }
      let rest = r;
      for (let k = 0; k < j; k++) rest -= row[k]! * (i === j ? row[k]! : triangle[j]![k]!);
      if (i === j) {
        if (rest < -1e-12) return undefined;
        row.push(Math.sqrt(Math.max(0, rest)));
      } else {
        const diagonal = triangle[j]![j]!;
        if (diagonal < 1e-7 && Math.abs(rest) > 1e-7) return undefined;
        row.push(diagonal < 1e-7 ? 0 : rest / diagonal);
      }
    }
    triangle.push(row);
  }
  return triangle;
}

/**
 * One value of each distribution, drawn together. The correlations hold between the normal scores behind the values
 * (a normal copula): exactly for normal quantities, closely for others (ranks of correlation r correlate by (6/pi) asin(r/2)).
 * @param triangle from `triangleOf`; independent where left out
 */
export function drawTogether(distributions: readonly Distribution[], generator: Generator, triangle?: Triangle): number[] {
  if (triangle === undefined) return distributions.map((one) => draw(one, generator));
  if (triangle.length !== distributions.length) throw new Error(`Correlations are for ${triangle.length} quantities and there are ${distributions.length}`);
  const scores = distributions.map(() => normalQuantile(nextUniform(generator)));
  return distributions.map((one, i) => {
    const score = triangle[i]!.reduce((sum, share, k) => sum + share * scores[k]!, 0);
    // Saves the round trip through the chance for the commonest kind.
    return one.kind === 'normal' ? one.mean + one.deviation * score : quantile(one, normalCdf(score));
  });
}
