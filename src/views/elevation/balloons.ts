import { figureText, textWidth } from '../drawing/figure-text.ts';
import { spread } from '../drawing/spread.ts';
import { box, circle, coordinate, group, line, textAt, type Point, type Svg } from '../drawing/svg.ts';
import { partName } from '../sentences/words.ts';
import type { Anchor, SheetPainter } from './sheet-painter.ts';

/** Radii from centre to centre that keep two balloons of one column apart, and two of staggered columns. */
const CLEAR = 2.1;
const CLOSEST = 1.15;
const INK = 'var(--ink,#16181d)';

interface Placed extends Anchor {
  readonly y: number;
}

/**
 * Balloons in two columns at the sides, each with a leader to its part and the number of the parts list.
 * @param anchors where each part is pointed at; usual for the sheet where left out
 */
export function balloons(sheet: SheetPainter, numbers: ReadonlyMap<string, string>, radius: number, anchors: readonly Anchor[] = sheet.anchors()): Svg {
  const { least, most } = sheet.extent();
  const middle = (least[0] + most[0]) / 2;
  return (['left', 'right'] as const).flatMap((side) => {
    const mine = anchors.filter((one) => numbers.has(one.part) && (side === 'left' ? one.point[0] <= middle : one.point[0] > middle));
    const x = side === 'left' ? least[0] - radius * 2.4 : most[0] + radius * 2.4;
    const edge = side === 'left' ? x + radius : x - radius;
    sheet.reserve([side === 'left' ? x - radius : x + radius, most[1]]);
    const { size } = sheet;
    // Where one column does not hold them, every other balloon stands a step further out, and all leaders lie under all balloons.
    const apart = Math.min(radius * 2.35, (most[1] - least[1] - radius * 2) / Math.max(1, mine.length - 1));
    const out = apart < radius * CLEAR ? (side === 'left' ? -1 : 1) * radius * 2.2 : 0;
    if (out !== 0) sheet.reserve([x + out * 1.45, most[1]]);
    const placed = placedBeside(mine, edge, Math.max(apart, radius * CLOSEST), least[1] + radius, most[1] - radius).map((one, index) => ({ ...one, stepped: index % 2 === 1 ? out : 0 }));
    const under = out === 0 ? [] : placed.map(({ point, y, stepped }) => leader([edge + stepped, y], point, radius * 0.16));
    const column = placed.map(({ part, point, condition, y, stepped }) => {
      const down = condition === 'stand-down';
      const outward = x + (side === 'left' ? -1 : 1) * radius * 1.25 + out;
      if (down) sheet.reserveText([outward, y], 'stand down', side === 'left' ? 'end' : 'start');
      return group({ class: `balloon ${condition}`, 'data-part': part },
        ...(out === 0 ? [leader([edge, y], point, radius * 0.16)] : []), ...numberIn(sheet, [x + stepped, y], radius, numbers.get(part) ?? '', side, down),
        ...(down ? [plate(side === 'left' ? outward - textWidth('stand down', size) : outward, y - size * 0.8, ['stand down'], size)] : []));
    });
    return [...under, ...column];
  }).join('');
}

/** A number in its balloon; two numbers of one part widen it outwards, at letters as large as any other's. */
function numberIn(sheet: SheetPainter, [x, y]: Point, radius: number, words: string, side: 'left' | 'right', down: boolean): readonly Svg[] {
  const size = radius * 1.05;
  const more = words.length > 2 ? Math.max(0, textWidth(words, size) - radius * 1.2) : 0;
  const middle = x + (side === 'left' ? -more / 2 : more / 2);
  const fill = down ? INK : 'var(--paper,#f6f3ea)';
  sheet.reserve([middle + (side === 'left' ? -1 : 1) * (radius + more / 2), y]);
  const round = more === 0 ? circle([x, y], radius, 'thin', fill) : `<rect class="thin" x="${coordinate(middle - radius - more / 2)}" y="${coordinate(y - radius)}" width="${coordinate(2 * radius + more)}" height="${coordinate(2 * radius)}" rx="${coordinate(radius)}" style="fill:${fill}"/>`;
  return [round, textAt([middle, y + radius * 0.36], words, { size, anchor: 'middle', className: down ? 'white' : 'figure' })];
}

/** For each part that stands the hammer down, a black plate with its name and the words in white, at the right of the sheet. */
export function standDownPlates(sheet: SheetPainter): Svg {
  const { size } = sheet;
  const mine = sheet.anchors().filter((one) => one.condition === 'stand-down');
  const { least, most } = sheet.extent();
  const edge = most[0] + size;
  return placedBeside(mine, edge, size * 3.4, least[1] + size * 2, most[1] - size * 2).map(({ part, point, y }) => {
    const name = partName(part).split(/[,(]/)[0]?.trim() ?? part;
    sheet.reserve([edge + Math.max(textWidth(name, size), textWidth('stand down', size)) + size, y]);
    return group({ class: 'balloon stand-down', 'data-part': part }, leader([edge, y], point, size * 0.16), plate(edge, y - size * 1.45, [name, 'stand down'], size));
  }).join('');
}

/** A black plate with white words, its upper left corner at x and y. */
const plate = (x: number, y: number, words: readonly string[], size: number): Svg =>
  box(x, y, Math.max(...words.map((one) => textWidth(one, size))) + size * 0.6, size * (words.length * 1.25 + 0.4), 'thin', INK) + words.map((one, index) => figureText([x + size * 0.4, y + size * (index * 1.25 + 1.15)], one, size, 'start', 'white')).join('');

const leader = (from: Point, to: Point, dot: number): Svg =>
  line(from, to, 'thin') + `<circle class="dot" cx="${coordinate(to[0])}" cy="${coordinate(to[1])}" r="${coordinate(dot)}" style="fill:${INK}"/>`;

/** Heights beside the drawing, one for each anchor, so that no two leaders cross. */
function placedBeside(anchors: readonly Anchor[], edge: number, apart: number, least: number, most: number): readonly Placed[] {
  const order = [...anchors].sort((a, b) => a.point[1] - b.point[1]);
  const heights = spread(order.map((one) => one.point[1]), apart, least, most);
  const crossed = (a: number, b: number): boolean => {
    const [one, other] = [order[a], order[b]];
    return one !== undefined && other !== undefined && cross([edge, heights[a] ?? 0], one.point, [edge, heights[b] ?? 0], other.point);
  };
  // Each exchange shortens the leaders together, so it comes to an end; the bound is for ties only.
  for (let round = 0, changed = true; changed && round < 40; round += 1) {
    changed = false;
    for (let a = 0; a < order.length; a += 1)
      for (let b = a + 1; b < order.length; b += 1)
        if (crossed(a, b)) {
          const [one, other] = [order[a], order[b]];
          if (one === undefined || other === undefined) continue;
          order[a] = other;
          order[b] = one;
          changed = true;
        }
  }
  return order.map((one, index) => ({ ...one, y: heights[index] ?? one.point[1] }));
}

/** Whether two leaders cross between their ends. */
function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  const turn = (p: Point, q: Point, r: Point): number => Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}
