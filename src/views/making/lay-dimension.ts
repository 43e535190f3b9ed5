import type { DimensionMark, Point } from '../../derived/making/index.ts';
import type { Extent, Ink } from './ink.ts';
import { textWidth } from './text-width.ts';

/** Distances of a dimension in heights of its figures, after the habit of ISO 129. */
const FIRST_ROW = 3.2;
const NEXT_ROW = 2.8;
const GAP = 0.4;
const PAST = 0.8;
const LIFT = 0.4;

/**
 * A dimension as strokes: extension lines, dimension line, arrows, figure.
 * @param mark with its points already in millimetres on the drawing
 * @param frame the view's outline, which the dimension keeps clear of
 * @param height of the figures, mm
 * @param alone false where other dimensions stand on the same side: a figure that is too long for its line then runs along it, past the arrow
 */
export function layDimension(mark: Extract<DimensionMark, { kind: 'straight' | 'leader' }>, words: string, frame: Extent, height: number, alone = true): readonly Ink[] {
  return mark.kind === 'leader' ? leader(mark.at, mark.clear === true ? clearOf(mark.at, mark.toward, frame, height) : mark.toward, words, height) : straight(mark, words, frame, height, alone);
}

const stroke = (from: Point, to: Point): Ink => ({ kind: 'line', layer: 'dimension', from, to });
const arrow = (tip: Point, along: number, size: number): Ink => ({ kind: 'arrow', layer: 'dimension', tip, along, size });

function straight(mark: Extract<DimensionMark, { kind: 'straight' }>, words: string, frame: Extent, height: number, alone: boolean): readonly Ink[] {
  const across = mark.side === 'above' || mark.side === 'below';
  const away = (FIRST_ROW + (mark.row - 1) * NEXT_ROW) * height;
  const level = mark.side === 'above' ? frame.most[1] + away : mark.side === 'below' ? frame.least[1] - away : mark.side === 'right' ? frame.most[0] + away : frame.least[0] - away;
  const out = mark.side === 'above' || mark.side === 'right' ? 1 : -1;
  // Worked with the measured way as the first coordinate; turned back at the end.
  const turn = ([along, off]: Point): Point => (across ? [along, off] : [off, along]);
  const ends = [mark.from, mark.to].map((point): Point => (across ? point : [point[1], point[0]])).sort((a, b) => a[0] - b[0]);
  const [a, b] = [ends[0]!, ends[1]!];
  const length = b[0] - a[0];
  const size = height;
  const outside = length < 3.2 * size;
  const inside = textWidth(words, height) <= length - 1.2 * height;
  const inks: Ink[] = [a, b].map((point) => stroke(turn([point[0], point[1] + out * GAP * height]), turn([point[0], level + out * PAST * height])));
  const forward = across ? 0 : Math.PI / 2;
  const reach = outside ? 2 * size : 0;
  inks.push(stroke(turn([a[0] - reach, level]), turn([b[0] + reach, level])));
  inks.push(arrow(turn([a[0], level]), outside ? forward : forward + Math.PI, size), arrow(turn([b[0], level]), outside ? forward + Math.PI : forward, size));
  inks.push(...figure(words, height, { across, inside, outside, middle: (a[0] + b[0]) / 2, end: b[0] + reach, level, out, alone }));
  return inks;
}

/** Figure above its line, read from below or from the right; beside the line where it is too long for it. */
function figure(words: string, height: number, place: { readonly across: boolean; readonly inside: boolean; readonly outside: boolean; readonly middle: number; readonly end: number; readonly level: number; readonly out: number; readonly alone: boolean }): readonly Ink[] {
  const { across, inside, middle, end, level, out, alone } = place;
  const text = (at: Point, anchor: 'start' | 'middle' | 'end', turn = 0): Ink => ({ kind: 'text', layer: 'text', at, height, words, anchor, turn });
  if (across) {
    if (inside) return [text([middle, level + LIFT * height], 'middle')];
    const width = textWidth(words, height);
    // Too long for its line: beyond the right arrow, clear of the extension line.
    const start = end + (PAST + 0.2) * height;
    return [stroke([end, level], [start + width, level]), text([start, level + LIFT * height], 'start')];
  }
  if (inside) return [text([level - LIFT * height, middle], 'middle', Math.PI / 2)];
  if (!alone) {
    const start = end + (PAST + 0.2) * height;
    return [stroke([level, end], [level, start + textWidth(words, height)]), text([level - LIFT * height, start], 'start', Math.PI / 2)];
  }
  // Clear of the extension lines, which run past the dimension line.
  return [text([level + out * (PAST + 0.5) * height, middle - 0.35 * height], out > 0 ? 'start' : 'end')];
}

/** The same way, but so far up or down that the shelf lies beyond the outline. */
const clearOf = ([, y]: Point, [right, up]: readonly [number, number], frame: Extent, height: number): readonly [number, number] =>
  [right, up > 0 ? Math.max(up, (frame.most[1] - y) / height + 1.6) : Math.min(up, (frame.least[1] - y) / height - 1.6)];

function leader(at: Point, toward: readonly [number, number], words: string, height: number): readonly Ink[] {
  const elbow: Point = [at[0] + toward[0] * height, at[1] + toward[1] * height];
  const side = toward[0] < 0 ? -1 : 1;
  const shelf: Point = [elbow[0] + side * 0.8 * height, elbow[1]];
  const along = Math.atan2(at[1] - elbow[1], at[0] - elbow[0]);
  return [
    stroke(at, elbow), stroke(elbow, shelf), arrow(at, along, height),
    { kind: 'text', layer: 'text', at: [shelf[0] + side * 0.3 * height, shelf[1] - 0.35 * height], height, words, anchor: side > 0 ? 'start' : 'end', turn: 0 },
  ];
}
