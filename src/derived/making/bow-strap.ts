import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { bowDraw, strapLonger } from '../linkage/index.ts';
import { printQuantity } from '../print-system.ts';
import { estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { jointPinSize } from './joint-pins.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { centreLine, circle, cross, path, rectangle, type DimensionMark, type Point, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'bow-strap';
const TITLE = 'Strap from bow to ram';
const SIXTY_FOURTH = shopNumber('plate-room');

/**
 * A pair of straps of belting that hang the ram from the bow: as long between their pins as the old ones, both alike, with the metal round
 * each hole that practice wants.
 * @returns the part; not known without the length between the pins, the width and the thickness; cannot be where the hole takes the strap
 */
export function makeBowStraps(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const lengths = ['left', 'right'].flatMap((end) => {
    const figure = reader.find(`bow-spring.strap-length@${end}`);
    return figure === undefined ? [] : [{ end, figure }];
  }).sort((a, b) => a.figure.quantity.value - b.figure.quantity.value);
  // A strap only stretches: the shorter one is nearer to what both were.
  const [shorter] = lengths;
  const width = reader.need('bow-spring.strap-width');
  const thick = reader.need('bow-spring.strap-thickness');
  const old = shorter?.figure ?? reader.need('bow-spring.strap-length@left');
  const drawn = bowDraw((key) => reader.find(key)?.quantity);
  const longer = drawn === undefined ? 0 : strapLonger(drawn);
  const between = old === undefined ? undefined : longer === 0 ? old : reckon('length', [old], (length) => length! + longer);
  if (between === undefined || width === undefined || thick === undefined) return reader.notKnown(KIND, TITLE);
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const pin = context.alsoMade.has('bow-eye-pin') ? jointPinSize('bow-eye-pin', values, context)?.diameter : undefined;
  const read = reader.find('bow-spring.strap-hole');
  const hole: Figure | undefined = pin === undefined ? read : reckon('length', [pin, shopFigure('plate-room')], (across, room) => across! + room!);
  const bore = hole === undefined ? undefined : { ...hole, estimate: read?.estimate ?? false };
  if (bore !== undefined && bore.quantity.value > width.quantity.value / 2) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: `A hole of more than half the width tears out: one of the readings is wrong (${[...bore.from, ...width.from].join(', ')}).`, problem: `The hole takes the strap; up to ${print(width.quantity.value / 2)} is allowed: ${print(bore.quantity.value)}` };
  }
  const margin = bore === undefined ? undefined : { ...reckon('length', [bore, shopFigure('strap-margin')], (across, share) => Math.ceil((across! * share!) / (4 * SIXTY_FOURTH) - 1e-6) * 4 * SIXTY_FOURTH), estimate: false };
  const edge = margin === undefined ? undefined : { ...margin, quantity: { ...margin.quantity, uncertainty: 0 } };
  const whole = edge === undefined ? undefined : reckon('length', [between, edge], (apart, out) => apart! + 2 * out!);
  const dimensions: MakingDimension[] = [
    sized('between', 'hole to hole', between, plusMinus(2 * SIXTY_FOURTH), `${lengths.length > 1 ? 'the shorter of the old straps, which has stretched less' : 'as the old strap'}${longer === 0 ? '' : `, and ${print(longer)} more, by which the bow was drawn in too far (own reckoning)`}; both new ones alike`),
    ...(whole === undefined ? [] : [sized('length', 'length over all', { ...whole, estimate: false }, plusMinus(0), 'follows from hole to hole and what is left beyond the holes')]),
    sized('width', 'width', width, plusMinus(2 * SIXTY_FOURTH), 'as the old strap'),
    sized('thickness', 'thickness', thick, plusMinus(4 * SIXTY_FOURTH), 'as the old strap; of the nearest belting that is sold'),
    ...(bore === undefined ? [] : [sized('hole', 'holes for the pins, in the plates', bore, { plus: SIXTY_FOURTH, minus: 0 }, pin === undefined ? 'as the old strap' : 'the new pin and 1/64 in (0.4 mm)')]),
    ...(bore === undefined || edge === undefined ? [] : [
      sized('belting-hole', 'holes in the belting, under the plates', { ...reckon('length', [bore, shopFigure('chamfer')], (across, room) => across! + room!), estimate: bore.estimate }, { plus: 4 * SIXTY_FOURTH, minus: 0 }, '1/16 in (1.6 mm) over the hole in the plates: the pin bears on these and not on the belting'),
      sized('plate-length', 'plates, along the strap', { ...reckon('length', [edge], (out) => 2 * out!), estimate: false }, plusMinus(2 * SIXTY_FOURTH), 'as far past the hole as the strap goes beyond it; as wide as the strap, the hole in the middle'),
    ]),
    ...(bore === undefined ? [] : [
      sized('plate', 'steel plates, thick, four to each strap', { ...shopFigure('strap-plate'), estimate: false }, plusMinus(SIXTY_FOURTH), 'practice, from memory; of the nearest plate that is sold'),
      sized('rivet', 'rivets or bolts, eight to each strap', { ...shopFigure('strap-rivet'), estimate: false }, plusMinus(SIXTY_FOURTH), 'practice, from memory; four through each pair of plates'),
    ]),
    ...(edge === undefined ? [] : [sized('margin', 'hole from the end', edge, plusMinus(4 * SIXTY_FOURTH), 'two and a half holes, so that it does not tear out; from memory')]),
  ];
  const [first, last] = [lengths[0], lengths[lengths.length - 1]];
  const apart = first === undefined || last === undefined ? 0 : last.figure.quantity.value - first.figure.quantity.value;
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 2, material: 'Rubber-and-canvas belting or double leather, as the old one; steel straps are made to the old ones of mild steel', hardness: 'Does not apply', dimensions,
    mass: width.quantity.value * thick.quantity.value * (whole?.quantity.value ?? between.quantity.value) * STOCK_DENSITIES.belting,
    shape: strapShape(between.quantity.value, edge?.quantity.value, width.quantity.value, bore?.quantity.value, thick.quantity.value, longer === 0 || old === undefined ? undefined : `= ${print(old.quantity.value)} measured + ${print(longer)} said`),
    unknowns: [...(bore === undefined ? [unknownPlace('bow-spring.strap-hole')] : []), ...['left', 'right'].filter((end) => !lengths.some((one) => one.end === end)).map((end) => unknownPlace(`bow-spring.strap-length@${end}`))], disputes: [],
    notes: [
      'Both cut from one length and drilled together, clamped between boards: a ram on unequal straps hangs askew and rubs its guide.',
      'Steel plates of 1/8 in (3 mm) on both faces at each hole, as wide as the strap, four to a strap, long and drilled as in the table. Four rivets or bolts of 1/4 in (6 mm) through each pair, 1/2 in (12 mm) in from its edges.',
      'Corners cut off 1/4 in (6 mm). Stretch them a day under the ram before the gap is set.',
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], sources: ['page-other-families', 'common-practice', 'from-memory'],
    warnings: [...(apart > 4 * SIXTY_FOURTH && first !== undefined ? [`The old straps differ by ${print(apart)}: look at the bow for a set before both are made as the ${first.end} one.`] : []), ...estimateWarnings(dimensions)],
  }, context.system);
}

