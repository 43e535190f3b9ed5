import { box, circle, line, outline } from '../drawing/svg.ts';
import { heightChain } from '../drawing/dimension.ts';
import { drawDies, pin } from './draw-dies.ts';
import { tapered } from './front-toggles.ts';
import type { FrontFigures } from './front-view.ts';
import { limitNote } from './limit-note.ts';
import type { Lengths } from './lengths.ts';
import type { SheetPainter } from './sheet-painter.ts';
import type { StackHeights } from './stack-heights.ts';

/** A helve hammer from its side: the beam on its pivot, the head over the anvil, cushions and crank at the rear. */
export function drawHelve(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, dies: number, figures: FrontFigures): void {
  const at = sheet.at;
  const rect = (x: number, z: number, width: number, height: number, fill: string) => {
    const [left, top] = at(x, z + height);
    at(x + width, z);
    return box(left, top, width * 1000, height * 1000, 'edge', fill);
  };
  const base = lengths.of('base-thickness');
  const depth = lengths.of('helve-depth');
  const front = lengths.of('helve-front');
  const rear = lengths.of('helve-rear');
  const pivotX = dies + front;
  const beam = stack.ramTop - lengths.of('ram-height') * 0.35;
  const tail = pivotX + rear;
  const seat = stack.seatFloor - lengths.of('die-height') * 0.7;
  const shaft = Math.max(base + lengths.of('crank-plate-diameter') * 0.6, lengths.of('shaft-height'));
  const ramHalf = lengths.of('ram-width') / 2;

  sheet.part('foundation', [dies, -0.05], ({ fill }) => [rect(dies - 0.35, -0.09, front + rear + 0.6, 0.09, fill)]);
  sheet.part('base', [pivotX - front * 0.3, base * 0.5], ({ fill }) => [rect(dies + lengths.of('seat-length') * 1.6, 0, front + rear + 0.1 - lengths.of('seat-length') * 1.6, base, fill)]);
  sheet.part('hold-down-bolts', [tail - 0.02, base + 0.015], ({ fill }) => [dies + lengths.of('seat-length') * 2, tail].flatMap((x) => [rect(x - 0.014, base, 0.028, 0.02, fill), line(at(x, base + 0.03), at(x, -0.07), 'hidden')]));
  sheet.part('anvil', [dies - lengths.of('seat-length') * 0.6, seat * 0.5], ({ fill }) => [outline([at(dies - lengths.of('seat-length') * 1.25, 0), at(dies - lengths.of('seat-length') * 0.9, seat), at(dies + lengths.of('seat-length') * 0.9, seat), at(dies + lengths.of('seat-length') * 1.25, 0)], 'edge', { fill })]);
  drawDies(sheet, lengths, stack, dies, 'side', figures.leastWork !== '');
  limitNote(sheet, [dies - lengths.of('die-length') * 0.75, stack.lowerFace + stack.leastWork / 2], dies - lengths.of('seat-length') * 1.2, figures.leastWork);
  sheet.part('frame', [pivotX, (base + beam) / 2], ({ fill }) => [outline([at(pivotX - lengths.of('column-depth') * 0.8, base), at(pivotX - depth * 0.6, beam - depth * 0.2), at(pivotX - depth * 0.6, beam + depth * 0.9), at(pivotX + depth * 0.6, beam + depth * 0.9), at(pivotX + depth * 0.6, beam - depth * 0.2), at(pivotX + lengths.of('column-depth') * 0.8, base)], 'edge', { fill })]);
  sheet.part('helve', [dies + front * 0.45, beam + depth * 0.4], ({ fill }) => [outline([at(dies - ramHalf * 0.5, beam - depth * 0.38), at(dies - ramHalf * 0.5, beam + depth * 0.38), at(pivotX, beam + depth * 0.5), at(tail, beam + depth * 0.36), at(tail, beam - depth * 0.36), at(pivotX, beam - depth * 0.5)], 'edge', { fill }), circle(at(pivotX, beam), depth * 180, 'edge', fill), line(at(pivotX - depth * 0.7, beam), at(pivotX + depth * 0.7, beam), 'thin'), line(at(pivotX, beam - depth * 0.7), at(pivotX, beam + depth * 0.7), 'thin')]);
  sheet.part('ram', [dies - ramHalf * 0.6, stack.ramTop - lengths.of('ram-height') * 0.2], ({ fill }) => [rect(dies - ramHalf, stack.ramBottom, ramHalf * 2, stack.ramTop - stack.ramBottom, fill)]);
  const plate = lengths.of('crank-plate-diameter') / 2;
  const pulley = lengths.of('pulley-diameter') / 2;
  const crankX = tail - depth * 0.3;
  sheet.part('pulley', [crankX + pulley * 0.8, shaft + pulley * 0.5], () => [circle(at(crankX, Math.max(shaft, base + pulley + 0.02)), pulley * 1000, 'hidden', 'none')]);
  const centre = Math.max(shaft, base + pulley + 0.02);
  at(crankX + pulley, centre);
  sheet.part('main-bearings', [crankX - plate * 0.8, centre - plate * 0.9], ({ fill }) => [outline([at(crankX - plate * 0.9, base), at(crankX - plate * 0.45, centre), at(crankX + plate * 0.45, centre), at(crankX + plate * 0.9, base)], 'edge', { fill })]);
  sheet.part('crank', [crankX + plate * 0.6, centre + plate * 0.5], ({ fill }) => [circle(at(crankX, centre), plate * 1000, 'edge', fill)]);
  sheet.part('main-shaft', [crankX, centre], ({ fill }) => [circle(at(crankX, centre), lengths.of('shaft-diameter') * 500, 'edge', fill)]);
  const crankThrow = lengths.of('throw');
  sheet.part('connecting-rod', [crankX - 0.02, (centre + beam) / 2], ({ fill }) => [tapered(sheet, [crankX, centre + crankThrow], [crankX, beam - depth * 0.1], lengths.of('ram-width') * 0.09, fill), pin(sheet, crankX, centre + crankThrow, lengths.of('ram-width') * 0.06, 'var(--paper,#f6f3ea)')]);
  sheet.part('helve', [tail + depth * 0.3, beam], ({ fill }) => [rect(tail - depth * 0.2, beam + depth * 0.42, depth * 0.9, depth * 0.5, fill), rect(tail - depth * 0.2, beam - depth * 0.92, depth * 0.9, depth * 0.5, fill)]);
  const height = lengths.of('treadle-height');
  sheet.oiled('helve', pivotX, beam);
  sheet.oiled('main-bearings', crankX, centre + lengths.of('shaft-diameter') / 2);
  sheet.oiled('crank', crankX, centre + crankThrow);
  sheet.oiled('connecting-rod', crankX, beam - depth * 0.1);
  sheet.oiled('treadle', pivotX - 0.1, height * 1.3);
  sheet.part('treadle', [dies - 0.3, height], ({ fill }) => [tapered(sheet, [dies - 0.38, height], [pivotX - 0.1, height * 1.3], 0.01, fill), circle(at(pivotX - 0.1, height * 1.3), 15, 'edge', fill)]);
  sheet.note(line(at(dies - 0.5, 0), at(tail + 0.35, 0), 'edge'), line(at(dies, -0.1), at(dies, stack.ramTop + 0.15), 'centre'));
  drawDieHeights(sheet, lengths, stack, dies, figures);
}

/** Die heights in one chain, right of the dies, under the beam. */
function drawDieHeights(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, dies: number, figures: FrontFigures): void {
  if (sheet.size === 0) return;
  const y = (z: number): number => -z * 1000;
  const heights = [
    { low: y(stack.seatFloor), high: y(stack.lowerFace), text: figures.lowerDie },
    { low: y(stack.lowerFace), high: y(stack.upperFace), text: figures.restGap },
    { low: y(stack.upperFace), high: y(stack.ramBottom), text: figures.upperDie },
  ].filter(({ text }) => text !== '');
  sheet.note(heightChain(heights, { x: (dies + lengths.of('seat-length') * 1.2) * 1000 + sheet.size * 0.6, from: (dies + lengths.of('die-length') / 2) * 1000, size: sheet.size, least: sheet.least }));
}
