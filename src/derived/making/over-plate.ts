import { fineLength } from './shop-units.ts';
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

/** The lower seat's width that plate and foot are both cut to. */
export interface SeatOverPlate {
  /** With half of what is open in its doubt. */
  readonly width: Figure;
  /** True where nobody read it over the plate and the flanks lean: the one reading may stand for a wider floor. */
  readonly open: boolean;
  /** Said on both sheets; empty where nothing is open. */
  readonly warnings: readonly string[];
}

/**
 * Width of the seat at the top of its plate, one reading for plate and foot. A width that was read at no known height counts as read
 * there, which leaves metal on both; what they may be too wide by stands in its doubt.
 * @returns undefined where no width was read
 */
export function seatOverPlate(reader: FigureReader, context: MakingContext): SeatOverPlate | undefined {
  const over = reader.find('seat.width-over-plate');
  const width = over ?? reader.find('seat.width');
  if (width === undefined) return undefined;
  const plate = reader.find('seat.sunk');
  const lean = reader.find('dovetail.flank-angle@lower|dovetail.flank-angle@lower#as-made');
  // In a pocket the plate comes flush with the floor beside it, and that is the floor that was read.
  if (over !== undefined || !context.floorCut || !context.alsoMade.has('filler-plate') || plate === undefined || plate.quantity.value <= 0 || lean === undefined || lean.quantity.value <= 0) return { width, open: false, warnings: [] };
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const narrower = closesIn(plate, lean).quantity.value;
  const widened = { ...width, quantity: { ...width.quantity, uncertainty: Math.hypot(width.quantity.uncertainty, narrower / 2) } };
  return {
    width: widened, open: true,
    warnings: [`Filler plate and foot are both cut as if ${print(width.quantity.value)} had been read at the top of the plate, ${print(plate.quantity.value)} over the sunk floor: that leaves metal on. If it was read at the sunk floor, the seat is ${fineLength(narrower, context.system)} narrower on top of the plate, and so are plate and foot. Measure there before either is cut.`],
  };
}
