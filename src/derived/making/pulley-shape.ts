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
  /** Rim, web and hub of a pulley that is not turned from the solid. */
  readonly wheel: Wheel | undefined;
}

/** What a large pulley is made of besides its face, m. */
export interface Wheel {
  /** At the edge of the rim. */
  readonly rim: number;
  readonly web: number;
  /** As long as the face. */
  readonly hub: number;
}

/** Corners of the crown's curve that hatching follows. */
const CURVE = 8;

/** A pulley cut along its axis where it has a bore, and its end. Names of the dimensions: face, diameter, crown, bore, key-width, key-depth, rim, web, hub. */
export function pulleyShape({ diameter, face, crown, bore, keyWidth, keyDepth, runOut, wheel }: PulleySizes): Shape {
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
  const inner = edge - (wheel?.rim ?? 0);
  // One side of the cut, from the bore outward: hub, web and rim, or one solid piece.
  const wall = (side: 1 | -1, from: number): readonly Point[] => {
    const at = (x: number, y: number): Point => [x, side * y];
    const steps: readonly (readonly [number, number])[] = wheel === undefined ? [[face / 2, from]] : [[face / 2, inner], [wheel.web / 2, inner], [wheel.web / 2, wheel.hub / 2], [face / 2, wheel.hub / 2], [face / 2, from]];
    return [...[...steps].reverse().map(([x, y]) => at(-x, y)), ...[...crowned(side)].reverse(), ...steps.map(([x, y]) => at(x, y))];
  };
  const spacing = wheel === undefined ? diameter / 14 : Math.max(wheel.rim, wheel.web) / 1.5;
  const cut: readonly Mark[] = bore === undefined ? [] : [
    ...hatched(wall(1, top), spacing), ...hatched(wall(-1, b), spacing),
    line([-face / 2, top], [face / 2, top]), line([-face / 2, -b], [face / 2, -b]), ...(top > b ? [line([-face / 2, b], [face / 2, b])] : []),
    ...(wheel === undefined ? [] : [1, -1].flatMap((side): readonly Mark[] => [
      line([-face / 2, side * inner], [-wheel.web / 2, side * inner]), line([wheel.web / 2, side * inner], [face / 2, side * inner]), line([-face / 2, (side * wheel.hub) / 2], [-wheel.web / 2, (side * wheel.hub) / 2]), line([wheel.web / 2, (side * wheel.hub) / 2], [face / 2, (side * wheel.hub) / 2]),
      line([(side * wheel.web) / 2, wheel.hub / 2], [(side * wheel.web) / 2, inner]), line([(side * wheel.web) / 2, -wheel.hub / 2], [(side * wheel.web) / 2, -inner]),
    ])),
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
    ...(wheel === undefined ? [] : [{ kind: 'leader', of: 'hub', at: [(-wheel.hub / 2) * Math.SQRT1_2, (wheel.hub / 2) * Math.SQRT1_2], toward: [-2, 3], sign: 'Ø', clear: true } as const]),
    { kind: 'control', geometric: 'run-out', within: runOut, to: 'A', at: [r * Math.SQRT1_2, -r * Math.SQRT1_2], toward: [2.5, -4] },
  ];
  return {
    views: [
      {
        name: 'front', title: bore === undefined ? 'front' : 'cut along the axis', marks: rim,
        dimensions: [
          { kind: 'straight', of: 'face', from: [-face / 2, -edge], to: [face / 2, -edge], side: 'below', row: 1 },
          { kind: 'straight', of: 'diameter', from: [0, -r], to: [0, r], side: 'left', row: 1, sign: 'Ø' },
          ...(wheel === undefined ? [] : [
            { kind: 'straight', of: 'web', from: [-wheel.web / 2, inner], to: [wheel.web / 2, inner], side: 'above', row: 1 } as const,
            { kind: 'straight', of: 'rim', from: [face / 2, inner], to: [face / 2, edge], side: 'right', row: 1 } as const,
          ]),
          ...(bore === undefined ? [] : [{ kind: 'datum', letter: 'A', at: [face / 2, -b], side: 'right' } as const]),
          { kind: 'leader', of: 'crown', at: [face * 0.35, edge + crown * 0.5], toward: [1.8, 4.4] },
          { kind: 'finish', roughness: 1.6e-6, at: [-face * 0.42, r] },
        ],
      },
      { name: 'right', title: 'end', marks: [circle([0, 0], r), ...(wheel === undefined ? [] : [circle([0, 0], inner), circle([0, 0], wheel.hub / 2)]), ...hole, ...cross([0, 0], r)], dimensions: ends },
    ],
  };
}
