/** Line weights of the drawing after the habit of ISO 128: edges thick, everything else thin. */
export type Pen = 'edge' | 'thin' | 'centre' | 'hidden' | 'ghost';

/** A piece of finished SVG text. */
export type Svg = string;

/** Escapes text for SVG and HTML. */
export const escapeText = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** Prints a coordinate: three decimals at most, never exponent, never minus zero; a number that is not finite is a mistake of ours. */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a drawing was given a coordinate that is not finite: ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return Object.is(rounded, -0) ? '0' : String(rounded);
}

export type Point = readonly [x: number, y: number];

export const line = (from: Point, to: Point, pen: Pen): Svg =>
  `<line class="${pen}" x1="${coordinate(from[0])}" y1="${coordinate(from[1])}" x2="${coordinate(to[0])}" y2="${coordinate(to[1])}"/>`;

/** A closed or open outline through points. */
export function outline(points: readonly Point[], pen: Pen, options: { readonly closed?: boolean; readonly fill?: string } = {}): Svg {
  const path = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${coordinate(x)} ${coordinate(y)}`).join('');
  return pathOf(`${path}${options.closed === false ? '' : 'Z'}`, pen, options.fill);
}

export const pathOf = (path: string, pen: Pen, fill?: string): Svg => `<path class="${pen}" d="${path}"${fill === undefined ? '' : ` style="fill:${fill}"`}/>`;

export const circle = (centre: Point, radius: number, pen: Pen, fill?: string): Svg =>
  `<circle class="${pen}" cx="${coordinate(centre[0])}" cy="${coordinate(centre[1])}" r="${coordinate(radius)}"${fill === undefined ? '' : ` style="fill:${fill}"`}/>`;

export const box = (x: number, y: number, width: number, height: number, pen: Pen, fill?: string): Svg =>
  outline([[x, y], [x + width, y], [x + width, y + height], [x, y + height]], pen, fill === undefined ? {} : { fill });

export interface TextOptions {
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly className?: string;
  /** Degrees, clockwise. */
  readonly turn?: number;
}

export function textAt([x, y]: Point, text: string, options: TextOptions): Svg {
  const turn = options.turn === undefined ? '' : ` transform="rotate(${coordinate(options.turn)} ${coordinate(x)} ${coordinate(y)})"`;
  return `<text class="${options.className ?? 'note'}" x="${coordinate(x)}" y="${coordinate(y)}" font-size="${coordinate(options.size)}" text-anchor="${options.anchor ?? 'start'}"${turn}>${escapeText(text)}</text>`;
}

export const group = (attributes: Readonly<Record<string, string>>, ...children: readonly Svg[]): Svg =>
  `<g${Object.entries(attributes).map(([name, value]) => ` ${name}="${escapeText(value)}"`).join('')}>${children.join('')}</g>`;
