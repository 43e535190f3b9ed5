import { betaCdf, betaQuantile } from './beta.ts';
import { normalQuantile } from './normal.ts';

/**
 * Chance that Student's t lies below the value.
 * @param t any number @param freedom degrees of freedom, positive, finite
 */
export function studentCdf(t: number, freedom: number): number {
  if (!(freedom > 0)) throw new Error(`Degrees of freedom must be positive: ${freedom}`);
  const tail = betaCdf(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  return t < 0 ? tail : 1 - tail;
}

/**
 * The t below which Student's t lies with the given chance.
 * @param chance above 0, below 1 @param freedom degrees of freedom, positive; Infinity gives the normal distribution
 */
export function studentQuantile(chance: number, freedom: number): number {
  if (!(freedom > 0)) throw new Error(`Degrees of freedom must be positive: ${freedom}`);
  // Beyond some ten million the two differ by less than the figures printed.
  if (freedom > 1e7) return normalQuantile(chance);
  if (chance === 0.5) return 0;
  const tail = Math.min(chance, 1 - chance);
  // Solved for whichever end of the beta variable keeps its digits.
  const beyond = betaQuantile(1 - 2 * tail, 0.5, freedom / 2);
  const within = beyond < 0.5 ? 1 - beyond : betaQuantile(2 * tail, freedom / 2, 0.5);
  const t = Math.sqrt(beyond < 0.5 ? (freedom * beyond) / within : (freedom * (1 - within)) / within);
  return chance < 0.5 ? -t : t;
}

/**
 * Coverage factor: the half-width of an interval in standard uncertainties (JCGM 100:2008, G.3 and table G.2).
 * @param coverage share covered, above 0 and below 1, for example 0.95
 * @param freedom effective degrees of freedom, positive, as computed; the guide rounds them down to the next whole number first. Infinity gives the normal factor
 */
export function coverageFactor(coverage: number, freedom = Number.POSITIVE_INFINITY): number {
  if (!(coverage > 0 && coverage < 1)) throw new Error(`A coverage must lie between 0 and 1: ${coverage}`);
  return studentQuantile(0.5 + coverage / 2, freedom);
}

/**
 * Effective degrees of freedom by the Welch-Satterthwaite formula (JCGM 100:2008, G.4.1, eq. G.2b).
 * @param contributions standard uncertainty of the result from each input, in the unit of the result
 * @param freedoms degrees of freedom of each input, positive; Infinity where its uncertainty is taken as exact
 * @returns Infinity where no input limits it
 */
export function effectiveFreedom(contributions: readonly number[], freedoms: readonly number[]): number {
  if (contributions.length !== freedoms.length) {
    throw new Error(`Each contribution needs its degrees of freedom: ${contributions.length} and ${freedoms.length}`);
  }
  const square = contributions.reduce((sum, u) => sum + u * u, 0);
  const fourth = contributions.reduce((sum, u, i) => sum + u ** 4 / freedoms[i]!, 0);
  return fourth === 0 ? Number.POSITIVE_INFINITY : (square * square) / fourth;
}
