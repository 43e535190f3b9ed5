// A part's outline in plain geometry: metres, x to the right, y up, each view with an origin of its own.

export type Point = readonly [x: number, y: number];

/** `break` is the thin wavering line where a view is cut short, `thin` the root of a thread or an edge that runs out, `hatch` a cut face. */
export type LineKind = 'visible' | 'hidden' | 'centre' | 'break' | 'thin' | 'hatch';

export type Mark =
  | { readonly kind: 'line'; readonly line: LineKind; readonly from: Point; readonly to: Point }
  | { readonly kind: 'circle'; readonly line: LineKind; readonly centre: Point; readonly radius: number }
  /** Counter-clockwise from one angle to the other, rad. */
  | { readonly kind: 'arc'; readonly line: LineKind; readonly centre: Point; readonly radius: number; readonly from: number; readonly to: number };

export type Side = 'above' | 'below' | 'left' | 'right';
/** What must run true (ISO 1101). */
export type Geometric = 'flat' | 'parallel' | 'square' | 'coaxial' | 'run-out';

/** Where a dimension of the part is written. `of` is the dimension's name. */
export type DimensionMark =
  /** Between two points, on the named side of the view; row 1 lies nearest to it. Above and below measure across, left and right upward. `words` stand in the place of the figure, a `note` behind it; `turned` figures that are too long run along their line. */
  | { readonly kind: 'straight'; readonly of: string; readonly from: Point; readonly to: Point; readonly side: Side; readonly row: number; readonly sign?: 'Ø'; readonly words?: string; readonly note?: string; readonly turned?: true }
  /** An arrow to a point with the figure at its other end, a `note` behind it; `toward` in heights of the figures; `clear` where it is led up or down until the figure is clear of the view. */
  | { readonly kind: 'leader'; readonly of?: string; readonly words?: string; readonly at: Point; readonly toward: readonly [right: number, up: number]; readonly sign?: 'Ø' | 'R' | 'C'; readonly note?: string; readonly clear?: true }
  /** Roughness Ra of a machined surface, m, on the surface or at the end of a leader. */
  | { readonly kind: 'finish'; readonly roughness: number; readonly at: Point; readonly toward?: readonly [right: number, up: number] }
  /** The letter of a surface that others are measured from, hung on its outline. */
  | { readonly kind: 'datum'; readonly letter: string; readonly at: Point; readonly side: Side }
  /** A frame that says what must run true, within how much (m), and to which datum. */
  | { readonly kind: 'control'; readonly geometric: Geometric; readonly within: number; readonly to?: string; readonly at: Point; readonly toward: readonly [right: number, up: number] };

/** `right` is the view from the right. */
export type ViewName = 'front' | 'top' | 'right';

export interface View {
  readonly name: ViewName;
  readonly title: string;
  readonly marks: readonly Mark[];
  readonly dimensions: readonly DimensionMark[];
}

export interface Shape {
  readonly views: readonly View[];
  /** Said on the drawing where a view is cut short and cannot be measured off. */
  readonly broken?: string;
}

export const line = (from: Point, to: Point, kind: LineKind = 'visible'): Mark => ({ kind: 'line', line: kind, from, to });
export const circle = (centre: Point, radius: number, kind: LineKind = 'visible'): Mark => ({ kind: 'circle', line: kind, centre, radius });
export const arc = (centre: Point, radius: number, from: number, to: number, kind: LineKind = 'visible'): Mark => ({ kind: 'arc', line: kind, centre, radius, from, to });

/** Lines through points; closed to a ring unless said otherwise. */
export function path(points: readonly Point[], kind: LineKind = 'visible', closed = true): readonly Mark[] {
  const ends = closed ? [...points, points[0]!] : points;
  return ends.slice(1).map((to, index) => line(ends[index]!, to, kind));
}

/** Upright rectangle from its lower left corner. */
export const rectangle = (left: number, bottom: number, width: number, height: number, kind: LineKind = 'visible'): readonly Mark[] =>
  path([[left, bottom], [left + width, bottom], [left + width, bottom + height], [left, bottom + height]], kind);

/** Centre line past both ends of a length by a twenty-fifth of it. */
export function centreLine([x1, y1]: Point, [x2, y2]: Point): Mark {
  const past = 0.04;
  return line([x1 - (x2 - x1) * past, y1 - (y2 - y1) * past], [x2 + (x2 - x1) * past, y2 + (y2 - y1) * past], 'centre');
}

/** Crossed centre lines of a circle. */
export const cross = ([x, y]: Point, radius: number): readonly Mark[] => [centreLine([x - radius, y], [x + radius, y]), centreLine([x, y - radius], [x, y + radius])];

/** The wavering line of a cut, upright, from `bottom` to `top`. */
export function breakLine(x: number, bottom: number, top: number): readonly Mark[] {
  const height = top - bottom;
  const swing = height * 0.07;
  return path([[x, bottom - height * 0.12], [x, bottom + height * 0.4], [x - swing, bottom + height * 0.46], [x + swing, bottom + height * 0.54], [x, bottom + height * 0.6], [x, top + height * 0.12]], 'break', false);
}

/**
 * Hatching of a cut face: lines at 45 degrees inside a closed outline, by even and odd crossings.
 * @param outline corners in order, m; @param spacing between lines, m, above 0
 * @param turned true for the other way of leaning, for the piece beside it
 */
export function hatched(outline: readonly Point[], spacing: number, turned = false): readonly Mark[] {
  const lean = turned ? -1 : 1;
  // Along the lines u = x + lean * y runs; across them v = y - lean * x tells one line from the next.
  const across = ([x, y]: Point): number => y - lean * x;
  const levels = outline.map(across);
  const step = spacing * Math.SQRT2;
  const first = Math.ceil(Math.min(...levels) / step + 0.25);
  const count = Math.max(0, Math.floor(Math.max(...levels) / step - 0.25) - first + 1);
  return Array.from({ length: count }, (_, index) => (first + index) * step).flatMap((level) => {
    const crossings = outline.flatMap((from, index): Point[] => {
      const to = outline[(index + 1) % outline.length]!;
      const [a, b] = [across(from) - level, across(to) - level];
      return (a < 0) === (b < 0) ? [] : [[from[0] + ((to[0] - from[0]) * a) / (a - b), from[1] + ((to[1] - from[1]) * a) / (a - b)]];
    }).sort((p, q) => p[0] - q[0]);
    return Array.from({ length: Math.floor(crossings.length / 2) }, (_, pair) => line(crossings[2 * pair]!, crossings[2 * pair + 1]!, 'hatch'));
  });
}
