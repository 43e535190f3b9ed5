import { box, circle, line, outline, pathOf } from '../drawing/svg.ts';
import { drawDies } from './draw-dies.ts';
import { tapered } from './front-toggles.ts';
import type { Lengths } from './lengths.ts';
import type { SheetPainter } from './sheet-painter.ts';
import type { StackHeights } from './stack-heights.ts';

/**
 * A hammer with a ram in a guide, from its side: the C-shaped frame with its throat, the shaft in its two bearings,
 * clutch and pulley, the ram in its guide in front, the treadle at the foot, the motor behind.
 * @param dies horizontal position of the die centre, m; the operator stands to the left
 */
export function drawSideView(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, family: 'coil-and-toggle' | 'bow-spring', dies: number): void {
  const at = sheet.at;
  const rect = (x: number, z: number, width: number, height: number, fill: string) => {
    const [left, top] = at(x, z + height);
    at(x + width, z);
    return box(left, top, width * 1000, height * 1000, 'edge', fill);
  };
  const throat = lengths.of('throat-depth');
  const column = lengths.of('column-depth');
  const base = lengths.of('base-thickness');
  const length = lengths.of('base-length');
  const ramHalf = lengths.of('ram-width') / 2;
  const front = dies - length * 0.24;
  const rear = front + length;
  const columnFront = dies + throat;
  const columnRear = Math.min(columnFront + column, rear - 0.04);
  const seat = stack.seatFloor - lengths.of('die-height') * 0.7;
  const rodEnd = family === 'coil-and-toggle' ? stack.ramTop + lengths.of('arm-length') + lengths.of('link-length') * 0.16 : stack.ramTop + lengths.of('bow-height') * 1.4;
  const shaft = lengths.read.has('shaft-height') ? lengths.of('shaft-height') : rodEnd + lengths.of('rod-length') + lengths.of('throw');
  const shaftHalf = lengths.of('shaft-diameter') / 2;
  const top = shaft - shaftHalf * 1.6;
  const guideTop = Math.max(stack.ramBottom + lengths.of('ram-height') * 0.35, stack.ramTop - lengths.of('rest-gap') - lengths.of('ram-width') * 0.1);
  const guideBottom = Math.min(lengths.of('guide-bottom'), guideTop - lengths.of('ram-height') * 0.45);

  sheet.part('foundation', [front + length * 0.1, -0.05], ({ fill }) => [rect(front - 0.06, -0.09, length + 0.12, 0.09, fill)]);
  sheet.part('base', [rear - length * 0.08, base * 0.5], ({ fill }) => [rect(front, 0, length, base, fill)]);
  sheet.part('hold-down-bolts', [rear - 0.05, base + 0.012], ({ fill }) => [front + 0.05, rear - 0.05].flatMap((x) => [rect(x - 0.014, base, 0.028, 0.02, fill), line(at(x, base + 0.03), at(x, -0.07), 'hidden')]));
  sheet.part('frame', [columnRear - column * 0.25, (seat + shaft) / 2], ({ fill }) => [throatOutline(sheet, { columnFront, columnRear, base, seat: seat * 0.55, guideBottom, top, ramHalf, dies, foot: length * 0.1 }, fill)]);
  sheet.part('anvil', [dies, seat * 0.5], ({ fill }) => [outline([at(dies - length * 0.17, base), at(dies - lengths.of('seat-length') * 0.72, seat), at(dies + lengths.of('seat-length') * 0.72, seat), at(columnFront + column * 0.2, seat * 0.5), at(columnFront + column * 0.2, base)], 'edge', { fill })]);
  drawDies(sheet, lengths, stack, dies, 'side', false);
  sheet.part('ram', [dies - ramHalf, stack.ramTop - 0.03], ({ fill }) => [rect(dies - ramHalf, stack.ramBottom, ramHalf * 2, stack.ramTop - stack.ramBottom, fill)]);
  sheet.part('ways', [dies + ramHalf, guideBottom + 0.02], ({ fill }) => [rect(dies + ramHalf, guideBottom, Math.max(0.012, throat * 0.08), guideTop - guideBottom, fill)]);
  sheet.part('ram-guide', [dies - ramHalf * 1.25, guideBottom + (guideTop - guideBottom) * 0.5], ({ fill }) => [rect(dies - ramHalf * 1.5, guideBottom + (guideTop - guideBottom) * 0.15, ramHalf * 2.9, (guideTop - guideBottom) * 0.7, fill)]);
  sheet.part('guide-shims', [dies + ramHalf * 1.2, guideTop], ({ fill }) => [rect(dies + ramHalf * 1.02, guideBottom + (guideTop - guideBottom) * 0.1, ramHalf * 0.18, (guideTop - guideBottom) * 0.86, fill)]);
  sheet.part('connecting-rod', [dies - ramHalf * 0.2, (rodEnd + shaft) / 2], ({ fill }) => [tapered(sheet, [dies, stack.ramTop], [dies, shaft - lengths.of('throw')], ramHalf * 0.16, fill)]);
  drawShaft(sheet, lengths, { dies, columnFront, columnRear, shaft, top });
  drawTreadle(sheet, lengths, { front, columnRear, shaft, dies });
  drawMotor(sheet, lengths, { columnRear, rear, base, shaft });
  sheet.note(line(at(front - 0.12, 0), at(rear + 0.3, 0), 'edge'));
}

