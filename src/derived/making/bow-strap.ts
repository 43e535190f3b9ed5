import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { bowDraw, strapLonger } from '../linkage/index.ts';
import { printQuantity } from '../print-system.ts';
import { estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { jointPinSize } from './joint-pins.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { strapShape } from './bow-strap-shape.ts';
import { strapPlace, type StrapPlace } from './strap-place.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'bow-strap';
const TITLE = 'Strap from bow to ram';
const SIXTY_FOURTH = shopNumber('plate-room');

/**
 * Straps of belting that hang the ram from the bow, one or two to each eye: as long between their pins as the old ones, all alike, with steel
 * plates at each hole. The hole at the ram goes by its own pin.
 * @returns the part; not known without the length between the pins, the width and the thickness; cannot be where the hole takes the strap
 */
export function makeBowStraps(values: Values, known: Known, context: MakingContext = ALONE): Making {
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
  const over = (one: Figure): Figure => ({ ...reckon('length', [one, shopFigure('plate-room')], (across, room) => across! + room!), estimate: one.estimate });
  const bore: Figure | undefined = pin === undefined ? read : over(pin);
  // The pin at the ram is another one than that of the eye: its hole is never drilled by the eye's.
  const ramPins = ['left', 'right'].flatMap((end) => reader.find(`bow-spring.ram-pin@${end}`) ?? []).sort((a, b) => b.quantity.value - a.quantity.value);
  const [ramPin] = ramPins;
  const lower: Figure | undefined = ramPin === undefined ? read : over(ramPin);
  for (const one of [bore, lower]) {
    if (one !== undefined && one.quantity.value > width.quantity.value / 2) {
      return { state: 'cannot-be', kind: KIND, title: TITLE, because: `A hole of more than half the width tears out: one of the readings is wrong (${[...one.from, ...width.from].join(', ')}).`, problem: `The hole takes the strap; up to ${print(width.quantity.value / 2)} is allowed: ${print(one.quantity.value)}` };
    }
  }
  const larger = bore === undefined || (lower !== undefined && lower.quantity.value > bore.quantity.value) ? lower : bore;
  const margin = larger === undefined ? undefined : { ...reckon('length', [larger, shopFigure('strap-margin')], (across, share) => Math.ceil((across! * share!) / (4 * SIXTY_FOURTH) - 1e-6) * 4 * SIXTY_FOURTH), estimate: false };
  const edge = margin === undefined ? undefined : { ...margin, quantity: { ...margin.quantity, uncertainty: 0 } };
  const whole = edge === undefined ? undefined : reckon('length', [between, edge], (apart, out) => apart! + 2 * out!);
  const dimensions: MakingDimension[] = [
    sized('between', 'hole to hole', between, plusMinus(2 * SIXTY_FOURTH), `${lengths.length > 1 ? 'the shorter of the old straps, which has stretched less' : 'as the old strap'}${longer === 0 ? '' : `, and ${print(longer)} more, by which the bow was drawn in too far (own reckoning)`}; all new ones alike`),
    ...(whole === undefined ? [] : [sized('length', 'length over all', { ...whole, estimate: lower === undefined }, plusMinus(0), lower === undefined ? 'follows from hole to hole and what is left beyond the holes; the end at the ram is taken like that of the eye, whose pin alone is known' : 'follows from hole to hole and what is left beyond the holes')]),
    sized('width', 'width', width, plusMinus(2 * SIXTY_FOURTH), 'as the old strap'),
    sized('thickness', 'thickness', thick, plusMinus(4 * SIXTY_FOURTH), 'as the old strap; of the nearest belting that is sold'),
    ...(bore === undefined ? [] : [sized('hole', 'hole at the eye, plates', bore, { plus: SIXTY_FOURTH, minus: 0 }, pin === undefined ? 'as the old strap' : 'the new pin and 1/64 in (0.4 mm)'), belting('belting-hole', 'hole at the eye, belting', bore)]),
    ...(lower === undefined ? [] : [sized('ram-hole', 'hole at the ram, plates', lower, { plus: SIXTY_FOURTH, minus: 0 }, ramPin === undefined ? 'as the old strap' : 'the pin at the ram as measured and 1/64 in (0.4 mm)'), belting('ram-belting-hole', 'hole at the ram, belting', lower)]),
    ...(edge === undefined ? [] : [
      sized('plate-length', 'plates, along the strap', { ...reckon('length', [edge], (out) => 2 * out!), estimate: false }, plusMinus(2 * SIXTY_FOURTH), 'as far past the hole as the strap goes beyond it; as wide as the strap, the hole in the middle'),
      sized('plate', 'plates, thick, four to a strap', { ...shopFigure('strap-plate'), estimate: false }, plusMinus(SIXTY_FOURTH), 'practice, from memory; of the nearest plate that is sold'),
      sized('rivet', 'rivets, eight to a strap', { ...shopFigure('strap-rivet'), estimate: false }, plusMinus(SIXTY_FOURTH), 'practice, from memory; four through each pair of plates'),
      sized('rivet-along', 'rivets, along the strap', { ...reckon('length', [edge, shopFigure('strap-rivet-in')], (out, from) => 2 * out! - 2 * from!), estimate: false }, plusMinus(2 * SIXTY_FOURTH), '1/2 in (12 mm) in from the ends of the plates'),
      sized('rivet-across', 'rivets, across the strap', { ...reckon('length', [width, shopFigure('strap-rivet-in')], (across, from) => across! - 2 * from!), estimate: false }, plusMinus(2 * SIXTY_FOURTH), '1/2 in (12 mm) in from the edges'),
    ]),
    ...(edge === undefined ? [] : [sized('margin', 'hole from the end', edge, plusMinus(4 * SIXTY_FOURTH), 'two and a half holes, so that it does not tear out; from memory')]),
  ];
  if (edge !== undefined && between.quantity.value <= 2 * edge.quantity.value) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: `The plates of both ends would meet: one of the readings is wrong (${[...between.from, ...larger!.from].join(', ')}), or this strap is made of steel.`, problem: `The holes are too near to one another for plates; above ${print(2 * edge.quantity.value)} is allowed: ${print(between.quantity.value)}` };
  }
  if (edge !== undefined && width.quantity.value < 2 * shopNumber('strap-rivet-in') + 2 * shopNumber('strap-rivet')) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: `Four rivets do not stand in plates so narrow: the width is wrong (${width.from.join(', ')}), or this strap is made of steel.`, problem: `The strap is too narrow for its rivets; above ${print(2 * shopNumber('strap-rivet-in') + 2 * shopNumber('strap-rivet'))} is allowed: ${print(width.quantity.value)}` };
  }
  const sits = strapPlace(reader, known, pin?.quantity.value ?? reader.find('bow-spring.pin-diameter@left|bow-spring.pin-diameter@right')?.quantity.value, context.system)!;
  const [first, last] = [lengths[0], lengths[lengths.length - 1]];
  const apart = first === undefined || last === undefined ? 0 : last.figure.quantity.value - first.figure.quantity.value;
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 2 * sits.each, material: 'Rubber-and-canvas belting or double leather, as the old one, plates and rivets of mild steel; steel straps are made to the old ones of mild steel', hardness: 'Does not apply', dimensions,
    mass: massOf(whole?.quantity.value ?? between.quantity.value, width.quantity.value, thick.quantity.value, edge === undefined ? undefined : 2 * edge.quantity.value, [bore, lower].flatMap((one) => one?.quantity.value ?? [])),
    shape: strapShape({ between: between.quantity.value, margin: edge?.quantity.value, width: width.quantity.value, thick: thick.quantity.value, plate: shopNumber('strap-plate'), rivet: shopNumber('strap-rivet'), rivetIn: shopNumber('strap-rivet-in'), beltingRoom: shopNumber('chamfer'), hole: bore?.quantity.value, ramHole: lower?.quantity.value, madeUp: longer === 0 || old === undefined ? undefined : `= ${print(old.quantity.value)} measured + ${print(longer)} reckoned` }),
    unknowns: [...(bore === undefined ? [unknownPlace('bow-spring.strap-hole')] : []), ...(lower === undefined ? ['left', 'right'].map((end) => unknownPlace(`bow-spring.ram-pin@${end}`)) : []), ...(sits.seen ? [] : [{ key: 'bow-spring.strap-place', what: 'how the straps sit on the pins of the eyes', how: 'Look along the pin, from its end: count the straps at one eye.' }]), ...['left', 'right'].filter((end) => !lengths.some((one) => one.end === end)).map((end) => unknownPlace(`bow-spring.strap-length@${end}`))], disputes: [],
    notes: [
      placeNote(sits, print),
      `${sits.each === 2 ? 'All four' : 'Both'} cut from one length and drilled together, clamped between boards: on unequal straps the ram hangs askew.`,
      edge === undefined ? 'Steel plates of 1/8 in (3 mm) on both faces at each hole, as wide as the strap; four rivets or bolts of 1/4 in (6 mm) through each pair.' : `Steel plates of 1/8 in (3 mm) on both faces at each hole, each ${print(width.quantity.value)} by ${print(2 * edge.quantity.value)}, hole in the middle. Four rivets or bolts of 1/4 in (6 mm) through each pair.`,
      ...(lower === undefined ? ['The pin at the ram was not read, and is not that of the eye: leave that end long and undrilled until it is.'] : ramPin === undefined && pin !== undefined ? ['Hole at the ram as the old strap has it: try its pin first.'] : []),
      'Corners cut off 1/4 in (6 mm). Stretch them a day under the ram before the gap is set.',
    ],
    cautions: ['isolate', 'block-ram', 'spring-unload', 'stand-aside'], sources: ['page-other-families', 'common-practice', 'from-memory'],
    warnings: [...(apart > 4 * SIXTY_FOURTH && first !== undefined ? [`The old straps differ by ${print(apart)}: look at the bow for a set before both are made as the ${first.end} one.`] : []), ...estimateWarnings(dimensions)],
  }, context.system);
}

