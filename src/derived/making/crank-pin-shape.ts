import { arc, centreLine, circle, line, path, type DimensionMark, type Mark, type Point, type Shape } from './shape.ts';

export interface CrankPinSizes {
  readonly journal: number;
  readonly run: number;
  /** From the collar to the middle of the hole for the split pin. */
  readonly toHole: number;
  readonly shank: number;
  readonly shankLength: number;
  readonly collar: number;
  readonly collarThickness: number;
  readonly thread: number | undefined;
  readonly tail: number;
  /** Hole for the split pin of the nut, and its middle from the end of the shank; undefined where no thread was read. */
  readonly nutHole: number | undefined;
  readonly nutHoleAt: number;
  readonly pitch: number | undefined;
  readonly hole: number;
  readonly fromEnd: number;
  readonly fillet: number;
  readonly endChamfer: number;
  readonly trueWithin: number;
  /** Call-out of the thread. */
  readonly call: string | undefined;
}

const QUARTER = Math.PI / 2;

/** A crank pin lying down, thread on the left. Nought is the face of the collar that bears on the plate. */
export function crankPinShape(sizes: CrankPinSizes): Shape {
  const { journal, run, toHole, shank, shankLength, collar, collarThickness: thick, thread, tail, nutHole, nutHoleAt, pitch, hole, fromEnd, fillet: f, endChamfer: chamfer, trueWithin, call } = sizes;
  const [j, s, c, t] = [journal / 2, shank / 2, collar / 2, (thread ?? shank) / 2];
  const back = -shankLength - tail;
  const end = thick + toHole + fromEnd;
  const half = (up: 1 | -1): readonly Mark[] => {
    const at = (x: number, y: number): Point => [x, up * y];
    const rounding = (x: number, y: number, from: number): Mark => arc(at(x, y), f, up > 0 ? from : -from - QUARTER, up > 0 ? from + QUARTER : -from);
    return [
      ...path([at(back, 0), at(back, t - chamfer), at(back + chamfer, t), at(-shankLength, t), at(-shankLength, s), at(-f, s)], 'visible', false), rounding(-f, s + f, -QUARTER),
      ...path([at(0, s + f), at(0, c), at(thick, c), at(thick, j + f)], 'visible', false), rounding(thick + f, j + f, -2 * QUARTER),
      ...path([at(thick + f, j), at(end - chamfer, j), at(end, j - chamfer), at(end, 0)], 'visible', false),
      line(at(back + chamfer, 0), at(back + chamfer, t)), line(at(-shankLength, 0), at(-shankLength, t)), line(at(end - chamfer, 0), at(end - chamfer, j)), line(at(0, 0), at(0, s + f)), line(at(thick, 0), at(thick, j + f)),
      // Root of the thread, ISO 6410.
      ...(thread === undefined ? [] : [line(at(back + chamfer, t - 0.61 * (pitch ?? thread * 0.12)), at(-shankLength, t - 0.61 * (pitch ?? thread * 0.12)), 'thin')]),
    ];
  };
  const cross1 = thick + toHole;
  const lock = -shankLength - nutHoleAt;
  const marks: Mark[] = [...half(1), ...half(-1), circle([cross1, 0], hole / 2), line([cross1, -hole], [cross1, hole], 'centre'), ...(nutHole === undefined ? [] : [circle([lock, 0], nutHole / 2), line([lock, -nutHole], [lock, nutHole], 'centre')]), centreLine([back, 0], [end, 0])];
  const threadMark: DimensionMark = { kind: 'straight', of: 'thread', from: [back + chamfer, -t], to: [back + chamfer, t], side: 'left', row: 2, ...(call === undefined ? { sign: 'Ø' } : { words: call }) };
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'tail', from: [back, -t + chamfer], to: [-shankLength, -t], side: 'below', row: 1 },
    { kind: 'straight', of: 'shank-length', from: [-shankLength, -s], to: [0, -c], side: 'below', row: 3 },
    { kind: 'straight', of: 'collar-thickness', from: [0, -c], to: [thick, -c], side: 'below', row: 2 },
    { kind: 'straight', of: 'to-hole', from: [thick, -c], to: [cross1, -hole], side: 'below', row: 1 },
    { kind: 'straight', of: 'from-end', from: [cross1, -hole], to: [end, -j + chamfer], side: 'below', row: 2 },
    { kind: 'leader', of: 'end-chamfer', at: [end - chamfer / 2, j - chamfer / 2], toward: [2.2, 3.4], sign: 'C' },
    { kind: 'straight', of: 'journal', from: [end - chamfer, -j], to: [end - chamfer, j], side: 'right', row: 1, sign: 'Ø' },
    { kind: 'leader', of: 'collar', at: [thick * 0.5, c], toward: [2, 9.5], sign: 'Ø' },
    { kind: 'straight', of: 'shank', from: [-shankLength, -s], to: [-shankLength, s], side: 'left', row: 1, sign: 'Ø', turned: true },
    ...(thread === undefined ? [] : [threadMark]),
    { kind: 'leader', of: 'cross-hole', at: [cross1 + (hole / 2) * Math.SQRT1_2, (hole / 2) * Math.SQRT1_2], toward: [3, 8], sign: 'Ø', clear: true },
    { kind: 'leader', of: 'fillet', at: [thick + f * (1 - Math.SQRT1_2), -j - f * (1 - Math.SQRT1_2)], toward: [2, -1.8], sign: 'R' },
    { kind: 'datum', letter: 'A', at: [-shankLength * 0.75, s], side: 'above' },
    { kind: 'finish', roughness: 1.6e-6, at: [-shankLength * 0.5, s], toward: [-1, 8] },
    { kind: 'finish', roughness: 0.8e-6, at: [thick + run * 0.55, j] },
    { kind: 'control', geometric: 'square', within: trueWithin, to: 'A', at: [0, c * 0.9], toward: [-2.5, 5.5] },
    { kind: 'control', geometric: 'coaxial', within: trueWithin, to: 'A', at: [thick + run * 0.2, j], toward: [0.5, 6] },
  ];
  return {
    views: [{ name: 'front', title: 'front: nut and split pin at the left', marks, dimensions }],
  };
}
