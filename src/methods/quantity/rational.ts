/** An exact fraction in lowest terms; the denominator is above zero. */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

const SAFE = BigInt(Number.MAX_SAFE_INTEGER);

/** Greatest common divisor; goes over to plain numbers, which are many times faster, as soon as they can hold the rest. */
function gcd(first: bigint, second: bigint): bigint {
  let [a, b] = [first < 0n ? -first : first, second < 0n ? -second : second];
  while (b > SAFE) [a, b] = [b, a % b];
  if (b === 0n) return a;
  let [c, d] = [Number(b), Number(a % b)];
  while (d !== 0) [c, d] = [d, c % d];
  return BigInt(c);
}

/** Returns numerator / denominator in lowest terms. @throws where the denominator is zero */
export function rational(numerator: bigint | number, denominator: bigint | number = 1n): Rational {
  let top = BigInt(numerator);
  let bottom = BigInt(denominator);
  if (bottom === 0n) throw new Error(`A fraction needs a denominator other than zero: ${top}/0`);
  if (bottom < 0n) [top, bottom] = [-top, -bottom];
  const common = gcd(top, bottom);
  return { numerator: top / common, denominator: bottom / common };
}

export const ZERO: Rational = rational(0);
export const ONE: Rational = rational(1);

export const plus = (a: Rational, b: Rational): Rational => rational(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator);
export const negated = (a: Rational): Rational => ({ numerator: -a.numerator, denominator: a.denominator });
export const minus = (a: Rational, b: Rational): Rational => plus(a, negated(b));
export const times = (a: Rational, b: Rational): Rational => rational(a.numerator * b.numerator, a.denominator * b.denominator);
export const over = (a: Rational, b: Rational): Rational => rational(a.numerator * b.denominator, a.denominator * b.numerator);
export const absolute = (a: Rational): Rational => (a.numerator < 0n ? negated(a) : a);
/** Below zero, zero or above zero, as a is less than, equal to or greater than b. */
export const compare = (a: Rational, b: Rational): number => {
  const difference = a.numerator * b.denominator - b.numerator * a.denominator;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};
export const powerOfTen = (exponent: number): Rational => (exponent >= 0 ? rational(10n ** BigInt(exponent)) : rational(1n, 10n ** BigInt(-exponent)));

/**
 * Returns the exact value of a plain decimal: `25.4`, `-0.5`, `.015`, `1.6e-3`.
 * @throws where the text is not one
 */
export function decimal(text: string): Rational {
  const match = /^([+-]?)(\d*)\.?(\d*)(?:[eE]([+-]?\d{1,3}))?$/.exec(text);
  if (!match || `${match[2]}${match[3]}` === '') throw new Error(`A plain decimal is wanted: ${text}`);
  const digits = BigInt(`${match[2]}${match[3]}`);
  return times(rational(match[1] === '-' ? -digits : digits), powerOfTen(Number(match[4] ?? 0) - match[3]!.length));
}

/**
 * Returns the decimal that a double stands for: its first fifteen significant digits, which every double carries.
 * So 0.034925 is 34.925 mm exactly and rounds as a person would round it, and noise of the last bit of a sum does not show.
 * @throws where the number is not finite
 */
export function ofNumber(value: number): Rational {
  if (!Number.isFinite(value)) throw new Error(`A finite number is wanted: ${value}`);
  return decimal(value.toPrecision(15));
}

const bits = (value: bigint): number => value.toString(2).length;

/** Returns the double nearest to the fraction (ties to even), for magnitudes within the normal range of doubles. */
export function toNumber(value: Rational): number {
  const { numerator, denominator } = absolute(value);
  if (numerator === 0n) return 0;
  // 66 bits of quotient and a sticky bit below them: Number() then rounds once, and correctly.
  const shift = 66 - (bits(numerator) - bits(denominator));
  const top = shift > 0 ? numerator << BigInt(shift) : numerator;
  const bottom = shift < 0 ? denominator << BigInt(-shift) : denominator;
  const quotient = top / bottom;
  const sticky = top % bottom === 0n ? 0n : 1n;
  const magnitude = Number((quotient << 1n) | sticky) * 2 ** (-shift - 1);
  return value.numerator < 0n ? -magnitude : magnitude;
}

/**
 * Returns how many steps make up the value, rounded to a whole number.
 * @param step above zero, in the unit of the value
 * @param way `nearest` takes halves away from zero; `up` away from zero always
 */
export function stepsIn(value: Rational, step: Rational, way: 'nearest' | 'up' = 'nearest'): bigint {
  const { numerator, denominator } = absolute(over(value, step));
  const whole = way === 'up' ? (numerator + denominator - 1n) / denominator : (2n * numerator + denominator) / (2n * denominator);
  return value.numerator < 0n ? -whole : whole;
}
