import { centreLine, circle, cross, line, path, rectangle, type DimensionMark, type Mark, type Point, type Shape } from './shape.ts';

export interface StrapSizes {
  /** Hole to hole. */
  readonly between: number;
  /** Hole from the end; undefined where no hole is known. */
  readonly margin: number | undefined;
  readonly width: number;
  readonly thick: number;
  readonly plate: number;
  readonly rivet: number;
  /** Rivet from the edges of its plate. */
  readonly rivetIn: number;
  /** Hole in the belting over that in the plates. */
  readonly beltingRoom: number;
  /** Holes in the plates, at the eye and at the ram; undefined where the pin is not known. */
  readonly hole: number | undefined;
  readonly ramHole: number | undefined;
  /** What the length between the holes is made up of, where that is more than a reading. */
  readonly madeUp: string | undefined;
}

/** A strap with its plates and rivets, from the front and from its edge; the eye of the bow is on the left, the ram on the right. */
export function strapShape(sizes: StrapSizes): Shape {
  const { between, margin, width, thick, plate, rivet, rivetIn, hole, ramHole } = sizes;
  const [x, y, c] = [between / 2 + (margin ?? width), width / 2, Math.min(width * 0.12, 0.00635)];
  const outline = path([[-x, -y + c], [-x + c, -y], [x - c, -y], [x, -y + c], [x, y - c], [x - c, y], [-x + c, y], [-x, y - c]]);
  const ends = [{ at: -between / 2, bore: hole }, { at: between / 2, bore: ramHole }] as const;
  const [along, across] = [margin === undefined ? 0 : margin - rivetIn, y - rivetIn];
  const rivets = (at: number): readonly Point[] => [-1, 1].flatMap((side) => [-1, 1].map((up): Point => [at + side * along, up * across]));
  // The plates lie in front: their holes are seen, the wider ones of the belting under them are dashed.
  const holes = ends.flatMap(({ at, bore }): readonly Mark[] => (bore === undefined ? cross([at, 0], width * 0.15) : [circle([at, 0], bore / 2), circle([at, 0], (bore + sizes.beltingRoom) / 2, 'hidden'), ...cross([at, 0], (bore + sizes.beltingRoom) / 2)]));
  const plates = margin === undefined ? [] : ends.flatMap(({ at }): readonly Mark[] => [line([at - Math.sign(at) * margin, -y], [at - Math.sign(at) * margin, y]), ...rivets(at).flatMap((spot) => [circle(spot, rivet / 2), ...cross(spot, rivet / 2)])]);
  const on = (at: number, bore: number, side: 1 | -1): Point => [at + side * (bore / 2) * Math.SQRT1_2, (bore / 2) * Math.SQRT1_2];
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'between', from: [-between / 2, 0], to: [between / 2, 0], side: 'below', row: 1, ...(sizes.madeUp === undefined ? {} : { note: sizes.madeUp }) },
    { kind: 'straight', of: 'width', from: [x - c, -y], to: [x - c, y], side: 'right', row: 1 },
    ...(margin === undefined ? [] : [
      { kind: 'straight', of: 'length', from: [-x, -y + c], to: [x, -y + c], side: 'below', row: 2 } as const, { kind: 'straight', of: 'margin', from: [between / 2, 0], to: [x, y - c], side: 'above', row: 1 } as const,
      { kind: 'straight', of: 'rivet-across', from: [-between / 2 - along, -across], to: [-between / 2 - along, across], side: 'left', row: 1 } as const,
      { kind: 'straight', of: 'rivet-along', from: [-between / 2 - along, across], to: [-between / 2 + along, across], side: 'above', row: 1 } as const,
      { kind: 'leader', of: 'rivet', at: [between / 2 - along - (rivet / 2) * Math.SQRT1_2, across + (rivet / 2) * Math.SQRT1_2], toward: [-2, 4], sign: 'Ø', note: 'eight', clear: true } as const,
    ]),
    ...(hole === undefined ? [] : [
      { kind: 'leader', of: 'hole', at: on(-between / 2, hole, 1), toward: [3, 7], sign: 'Ø', note: 'plates, at the eye', clear: true } as const,
      { kind: 'leader', of: 'belting-hole', at: on(-between / 2, hole + sizes.beltingRoom, 1), toward: [3, 10], sign: 'Ø', note: 'belting, at the eye', clear: true } as const,
    ]),
    ramHole === undefined
      ? { kind: 'leader', words: 'hole by the pin at the ram, not read', at: [between / 2, 0], toward: [2, 9], clear: true } as const
      : { kind: 'leader', of: 'ram-hole', at: on(between / 2, ramHole, 1), toward: [2, 9], sign: 'Ø', note: 'plates, at the ram', clear: true } as const,
    ...(ramHole === undefined ? [] : [{ kind: 'leader', of: 'ram-belting-hole', at: on(between / 2, ramHole + sizes.beltingRoom, 1), toward: [2, 12], sign: 'Ø', note: 'belting, at the ram', clear: true } as const]),
  ];
  const edgeOn: Mark[] = margin === undefined ? [] : ends.flatMap(({ at }) => [-plate, thick].flatMap((low) => rectangle(at - margin, low, 2 * margin, plate)));
  const edgeSizes: DimensionMark[] = margin === undefined ? [] : [
    { kind: 'straight', of: 'plate', from: [-x, thick], to: [-x, thick + plate], side: 'left', row: 1 },
    { kind: 'straight', of: 'plate-length', from: [-x, thick + plate], to: [-x + 2 * margin, thick + plate], side: 'above', row: 1 },
  ];
  return {
    ...(margin === undefined ? { broken: 'Ends not to scale: they follow from the hole.' } : {}),
    views: [
      { name: 'front', title: 'front: eye of the bow on the left, ram on the right', marks: [...outline, centreLine([-x, 0], [x, 0]), ...plates, ...holes], dimensions },
      { name: 'top', title: 'on edge', marks: [...rectangle(-x, 0, 2 * x, thick), ...edgeOn], dimensions: [{ kind: 'straight', of: 'thickness', from: [x, 0], to: [x, thick], side: 'right', row: 1 }, ...edgeSizes] },
    ],
  };
}
