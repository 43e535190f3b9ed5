import { figureText } from '../drawing/figure-text.ts';
import { coordinate } from '../drawing/svg.ts';
import type { SheetPainter } from './sheet-painter.ts';

/**
 * The least work thickness in words beside the dies, in the ink that is kept for limits.
 * @param from where the work lies, m
 * @param edge left of which the words stand, m
 */
export function limitNote(sheet: SheetPainter, from: readonly [x: number, z: number], edge: number, words: string): void {
  const { size } = sheet;
  if (size === 0 || words === '') return;
  const start = sheet.at(from[0], from[1]);
  const end = sheet.at(edge, from[1]);
  const lines = ['nothing', 'thinner', `than ${words}`];
  const right = end[0] - size * 0.3;
  sheet.note(`<line class="limit-line" x1="${coordinate(start[0])}" y1="${coordinate(start[1])}" x2="${coordinate(end[0])}" y2="${coordinate(end[1])}"/>`, ...lines.map((one, index) => figureText([right, end[1] + size * (index * 1.2 - 0.8)], one, size, 'end', 'limit-note', sheet.least)));
  for (const one of lines) sheet.reserveText([right, end[1]], one, 'end');
}
