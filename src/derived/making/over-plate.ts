import { formatQuantity } from '../../methods/quantity/index.ts';
import { printQuantity } from '../print-system.ts';
import { reckon, type Figure, type FigureReader } from './figure.ts';
import type { MakingContext } from './making-context.ts';

/**
 * Depth of the lower seat under its rim, over which the foot and the key stand. A filler plate brings the floor back to where it
 * was made, so a depth that was read in a sunk seat does not hold over it.
 */
export const seatDepth = (reader: FigureReader, context: MakingContext): Figure | undefined =>
  reader.find(context.alsoMade.has('filler-plate') ? 'seat.depth#as-made|seat.depth' : 'seat.depth|seat.depth#as-made');

/** How much narrower the seat is on top of a plate than at the plate's foot, between flanks that lean inwards. */
export const closesIn = (thickness: Figure, lean: Figure): Figure => reckon('length', [thickness, lean], (thick, angle) => 2 * thick! * Math.tan(angle!));

/** What to measure before the foot is cut, where a plate goes in between leaning flanks and the width was read below its top. */
export function widthOverPlate(reader: FigureReader, context: MakingContext): readonly string[] {
  const plate = reader.find('seat.sunk');
  const lean = reader.find('dovetail.flank-angle@lower|dovetail.flank-angle@lower#as-made');
  const width = reader.find('seat.width');
  if (!context.alsoMade.has('filler-plate') || plate === undefined || plate.quantity.value <= 0 || lean === undefined || width === undefined) return [];
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const narrower = (length: number): string => formatQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system === 'inch' ? { unit: 'in', resolution: 0.0254e-3, doubt: false } : { unit: 'mm', resolution: 1e-5, doubt: false });
  return [`Measure the seat between its flanks ${print(plate.quantity.value)} over the floor before the foot is cut: if ${print(width.quantity.value)} was read at the sunk floor, it is ${narrower(closesIn(plate, lean).quantity.value)} narrower on top of the plate, and so is the foot.`];
}
