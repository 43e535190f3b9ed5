import { circle, coordinate, line, pathOf, textAt, type Pen, type Point, type Svg } from '../drawing/svg.ts';
import { arrowCorners, type Ink, type Layer } from './ink.ts';

const PENS: Readonly<Record<Layer, Pen>> = { visible: 'edge', hidden: 'hidden', centre: 'centre', hatch: 'thin', dimension: 'thin', text: 'thin' };

/** Strokes as SVG, set down with their origin at a point of the sheet; on the sheet y runs down. */
export function paintInk(inks: readonly Ink[], [x0, y0]: Point): Svg {
  const at = ([x, y]: Point): Point => [x0 + x, y0 - y];
  return inks.map((ink) => {
    switch (ink.kind) {
      case 'line':
        return line(at(ink.from), at(ink.to), PENS[ink.layer]);
      case 'circle':
        return circle(at(ink.centre), ink.radius, PENS[ink.layer], 'none');
      case 'arc': {
        const end = (angle: number): Point => at([ink.centre[0] + ink.radius * Math.cos(angle), ink.centre[1] + ink.radius * Math.sin(angle)]);
        const [from, to] = [end(ink.from), end(ink.to)];
        const large = ink.to - ink.from > Math.PI ? 1 : 0;
        return pathOf(`M${coordinate(from[0])} ${coordinate(from[1])}A${coordinate(ink.radius)} ${coordinate(ink.radius)} 0 ${large} 0 ${coordinate(to[0])} ${coordinate(to[1])}`, PENS[ink.layer], 'none');
      }
      case 'arrow':
        return `<polygon class="solid" points="${arrowCorners(ink).map(at).map(([x, y]) => `${coordinate(x)},${coordinate(y)}`).join(' ')}"/>`;
      case 'text':
        return textAt(at(ink.at), ink.words, { size: ink.height, anchor: ink.anchor, className: 'figure', ...(ink.turn === 0 ? {} : { turn: (-ink.turn * 180) / Math.PI }) });
    }
  }).join('');
}
