import { arc, centreLine, circle, cross, line, path, type DimensionMark, type Mark, type Point, type Shape, type View } from './shape.ts';

export interface LeafSizes {
  /** Along the curve; between the eyes where it has eyes. */
  readonly length: number;
  /** To cut. */
  readonly flat: number;
  readonly width: number;
  readonly thickness: number;
  readonly hole: number | undefined;
  /** Of the eyes; undefined for a leaf without. */
  readonly bore: number | undefined;
  /** Of the inside of the curve; undefined where span or camber was not read. */
  readonly radius: number | undefined;
}

/** A leaf as bent, from the side, and flat as it is cut. Names of the dimensions: flat-length, width, thickness, centre-hole, half, eye, radius, chord, rise. */
export function leafShape(sizes: LeafSizes): Shape {
  const flat = flatView(sizes);
  return sizes.radius === undefined ? { views: [{ ...flat, name: 'front' }] } : { views: [bentView(sizes, sizes.radius), flat] };
}

function flatView({ flat, width, thickness, hole, radius }: LeafSizes): View {
  const [x, y] = [flat / 2, width / 2];
  const corner = Math.min(width * 0.06, 0.003);
  const marks: Mark[] = [
    ...path([[-x + corner, -y], [x - corner, -y], [x, -y + corner], [x, y - corner], [x - corner, y], [-x + corner, y], [-x, y - corner], [-x, -y + corner]]),
    centreLine([-x, 0], [x, 0]), ...(hole === undefined ? [] : [circle([0, 0], hole / 2), line([0, -hole * 1.2], [0, hole * 1.2], 'centre')]),
  ];
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'flat-length', from: [-x, -y + corner], to: [x, -y + corner], side: 'below', row: hole === undefined ? 1 : 2 },
    { kind: 'straight', of: 'width', from: [x - corner, -y], to: [x - corner, y], side: 'right', row: 1 },
    ...(hole === undefined ? [] : [
      { kind: 'straight', of: 'half', from: [-x, -y + corner], to: [0, -hole * 1.2], side: 'below', row: 1 } as const,
      { kind: 'leader', of: 'centre-hole', at: [hole / 2 * Math.SQRT1_2, hole / 2 * Math.SQRT1_2], toward: [2.5, 4], sign: 'Ø', clear: true } as const,
    ]),
    ...(radius === undefined ? [{ kind: 'leader', of: 'thickness', at: [-x * 0.6, y], toward: [-1.5, 2.2] } as const] : []),
  ];
  return { name: 'top', title: thickness > 0 && radius === undefined ? 'flat' : 'flat, as it is cut', marks, dimensions };
}

function bentView({ length, thickness: t, bore, radius: r }: LeafSizes, radius: number): View {
  const half = length / 2 / radius;
  const up = Math.PI / 2;
  const centre: Point = [0, -radius];
  const on = (at: number, angle: number): Point => [centre[0] + at * Math.sin(angle), centre[1] + at * Math.cos(angle)];
  const outer = radius + t;
  // An eye is rolled outward of the inside of the curve: its middle lies on the curve where the leaf is measured to.
  const eyes = bore === undefined ? [] : [-1, 1].map((side): Point => on(radius - bore / 2, side * half));
  const marks: Mark[] = [
    arc(centre, radius, up - half, up + half), arc(centre, outer, up - half, up + half),
    ...(bore === undefined ? [-1, 1].map((side) => line(on(radius, side * half), on(outer, side * half))) : eyes.flatMap((eye) => [circle(eye, bore / 2), circle(eye, bore / 2 + t), ...cross(eye, bore / 2 + t)])),
    line([0, -t * 1.5], [0, t * 2.5], 'centre'),
  ];
  const low = on(radius, half);
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'chord', from: on(radius, -half), to: low, side: 'below', row: 1 },
    { kind: 'straight', of: 'rise', from: low, to: [0, 0], side: 'right', row: 1 },
    { kind: 'leader', of: 'radius', at: on(radius, -half * 0.45), toward: [1.5, -3], sign: 'R' },
    { kind: 'leader', of: 'thickness', at: on(outer, half * 0.5), toward: [2, 2.4] },
    ...(bore === undefined || eyes[0] === undefined ? [] : [{ kind: 'leader', of: 'eye', at: [eyes[0][0] - (bore / 2) * Math.SQRT1_2, eyes[0][1] + (bore / 2) * Math.SQRT1_2], toward: [-2.5, 4], sign: 'Ø', clear: true } as const]),
  ];
  return { name: 'front', title: r === undefined ? 'front' : 'as bent, free', marks, dimensions };
}
