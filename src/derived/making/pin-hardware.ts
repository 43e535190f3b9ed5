import { formatQuantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';

const INCH = 0.0254;
/** Split pins as they are sold, by the hole that they go in: inch sizes from memory; metric ones are called by the hole (ISO 1234, from memory). */
const INCH_SPLIT_PINS = [1 / 16, 5 / 64, 3 / 32, 1 / 8, 5 / 32, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2].map((size) => size * INCH);
/** Lengths that split pins are sold in, mm (ISO 1234, from memory). */
const METRIC_LENGTHS = [10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50, 56, 63, 71, 80, 90, 100, 112, 125, 140, 160].map((size) => size / 1000);

const print = (value: number, system: PrintSystem, step = INCH / 64): string => formatQuantity({ dimension: 'length', value, uncertainty: 0 }, { system, doubt: false, resolution: system === 'inch' ? step : 0.0001 }).replace('.0 mm', ' mm');

/** A split pin to buy: size by its hole, long enough to be bent over what it goes through. @param hole m; @param across what it goes through, m */
export function splitPinWords(hole: number, across: number, pieces: number, system: PrintSystem): string {
  const size = system === 'inch' ? [...INCH_SPLIT_PINS].reverse().find((one) => one <= hole + INCH / 500) ?? INCH_SPLIT_PINS[0]! : hole;
  const least = across + 2.5 * size;
  const length = system === 'inch' ? Math.ceil(least / (INCH / 4) - 1e-6) * (INCH / 4) : METRIC_LENGTHS.find((one) => one >= least - 1e-9) ?? Math.ceil(least / 0.01) * 0.01;
  return `split pin ${print(size, system)} by ${print(length, system)}, ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`;
}

/** Flat washers to buy. @param on what they go over, m; @param thick at most, m */
export const washerWords = (on: number, thick: number, pieces: number, system: PrintSystem, name = 'flat washer'): string =>
  `${name}, over ${print(on, system)} and up to ${print(thick, system)} thick, ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`;