interface ThroatPlaces {
  readonly columnFront: number;
  readonly columnRear: number;
  readonly base: number;
  readonly seat: number;
  readonly guideBottom: number;
  readonly top: number;
  readonly ramHalf: number;
  readonly dies: number;
  readonly foot: number;
}

/** The casting: foot, column, and the arm that reaches forward over the throat to carry guide and front bearing. */
function throatOutline(sheet: SheetPainter, places: ThroatPlaces, fill: string): string {
  const p = (x: number, z: number): string => sheet.at(x, z).map((one) => one.toFixed(2)).join(' ');
  const { columnFront, columnRear, base, seat, guideBottom, top, ramHalf, dies, foot } = places;
  const nose = dies + ramHalf * 1.25;
  const mid = guideBottom * 0.96;
  return pathOf(`M${p(columnFront - foot, base)}Q${p(columnFront, base)} ${p(columnFront, seat)}L${p(columnFront, mid - 0.06)}Q${p(columnFront, mid)} ${p(Math.max(nose, columnFront - 0.06), mid + 0.02)}L${p(nose, mid + 0.03)}L${p(nose, top)}L${p(columnRear, top)}Q${p(columnRear + 0.015, (top + base) / 2)} ${p(columnRear + foot * 0.8, base)}Z`, 'edge', fill);
}

interface ShaftPlaces {
  readonly dies: number;
  readonly columnFront: number;
  readonly columnRear: number;
  readonly shaft: number;
  readonly top: number;
}

function drawShaft(sheet: SheetPainter, lengths: Lengths, { dies, columnRear, shaft }: ShaftPlaces): void {
  const at = sheet.at;
  const half = lengths.of('shaft-diameter') / 2;
  const rect = (x: number, z: number, width: number, height: number, fill: string) => {
    const [left, top] = at(x, z + height);
    at(x + width, z);
    return box(left, top, width * 1000, height * 1000, 'edge', fill);
  };
  const plate = lengths.of('crank-plate-diameter') / 2;
  const ramHalf = lengths.of('ram-width') / 2;
  const frontBearing = dies + ramHalf * 1.35;
  const rearBearing = columnRear - half * 3.4;
  const pulley = lengths.of('pulley-diameter') / 2;
  const face = lengths.of('pulley-face');
  const pulleyAt = columnRear + half * 1.4;
  sheet.part('main-shaft', [(frontBearing + rearBearing) / 2 + half * 2, shaft], ({ fill }) => [rect(dies + ramHalf * 0.2, shaft - half, pulleyAt + face * 1.5 - dies - ramHalf * 0.2, half * 2, fill)]);
  sheet.part('crank', [dies + ramHalf * 0.5, shaft + plate * 0.7], ({ fill }) => [rect(dies + ramHalf * 0.45, shaft - plate, half * 1.1, plate * 2, fill), rect(dies - ramHalf * 0.25, shaft - lengths.of('throw') - half * 0.5, ramHalf * 0.75, half, fill)]);
  sheet.part('main-bearings', [frontBearing + half, shaft - half * 1.1], ({ fill }) => [frontBearing, rearBearing].map((x) => rect(x, shaft - half * 1.6, half * 3, half * 1.6, fill)));
  sheet.part('bearing-caps', [rearBearing + half * 1.5, shaft + half * 1.3], ({ fill }) => [frontBearing, rearBearing].map((x) => rect(x, shaft + half * 0.1, half * 3, half * 1.6, fill)));
  sheet.part('oil-ways', [frontBearing + half * 1.5, shaft + half * 2.2], ({ fill }) => [frontBearing, rearBearing].map((x) => rect(x + half * 1.2, shaft + half * 1.7, half * 0.6, half * 0.7, fill)));
  sheet.oiled('main-bearings', frontBearing + half * 1.5, shaft + half * 2.2);
  sheet.oiled('clutch-pulley', pulleyAt + face * 0.5, shaft);
  sheet.part('clutch-pulley', [pulleyAt + face * 0.5, shaft + pulley * 0.75], ({ fill }) => [rect(pulleyAt, shaft - pulley, face, pulley * 2, fill)]);
  sheet.part('clutch-facing', [pulleyAt + face + half * 0.8, shaft - half * 2], ({ fill }) => [outline([at(pulleyAt + face, shaft - half * 3), at(pulleyAt + face + half * 1.5, shaft - half * 2), at(pulleyAt + face + half * 1.5, shaft + half * 2), at(pulleyAt + face, shaft + half * 3)], 'edge', { fill })]);
}

