import { breakLine, centreLine, circle, line, path, type DimensionMark, type Mark, type Point, type Shape } from './shape.ts';

export interface PinSizes {
  readonly diameter: number;
  /** Undefined where it was not measured: the view is then cut short. */
  readonly length: number | undefined;
  readonly chamfer: number;
  /** Cross hole for a split pin, and its middle from the end. */
  readonly hole: number;
  readonly fromEnd: number;
  /** True where pins differ in length: the table has each. */
  readonly several: boolean;
}

/** A plain pin with a cross hole at each end. Names of the dimensions: diameter, length, cross-hole, from-end, chamfer. */
export function pinShape(sizes: PinSizes): Shape {
  const { diameter, chamfer, hole, fromEnd, several } = sizes;
  const r = diameter / 2;
  const cut = sizes.length === undefined;
  const half = (sizes.length ?? diameter * 3.4) / 2;
  const outline = (from: number, to: number, side: 1 | -1): readonly Mark[] => {
    const corners: readonly Point[] = [[from, r], [side * (to - chamfer), r], [side * to, r - chamfer], [side * to, -r + chamfer], [side * (to - chamfer), -r], [from, -r]];
    return [...path(corners, 'visible', false), line([side * (to - chamfer), -r], [side * (to - chamfer), r]), circle([side * (to - fromEnd), 0], hole / 2), line([side * (to - fromEnd), -hole], [side * (to - fromEnd), hole], 'centre')];
  };
  const gap = diameter * 0.12;
  const marks: readonly Mark[] = cut
    ? ([-1, 1] as const).flatMap((side) => [...outline(side * gap, half, side), ...breakLine(side * gap, -r, r)])
    : ([-1, 1] as const).flatMap((side) => outline(0, half, side));
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'diameter', from: [half - chamfer, -r], to: [half - chamfer, r], side: 'right', row: 1, sign: 'Ø' },
    { kind: 'straight', of: 'from-end', from: [-half, -r + chamfer], to: [-half + fromEnd, -hole], side: 'below', row: 1 },
    ...(cut ? [] : [{ kind: 'straight', of: 'length', from: [-half, -r + chamfer], to: [half, -r + chamfer], side: 'below', row: 2, ...(several ? { words: 'length: see the table' } : {}) } as const]),
    { kind: 'leader', of: 'cross-hole', at: [-half + fromEnd + (hole / 2) * Math.SQRT1_2, (hole / 2) * Math.SQRT1_2], toward: [-2, 4], sign: 'Ø', clear: true },
    { kind: 'leader', of: 'chamfer', at: [half - chamfer / 2, r - chamfer / 2], toward: [1.8, 2.6], sign: 'C' },
    { kind: 'finish', roughness: 0.8e-6, at: [cut ? half * 0.55 : half * 0.3, r] },
  ];
  return {
    ...(cut ? { broken: 'Cut short: length to suit, not measured.' } : {}),
    views: [{ name: 'front', title: 'front', marks: [...marks, centreLine([-half, 0], [half, 0])], dimensions }],
  };
}
