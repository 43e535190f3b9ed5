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

/** By Horner's rule. A plain loop, since every draw by chance comes through here. @param coefficients lowest power first */
function polynomial(x: number, coefficients: readonly number[]): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) sum = sum * x + coefficients[power]!;
  return sum;
}

// prettier-ignore
const CENTRE = {
  above: [3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227],
  below: [1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854],
};
// prettier-ignore
const SHOULDER = {
  above: [1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414],
  below: [1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9],
};
// prettier-ignore
const TAIL = {
  above: [6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7],
  below: [1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15],
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
