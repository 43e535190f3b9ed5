import { arc, centreLine, line, type DimensionMark, type Mark, type Point, type Shape, type View } from './shape.ts';

/** Sizes of a die, m and rad. The dovetail is undefined where it was not measured; the blank is then left square. */
export interface DieSizes {
  readonly height: number;
  /** Across the foot, from flank to flank; where the key is driven in, if the foot is tapered. */
  readonly baseWidth: number;
  /** At the other end; undefined for a parallel foot. */
  readonly farWidth: number | undefined;
  /** Where the keyed flank lies, seen from where the key is driven in. */
  readonly keySide: 1 | -1;
  readonly bodyWidth: number;
  /** True where the keyed side of the body runs with the taper of the foot, so that no ledge is left: the body is then wider at the far end. */
  readonly bodyTapers: boolean;
  readonly length: number;
  readonly edge: number;
  readonly dovetail: { readonly height: number; readonly angle: number } | undefined;
  /** Foot flat, and face parallel to it, m. */
  readonly flatWithin: number;
  readonly parallelWithin: number;
}

const QUARTER = Math.PI / 2;

/**
 * Front and side of a die, foot down for a lower one and foot up for an upper one. Names of the dimensions: height, base-width,
 * far-width, neck-width, far-neck, body-width, length, edge-radius, dovetail-height, flank-angle. The front view is seen from where the key is driven in.
 */
export function dieShape(sizes: DieSizes, foot: 'down' | 'up'): Shape {
  const { height, bodyWidth, length } = sizes;
  const flip = (y: number): number => (foot === 'down' ? y : height - y);
  return { views: [frontView(sizes, flip, foot), sideView(sizes, flip, foot, length, height, bodyWidth)] };
}

/** Width of the dovetail where it meets the shoulder. */
export const neckWidth = (sizes: Pick<DieSizes, 'baseWidth' | 'dovetail'>): number => (sizes.dovetail === undefined ? sizes.baseWidth : sizes.baseWidth - 2 * sizes.dovetail.height * Math.tan(sizes.dovetail.angle));

/** Metal of a die, m³: foot between its flanks, body above, and what the four rounded edges of the face take off. */
export function dieVolume({ height, baseWidth, farWidth, bodyWidth, bodyTapers, length, edge, dovetail }: DieSizes): number {
  const foot = (baseWidth + (farWidth ?? baseWidth)) / 2;
  const neck = neckWidth({ baseWidth: foot, dovetail });
  const shoulder = dovetail?.height ?? 0;
  const body = bodyTapers ? neck : bodyWidth;
  const across = ((foot + neck) / 2) * shoulder + body * (height - shoulder);
  const off = (1 - Math.PI / 4) * edge ** 2;
  return across * length - 2 * off * (length + body);
}

function frontView(sizes: DieSizes, flip: (y: number) => number, foot: 'down' | 'up'): View {
  const { height, baseWidth, bodyWidth, edge, dovetail } = sizes;
  const shoulder = dovetail?.height ?? 0;
  const neck = neckWidth(sizes) / 2;
  const half = bodyWidth / 2;
  const more = (sizes.farWidth ?? baseWidth) - baseWidth;
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
  if (dovetail !== undefined && more > 1e-9) outline.push(line(at(sizes.keySide * (baseWidth / 2), 0), at(sizes.keySide * (baseWidth / 2 + more), 0)), line(at(sizes.keySide * (baseWidth / 2 + more), 0), at(sizes.keySide * (neck + more), shoulder)), ...(sizes.bodyTapers ? farBody(sizes, at, neck + more, shoulder) : neck + more > half ? [line(at(sizes.keySide * (neck + more), shoulder), at(sizes.keySide * half, shoulder))] : []));
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'height', from: at(-Math.max(half, baseWidth / 2), 0), to: at(-half, height), side: 'left', row: 1 },
    { kind: 'straight', of: 'base-width', from: at(-baseWidth / 2, 0), to: at(baseWidth / 2, 0), side: foot === 'down' ? 'below' : 'above', row: 2, ...(more > 1e-9 ? { note: 'key end' } : {}) },
    { kind: 'datum', letter: 'A', at: at(-baseWidth * 0.3, 0), side: foot === 'down' ? 'below' : 'above' },
    { kind: 'leader', of: 'edge-radius', at: [half - edge * (1 - Math.SQRT1_2), flip(height - edge * (1 - Math.SQRT1_2))], toward: [2.2, foot === 'down' ? 2.2 : -2.2], sign: 'R' },
  ];
  if (more > 1e-9) {
    const [left, right] = sizes.keySide > 0 ? [-baseWidth / 2, baseWidth / 2 + more] : [-baseWidth / 2 - more, baseWidth / 2];
    dimensions.push({ kind: 'straight', of: 'far-width', from: at(left, 0), to: at(right, 0), side: foot === 'down' ? 'below' : 'above', row: 3, note: 'far end' });
  }
  if (dovetail !== undefined && Math.abs(half - neck) <= 1e-9) {
    const side = foot === 'down' ? 'above' : 'below';
    dimensions.push({ kind: 'straight', of: 'neck-width', from: at(-neck, height - edge), to: at(neck, height - edge), side, row: 1, ...(more > 1e-9 ? { note: 'key end' } : {}) });
    if (more > 1e-9) {
      const [left, right] = sizes.keySide > 0 ? [-neck, neck + more] : [-neck - more, neck];
      dimensions.push({ kind: 'straight', of: 'far-neck', from: at(left, height - edge), to: at(right, height - edge), side, row: 2, note: 'far end' });
    }
  }
  if (dovetail !== undefined) dimensions.push({ kind: 'leader', of: 'flank-angle', at: at((baseWidth / 2 + neck) / 2, shoulder / 2), toward: [3.5, foot === 'down' ? -0.6 : 0.6] });
  if (Math.abs(bodyWidth - baseWidth) > 1e-9 && (dovetail === undefined || Math.abs(half - neck) > 1e-9)) {
    dimensions.push({ kind: 'straight', of: 'body-width', from: at(-half, height - edge), to: at(half, height - edge), side: foot === 'down' ? 'above' : 'below', row: 1 });
  }
  return { name: 'front', title: 'front', marks: [...outline, centreLine([0, 0], [0, height])], dimensions };
}

