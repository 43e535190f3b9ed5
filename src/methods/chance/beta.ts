import { exponential, logarithm } from './logarithm.ts';

/**
 * Logarithm of the gamma function by Stirling's series, carried up to x >= 12 by the recurrence first (Abramowitz and Stegun 6.1.41).
 * @param x positive
 */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new Error(`The gamma function is taken of a positive number: ${x}`);
  let shift = 1;
  let y = x;
  for (; y < 12; y += 1) shift *= y;
  const w = 1 / (y * y);
  const series = (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w * (1 / 1188 - (w * 691) / 360360))))) / y;
  return (y - 0.5) * logarithm(y) - y + 0.9189385332046727 + series - logarithm(shift);
}

const logBeta = (a: number, b: number): number => logGamma(a) + logGamma(b) - logGamma(a + b);

/** Density of the beta distribution on 0 to 1. @param a positive @param b positive */
export function betaDensity(x: number, a: number, b: number): number {
  if (x < 0 || x > 1) return 0;
  if (x === 0 || x === 1) {
    const shape = x === 0 ? a : b;
    if (shape === 1) return x === 0 ? b : a;
    return shape > 1 ? 0 : Number.POSITIVE_INFINITY;
  }
  return exponential((a - 1) * logarithm(x) + (b - 1) * logarithm(1 - x) - logBeta(a, b));
}

/**
 * Chance that a beta quantity lies below x: the regularised incomplete beta function, by its continued fraction in
 * Lentz's form (Abramowitz and Stegun 26.5.8); absolute error below 1e-12 for shapes to a few thousand.
 * @param x 0 to 1 @param a positive @param b positive
 */
export function betaCdf(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0)) throw new Error(`Both shapes of a beta distribution must be positive: ${a}, ${b}`);
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaCdf(1 - x, b, a);
  const front = exponential(a * logarithm(x) + b * logarithm(1 - x) - logBeta(a, b)) / a;
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1), tiny);
  let value = d;
  for (let m = 1; m <= 2000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d, tiny);
    c = nonZero(1 + even / c, tiny);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d, tiny);
    c = nonZero(1 + odd / c, tiny);
    const change = d * c;
    value *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return front * value;
}

const nonZero = (x: number, tiny: number): number => (Math.abs(x) < tiny ? tiny : x);

/**
 * The x below which a beta quantity lies with the given chance. Newton steps kept inside a shrinking bracket; 1e-14 of the range.
 * @param chance 0 to 1 @param a positive @param b positive
 */
export function betaQuantile(chance: number, a: number, b: number): number {
  if (!(chance >= 0 && chance <= 1)) throw new Error(`A chance must lie from 0 to 1: ${chance}`);
  if (chance === 0 || chance === 1) return chance;
  let low = 0;
  let high = 1;
  let x = a / (a + b);
  for (let step = 0; step < 200 && high - low > 1e-15 * high; step++) {
    const miss = betaCdf(x, a, b) - chance;
    if (miss === 0) return x;
    if (miss > 0) high = x;
    else low = x;
    const newton = x - miss / betaDensity(x, a, b);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) < 1e-15 * x) return next;
    x = next;
  }
  return x;
}
