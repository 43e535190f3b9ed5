import { coordinate, escapeText, type Point, type Svg } from './svg.ts';

/** Width of lettering against its height, rather more than less. */
const LETTER = 0.56;

/** The doubt behind a figure stands smaller than the figure. */
const SECOND_RANK = 0.7;
const DOUBT = ' ±';

/** About how wide a text stands, in the units of `size`; a doubt behind it counts as small as it is set. */
export function textWidth(text: string, size: number, least = 0): number {
  const doubt = text.includes(DOUBT) ? text.length - text.indexOf(DOUBT) : 0;
  return (text.length - doubt * (1 - Math.max(SECOND_RANK, least / size))) * LETTER * size;
}

/**
 * A figure with its fractions set as fractions, the numbers small, above and below their stroke, and its doubt (` ± 1/64`, last) in second rank.
 * @param least no letter is set smaller than this; fractions whose numbers would be stand in the line
 */
export function figureText([x, y]: Point, text: string, size: number, anchor: 'start' | 'middle' | 'end', className = 'figure', least = 0): Svg {
  const at = text.indexOf(DOUBT);
  const figure = at < 0 ? text : text.slice(0, at);
  const second = Math.max(size * SECOND_RANK, least);
  const doubt = at < 0 ? '' : `<tspan font-size="${coordinate(second)}" class="doubt">${withFractions(text.slice(at), second, least)}</tspan>`;
  return `<text class="${className}" x="${coordinate(x)}" y="${coordinate(y)}" font-size="${coordinate(size)}" text-anchor="${anchor}">${withFractions(figure, size, least)}${doubt}</text>`;
}

function withFractions(text: string, size: number, least: number): string {
  if (size * 0.72 < least) return escapeText(text);
  const small = `font-size="${coordinate(size * 0.72)}"`;
  const lift = coordinate(size * 0.28);
  return escapeText(text).replace(/(\d+)\/(\d+)/g, (_whole, top: string, bottom: string) => `<tspan ${small} dy="-${lift}">${top}</tspan><tspan dy="${lift}">⁄</tspan><tspan ${small}>${bottom}</tspan><tspan>\u200a</tspan>`);
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
