import type { Point } from '../../derived/making/index.ts';

/** What a line is for; also the layer that it stands on in a drawing file. */
export type Layer = 'visible' | 'hidden' | 'centre' | 'hatch' | 'dimension' | 'text';

/** One stroke of a finished drawing: millimetres, y up. Paper and drawing file are both made of these. */
export type Ink =
  | { readonly kind: 'line'; readonly layer: Layer; readonly from: Point; readonly to: Point }
  | { readonly kind: 'circle'; readonly layer: Layer; readonly centre: Point; readonly radius: number }
  /** Counter-clockwise, rad. */
  | { readonly kind: 'arc'; readonly layer: Layer; readonly centre: Point; readonly radius: number; readonly from: number; readonly to: number }
  /** Filled head with its tip at a point, `along` rad. */
  | { readonly kind: 'arrow'; readonly layer: Layer; readonly tip: Point; readonly along: number; readonly size: number }
  /** Base line from, about or up to a point; `turn` rad counter-clockwise. */
  | { readonly kind: 'text'; readonly layer: Layer; readonly at: Point; readonly height: number; readonly words: string; readonly anchor: 'start' | 'middle' | 'end'; readonly turn: number };

export interface Extent {
  readonly least: Point;
  readonly most: Point;
}

/** Half the breadth of an arrowhead over its length. */
export const ARROW_SLIM = 0.18;

/** The three corners of an arrowhead. */
export function arrowCorners({ tip, along, size }: Extract<Ink, { kind: 'arrow' }>): readonly [Point, Point, Point] {
  const [ux, uy] = [Math.cos(along), Math.sin(along)];
  const half = size * ARROW_SLIM;
  return [tip, [tip[0] - ux * size - uy * half, tip[1] - uy * size + ux * half], [tip[0] - ux * size + uy * half, tip[1] - uy * size - ux * half]];
}

export const moved = (ink: Ink, [dx, dy]: Point): Ink => {
  const shift = ([x, y]: Point): Point => [x + dx, y + dy];
  switch (ink.kind) {
    case 'line':
      return { ...ink, from: shift(ink.from), to: shift(ink.to) };
    case 'circle':
    case 'arc':
      return { ...ink, centre: shift(ink.centre) };
    case 'arrow':
      return { ...ink, tip: shift(ink.tip) };
    case 'text':
      return { ...ink, at: shift(ink.at) };
  }
};