/** Hole in the belting itself, under the plates. */
const belting = (name: string, title: string, hole: Figure): MakingDimension =>
  sized(name, title, { ...reckon('length', [hole, shopFigure('chamfer')], (across, room) => across! + room!), estimate: hole.estimate }, { plus: 4 * SIXTY_FOURTH, minus: 0 }, '1/16 in (1.6 mm) over the hole in the plates: the pin bears on these and not on the belting');

/** Belting with the steel plates and rivets that are on it, kg; holes left out, rivets without their heads. */
function massOf(long: number, wide: number, thick: number, plates: number | undefined, holes: readonly number[]): number {
  const strap = wide * thick * long * STOCK_DENSITIES.belting;
  if (plates === undefined) return strap;
  const plate = shopNumber('strap-plate');
  const round = (across: number): number => (Math.PI / 4) * across ** 2;
  const steel = 4 * wide * plate * plates - 2 * plate * holes.reduce((sum, hole) => sum + round(hole), 0);
  return strap - thick * STOCK_DENSITIES.belting * holes.reduce((sum, hole) => sum + round(hole), 0) + steel * STOCK_DENSITIES.steel + 8 * round(shopNumber('strap-rivet')) * thick * (STOCK_DENSITIES.steel - STOCK_DENSITIES.belting);
}

