import { NUT_LOCKS } from '../../knowledge/index.ts';
import { chosen, reckon, type Figure } from './figure.ts';
import { shopFigure } from './shop-figures.ts';

/** What stands behind the crank plate on the end of a crank pin: washer, slotted nut, and the split pin that locks it. */
export interface PinTail {
  /** From the end of the shank, which lies inside the plate, to the end of the pin. */
  readonly length: Figure;
  readonly washer: Figure;
  readonly nut: Figure;
  /** Hole for the split pin. */
  readonly hole: number;
  /** Its middle from the end of the shank, about: it is drilled through a slot of the nut when that is home. */
  readonly toHole: Figure;
  /** How far the pin stands out behind the plate, m. */
  readonly behind: number;
}

/**
 * Length of the thread behind the shank: what the shank lies inside the plate, washer, slotted nut and two turns beyond it.
 * @param across the thread, or the shank where no thread was read; @param pitch an eighth of that where it was not read
 * @param inch true for nuts in turns to the inch; metric slotted nuts are higher
 */
export function pinTail(across: Figure, pitch: Figure | undefined, inch: boolean): PinTail {
  const inside = shopFigure('pin-ahead-of-plate');
  const share = (id: string): Figure => ({ ...reckon('length', [across, shopFigure(id)], (size, part) => size! * part!), estimate: false });
  const washer = share('washer-under-nut');
  const nut = share(inch ? 'slotted-nut-inch' : 'slotted-nut-metric');
  const turn = pitch ?? share('pitch-unread');
  const length = { ...reckon('length', [inside, washer, nut, turn], (back, flat, high, one) => back! + flat! + high! + 2 * one!), estimate: false };
  const toHole = { ...reckon('length', [inside, washer, nut, share('slot-middle')], (back, flat, high, slot) => back! + flat! + high! - slot!), estimate: false };
  const size = across.quantity.value;
  const lock = NUT_LOCKS.rows.find((row) => size <= row.upTo + 1e-9) ?? NUT_LOCKS.rows[NUT_LOCKS.rows.length - 1]!;
  return { length, washer, nut, hole: lock.hole, toHole: { ...toHole, quantity: chosen(toHole.quantity.value, 'length', 'derived').quantity }, behind: length.quantity.value - inside.quantity.value };
}
