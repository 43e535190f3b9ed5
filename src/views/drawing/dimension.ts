import { figureText } from './figure-text.ts';
import { spread } from './spread.ts';
import { coordinate, line, type Point, type Svg } from './svg.ts';

/** A height to be dimensioned, drawing units: y of its lower and its upper end (y runs downwards), and the figure. */
export interface DimensionedHeight {
  readonly low: number;
  readonly high: number;
  readonly text: string;
}

export interface ChainPlaces {
  /** Where the chain of dimension lines stands. */
  readonly x: number;
  /** Where the extension lines start, at the thing measured. */
  readonly from: number;
  /** Height of the figures. */
  readonly size: number;
  /** Least height of any letter. */
  readonly least?: number;
}

/**
 * Heights one above the other, dimensioned in a chain on one line after the habit of ISO 129, figures upright beside it.
 * Figures that would stand on each other move apart and keep a leader to their line.
 * @param heights from the lowest up
 */
export function heightChain(heights: readonly DimensionedHeight[], { x, from, size, least }: ChainPlaces): Svg {
  const side = Math.sign(x - from) || 1;
  const middles = heights.map(({ low, high }) => (low + high) / 2);
  const letters = [...spread([...middles].reverse(), size * 1.3, -Infinity, Infinity)].reverse();
  const shift = middles.length === 0 ? 0 : ((middles[0] ?? 0) + (middles.at(-1) ?? 0) - (letters[0] ?? 0) - (letters.at(-1) ?? 0)) / 2;
  return heights.flatMap(({ low, high, text }, index) => {
    const middle = middles[index] ?? 0;
    const y = (letters[index] ?? middle) + shift;
    const moved = Math.abs(y - middle) > size * 0.3;
    const near = x + side * size * 0.35;
    const far = x + side * size * 1.5;
    return [
      ...[low, high].map((end) => line([from + side * size * 0.3, end], [x + side * size * 0.45, end], 'thin')),
      line([x, low], [x, high], 'thin'),
      ...(low - high > size * 1.5 ? [arrowhead([x, low], [0, 1], size * 0.75), arrowhead([x, high], [0, -1], size * 0.75)] : [tick([x, low], size), tick([x, high], size)]),
      ...(moved ? [`<path class="thin" d="M${coordinate(x)} ${coordinate(middle)}L${coordinate(near)} ${coordinate(middle)}L${coordinate(far - side * size * 0.2)} ${coordinate(y)}"/>`] : []),
      figureText([moved ? far : x + side * size * 0.55, y + size * 0.36], text, size, side > 0 ? 'start' : 'end', 'figure', least),
    ];
  }).join('');
}

/** A filled arrowhead at `tip`, pointing along the unit vector. */
function arrowhead([x, y]: Point, [ux, uy]: Point, size: number): Svg {
  const half = size * 0.18;
  const points = [[x, y], [x - ux * size - uy * half, y - uy * size + ux * half], [x - ux * size + uy * half, y - uy * size - ux * half]];
  return `<polygon points="${points.map(([px, py]) => `${coordinate(px ?? 0)},${coordinate(py ?? 0)}`).join(' ')}" style="fill:var(--ink,#16181d)"/>`;
}

/** The oblique stroke that ends a dimension line too short for arrows. */
const tick = ([x, y]: Point, size: number): Svg => line([x - size * 0.22, y + size * 0.22], [x + size * 0.22, y - size * 0.22], 'thin');
