import { breakLine, centreLine, circle, cross, hatched, line, path, type DimensionMark, type Mark, type Point, type Shape } from './shape.ts';

export interface BushSizes {
  readonly bore: number;
  readonly outside: number;
  /** Undefined where the eye was not measured: the view is then cut short. */
  readonly length: number | undefined;
  readonly chamfer: number;
  /** Undefined where the eye is not to be drilled: the groove then runs out at the left end, where the oil goes in. */
  readonly oilHole: number | undefined;
  /** At the bore, for the fillet of a pin; 0 for none. */
  readonly boreChamfer: number;
  readonly groove: Groove | undefined;
  /** What bore and outside may be out of true, m. */
  readonly trueWithin: number;
}

/** Oil groove along the bore, on the side of the oil hole, m. */
export interface Groove {
  readonly width: number;
  readonly depth: number;
  /** From each end of the bush. */
  readonly end: number;
}

/** A bush cut open along its axis, and its end. Names of the dimensions: bore, outside, length, oil-hole, chamfer, bore-chamfer, groove-width, groove-depth, groove-end. */
export function bushShape(sizes: BushSizes): Shape {
  const { bore, outside, chamfer, trueWithin } = sizes;
  const cut = sizes.length === undefined;
  const length = sizes.length ?? outside * 1.3;
  const half = length / 2;
  const marks = cut ? brokenSection(sizes, half) : section(sizes, half);
  const dimensions: DimensionMark[] = [
    ...(cut ? [] : [{ kind: 'straight', of: 'length', from: [-half, -outside / 2], to: [half, -outside / 2], side: 'below', row: 1 } as const]),
    { kind: 'straight', of: 'bore', from: [-half, -bore / 2], to: [-half, bore / 2], side: 'left', row: 1, sign: 'Ø', turned: true },
    { kind: 'leader', of: 'chamfer', at: [half - chamfer / 2, outside / 2 - chamfer / 2], toward: [1.6, 2.4], sign: 'C' },
    ...(sizes.boreChamfer > 0 ? [{ kind: 'leader', of: 'bore-chamfer', at: [half - sizes.boreChamfer / 2, -bore / 2 - sizes.boreChamfer / 2], toward: [2.4, -1.2], sign: 'C' } as const] : []),
    ...(cut || sizes.groove === undefined ? [] : [
      { kind: 'straight', of: 'groove-end', from: [half - sizes.groove.end, bore / 2 + sizes.groove.depth], to: [half, outside / 2 - chamfer], side: 'above', row: 1 } as const,
      { kind: 'leader', words: `groove {groove-width} wide, {groove-depth} deep${sizes.oilHole === undefined ? ', open at left' : ''}`, at: [-(half - sizes.groove.end) * 0.6, bore / 2 + sizes.groove.depth], toward: [1.6, 8] } as const,
    ]),
    ...(cut || sizes.oilHole === undefined ? [] : [{ kind: 'leader', of: 'oil-hole', at: [sizes.oilHole / 2, outside / 2], toward: [1.6, 5.2], sign: 'Ø' } as const]),
  ];
  const ends: DimensionMark[] = [
    { kind: 'straight', of: 'outside', from: [-outside / 2, 0], to: [outside / 2, 0], side: 'below', row: 1, sign: 'Ø' },
    { kind: 'datum', letter: 'A', at: [outside / 2, 0], side: 'right' },
    { kind: 'control', geometric: 'coaxial', within: trueWithin, to: 'A', at: [(bore / 2) * Math.SQRT1_2, (bore / 2) * Math.SQRT1_2], toward: [Math.max(2.5, 0), 7] },
    { kind: 'finish', roughness: 1.6e-6, at: [-(bore / 2) * Math.SQRT1_2, (bore / 2) * Math.SQRT1_2], toward: [-2.5, 7] },
  ];
  return {
    ...(cut ? { broken: 'Cut short: length as the eye, not measured.' } : {}),
    views: [
      { name: 'front', title: 'cut along the axis', marks, dimensions },
      { name: 'right', title: 'end; cut along its upright line', marks: [circle([0, 0], outside / 2), circle([0, 0], bore / 2), ...cross([0, 0], outside / 2)], dimensions: ends },
    ],
  };
}

