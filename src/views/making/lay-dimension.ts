import type { DimensionMark, Point } from '../../derived/making/index.ts';
import type { Extent, Ink } from './ink.ts';
import { textWidth } from './text-width.ts';

/** Distances of a dimension in heights of its figures, after the habit of ISO 129. */
const FIRST_ROW = 3.2;
const NEXT_ROW = 2.8;
const GAP = 0.4;
const PAST = 0.8;
const LIFT = 0.4;

type StraightMark = Extract<DimensionMark, { kind: 'straight' }>;
type LeaderMark = Extract<DimensionMark, { kind: 'leader' }>;

/** Where a figure stands: over the middle of its line, past its far or near end, or level beside an upright line. */
type FigurePlace = 'middle' | 'after' | 'before' | 'beside';

/** How many rows further out a dimension may move to be clear of others. */
const ROWS_OUT = [0, 1, 2, 3] as const;
/** Ways that a leader may take instead, in heights of the figures. */
const WAYS_ACROSS = [1.5, 2.5, 4, 7, 11] as const;
const WAYS_UP = [2.4, 4.5, 7, 10, 13, 0.6] as const;

/**
 * A dimension as strokes: extension lines, dimension line, arrows, figure; in every way that it may be laid, the usual one first.
 * @param mark with its points already in millimetres on the drawing
 * @param frame the view's outline, which the dimension keeps clear of
 * @param height of the figures, mm
 * @param alone false where other dimensions stand on the same side: a figure that is too long for its line then runs along it, past the arrow
 */
export function layDimension(mark: StraightMark | LeaderMark, words: string, frame: Extent, height: number, alone = true): readonly (() => readonly Ink[])[] {
  if (mark.kind === 'leader') {
    const usual = mark.clear === true ? clearOf(mark.at, mark.toward, frame, height) : mark.toward;
    return [usual, ...otherWays(usual), ...(mark.clear === true ? [] : otherWays(clearOf(mark.at, mark.toward, frame, height)))].map((toward) => () => leader(mark.at, toward, words, height));
  }
  const across = mark.side === 'above' || mark.side === 'below';
  const usual: FigurePlace | undefined = undefined;
  const places: readonly (FigurePlace | undefined)[] = [usual, ...(across ? ['after', 'before'] as const : ['middle', 'after', 'before', 'beside'] as const)];
  return ROWS_OUT.flatMap((out) => places.map((place) => () => straight({ ...mark, row: mark.row + out }, words, frame, height, alone, place)));
}

/** The usual way of a leader turned and stretched, nearest first. */
export function otherWays([right, up]: readonly [number, number]): readonly (readonly [number, number])[] {
  const side = right < 0 ? -1 : 1;
  const over = up < 0 ? -1 : 1;
  return [[side, over], [-side, over], [side, -over], [-side, -over]].flatMap(([x = 1, y = 1]) => WAYS_UP.flatMap((high) => WAYS_ACROSS.map((wide) => [x * wide, y * high] as const)));
}

const stroke = (from: Point, to: Point): Ink => ({ kind: 'line', layer: 'dimension', from, to });
const arrow = (tip: Point, along: number, size: number): Ink => ({ kind: 'arrow', layer: 'dimension', tip, along, size });

function straight(mark: StraightMark, words: string, frame: Extent, height: number, alone: boolean, at: FigurePlace | undefined): readonly Ink[] {
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
  const place = at === 'middle' && !inside ? undefined : at ?? (inside ? 'middle' : across || !alone ? 'after' : 'beside');
  inks.push(...figure(words, height, place ?? (across || !alone ? 'after' : 'beside'), { across, middle: (a[0] + b[0]) / 2, start: a[0] - reach, end: b[0] + reach, level, out }));
  return inks;
}

/** Figure above its line, read from below or from the right; beside the line where it is too long for it. */
function figure(words: string, height: number, at: FigurePlace, { across, middle, start, end, level, out }: { readonly across: boolean; readonly middle: number; readonly start: number; readonly end: number; readonly level: number; readonly out: number }): readonly Ink[] {
  const text = (point: Point, anchor: 'start' | 'middle' | 'end', turn = 0): Ink => ({ kind: 'text', layer: 'text', at: point, height, words, anchor, turn });
  const width = textWidth(words, height);
  const clear = (PAST + 0.2) * height;
  switch (at) {
    case 'middle':
      return across ? [text([middle, level + LIFT * height], 'middle')] : [text([level - LIFT * height, middle], 'middle', Math.PI / 2)];
    case 'after':
      // Too long for its line: beyond the far arrow, clear of the extension line.
      return across ? [stroke([end, level], [end + clear + width, level]), text([end + clear, level + LIFT * height], 'start')]
        : [stroke([level, end], [level, end + clear + width]), text([level - LIFT * height, end + clear], 'start', Math.PI / 2)];
    case 'before':
      return across ? [stroke([start, level], [start - clear - width, level]), text([start - clear, level + LIFT * height], 'end')]
        : [stroke([level, start], [level, start - clear - width]), text([level - LIFT * height, start - clear], 'end', Math.PI / 2)];
    case 'beside':
      // Clear of the extension lines, which run past the dimension line.
      return [text([level + out * (PAST + 0.5) * height, middle - 0.35 * height], out > 0 ? 'start' : 'end')];
  }
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
