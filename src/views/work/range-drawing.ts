import type { Range } from '../../derived/index.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';

/** One doubtful figure to be drawn. */
export interface DrawnRange {
  readonly title: string;
  readonly range: Range;
  readonly print: (value: number) => string;
}

const WIDTH = 640;
const ROW = 74;
const LEFT = 14;
const RIGHT = 14;
const TITLE = 108;
/** Roomy enough for a figure with its unit at each end. */
const END = 84;

const STYLE = 'svg.ranges .bar{fill:none;stroke:var(--ink,#16181d);stroke-width:2.4}svg.ranges .dimension{stroke:var(--ink,#16181d);stroke-width:1;fill:none}svg.ranges .likely{stroke:var(--ink,#16181d);stroke-width:1;stroke-dasharray:11 3 2 3}svg.ranges .arrow{fill:var(--ink,#16181d)}svg.ranges .half{fill:url(#range-hatch);stroke:none}svg.ranges .hatch{stroke:var(--ink,#16181d);stroke-width:1}svg.ranges text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif;fill:var(--ink,#16181d);font-variant-numeric:tabular-nums}svg.ranges .strong{font-weight:700}';

/**
 * Doubtful figures as dimension lines, each from nought on a scale of its own: the bar ends where nine chances in ten lie
 * below, its hatched part where one in ten does, and a chain line stands at the middle.
 * @returns a whole SVG document that grows with its place; empty where nothing is to be drawn
 */
export function rangeDrawing(rows: readonly DrawnRange[], words: string): Svg {
  const drawn = rows.filter((row) => row.range.p90 > 0);
  if (drawn.length === 0) return '';
  const height = drawn.length * ROW + 8;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="ranges" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${escapeText(words)}"><style>${STYLE}</style><defs><pattern id="range-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V7"/></pattern></defs>${drawn.map(rowOf).join('')}</svg>`;
}

function rowOf({ title, range, print }: DrawnRange, index: number): Svg {
  const top = index * ROW + 8;
  const start = LEFT + TITLE;
  const end = WIDTH - RIGHT - END;
  const at = (value: number): number => start + ((end - start) * value) / range.p90;
  const [low, middle, high] = [at(range.p10), at(range.p50), at(range.p90)];
  const bar = top + 22;
  const line = top + 52;
  const narrow = high - low < 190;
  return [
    textAt([LEFT, bar + 14], title, { size: 16, className: 'strong' }),
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
