import { box, circle, coordinate, line, outline } from '../drawing/svg.ts';
import type { Lengths } from './lengths.ts';
import type { SheetPainter } from './sheet-painter.ts';
import type { StackHeights } from './stack-heights.ts';

/**
 * Anvil, seat, dies, keys and the least work thickness, centred on `centre`.
 * @param face `front` shows the width of the dies, `side` their length
 * @param limited whether a least work thickness holds; the work is then drawn between the dies
 */
export function drawDies(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, centre: number, face: 'front' | 'side', limited: boolean): void {
  const front = face === 'front';
  const dieWidth = front ? lengths.of('die-width') : lengths.of('die-length');
  const upperWidth = front ? lengths.place('upper-die.width', dieWidth) : lengths.place('upper-die.length', dieWidth);
  const seatWidth = Math.max(front ? lengths.of('seat-width') : lengths.of('seat-length'), dieWidth * 1.05);
  const lip = lengths.of('die-height') * 0.32;
  const box4 = (x: number, z: number, width: number, height: number, fill: string) => {
    const [left, top] = sheet.at(x - width / 2, z + height);
    return box(left, top, width * 1000, height * 1000, 'edge', fill);
  };
  const post = seatWidth * 1.75;
  sheet.part('seat', [centre - post * 0.36, stack.seatFloor - lip * 1.1], ({ fill }) => [
    outline([sheet.at(centre - post / 2, stack.seatFloor - lip * 2.2), sheet.at(centre - post / 2, stack.seatFloor + lip), sheet.at(centre - seatWidth / 2 + lip * 0.28, stack.seatFloor + lip), sheet.at(centre - seatWidth / 2, stack.seatFloor), sheet.at(centre - dieWidth / 2, stack.seatFloor), sheet.at(centre - dieWidth / 2, stack.seatNow), sheet.at(centre + dieWidth / 2, stack.seatNow), sheet.at(centre + dieWidth / 2, stack.seatFloor), sheet.at(centre + seatWidth / 2, stack.seatFloor), sheet.at(centre + seatWidth / 2 - lip * 0.28, stack.seatFloor + lip), sheet.at(centre + post / 2, stack.seatFloor + lip), sheet.at(centre + post / 2, stack.seatFloor - lip * 2.2)], 'edge', { fill }),
  ]);
  sheet.part('lower-die', [centre + dieWidth * 0.3, stack.lowerFace - (stack.lowerFace - stack.seatFloor) * 0.3], ({ fill }) => [box4(centre, stack.fillerTop, dieWidth, stack.lowerFace - stack.fillerTop, fill)]);
  if (stack.fillerTop > stack.seatNow) sheet.part('filler-plate', [centre, stack.seatNow], ({ fill }) => [box4(centre, stack.seatNow, dieWidth, stack.fillerTop - stack.seatNow, fill)]);
  sheet.part('upper-die', [centre + upperWidth * 0.3, stack.upperFace + (stack.ramBottom - stack.upperFace) * 0.35], ({ fill }) => [box4(centre, stack.upperFace, upperWidth, stack.ramBottom - stack.upperFace, fill)]);
  sheet.part('keys', [centre + dieWidth / 2 + lip * 0.2, stack.seatFloor + lip * 0.45], ({ fill }) => (front
    ? [outline([sheet.at(centre + dieWidth / 2, stack.seatFloor), sheet.at(centre + seatWidth / 2 + lip * 0.02, stack.seatFloor), sheet.at(centre + seatWidth / 2 - lip * 0.26, stack.seatFloor + lip), sheet.at(centre + dieWidth / 2, stack.seatFloor + lip)], 'edge', { fill })]
    : [box4(centre, stack.seatFloor + lip * 0.2, dieWidth * 1.28, lip * 0.5, fill), box4(centre, stack.ramBottom + lip * 0.2, upperWidth * 1.28, lip * 0.5, fill)]));
  if (stack.lowerFaceMade !== undefined && Math.abs(stack.lowerFaceMade - stack.lowerFace) > 0.0008) ghostBox(sheet, centre, stack.seatFloor, dieWidth, stack.lowerFaceMade);
  if (stack.upperHeightMade !== undefined && Math.abs(stack.ramBottom - stack.upperFace - stack.upperHeightMade) > 0.0008) ghostBox(sheet, centre, stack.ramBottom - stack.upperHeightMade, upperWidth, stack.ramBottom);
  if (limited && stack.leastWork > 0) {
    const top = stack.lowerFace + stack.leastWork;
    const reach = dieWidth * 0.75;
    sheet.note(`<rect class="limit-line" x="${coordinate(sheet.at(centre - reach, top)[0])}" y="${coordinate(sheet.at(centre - reach, top)[1])}" width="${coordinate(reach * 2000)}" height="${coordinate(stack.leastWork * 1000)}"/>`);
  }
}

function ghostBox(sheet: SheetPainter, centre: number, bottom: number, width: number, top: number): void {
  const reach = width / 2 + 0.004;
  sheet.note(outline([sheet.at(centre - reach, bottom), sheet.at(centre - reach, top), sheet.at(centre + reach, top), sheet.at(centre + reach, bottom)], 'ghost', { closed: false, fill: 'none' }));
}

/** A pin seen end on, with its centre lines. */
export function pin(sheet: SheetPainter, x: number, z: number, radius: number, fill: string): string {
  const [px, py] = sheet.at(x, z);
  const r = radius * 1000;
  return circle([px, py], r, 'edge', fill) + line([px - r * 1.5, py], [px + r * 1.5, py], 'thin') + line([px, py - r * 1.5], [px, py + r * 1.5], 'thin');
}
