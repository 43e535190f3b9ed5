import type { Dimension } from './dimension.ts';

/**
 * A value with its doubt.
 * `value` is SI (see `SI_UNIT`); `uncertainty` is the standard uncertainty (one sigma) in the same unit, 0 = taken as exact;
 * `interval` holds the 95 % bounds where they do not lie evenly about the value.
 */
export interface Quantity {
  readonly dimension: Dimension;
  readonly value: number;
  readonly uncertainty: number;
  readonly interval?: readonly [number, number];
}

/**
 * Returns a quantity.
 * @param value SI, finite
 * @param uncertainty standard uncertainty, SI, finite and not negative; 0 (the default) takes the value as exact
 * @throws where a number is not finite or the uncertainty is negative: a sum went wrong before it came here
 */
export function quantity(value: number, dimension: Dimension, uncertainty = 0): Quantity {
  if (!Number.isFinite(value)) throw new Error(`The value of ${dimension} must be finite: ${value}`);
  if (!Number.isFinite(uncertainty) || uncertainty < 0) throw new Error(`The uncertainty of ${dimension} must be finite and not negative: ${uncertainty}`);
  return { dimension, value, uncertainty };
}

/**
 * Half-width of the 95 % interval that every ± in the program means: coverage factor 2 (JCGM 100:2008, 6.2 and 6.3.3).
 * @param uncertainty standard uncertainty, any unit, not negative
 */
export const halfWidth = (uncertainty: number): number => 2 * uncertainty;