/** The keyed side of the body at the far end, seen past the nearer one, with its rounded edge left as a line. */
const farBody = ({ keySide, height, edge }: DieSizes, at: (x: number, y: number) => Point, out: number, shoulder: number): readonly Mark[] => [line(at(keySide * out, shoulder), at(keySide * out, height - edge))];

/** A quarter of a circle at an edge of the face. */
function corner(centre: Point, radius: number, right: boolean, up: boolean): Mark {
  const from = right ? (up ? 0 : -QUARTER) : up ? QUARTER : 2 * QUARTER;
  return arc(centre, radius, from, from + QUARTER);
}

function sideView(sizes: DieSizes, flip: (y: number) => number, foot: 'down' | 'up', length: number, height: number, bodyWidth: number): View {
  const { edge, dovetail } = sizes;
  const up = foot === 'down';
  const marks: Mark[] = [
    line([0, flip(0)], [length, flip(0)]), line([0, flip(0)], [0, flip(height - edge)]), line([length, flip(0)], [length, flip(height - edge)]), line([edge, flip(height)], [length - edge, flip(height)]),
    corner([edge, flip(height - edge)], edge, false, up), corner([length - edge, flip(height - edge)], edge, true, up),
  ];
  if (dovetail !== undefined) marks.push(line([0, flip(dovetail.height)], [length, flip(dovetail.height)], Math.abs(bodyWidth - neckWidth(sizes)) > 1e-9 || dovetail.angle > 0 ? 'visible' : 'hidden'));
  const away = up ? -1 : 1;
  return {
    name: 'right', title: 'from the right', marks,
    dimensions: [
      { kind: 'straight', of: 'length', from: [0, flip(0)], to: [length, flip(0)], side: up ? 'below' : 'above', row: 3 },
      ...(dovetail === undefined ? [] : [{ kind: 'straight', of: 'dovetail-height', from: [length, flip(0)], to: [length, flip(dovetail.height)], side: 'right', row: 1, turned: true } as const]),
      { kind: 'control', geometric: 'flat', within: sizes.flatWithin, at: [length * 0.1, flip(0)], toward: [1.5, 6.2 * away] },
      up ? { kind: 'finish', roughness: 1.6e-6, at: [length * 0.6, flip(0)], toward: [1.6, -4.6] } : { kind: 'finish', roughness: 1.6e-6, at: [length * 0.6, flip(0)] },
      { kind: 'control', geometric: 'parallel', within: sizes.parallelWithin, to: 'A', at: [length * 0.1, flip(height)], toward: [1.5, -6.2 * away] },
      up ? { kind: 'finish', roughness: 1.6e-6, at: [length * 0.55, flip(height)] } : { kind: 'finish', roughness: 1.6e-6, at: [length * 0.6, flip(height)], toward: [1.6, -4.6] },
    ],
  };
}
