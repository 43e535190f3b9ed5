import type { PrintSystem } from '../../derived/index.ts';
import type { DimensionMark, Geometric, Point, Side } from '../../derived/making/index.ts';
import type { Ink } from './ink.ts';
import { otherWays } from './lay-dimension.ts';
import { roughnessWords, withinWords } from './symbol-words.ts';
import { textWidth } from './text-width.ts';

type SymbolMark = Extract<DimensionMark, { kind: 'finish' | 'datum' | 'control' }>;

const stroke = (from: Point, to: Point): Ink => ({ kind: 'line', layer: 'dimension', from, to });
const chain = (...points: readonly Point[]): readonly Ink[] => points.slice(1).map((to, index) => stroke(points[index]!, to));
const letters = (at: Point, height: number, words: string, anchor: 'start' | 'middle' = 'start'): Ink => ({ kind: 'text', layer: 'text', at, height, words, anchor, turn: 0 });

/**
 * Roughness (ISO 21920-1), datums (ISO 5459) and frames of geometry (ISO 1101) as strokes.
 * @param mark with its points in millimetres on the drawing; @param height of the figures, mm
 * @returns in every way that it may be laid, the usual one first
 */
export function laySymbol(mark: SymbolMark, system: PrintSystem, height: number): readonly (() => readonly Ink[])[] {
  switch (mark.kind) {
    case 'finish': {
      const words = roughnessWords(mark.roughness, system);
      return mark.toward === undefined ? [() => finish(mark, words, height), ...otherWays([1.5, 4]).map((toward) => () => finish({ ...mark, toward }, words, height))] : [mark.toward, ...otherWays(mark.toward)].map((toward) => () => finish({ ...mark, toward }, words, height));
    }
    case 'datum':
      return [() => datum(mark.letter, mark.at, mark.side, height)];
    case 'control': {
      const words = withinWords(mark.within, system);
      return [mark.toward, ...otherWays(mark.toward)].map((toward) => () => control({ ...mark, toward }, words, height));
    }
  }
}

/** Arrow to a point, and the end of the level shelf that its words stand on. */
function leader(at: Point, toward: readonly [number, number], height: number): { readonly inks: readonly Ink[]; readonly end: Point; readonly side: 1 | -1 } {
  const elbow: Point = [at[0] + toward[0] * height, at[1] + toward[1] * height];
  const side = toward[0] < 0 ? -1 : 1;
  const end: Point = [elbow[0] + side * 0.8 * height, elbow[1]];
  const along = Math.atan2(at[1] - elbow[1], at[0] - elbow[0]);
  return { inks: [...chain(at, elbow, end), { kind: 'arrow', layer: 'dimension', tip: at, along, size: height }], end, side };
}

/** Metal is to be taken off: a tick closed by a bar, the figure under its roof. */
function finish({ at, toward }: Extract<SymbolMark, { kind: 'finish' }>, words: string, height: number): readonly Ink[] {
  const roof = 1.7 * height + textWidth(words, height);
  const lead = toward === undefined ? undefined : leader(at, toward, height);
  const shelf = roof + 1.6 * height;
  const foot: Point = lead === undefined ? at : lead.side > 0 ? [lead.end[0] + height, lead.end[1]] : [lead.end[0] - shelf + height, lead.end[1]];
  const to = (x: number, y: number): Point => [foot[0] + x * height, foot[1] + y * height];
  return [
    ...(lead === undefined ? [] : [...lead.inks, stroke(lead.end, [lead.end[0] + lead.side * shelf, lead.end[1]])]),
    ...chain(to(-0.81, 1.4), foot, to(1.62, 2.8)), stroke(to(-0.81, 1.4), to(0.81, 1.4)), stroke(to(1.62, 2.8), [foot[0] + roof, foot[1] + 2.8 * height]),
    letters(to(1.55, 1.6), height, words),
  ];
}

const OUT: Readonly<Record<Side, Point>> = { above: [0, 1], below: [0, -1], left: [-1, 0], right: [1, 0] };

function datum(letter: string, [x, y]: Point, side: Side, height: number): readonly Ink[] {
  const [ox, oy] = OUT[side];
  const at = (out: number, along: number): Point => [x + (ox * out - oy * along) * height, y + (oy * out + ox * along) * height];
  const [cx, cy] = at(3, 0);
  return [...chain(at(0, -0.6), at(0, 0.6), at(1, 0), at(0, -0.6)), stroke(at(1, 0), at(2, 0)), ...square(cx - height, cy - height, 2 * height, height), letters([cx, cy - 0.36 * height], height, letter, 'middle')];
}

const square = (left: number, bottom: number, width: number, height: number): readonly Ink[] => chain([left, bottom], [left + width, bottom], [left + width, bottom + 2 * height], [left, bottom + 2 * height], [left, bottom]);

function control({ at, toward, geometric, to }: Extract<SymbolMark, { kind: 'control' }>, words: string, height: number): readonly Ink[] {
  const { inks, end, side } = leader(at, toward, height);
  const cells = [2 * height, textWidth(words, height) + height, ...(to === undefined ? [] : [2 * height])];
  const width = cells.reduce((sum, one) => sum + one, 0);
  const left = side > 0 ? end[0] : end[0] - width;
  const bottom = end[1] - height;
  const starts = cells.map((_, index) => left + cells.slice(0, index).reduce((sum, one) => sum + one, 0));
  return [
    ...inks, ...cells.flatMap((cell, index) => square(starts[index]!, bottom, cell, height)),
    ...sign(geometric, [left + height, end[1]], height),
    letters([starts[1]! + cells[1]! / 2, end[1] - 0.36 * height], height, words, 'middle'),
    ...(to === undefined ? [] : [letters([starts[2]! + height, end[1] - 0.36 * height], height, to, 'middle')]),
  ];
}

function sign(geometric: Geometric, [x, y]: Point, height: number): readonly Ink[] {
  const at = (right: number, up: number): Point => [x + right * height, y + up * height];
  const ring = (radius: number): Ink => ({ kind: 'circle', layer: 'dimension', centre: [x, y], radius: radius * height });
  switch (geometric) {
    case 'flat':
      return chain(at(-0.75, -0.3), at(0.35, -0.3), at(0.75, 0.3), at(-0.35, 0.3), at(-0.75, -0.3));
    case 'parallel':
      return [stroke(at(-0.55, -0.6), at(0.05, 0.6)), stroke(at(-0.05, -0.6), at(0.55, 0.6))];
    case 'square':
      return [stroke(at(-0.6, -0.5), at(0.6, -0.5)), stroke(at(0, -0.5), at(0, 0.6))];
    case 'coaxial':
      return [ring(0.65), ring(0.35)];
    case 'run-out':
      return [stroke(at(-0.5, -0.6), at(0.45, 0.5)), { kind: 'arrow', layer: 'dimension', tip: at(0.5, 0.6), along: Math.atan2(1.2, 1), size: height * 0.8 }];
  }
}
