import { box, circle, line, outline } from '../drawing/svg.ts';
import { heightChain } from '../drawing/dimension.ts';
import { pin, drawDies } from './draw-dies.ts';
import { drawBow } from './front-bow.ts';
import { drawToggles, tapered } from './front-toggles.ts';
import { limitNote } from './limit-note.ts';
import type { Lengths } from './lengths.ts';
import type { SheetPainter } from './sheet-painter.ts';
import type { StackHeights } from './stack-heights.ts';

/** Figures that stand on the front view as dimensions; empty where nobody read them. */
export interface FrontFigures {
  readonly leastWork: string;
  readonly restGap: string;
  readonly upperDie: string;
  readonly lowerDie: string;
  readonly throwWords: string;
  readonly clearance: string;
}

/** A hammer with a ram in a guide, from the operator's side: column behind, ram and linkage in front, crank above. */
export function drawFrontView(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, family: 'coil-and-toggle' | 'bow-spring', centre: number, figures: FrontFigures): void {
  const base = lengths.of('base-width');
  const at = sheet.at;
  const rect = (x: number, z: number, width: number, height: number, fill: string) => {
    const [left, top] = at(x, z + height);
    at(x + width, z);
    return box(left, top, width * 1000, height * 1000, 'edge', fill);
  };
  const ramHalf = lengths.of('ram-width') / 2;
  const clearance = lengths.place('stack.linkage-clearance', 0.025);
  const guideHalf = ramHalf + lengths.of('ram-width') * 0.28;
  const seat = stack.seatFloor - lengths.of('die-height') * 0.7;
  const ramTopPin = stack.ramTop + lengths.of('ram-width') * 0.08;
  const guideTop = Math.max(stack.ramBottom + lengths.of('ram-height') * 0.35, ramTopPin - lengths.of('rest-gap') - Math.max(0, clearance) - lengths.of('ram-width') * 0.06);
  const guideBottom = Math.min(lengths.of('guide-bottom'), guideTop - lengths.of('ram-height') * 0.45);

  sheet.part('foundation', [centre - base * 0.55, -0.045], ({ fill }) => [rect(centre - base * 0.7, -0.09, base * 1.4, 0.09, fill)]);
  sheet.part('base', [centre - base * 0.42, lengths.of('base-thickness') * 0.5], ({ fill }) => [rect(centre - base / 2, 0, base, lengths.of('base-thickness'), fill)]);
  sheet.part('hold-down-bolts', [centre + base * 0.43, lengths.of('base-thickness') * 1.2], ({ fill }) => [-1, 1].flatMap((side) => [rect(centre + side * base * 0.43 - 0.014, lengths.of('base-thickness'), 0.028, 0.02, fill), line(at(centre + side * base * 0.43, lengths.of('base-thickness') + 0.03), at(centre + side * base * 0.43, -0.07), 'hidden')]));

  const shaft = placeShaft(sheet, lengths, stack, family, centre);
  const headTop = shaft + lengths.of('shaft-diameter') * 2.1;
  const columnHalf = Math.max(guideHalf * 1.12, base * 0.2);
  sheet.part('frame', [centre - columnHalf * 0.97, (guideBottom + seat) / 2], ({ fill }) => [
    outline([at(centre - columnHalf * 1.35, lengths.of('base-thickness')), at(centre - columnHalf, seat * 0.75), at(centre - columnHalf, headTop - 0.04), at(centre - columnHalf * 0.7, headTop), at(centre + columnHalf * 0.7, headTop), at(centre + columnHalf, headTop - 0.04), at(centre + columnHalf, seat * 0.75), at(centre + columnHalf * 1.35, lengths.of('base-thickness'))], 'edge', { fill }),
  ]);
  sheet.part('anvil', [centre + lengths.of('seat-width') * 0.6, seat * 0.55], ({ fill }) => [
    outline([at(centre - base * 0.36, lengths.of('base-thickness')), at(centre - lengths.of('seat-width') * 0.9, seat), at(centre + lengths.of('seat-width') * 0.9, seat), at(centre + base * 0.36, lengths.of('base-thickness'))], 'edge', { fill }),
  ]);
  drawDies(sheet, lengths, stack, centre, 'front', figures.leastWork !== '');
  limitNote(sheet, [centre - lengths.of('die-width') * 0.75, stack.lowerFace + stack.leastWork / 2], centre - Math.max(columnHalf, lengths.of('seat-width') * 0.95) - 0.02, figures.leastWork);
  sheet.part('ways', [centre - guideHalf * 0.86, guideTop - 0.012], ({ fill }) => [-1, 1].map((side) => rect(centre + side * (guideHalf + ramHalf) * 0.5 - (guideHalf - ramHalf) * 0.5, guideBottom, guideHalf - ramHalf, guideTop - guideBottom, fill)));
  sheet.part('ram', [centre, stack.ramTop - lengths.of('ram-height') * 0.12], ({ fill }) => [rect(centre - ramHalf, stack.ramBottom, ramHalf * 2, stack.ramTop - stack.ramBottom, fill), rect(centre - ramHalf * 0.6, stack.ramTop, ramHalf * 1.2, lengths.of('ram-width') * 0.16, fill)]);
  const capBottom = guideBottom + (guideTop - guideBottom) * 0.18;
  const capHeight = (guideTop - guideBottom) * 0.64;
  sheet.part('ram-guide', [centre + guideHalf * 0.4, capBottom + capHeight * 0.75], ({ fill }) => [rect(centre - guideHalf, capBottom, guideHalf * 2, capHeight, fill)]);
  sheet.part('guide-bolts', [centre + guideHalf * 0.84, capBottom + capHeight * 0.25], ({ fill }) => [-1, 1].flatMap((side) => [0.25, 0.75].map((share) => circle(at(centre + side * guideHalf * 0.84, capBottom + capHeight * share), 11, 'edge', fill))));
  const top = family === 'coil-and-toggle' ? drawToggles(sheet, lengths, stack, centre) : drawBow(sheet, lengths, stack, centre);
  drawCrank(sheet, lengths, shaft, top.rodEnd, centre);
  sheet.note(line(at(centre, -0.1), at(centre, headTop + 0.16), 'centre'));
  sheet.note(line(at(centre - base * 0.85, 0), at(centre + base * 0.85, 0), 'edge'));
  drawFigures(sheet, lengths, stack, centre + columnHalf, figures);
  if (sheet.size > 0 && figures.throwWords !== '') drawThrow(sheet, lengths, centre, shaft, figures.throwWords);
}

