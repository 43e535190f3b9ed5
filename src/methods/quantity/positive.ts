import type { Dimension } from './dimension.ts';
import type { Quantity } from './quantity.ts';

/** Dimensions whose quantities never go below nothing here; a length may be a difference, a ratio a loss. */
const NEVER_BELOW: readonly Dimension[] = ['mass', 'force', 'energy', 'power', 'pressure', 'velocity', 'stiffness'];
/** Standard uncertainty as a share of the value from which a plain ± says too little of the lower side. */
const WIDE = 0.2;

/**
 * A positive quantity with its 95 % interval, where its doubt is so wide that value ± doubt would reach near or below nothing:
 * the logarithm is taken as normal about the value, so that the bounds are value × and ÷ exp(2 u / value) (JCGM 101:2008, 6.4 lets
 * a distribution be chosen by what is known; that it is positive is known).
 * @param always for a quantity of another dimension that is known to be positive, such as a share of a strength
 * @returns the same quantity where its doubt is small, it has an interval already, or it may lie below nothing
 */
export function withPositiveInterval(quantity: Quantity, always = false): Quantity {
  const { value, uncertainty, dimension, interval } = quantity;
  if (interval !== undefined || !(value > 0) || !(always || NEVER_BELOW.includes(dimension)) || uncertainty < WIDE * value) return quantity;
  const factor = Math.exp((2 * uncertainty) / value);
  return { ...quantity, interval: [value / factor, value * factor] };
}