function strapShape(between: number, margin: number | undefined, width: number, hole: number | undefined, thick: number, madeUp: string | undefined): Shape {
  const out = margin ?? width;
  const [x, y, c] = [between / 2 + out, width / 2, Math.min(width * 0.12, 0.00635)];
  const outline = path([[-x, -y + c], [-x + c, -y], [x - c, -y], [x, -y + c], [x, y - c], [x - c, y], [-x + c, y], [-x, y - c]]);
  const centres: readonly Point[] = [[-between / 2, 0], [between / 2, 0]];
  // The belting is drawn, with its own holes; the smaller ones of the plates over them are dashed.
  const wide = hole === undefined ? undefined : hole + shopNumber('chamfer');
  const dimensions: DimensionMark[] = [
    { kind: 'straight', of: 'between', from: centres[0]!, to: centres[1]!, side: 'below', row: 1, ...(madeUp === undefined ? {} : { note: madeUp }) },
    { kind: 'straight', of: 'width', from: [x - c, -y], to: [x - c, y], side: 'right', row: 1 },
    ...(margin === undefined ? [] : [{ kind: 'straight', of: 'length', from: [-x, -y + c], to: [x, -y + c], side: 'below', row: 2 } as const, { kind: 'straight', of: 'margin', from: [between / 2, 0], to: [x, y - c], side: 'above', row: 1 } as const]),
    ...(hole === undefined || wide === undefined ? [] : [
      { kind: 'leader', of: 'belting-hole', at: [-between / 2 + (wide / 2) * Math.SQRT1_2, (wide / 2) * Math.SQRT1_2], toward: [2, 4], sign: 'Ø', note: 'through the belting', clear: true } as const,
      { kind: 'leader', of: 'hole', at: [between / 2 - (hole / 2) * Math.SQRT1_2, (hole / 2) * Math.SQRT1_2], toward: [-2, 7], sign: 'Ø', note: 'through the plates', clear: true } as const,
    ]),
  ];
  const holes = centres.flatMap((centre) => (hole === undefined ? cross(centre, width * 0.15) : [circle(centre, wide! / 2), circle(centre, hole / 2, 'hidden'), ...cross(centre, wide! / 2)]));
  return {
    ...(margin === undefined ? { broken: 'Ends not to scale: they follow from the hole.' } : {}),
    views: [
      { name: 'front', title: 'front', marks: [...outline, centreLine([-x, 0], [x, 0]), ...holes], dimensions },
      { name: 'top', title: 'top', marks: rectangle(-x, 0, 2 * x, thick), dimensions: [{ kind: 'straight', of: 'thickness', from: [x, 0], to: [x, thick], side: 'right', row: 1 }] },
    ],
  };
}
