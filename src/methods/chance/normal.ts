import { exponential, logarithm } from './logarithm.ts';

const ROOT_TWO_PI = 2.5066282746310002;

/** Density of the normal distribution with mean 0 and deviation 1. */
export const normalDensity = (z: number): number => exponential(-0.5 * z * z) / ROOT_TWO_PI;

/**
 * Chance that a normal quantity with mean 0 and deviation 1 lies below z; relative error below 1e-13, in the lower tail too.
 *
 * Within 2.5 deviations the all-positive series of G. Marsaglia, "Evaluating the Normal Distribution", J. Stat. Softw.
 * 11(4), 2004; beyond it Laplace's continued fraction of the upper tail (Abramowitz and Stegun 26.2.14).
 * @param z any number, infinite ones too
 */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  if (size <= 2.5) {
    let term = z;
    let sum = z;
    for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
      term *= (z * z) / odd;
      sum += term;
    }
    return 0.5 + sum * normalDensity(z);
  }
  const tail = size > 37.5 ? 0 : normalDensity(size) / fraction(size);
  return z < 0 ? tail : 1 - tail;
}

/** x + 1/(x + 2/(x + 3/(x + ...))), from its 120th level upwards; enough for x from 2.5. */
function fraction(x: number): number {
  let value = x;
  for (let level = 120; level >= 1; level--) value = x + level / value;
  return value;
}

const polynomial = (x: number, coefficients: readonly number[]): number => coefficients.reduceRight((sum, one) => sum * x + one, 0);

// prettier-ignore
const CENTRE = {
  above: [3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727],
  below: [1, 42.313330701600911252, 687.18700749205790830, 5394.1960214247511077, 21213.794301586595867, 39307.895800092710610, 28729.085735721942674, 5226.4952788528545610],
};
// prettier-ignore
const SHOULDER = {
  above: [1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504, 1.27045825245236838258, 0.241780725177450611770, 0.0227238449892691845833, 7.74545014278341407640e-4],
  below: [1, 2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550, 0.148103976427480074590, 0.0151986665636164571966, 5.47593808499534494600e-4, 1.05075007164441684324e-9],
};
// prettier-ignore
const TAIL = {
  above: [6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 0.296560571828504891230, 0.0265321895265761230930, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7],
  below: [1, 0.599832206555887937690, 0.136929880922735805310, 0.0148753612908506148525, 7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15],
};

/**
 * The z below which a normal quantity (mean 0, deviation 1) lies with the given chance; relative error about 1e-15.
 * M. J. Wichura, Algorithm AS 241 (PPND16), Appl. Statist. 37:477, 1988.
 * @param chance 0 to 1; the ends give infinite z
 */
export function normalQuantile(chance: number): number {
  if (!(chance >= 0 && chance <= 1)) throw new Error(`A chance must lie from 0 to 1: ${chance}`);
  if (chance === 0) return Number.NEGATIVE_INFINITY;
  if (chance === 1) return Number.POSITIVE_INFINITY;
  const q = chance - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(r, CENTRE.above)) / polynomial(r, CENTRE.below);
  }
  const r = Math.sqrt(-logarithm(q < 0 ? chance : 1 - chance));
  const [x, table] = r <= 5 ? [r - 1.6, SHOULDER] : [r - 5, TAIL];
  const size = polynomial(x, table.above) / polynomial(x, table.below);
  return q < 0 ? -size : size;
}
