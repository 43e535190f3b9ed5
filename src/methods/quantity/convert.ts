import { minus, ofNumber, over, plus, times, toNumber, type Rational } from './rational.ts';
import type { Unit } from './units.ts';

/** Returns the SI value of a number in the unit. */
export const toSi = (number: Rational, unit: Unit): number => scaled(toNumber(times(plus(number, unit.offset), unit.factor)), unit);

/** Returns the SI size of a step or a doubt in the unit: the zero of the scale plays no part in it. */
export const sizeToSi = (size: Rational, unit: Unit): number => scaled(toNumber(times(size, unit.factor)), unit);

/** Returns the number, in the unit, that an SI value stands for. */
export const fromSi = (value: number, unit: Unit): Rational => minus(over(ofNumber(bare(value, unit)), unit.factor), unit.offset);

/** Returns the size in the unit of a step or doubt given in SI. */
export const sizeFromSi = (size: number, unit: Unit): Rational => over(ofNumber(bare(size, unit)), unit.factor);

const scaled = (value: number, unit: Unit): number => (unit.pi ? value * Math.PI : value);
const bare = (value: number, unit: Unit): number => (unit.pi ? value / Math.PI : value);