/** Height of the shaft: as read, or where rod and throw put it above the linkage at bottom dead centre. */
function placeShaft(_sheet: SheetPainter, lengths: Lengths, stack: StackHeights, family: 'coil-and-toggle' | 'bow-spring', _centre: number): number {
  if (lengths.read.has('shaft-height')) return lengths.of('shaft-height');
  const rodEnd = family === 'coil-and-toggle' ? stack.ramTop + lengths.of('arm-length') + lengths.of('link-length') * 0.16 : stack.ramTop + lengths.of('bow-height');
  return rodEnd + lengths.of('rod-length') + lengths.of('throw');
}

function drawCrank(sheet: SheetPainter, lengths: Lengths, shaft: number, rodEnd: number, centre: number): void {
  const plate = lengths.of('crank-plate-diameter') / 2;
  const crankThrow = lengths.of('throw');
  const rodHalf = lengths.of('ram-width') * 0.09;
  const pinHeight = shaft - crankThrow;
  sheet.part('pulley', [centre + lengths.of('pulley-diameter') * 0.42, shaft + lengths.of('pulley-diameter') * 0.25], () => [circle(sheet.at(centre, shaft), lengths.of('pulley-diameter') * 500, 'hidden', 'none')]);
  sheet.at(centre - lengths.of('pulley-diameter') / 2, shaft + lengths.of('pulley-diameter') / 2);
  sheet.at(centre + lengths.of('pulley-diameter') / 2, shaft);
  sheet.part('crank', [centre - plate * 0.7, shaft + plate * 0.6], ({ fill }) => [circle(sheet.at(centre, shaft), plate * 1000, 'edge', fill)]);
  sheet.part('main-shaft', [centre, shaft], ({ fill }) => [circle(sheet.at(centre, shaft), lengths.of('shaft-diameter') * 500, 'edge', fill)]);
  sheet.oiled('crank', centre, pinHeight);
  sheet.oiled('connecting-rod', centre, rodEnd);
  sheet.part('connecting-rod', [centre + rodHalf, rodEnd + (pinHeight - rodEnd) * 0.6], ({ fill }) => [tapered(sheet, [centre, pinHeight], [centre, rodEnd], rodHalf, fill), pin(sheet, centre, rodEnd, rodHalf * 0.55, 'var(--paper,#f6f3ea)'), pin(sheet, centre, pinHeight, rodHalf * 0.75, 'var(--paper,#f6f3ea)')]);
}

/** Die heights and the gap between them in one chain, right of the column. */
function drawFigures(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, column: number, figures: FrontFigures): void {
  const { size } = sheet;
  if (size === 0) return;
  const y = (z: number): number => -z * 1000;
  const heights = [
    { low: y(stack.seatFloor), high: y(stack.lowerFace), text: figures.lowerDie },
    { low: y(stack.lowerFace), high: y(stack.upperFace), text: figures.restGap },
    { low: y(stack.upperFace), high: y(stack.ramBottom), text: figures.upperDie },
  ].filter(({ text }) => text !== '');
  const x = Math.max(column, lengths.of('seat-width') * 0.95) * 1000 + size * 0.9;
  sheet.note(heightChain(heights, { x, from: lengths.of('die-width') * 500, size, least: sheet.least }));
  for (const { text } of heights) sheet.reserveText([x + size * 1.6, y(stack.lowerFace)], text, 'start');
}

/** The throw, left of the pulley, from the shaft down to the crank pin. */
function drawThrow(sheet: SheetPainter, lengths: Lengths, centre: number, shaft: number, text: string): void {
  const x = (centre - lengths.of('pulley-diameter') * 0.5) * 1000 - sheet.size * 0.8;
  sheet.note(heightChain([{ low: -(shaft - lengths.of('throw')) * 1000, high: -shaft * 1000, text }], { x, from: centre * 1000, size: sheet.size, least: sheet.least }));
  sheet.reserveText([x - sheet.size * 0.6, -shaft * 1000], text, 'end');
}
