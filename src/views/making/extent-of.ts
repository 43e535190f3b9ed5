import type { Point } from '../../derived/making/index.ts';
import { arrowCorners, type Extent, type Ink } from './ink.ts';
import { textWidth } from './text-width.ts';

/** Smallest upright frame round strokes, texts by their estimated width; undefined for none. */
export function extentOf(inks: readonly Ink[]): Extent | undefined {
  const points = inks.flatMap(cornersOf);
  if (points.length === 0) return undefined;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { least: [Math.min(...xs), Math.min(...ys)], most: [Math.max(...xs), Math.max(...ys)] };
}

function cornersOf(ink: Ink): readonly Point[] {
  switch (ink.kind) {
    case 'line':
      return [ink.from, ink.to];
    case 'circle':
      return around(ink.centre, ink.radius);
    case 'arc':
      return arcPoints(ink);
    case 'arrow':
      return arrowCorners(ink);
    case 'text': {
      const width = textWidth(ink.words, ink.height);
      const start = ink.anchor === 'start' ? 0 : ink.anchor === 'middle' ? -width / 2 : -width;
      const [c, s] = [Math.cos(ink.turn), Math.sin(ink.turn)];
      return [[start, -0.25 * ink.height], [start + width, -0.25 * ink.height], [start, ink.height * 0.8], [start + width, ink.height * 0.8]].map(([x = 0, y = 0]) => [ink.at[0] + x * c - y * s, ink.at[1] + x * s + y * c]);
    }
  }
}

const around = ([x, y]: Point, radius: number): readonly Point[] => [[x - radius, y - radius], [x + radius, y + radius]];

/** Ends of an arc and the outermost points of the circle that it passes. */
function arcPoints({ centre, radius, from, to }: Extract<Ink, { kind: 'arc' }>): readonly Point[] {
  const quarter = Math.PI / 2;
  const angles = [from, to];
  for (let k = Math.ceil(from / quarter); k * quarter < to; k += 1) angles.push(k * quarter);
  return angles.map((angle) => [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)]);
}