function drawTreadle(sheet: SheetPainter, lengths: Lengths, { front, columnRear, shaft, dies }: { readonly front: number; readonly columnRear: number; readonly shaft: number; readonly dies: number }): void {
  const at = sheet.at;
  const height = lengths.of('treadle-height');
  const half = lengths.of('shaft-diameter') / 2;
  const pulleyAt = columnRear + half * 1.4 + lengths.of('pulley-face') * 1.25;
  const pivot = dies + lengths.of('throat-depth') * 1.2;
  sheet.part('treadle', [front - 0.03, height], ({ fill }) => [tapered(sheet, [front - 0.07, height], [pivot, height * 1.35], 0.009, fill), tapered(sheet, [pivot, height * 1.35], [pulleyAt + half * 2.2, height * 1.1], 0.009, fill), circle(at(pivot, height * 1.35), 14, 'edge', fill)]);
  sheet.oiled('treadle', pivot, height * 1.35);
  sheet.part('shipper', [pulleyAt + half * 2.2, shaft * 0.62], ({ fill }) => [tapered(sheet, [pulleyAt + half * 2.2, height * 1.1], [pulleyAt + half * 1.4, shaft - half * 1.2], 0.007, fill)]);
}

function drawMotor(sheet: SheetPainter, lengths: Lengths, { columnRear, rear, base, shaft }: { readonly columnRear: number; readonly rear: number; readonly base: number; readonly shaft: number }): void {
  const half = lengths.of('shaft-diameter') / 2;
  const face = lengths.of('pulley-face');
  const pulleyAt = columnRear + half * 1.4;
  const small = lengths.of('motor-pulley-diameter') / 2;
  const large = lengths.of('pulley-diameter') / 2;
  const body = lengths.of('shaft-diameter') * 2;
  const z = base + body * 1.5;
  const width = face * 0.7;
  const rect = (x: number, low: number, across: number, height: number, fill: string) => {
    const [left, top] = sheet.at(x, low + height);
    sheet.at(x + across, low);
    return box(left, top, across * 1000, height * 1000, 'edge', fill);
  };
  sheet.part('belt', [pulleyAt + face / 2, (z + shaft) / 2 + large * 0.2], ({ fill }) => [rect(pulleyAt + (face - width) / 2, z, width, shaft - large - z, fill)]);
  sheet.part('motor', [Math.min(rear, pulleyAt + face) + body * 0.9, z], ({ fill }) => [rect(pulleyAt + face * 1.15, z - body, body * 3.2, body * 2, fill), rect(pulleyAt + face * 0.85, z - half * 0.4, face * 0.3, half * 0.8, fill), rect(pulleyAt + (face - width) / 2 - 0.006, z - small, width + 0.012, small * 2, fill)]);
}
