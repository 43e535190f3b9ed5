import { coordinate, escapeText, type Point, type Svg } from './svg.ts';

/** Width of lettering against its height, rather more than less. */
const LETTER = 0.56;

/** About how wide a text stands, in the units of `size`. */
export const textWidth = (text: string, size: number): number => text.length * LETTER * size;

/** A figure with its fractions set as fractions: the numbers small, above and below their stroke. */
export function figureText([x, y]: Point, text: string, size: number, anchor: 'start' | 'middle' | 'end', className = 'figure'): Svg {
  const small = `font-size="${coordinate(size * 0.72)}"`;
  const lift = coordinate(size * 0.28);
  const written = escapeText(text).replace(/(\d+)\/(\d+)/g, (_whole, top: string, bottom: string) => `<tspan ${small} dy="-${lift}">${top}</tspan><tspan dy="${lift}">⁄</tspan><tspan ${small}>${bottom}</tspan><tspan>\u200a</tspan>`);
  return `<text class="${className}" x="${coordinate(x)}" y="${coordinate(y)}" font-size="${coordinate(size)}" text-anchor="${anchor}">${written}</text>`;
}

/** Breaks words into lines of at most `width`, in the units of `size`. */
export function brokenLines(text: string, size: number, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
