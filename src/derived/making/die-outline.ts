import { arc, centreLine, line, rectangle, type DimensionMark, type Mark, type Point, type Shape, type View } from './shape.ts';

/** Sizes of a die, m and rad. The dovetail is undefined where it was not measured; the blank is then left square. */
export interface DieSizes {
  readonly height: number;
  /** Across the foot, from flank to flank. */
  readonly baseWidth: number;
  readonly bodyWidth: number;
  readonly length: number;
  readonly edge: number;
  readonly dovetail: { readonly height: number; readonly angle: number } | undefined;
}

const QUARTER = Math.PI / 2;

/**
 * The three views of a die, foot down for a lower one and foot up for an upper one. Names of the dimensions: height, base-width,
 * body-width, length, edge-radius, dovetail-height, flank-angle.
 */
export function dieShape(sizes: DieSizes, foot: 'down' | 'up'): Shape {
  const { height, bodyWidth, length } = sizes;
  const flip = (y: number): number => (foot === 'down' ? y : height - y);
  return { views: [frontView(sizes, flip, foot), topView(sizes, foot), sideView(sizes, flip, foot, length, height, bodyWidth)] };
}

/** Width of the dovetail where it meets the shoulder. */
export const neckWidth = (sizes: Pick<DieSizes, 'baseWidth' | 'dovetail'>): number => (sizes.dovetail === undefined ? sizes.baseWidth : sizes.baseWidth - 2 * sizes.dovetail.height * Math.tan(sizes.dovetail.angle));

function frontView(sizes: DieSizes, flip: (y: number) => number, foot: 'down' | 'up'): View {
  const { height, baseWidth, bodyWidth, edge, dovetail } = sizes;
  const shoulder = dovetail?.height ?? 0;
  const neck = neckWidth(sizes) / 2;
  const half = bodyWidth / 2;
  const outline: Mark[] = [];
  const at = (x: number, y: number): Point => [x, flip(y)];
  outline.push(line(at(-baseWidth / 2, 0), at(baseWidth / 2, 0)));
  for (const side of [-1, 1]) {
    if (dovetail !== undefined) {
      outline.push(line(at((side * baseWidth) / 2, 0), at(side * neck, shoulder)));
      if (Math.abs(half - neck) > 1e-9) outline.push(line(at(side * neck, shoulder), at(side * half, shoulder)));
    }
    outline.push(line(at(side * half, shoulder), at(side * half, height - edge)));
    outline.push(corner([side * (half - edge), flip(height - edge)], edge, side === 1, foot === 'down'));
  }
  outline.push(line(at(-half + edge, height), at(half - edge, height)));
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'height', from: at(-Math.max(half, baseWidth / 2), 0), to: at(-half, height), side: 'left', row: 1 },
    { kind: 'straight', of: 'base-width', from: at(-baseWidth / 2, 0), to: at(baseWidth / 2, 0), side: foot === 'down' ? 'below' : 'above', row: 1 },
    { kind: 'leader', of: 'edge-radius', at: [half - edge * (1 - Math.SQRT1_2), flip(height - edge * (1 - Math.SQRT1_2))], toward: [2.2, foot === 'down' ? 2.2 : -2.2], sign: 'R' },
  ];
  if (dovetail !== undefined) dimensions.push({ kind: 'leader', of: 'flank-angle', at: at((baseWidth / 2 + neck) / 2, shoulder / 2), toward: [3.5, foot === 'down' ? -0.6 : 0.6] });
  if (Math.abs(bodyWidth - baseWidth) > 1e-9 && (dovetail === undefined || Math.abs(half - neck) > 1e-9)) {
    dimensions.push({ kind: 'straight', of: 'body-width', from: at(-half, height - edge), to: at(half, height - edge), side: foot === 'down' ? 'above' : 'below', row: 1 });
  }
  return { name: 'front', title: 'front', marks: [...outline, centreLine([0, 0], [0, height])], dimensions };
}

/** A quarter of a circle at an edge of the face. */
function corner(centre: Point, radius: number, right: boolean, up: boolean): Mark {
  const from = right ? (up ? 0 : -QUARTER) : up ? QUARTER : 2 * QUARTER;
  return arc(centre, radius, from, from + QUARTER);
}

function topView({ baseWidth, bodyWidth, length }: DieSizes, foot: 'down' | 'up'): View {
  const body = rectangle(-bodyWidth / 2, 0, bodyWidth, length, foot === 'down' || bodyWidth > baseWidth - 1e-9 ? 'visible' : 'hidden');
  const wide = Math.abs(bodyWidth - baseWidth) < 1e-9;
  const base = wide ? [] : [-1, 1].map((side) => line([(side * baseWidth) / 2, 0], [(side * baseWidth) / 2, length], foot === 'up' || baseWidth > bodyWidth ? 'visible' : 'hidden'));
  const ends = !wide && baseWidth > bodyWidth ? [0, length].flatMap((y) => [line([-baseWidth / 2, y], [baseWidth / 2, y])]) : [];
  return { name: 'top', title: 'top', marks: [...body, ...base, ...ends, centreLine([0, 0], [0, length])], dimensions: [] };
}

function sideView(sizes: DieSizes, flip: (y: number) => number, foot: 'down' | 'up', length: number, height: number, bodyWidth: number): View {
  const { edge, dovetail } = sizes;
  const up = foot === 'down';
  const marks: Mark[] = [
    line([0, flip(0)], [length, flip(0)]), line([0, flip(0)], [0, flip(height - edge)]), line([length, flip(0)], [length, flip(height - edge)]), line([edge, flip(height)], [length - edge, flip(height)]),
    corner([edge, flip(height - edge)], edge, false, up), corner([length - edge, flip(height - edge)], edge, true, up),
  ];
  if (dovetail !== undefined) marks.push(line([0, flip(dovetail.height)], [length, flip(dovetail.height)], Math.abs(bodyWidth - neckWidth(sizes)) > 1e-9 || dovetail.angle > 0 ? 'visible' : 'hidden'));
  return {
    name: 'right', title: 'from the right', marks,
    dimensions: [
      { kind: 'straight', of: 'length', from: [0, flip(0)], to: [length, flip(0)], side: up ? 'below' : 'above', row: 1 },
      ...(dovetail === undefined ? [] : [{ kind: 'straight', of: 'dovetail-height', from: [length, flip(0)], to: [length, flip(dovetail.height)], side: 'right', row: 1 } as const]),
    ],
  };
}