/** How the straps sit on the pin of their eye, with the sum, and whether that was seen or chosen. */
function placeNote(sits: StrapPlace, print: (length: number) => string): string {
  const { place, seen, pack, eye, room, washer, off } = sits;
  const fine = (length: number): string => print(Math.round(length / (SIXTY_FOURTH / 4)) * (SIXTY_FOURTH / 4));
  const chosen = seen ? 'as it was seen' : 'chosen, since nobody looked';
  const stack = eye === undefined ? undefined : place === 'forked' ? eye : eye + (place === 'both-sides' ? 2 : 1) * pack;
  const sum = eye === undefined || room === undefined || stack === undefined ? ' How it fits on the pin is not known.'
    : ` Eye ${print(eye)}${place === 'forked' ? '' : ` + ${place === 'both-sides' ? '2 × ' : ''}${fine(pack)} with plates`} = ${fine(stack)}, between the split pins ${fine(room)}: ${room < stack ? `${fine(stack - room)} too little, the pin must be longer.` : `${fine(room - stack)} left${washer === undefined ? ', too little for washers' : place === 'both-sides' ? `, a washer of ${print(washer)} at each end` : `, filled with washers and a spacer`}.`}`;
  const words = place === 'both-sides' ? `two straps to each eye, one on each side, so that the pull is even (${chosen}).` : place === 'forked' ? `one strap to each eye, in the middle of its fork (${chosen}).` : `one strap to each eye, beside it (${chosen}).${off > 0 ? ` It pulls ${fine(off)} off the middle: two to an eye, or a forked one, pull evenly.` : ''}`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${sum} At the ram likewise.`;
}