const spacingOf = ({ bore, outside }: BushSizes): number => Math.max((outside - bore) / 2 / 2.2, outside / 40);

function section(sizes: BushSizes, half: number): readonly Mark[] {
  const { bore, outside, chamfer, boreChamfer: c, groove } = sizes;
  const oilHole = sizes.oilHole ?? Infinity;
  const open = sizes.oilHole === undefined;
  const [r, R] = [bore / 2, outside / 2];
  const drilled = oilHole < half;
  const spacing = spacingOf(sizes);
  const lower: readonly Point[] = [[-half, -r - c], ...(c > 0 ? [[-half + c, -r], [half - c, -r]] as const : [[half, -r]] as const), ...(c > 0 ? [[half, -r - c]] as const : []), [half, -R + chamfer], [half - chamfer, -R], [-half + chamfer, -R], [-half, -R + chamfer]];
  // Inner edge of the upper wall from an end to the oil hole: chamfer, land, groove.
  const floor = groove === undefined ? r : r + groove.depth;
  const inner = (side: 1 | -1): readonly Point[] => (open && side < 0 && groove !== undefined ? [[-half, floor]] : [
    [side * half, r + c], ...(c > 0 ? [[side * (half - c), r]] as const : []), ...(groove === undefined ? [] : [[side * (half - groove.end), r], [side * (half - groove.end), floor]] as const),
  ]);
  const upper = (side: 1 | -1): readonly Point[] => [...inner(side), [(side * oilHole) / 2, floor], [(side * oilHole) / 2, R], [side * (half - chamfer), R], [side * half, R - chamfer]];
  const whole: readonly Point[] = [...inner(-1), ...[...inner(1)].reverse(), [half, R - chamfer], [half - chamfer, R], [-half + chamfer, R], [-half, R - chamfer]];
  const walls: readonly (readonly Point[])[] = drilled ? [upper(-1), upper(1), lower] : [whole, lower];
  return [
    ...walls.flatMap((wall) => [...path(wall), ...hatched(wall, spacing)]),
    // Edges of the ends and of the groove behind the cut.
    line([-half, -r - c], [-half, r + c]), line([half, -r - c], [half, r + c]), ...(c > 0 ? [line([-half + c, -r], [-half + c, r]), line([half - c, -r], [half - c, r])] : []),
    ...(groove === undefined ? [] : [line([open ? -half : -half + groove.end, r], [half - groove.end, r])]),
    centreLine([-half, 0], [half, 0]), ...(drilled ? [line([-oilHole / 2, floor], [oilHole / 2, floor]), line([-oilHole / 2, R], [oilHole / 2, R]), line([0, floor - outside * 0.04], [0, R + outside * 0.04], 'centre')] : []),
  ];
}

function brokenSection(sizes: BushSizes, half: number): readonly Mark[] {
  const { bore, outside, chamfer } = sizes;
  const [r, R] = [bore / 2, outside / 2];
  const gap = outside * 0.06;
  const spacing = spacingOf(sizes);
  return [-1, 1].flatMap((side) => [
    ...[1, -1].flatMap((up): readonly Mark[] => {
      const wall: readonly Point[] = [[side * gap, up * r], [side * half, up * r], [side * half, up * (R - chamfer)], [side * (half - chamfer), up * R], [side * gap, up * R]];
      return [...path(wall, 'visible', false), ...hatched(wall, spacing)];
    }),
    line([side * half, -r], [side * half, r]), ...breakLine(side * gap, -R, R),
  ]).concat(centreLine([-half, 0], [half, 0]));
}
