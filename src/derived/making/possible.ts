import { printQuantity, type PrintSystem } from '../print-system.ts';
import { doubtWarnings, LOUD } from './figure.ts';
import type { Making, PartToMake } from './part-to-make.ts';
import { inShopUnits } from './shop-units.ts';

/**
 * A part as it was worked out, unless the readings leave one of its lengths at nothing or below: then it cannot be, and which one is said.
 * Every size that is known less well than it is cut is warned of first, and every sentence keeps to the units of the shop.
 */
export function possible(part: PartToMake, system: PrintSystem): Making {
  const wrong = part.dimensions.find((one) => one.quantity.dimension === 'length' && !(one.quantity.value > 0) && !part.mayVanish?.includes(one.name));
  if (wrong === undefined) return spoken({ ...part, warnings: [...doubtWarnings(part.dimensions, system, part.kind), ...part.warnings.filter((one) => !one.startsWith(LOUD))] }, system);
  return {
    state: 'cannot-be', kind: part.kind, title: part.title, because: 'The readings contradict one another: measure again those that it was worked out from.',
    problem: `The ${wrong.title} would be nothing or less; above 0 is allowed: ${printQuantity({ ...wrong.quantity, uncertainty: 0 }, system)}, from ${wrong.from.join(', ')}`,
  };
}

/** Every sentence of a part in the units that the shop works in. */
function spoken(part: PartToMake, system: PrintSystem): PartToMake {
  const say = (words: string): string => inShopUnits(words, system);
  return {
    ...part, material: say(part.material), hardness: say(part.hardness), notes: part.notes.map(say), warnings: part.warnings.map(say), dimensions: part.dimensions.map((one) => ({ ...one, title: say(one.title), why: say(one.why) })),
    unknowns: part.unknowns.map((one) => ({ ...one, what: say(one.what), how: say(one.how) })), disputes: part.disputes.map((one) => ({ ...one, oneSide: say(one.oneSide), otherSide: say(one.otherSide) })),
  };
}
