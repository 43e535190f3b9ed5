import type { Layout } from './number-parts.ts';
import { leadingPlace } from './plain-number.ts';
import { absolute, compare, ONE, over, powerOfTen, rational, stepsIn, times, type Rational } from './rational.ts';
import type { UnitName } from './units.ts';

/** What decides how a number is printed, all in the unit printed. */
export interface ToPrint {
  readonly value: Rational;
  /** Half-width of the 95 % interval, not negative. */
  readonly half: Rational;
  readonly unit: UnitName;
  /** Last place of the reading, above zero. */
  readonly resolution?: Rational;
}

const SIXTY_FOURTH = rational(1, 64);
const LARGEST_DENOMINATOR = 128n;
/** A reading's place counts as a fraction of an inch where it is one to a part in a million. */
const HAIR = rational(1, 1_000_000);

/** Returns how the value and its doubt are to be printed. */
export function layoutFor(given: ToPrint): { readonly value: Layout; readonly doubt: Layout } {
  const step = given.unit === 'in' ? fractionStep(given) : undefined;
  if (step !== undefined) {
    const fine = rational(1n, step.denominator * 4n > 64n ? (step.denominator > 64n ? step.denominator : 64n) : step.denominator * 4n);
    return { value: { style: 'fraction', step, rounding: 'nearest' }, doubt: { style: 'fraction', step: fine, rounding: 'up' } };
  }
  const doubtPlaces = given.half.numerator === 0n ? undefined : placesOfDoubt(given.half);
  const places = given.resolution === undefined ? doubtPlaces ?? exactPlaces(given.value) : placesOf(given.resolution);
  const trim = given.resolution === undefined && doubtPlaces === undefined;
  return { value: decimals(places, 'nearest', trim), doubt: decimals(Math.max(doubtPlaces ?? 0, 0), 'up', true) };
}

const decimals = (places: number, rounding: 'nearest' | 'up', trim: boolean): Layout => ({ style: 'decimal', places, step: powerOfTen(-places), rounding, trim });

/** The step of a length in inches that is to be a fraction: of the reading, of the doubt where it is 1/64 or more, or of an exact 64th. */
function fractionStep({ value, half, resolution }: ToPrint): Rational | undefined {
  if (resolution !== undefined) return binaryStep(resolution);
  if (half.numerator === 0n) return SIXTY_FOURTH.denominator % value.denominator === 0n ? SIXTY_FOURTH : undefined;
  if (compare(half, SIXTY_FOURTH) < 0) return undefined;
  let step = ONE;
  while (compare(step, half) > 0) step = times(step, rational(1, 2));
  return step;
}

/** The half, quarter ... 128th that a place is, or undefined for any other; a whole inch stays whole. */
function binaryStep(resolution: Rational): Rational | undefined {
  const denominator = stepsIn(ONE, resolution);
  if (denominator < 1n || denominator > LARGEST_DENOMINATOR || (denominator & (denominator - 1n)) !== 0n) return undefined;
  const ratio = over(resolution, rational(1n, denominator));
  const off = absolute({ numerator: ratio.numerator - ratio.denominator, denominator: ratio.denominator });
  return compare(off, HAIR) <= 0 ? rational(1n, denominator) : undefined;
}

/** Decimals that reach a place: the first power of ten that is not above it. */
const placesOf = (resolution: Rational): number => Math.min(30, Math.max(0, -leadingPlace(resolution)));

/** Decimals that show two significant digits of the doubt once it is rounded up, or one where the second is nought. */
function placesOfDoubt(half: Rational): number {
  const places = 1 - leadingPlace(half);
  const steps = stepsIn(half, powerOfTen(-places), 'up');
  const wanted = steps % 10n === 0n ? places - 1 : places;
  return Math.min(30, Math.max(0, wanted));
}

/** Decimals of a value that is taken as exact: all of its own up to six significant digits, and at least four significant digits. */
const exactPlaces = (value: Rational): number => Math.min(30, Math.max(0, 3 - leadingPlace(value)));
