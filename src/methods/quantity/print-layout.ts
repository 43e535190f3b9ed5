import type { Layout } from './number-parts.ts';
import { leadingPlace } from './plain-number.ts';
import { absolute, compare, minus, ONE, plus, powerOfTen, rational, stepsIn, times, ZERO, type Rational } from './rational.ts';
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

/** Units in which the trade writes halves, quarters and eighths. */
const FRACTION_UNITS: ReadonlySet<UnitName> = new Set(['in', 'ft', 'in/ft', 'lb', 'hp', 'turn', 'revolution']);
const SIXTY_FOURTH = rational(1, 64);
const LARGEST_DENOMINATOR = 128n;
/** A reading's place counts as a fraction of an inch where it is one to a part in a million. */
const HAIR = rational(1, 1_000_000);

/** Returns how the value and its doubt are to be printed. */
export function layoutFor(given: ToPrint): { readonly value: Layout; readonly doubt: Layout } {
  const step = FRACTION_UNITS.has(given.unit) ? fractionStep(given) : undefined;
  const half = counts(given) ? given.half : ZERO;
  const doubt = decimals(placesOfDoubt(half, given.resolution !== undefined), 'up', true);
  if (step !== undefined) {
    return {
      value: { style: 'fraction', step, rounding: 'nearest' },
      doubt: compare(half, SIXTY_FOURTH) < 0 ? doubt : { style: 'fraction', step: doubtStep(half), rounding: 'up' },
    };
  }
  const places = given.resolution !== undefined ? placesOf(given.resolution) : half.numerator === 0n ? exactPlaces(given.value) : placesOfDoubt(half, false);
  return { value: decimals(places, 'nearest', given.resolution === undefined && half.numerator === 0n), doubt };
}

/** True where the doubt is worth a sign: below a millionth of the value it is the noise of a sum, not of a tool. */
export const counts = ({ value, half }: Pick<ToPrint, 'value' | 'half'>): boolean =>
  half.numerator > 0n && compare(times(half, rational(1_000_000)), absolute(value)) >= 0;

const decimals = (places: number, rounding: 'nearest' | 'up', trim: boolean): Layout => ({ style: 'decimal', places, step: powerOfTen(-places), rounding, trim });

/** The step of a figure that is to be a fraction: of the reading; for inches also of a doubt of 1/64 or more, or of an exact 64th. */
function fractionStep({ value, half, unit, resolution }: ToPrint): Rational | undefined {
  if (resolution !== undefined) return binaryStep(resolution, unit === 'in' ? 1n : 2n);
  if (unit !== 'in') return undefined;
  if (!counts({ value, half })) return SIXTY_FOURTH.denominator % value.denominator === 0n ? SIXTY_FOURTH : undefined;
  return compare(half, SIXTY_FOURTH) < 0 ? undefined : binaryBelow(half);
}

/** The greatest of 1, 1/2, 1/4 ... 1/64 that is not above a size. */
function binaryBelow(size: Rational): Rational {
  let step = ONE;
  while (compare(step, size) > 0 && step.denominator < 64n) step = times(step, rational(1, 2));
  return step;
}

/** Step of a doubt in fractions: fine enough that rounding up adds less than a quarter, but no 64ths from 1/32 up: nobody reads 3/64 off a rule. */
const doubtStep = (half: Rational): Rational => (compare(half, rational(1, 32)) > 0 && compare(half, rational(1, 8)) < 0 ? rational(1, 32) : binaryBelow(times(half, rational(1, 4))));

/** The half, quarter ... 128th that a place is, or undefined for any other. @param least 1n where a whole one counts as such a place */
function binaryStep(resolution: Rational, least: bigint): Rational | undefined {
  const denominator = stepsIn(ONE, resolution);
  if (denominator < least || denominator > LARGEST_DENOMINATOR || (denominator & (denominator - 1n)) !== 0n) return undefined;
  const off = absolute(minus(times(resolution, rational(denominator)), ONE));
  return compare(off, HAIR) <= 0 ? rational(1n, denominator) : undefined;
}

/** Decimals that reach a place: the first power of ten that is not above it. */
const placesOf = (resolution: Rational): number => Math.min(30, Math.max(0, -leadingPlace(times(resolution, plus(ONE, HAIR)))));

/**
 * Decimals that show two significant digits of the doubt once it is rounded up, or one where the second is nought.
 * @param brief behind a reading printed to its own place one digit is enough from 3 up
 */
function placesOfDoubt(half: Rational, brief: boolean): number {
  const places = 1 - leadingPlace(half);
  const steps = stepsIn(half, powerOfTen(-places), 'up');
  return Math.min(30, steps % 10n === 0n || (brief && steps >= 30n) ? places - 1 : places);
}

/** Decimals of a value that is taken as exact: at least four significant digits. */
const exactPlaces = (value: Rational): number => Math.min(30, Math.max(0, 3 - leadingPlace(value)));
