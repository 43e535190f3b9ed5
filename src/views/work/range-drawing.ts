import type { Range } from '../../derived/index.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';

/** One doubtful figure to be drawn. */
export interface DrawnRange {
  readonly title: string;
  readonly range: Range;
  readonly print: (value: number) => string;
}

/** Width of the drawing, in its own units: for a sheet and for a telephone, where the title stands above its bar. */
const WIDTHS = { wide: 640, narrow: 350 } as const;
const ROW = { wide: 74, narrow: 100 } as const;
const EDGE = { wide: 14, narrow: 2 } as const;
const TITLE = { wide: 108, narrow: 0 } as const;
/** Roomy enough for a figure with its unit at each end. */
const END = { wide: 84, narrow: 92 } as const;

export type DrawnWidth = keyof typeof WIDTHS;

const STYLE = 'svg.ranges .bar{fill:none;stroke:var(--ink,#16181d);stroke-width:2.4}svg.ranges .dimension{stroke:var(--ink,#16181d);stroke-width:1;fill:none}svg.ranges .likely{stroke:var(--ink,#16181d);stroke-width:1;stroke-dasharray:11 3 2 3}svg.ranges .arrow{fill:var(--ink,#16181d)}svg.ranges .half{fill:url(#range-hatch);stroke:none}svg.ranges .hatch{stroke:var(--ink,#16181d);stroke-width:1}svg.ranges text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif;fill:var(--ink,#16181d);font-variant-numeric:tabular-nums}svg.ranges .strong{font-weight:700}';

/**
 * Doubtful figures as dimension lines, each from nought on a scale of its own: the bar ends where nine chances in ten lie
 * below, its hatched part where one in ten does, and a chain line stands at the middle.
 * @returns a whole SVG document that grows with its place; empty where nothing is to be drawn
 */
export function rangeDrawing(rows: readonly DrawnRange[], words: string, width: DrawnWidth = 'wide'): Svg {
  const drawn = rows.filter((row) => row.range.p90 > 0);
  if (drawn.length === 0) return '';
  const height = drawn.length * ROW[width] + 8;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="ranges" viewBox="0 0 ${WIDTHS[width]} ${height}" role="img" aria-label="${escapeText(words)}"><style>${STYLE}</style><defs><pattern id="range-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V7"/></pattern></defs>${drawn.map((row, index) => rowOf(row, index, width)).join('')}</svg>`;
}

function rowOf({ title, range, print }: DrawnRange, index: number, width: DrawnWidth): Svg {
  const top = index * ROW[width] + (width === 'narrow' ? 34 : 8);
  const start = EDGE[width] + TITLE[width];
  const end = WIDTHS[width] - EDGE[width] - END[width];
  const at = (value: number): number => start + ((end - start) * value) / range.p90;
  const [low, middle, high] = [at(range.p10), at(range.p50), at(range.p90)];
  const bar = top + 22;
  const line = top + 52;
  const narrow = high - low < 190;
  const place: readonly [number, number] = width === 'narrow' ? [EDGE.narrow, bar - 34] : [EDGE.wide, bar + 14];
  return [
    textAt(place, title, { size: 16, className: 'strong' }),
    box(start, bar - 6, low - start, 24, 'half'), box(start, bar - 6, high - start, 24, 'bar'),
    stroke(low, bar - 6, low, line + 5, 'dimension'), stroke(high, bar + 18, high, line + 5, 'dimension'), stroke(middle, bar - 14, middle, bar + 26, 'likely'),
    stroke(low, line, high, line, 'dimension'), arrow(low, line, narrow ? -1 : 1), arrow(high, line, narrow ? 1 : -1),
    textAt([middle, bar - 16], print(range.p50), { size: 15, className: 'strong', anchor: 'middle' }),
    textAt([low - (narrow ? 16 : 8), line + 5], print(range.p10), { size: 14, anchor: 'end' }),
    textAt([high + (narrow ? 16 : 8), line + 5], print(range.p90), { size: 14 }),
  ].join('');
}

const box = (x: number, y: number, width: number, height: number, className: string): Svg => `<rect class="${className}" x="${coordinate(x)}" y="${coordinate(y)}" width="${coordinate(width)}" height="${coordinate(height)}"/>`;
const stroke = (x1: number, y1: number, x2: number, y2: number, className: string): Svg => `<path class="${className}" d="M${coordinate(x1)} ${coordinate(y1)}L${coordinate(x2)} ${coordinate(y2)}"/>`;

/** Arrow head at a place; `way` 1 points left into the line that begins there, -1 right. */
const arrow = (x: number, y: number, way: 1 | -1): Svg => `<path class="arrow" d="M${coordinate(x)} ${coordinate(y)}l${way * 10} -3v6z"/>`;
