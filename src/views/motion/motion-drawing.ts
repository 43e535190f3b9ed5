import type { PrintSystem } from '../../derived/index.ts';
import type { MotionRan, MotionSpec } from '../../derived/motion/index.ts';
import { coordinate, escapeText, type Svg } from '../drawing/svg.ts';
import type { SeenOnHammer } from './motion-warnings.ts';
import { movingFigure } from './moving-figure.ts';
import type { MovingLengths } from './moving-lengths.ts';
import { traces } from './traces.ts';

/** One still drawing for paper: the linkage with its run-off on the left, the traces on the right. */
export function motionDrawing(title: string, spec: MotionSpec, lengths: MovingLengths, run: MotionRan, system: PrintSystem, seen: SeenOnHammer = {}): Svg {
  const figure = movingFigure(spec, lengths, run, { system, aspect: 0.85, seen, still: true }).svg;
  const chart = traces(run, spec, { system, width: 640, seen });
  const [, , width, height] = viewBox(chart);
  const tall = Math.max(560, height);
  const wide = tall * 0.85;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${coordinate(wide + 40 + width)} ${coordinate(tall + 40)}" role="img" aria-label="${escapeText(title)}"><rect width="100%" height="100%" fill="var(--paper,#f6f3ea)"/><text x="12" y="24" font-size="18">${escapeText(title)}</text>${placed(figure, 12, 34, wide, tall)}${placed(chart, wide + 30, 34, width, height)}</svg>`;
}

function viewBox(svg: Svg): readonly [number, number, number, number] {
  const [x = 0, y = 0, width = 1, height = 1] = (/viewBox="([^"]+)"/.exec(svg)?.[1] ?? '').split(' ').map(Number);
  return [x, y, width, height];
}

const placed = (svg: Svg, x: number, y: number, width: number, height: number): Svg => svg.replace('<svg ', `<svg x="${coordinate(x)}" y="${coordinate(y)}" width="${coordinate(width)}" height="${coordinate(height)}" `);
