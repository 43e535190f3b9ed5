import type { Point } from '../../derived/making/index.ts';
import { extentOf } from './extent-of.ts';
import { arrowCorners, type Extent, type Ink } from './ink.ts';

/** What stands in the way of what, and how much it weighs: figure on figure, a stroke through a figure, stroke over stroke. */
const ON_FIGURE = 20;
const THROUGH_FIGURE = 10;
const OVER_STROKE = 0.4;
/** Each step away from the usual way. */
const UNUSUAL = 0.02;
const ROUNDS = 4;
/** Share of a figure's height that a stroke may graze. */
const GRAZE = 0.04;

type Segment = readonly [from: Point, to: Point];

/** A mark as laid in one of its ways, taken apart. */
interface Laid {
  readonly inks: readonly Ink[];
  readonly boxes: readonly Extent[];
  readonly segments: readonly Segment[];
}

/** Straight pieces of a stroke; a curve in short ones. */
export function segmentsOf(ink: Ink): readonly Segment[] {
  switch (ink.kind) {
    case 'line':
      return [[ink.from, ink.to]];
    case 'circle':
      return pieces(ink.centre, ink.radius, 0, 2 * Math.PI, 48);
    case 'arc':
      return pieces(ink.centre, ink.radius, ink.from, ink.to, 24);
    case 'arrow': {
      const corners = arrowCorners(ink);
      return [[corners[0], corners[1]], [corners[1], corners[2]], [corners[2], corners[0]]];
    }
    case 'text':
      return [];
  }
}

const pieces = ([x, y]: Point, radius: number, from: number, to: number, count: number): readonly Segment[] => {
  const on = (index: number): Point => {
    const angle = from + ((to - from) * index) / count;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  };
  return Array.from({ length: count }, (_, index): Segment => [on(index), on(index + 1)]);
};

/** Frame of a figure, a little less than its letters take. */
export function figureBox(ink: Extract<Ink, { kind: 'text' }>): Extent {
  const { least, most } = extentOf([ink])!;
  const less = GRAZE * ink.height;
  return { least: [least[0] + less, least[1] + less], most: [most[0] - less, most[1] - less] };
}

export const overlaps = (a: Extent, b: Extent): boolean => a.least[0] < b.most[0] && b.least[0] < a.most[0] && a.least[1] < b.most[1] && b.least[1] < a.most[1];

/** Whether a straight piece runs through a frame: what is left of it between the four sides. */
export function runsThrough([[x1, y1], [x2, y2]]: Segment, { least, most }: Extent): boolean {
  let [enters, leaves] = [0, 1];
  for (const [way, from, low, high] of [[x2 - x1, x1, least[0], most[0]], [y2 - y1, y1, least[1], most[1]]] as const) {
    if (Math.abs(way) < 1e-12) {
      if (from <= low || from >= high) return false;
      continue;
    }
    const [a, b] = [(low - from) / way, (high - from) / way];
    enters = Math.max(enters, Math.min(a, b));
    leaves = Math.min(leaves, Math.max(a, b));
  }
  return leaves - enters > 1e-9;
}

const cross = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
const cut = ([a, b]: Segment, [c, d]: Segment): boolean => cross(a, b, c) * cross(a, b, d) < -1e-9 && cross(c, d, a) * cross(c, d, b) < -1e-9;

const apart = (inks: readonly Ink[]): Laid => ({ inks, boxes: inks.flatMap((ink) => (ink.kind === 'text' ? [figureBox(ink)] : [])), segments: inks.flatMap(segmentsOf) });

/**
 * Lays marks so that no figure lies on another and no stroke runs through a figure, each as near to its usual way as that allows: one after
 * another takes the way that is least in the way of all others, a few times round.
 * @param shape the outline, which stays
 * @param choices for each mark its ways, the usual one first
 * @returns strokes of all marks
 */
export function clearFigures(shape: readonly Ink[], choices: readonly (readonly (() => readonly Ink[])[])[]): readonly Ink[] {
  const outline = apart(shape);
  const ways = choices.map((one) => one.map((lay) => {
    let laid: Laid | undefined;
    return (): Laid => (laid ??= apart(lay()));
  }));
  const taken = ways.map((one) => one[0]!());
  const among = (mine: Laid, index: number, enough: number): number => {
    let sum = 0;
    for (const [at, other] of [outline, ...taken].entries()) {
      if (at === index + 1) continue;
      for (const box of mine.boxes) {
        for (const its of other.boxes) if (overlaps(box, its)) sum += ON_FIGURE;
        for (const segment of other.segments) if (runsThrough(segment, box)) sum += THROUGH_FIGURE;
      }
      for (const segment of mine.segments) {
        for (const its of other.boxes) if (runsThrough(segment, its)) sum += THROUGH_FIGURE;
        if (at > 0) for (const its of other.segments) if (cut(segment, its)) sum += OVER_STROKE;
      }
      if (sum >= enough) return sum;
    }
    return sum;
  };
  for (let round = 0; round < ROUNDS; round += 1) {
    let moved = false;
    for (const [index, mine] of ways.entries()) {
      const now = among(taken[index]!, index, Number.POSITIVE_INFINITY);
      // Strokes that cross one another are no reason to move; a figure that cannot be read is.
      if (now < THROUGH_FIGURE) continue;
      let best = { laid: taken[index]!, weight: now };
      for (const [step, way] of mine.entries()) {
        if (best.weight <= step * UNUSUAL) break;
        const laid = way();
        const weight = among(laid, index, best.weight) + step * UNUSUAL;
        if (weight < best.weight) best = { laid, weight };
      }
      if (best.laid !== taken[index]) {
        taken[index] = best.laid;
        moved = true;
      }
    }
    if (!moved) break;
  }
  return taken.flatMap((one) => one.inks);
}
