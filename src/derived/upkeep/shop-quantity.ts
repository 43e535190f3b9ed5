import { readQuantity, type Dimension, type Quantity } from '../../methods/quantity/index.ts';

/** A figure of knowledge in SI, taken as exact. Throws where it cannot be read: that is a mistake of ours. */
export function shopQuantity(text: string, dimension: Dimension, field: string): Quantity {
  const reading = readQuantity(text, { dimension, field });
  if (!reading.ok) throw new Error(`knowledge: a figure of ${field} cannot be read: ${reading.problem.message}: ${text}`);
  return { ...reading.quantity, uncertainty: 0 };
}
