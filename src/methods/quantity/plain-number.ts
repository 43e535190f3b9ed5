import { absolute, powerOfTen, stepsIn, toNumber, type Rational } from './rational.ts';

/** Returns an exact value as decimal text with so many places (below zero: to tens, hundreds ...), halves rounded away from zero. */
export function fixed(value: Rational, places: number): string {
  const steps = stepsIn(value, powerOfTen(-places));
  const size = (steps < 0n ? -steps : steps).toString();
  if (places < 0) return `${steps < 0n ? '-' : ''}${steps === 0n ? '0' : size + '0'.repeat(-places)}`;
  const digits = size.padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  return `${steps < 0n ? '-' : ''}${whole}${places > 0 ? `.${digits.slice(-places)}` : ''}`;
}

/** Returns fixed text without idle zeros after the point. */
export const trimmed = (text: string): string => (text.includes('.') ? text.replace(/\.?0+$/, '') : text);

/** Power of ten of the first significant digit: 0.05 gives -2, 320 gives 2; 0 for zero. */
export function leadingPlace(value: Rational): number {
  const size = toNumber(absolute(value));
  if (size === 0) return 0;
  const guess = Math.floor(Math.log10(size));
  return size >= 10 ** (guess + 1) ? guess + 1 : guess;
}

/** Returns a number taken as exact, in as many places as give at least four significant digits and no idle zeros. */
export const plainNumber = (value: Rational): string => trimmed(fixed(value, Math.min(30, Math.max(0, 3 - leadingPlace(value)))));
