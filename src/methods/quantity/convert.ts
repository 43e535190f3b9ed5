import { leadingPlace } from './plain-number.ts';
import { minus, ofNumber, over, plus, powerOfTen, rational, stepsIn, times, toNumber, type Rational } from './rational.ts';
import type { Unit } from './units.ts';

/** Returns the SI value of a number in the unit. */
export const toSi = (number: Rational, unit: Unit): number => scaled(toNumber(times(plus(number, unit.offset), unit.factor)), unit);

/** Returns the SI size of a step or a doubt in the unit: the zero of the scale plays no part in it. */
export const sizeToSi = (size: Rational, unit: Unit): number => scaled(toNumber(times(size, unit.factor)), unit);

/**
 * Returns the number, in the unit, that an SI value stands for: to twelve significant digits of the greater of the number and the zero of
 * its scale. A double carries more; what it carries beyond is noise of the conversion, and half a turn a minute must round as a half.
 */
export const fromSi = (value: number, unit: Unit): Rational => {
  const above = over(ofNumber(bare(value, unit)), unit.factor);
  return minus(significant(above), unit.offset);
};

/** Returns the size in the unit of a step or doubt given in SI, to twelve significant digits. */
export const sizeFromSi = (size: number, unit: Unit): Rational => significant(over(ofNumber(bare(size, unit)), unit.factor));

const significant = (value: Rational): Rational => {
  const step = powerOfTen(leadingPlace(value) - 11);
  return times(rational(stepsIn(value, step)), step);
};

const scaled = (value: number, unit: Unit): number => (unit.pi ? value * Math.PI : value);
/** Below this no quantity of the trade lies, in any SI unit; it is the dust of a sum that should have come to zero. */
const DUST = 1e-18;

const bare = (value: number, unit: Unit): number => (Math.abs(value) < DUST ? 0 : unit.pi ? value / Math.PI : value);
