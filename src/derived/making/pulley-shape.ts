import { arc, centreLine, circle, cross, hatched, line, path, type DimensionMark, type Mark, type Point, type Shape } from './shape.ts';

export interface PulleySizes {
  readonly diameter: number;
  readonly face: number;
  readonly crown: number;
  readonly bore: number | undefined;
  readonly keyWidth: number | undefined;
  /** From the far side of the bore to the floor of the keyway. */
  readonly keyDepth: number | undefined;
  readonly runOut: number;
}

/** Corners of the crown's curve that hatching follows. */
const CURVE = 8;

/** A pulley cut along its axis where it has a bore, and its end. Names of the dimensions: face, diameter, crown, bore, key-width, key-depth. */
export function pulleyShape({ diameter, face, crown, bore, keyWidth, keyDepth, runOut }: PulleySizes): Shape {
  const r = diameter / 2;
  const edge = r - crown;
  const radius = (face ** 2 / 4 + crown ** 2) / (2 * crown);
  const half = Math.asin(face / 2 / radius);
  const up = Math.PI / 2;
  const b = (bore ?? 0) / 2;
  const top = keyDepth === undefined ? b : keyDepth - b;
  const crowned = (side: 1 | -1): readonly Point[] => Array.from({ length: CURVE + 1 }, (_, index): Point => {
    const angle = half - (2 * half * index) / CURVE;
    return [radius * Math.sin(angle), side * (r - radius + radius * Math.cos(angle))];
  });
  const cut: readonly Mark[] = bore === undefined ? [] : [
    ...hatched([[-face / 2, top], [-face / 2, edge], ...[...crowned(1)].reverse(), [face / 2, top]], diameter / 14),
    ...hatched([[-face / 2, -b], [-face / 2, -edge], ...[...crowned(-1)].reverse(), [face / 2, -b]], diameter / 14),
    line([-face / 2, top], [face / 2, top]), line([-face / 2, -b], [face / 2, -b]), ...(top > b ? [line([-face / 2, b], [face / 2, b])] : []),
  ];
  const rim: Mark[] = [
    arc([0, r - radius], radius, up - half, up + half), arc([0, radius - r], radius, -up - half, -up + half),
    line([-face / 2, -edge], [-face / 2, edge]), line([face / 2, -edge], [face / 2, edge]), centreLine([-face / 2, 0], [face / 2, 0]), ...cut,
  ];
  const k = (keyWidth ?? 0) / 2;
  const keyed = bore !== undefined && keyWidth !== undefined && keyDepth !== undefined && k < b;
  const lip = keyed ? Math.sqrt(b ** 2 - k ** 2) : 0;
  const hole: readonly Mark[] = bore === undefined ? [] : keyed
    ? [arc([0, 0], b, up + Math.asin(k / b), up + 2 * Math.PI - Math.asin(k / b)), ...path([[-k, lip], [-k, top], [k, top], [k, lip]], 'visible', false)]
    : [circle([0, 0], b)];
  const ends: DimensionMark[] = bore === undefined ? [] : [
    { kind: 'leader', of: 'bore', at: [-b * Math.SQRT1_2, -b * Math.SQRT1_2], toward: [-2, -3], sign: 'Ø', clear: true },
    ...(keyed ? [
      { kind: 'straight', of: 'key-width', from: [-k, top], to: [k, top], side: 'above', row: 1 } as const,
      { kind: 'straight', of: 'key-depth', from: [0, -b], to: [k, top], side: 'right', row: 1 } as const,
    ] : []),
    { kind: 'control', geometric: 'run-out', within: runOut, to: 'A', at: [r * Math.SQRT1_2, -r * Math.SQRT1_2], toward: [2.5, -4] },
  ];
  return {
    views: [
      {
        name: 'front', title: bore === undefined ? 'front' : 'cut along the axis', marks: rim,
        dimensions: [
          { kind: 'straight', of: 'face', from: [-face / 2, -edge], to: [face / 2, -edge], side: 'below', row: 1 },
          { kind: 'straight', of: 'diameter', from: [0, -r], to: [0, r], side: 'left', row: 1, sign: 'Ø' },
          ...(bore === undefined ? [] : [{ kind: 'datum', letter: 'A', at: [face / 2, -b], side: 'right' } as const]),
          { kind: 'leader', of: 'crown', at: [face * 0.35, edge + crown * 0.5], toward: [1.8, 4.4] },
          { kind: 'finish', roughness: 1.6e-6, at: [-face * 0.42, r] },
        ],
      },
      { name: 'right', title: 'end', marks: [circle([0, 0], r), ...hole, ...cross([0, 0], r)], dimensions: ends },
    ],
  };
}
