import { SHOP_FIGURES } from '../../knowledge/index.ts';
import { readQuantity } from '../../methods/quantity/index.ts';
import type { Figure } from './figure.ts';

/** A figure of practice, SI, ready to be reckoned with. */
export function shopFigure(id: string): Figure {
  const row = SHOP_FIGURES.find((one) => one.id === id);
  if (row === undefined) throw new Error(`There is no shop figure of this name: ${id}`);
  const reading = readQuantity(row.text, { dimension: row.dimension, field: row.id });
  if (!reading.ok) throw new Error(`The shop figure ${id} cannot be read: ${reading.problem.message}: ${row.text}`);
  // Without a ± the figure is a choice and not a reading: nothing is doubtful about it.
  const chosen = row.text.includes('±') ? reading.quantity : { ...reading.quantity, uncertainty: 0 };
  return { quantity: chosen, from: [], estimate: true, sources: [row.source] };
}

/** Its value alone, SI. */
export const shopNumber = (id: string): number => shopFigure(id).quantity.value;
