import type { PriceUnit } from '../../entries/index.ts';

/** Units that count the same thing, and how much of the first one of each is: kilograms, metres, pieces. */
const SIZES: readonly Readonly<Partial<Record<PriceUnit, number>>>[] = [{ kg: 1, lb: 0.45359237 }, { m: 1, ft: 0.3048 }, { each: 1, set: 1 }, { hour: 1 }];

/**
 * How many of one unit another makes: 0.4536 for a pound in kilograms.
 * @returns undefined where the two do not count the same thing
 */
export function unitsIn(unit: PriceUnit, of: PriceUnit): number | undefined {
  const sizes = SIZES.find((one) => one[unit] !== undefined);
  const [size, other] = [sizes?.[unit], sizes?.[of]];
  return size === undefined || other === undefined ? undefined : size / other;
}
