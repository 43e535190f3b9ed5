import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { Making, PartToMake } from './part-to-make.ts';

/** A part as it was worked out, unless the readings leave one of its lengths at nothing or below: then it cannot be, and which one is said. */
export function possible(part: PartToMake, system: PrintSystem): Making {
  const wrong = part.dimensions.find((one) => one.quantity.dimension === 'length' && !(one.quantity.value > 0) && !part.mayVanish?.includes(one.name));
  if (wrong === undefined) return part;
  return {
    state: 'cannot-be', kind: part.kind, title: part.title, because: 'The readings contradict one another: measure again those that it was worked out from.',
    problem: `The ${wrong.title} would be nothing or less; above 0 is allowed: ${printQuantity({ ...wrong.quantity, uncertainty: 0 }, system)}, from ${wrong.from.join(', ')}`,
  };
}
