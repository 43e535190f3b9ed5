import { shaftLimits } from '../../methods/elements/index.ts';
import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import { printQuantity } from '../print-system.ts';
import { bushShape, type Groove } from './bush-shape.ts';
import { bushEdges, bushOutside } from './bush-edges.ts';
import { chosen, reckon, sized, unknownPlace, type Figure } from './figure.ts';
import type { MakingContext } from './making-context.ts';
import type { Making, MakingDimension, PartKind, Unknown } from './part-to-make.ts';
import { possible } from './possible.ts';
import { reamerOver } from './reamer.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

/** What a bush is worked out from. */
export interface BushFigures {
  readonly kind: PartKind;
  readonly title: string;
  readonly quantity: number;
  readonly bore: MakingDimension;
  readonly boreFigure: Figure;
  /** Bore that it is pressed into where that is not made to it: a rolled eye, cleaned up. */
  readonly seat?: Figure;
  /** Bore of an eye that is bored to the bush, as it was read with the old bush out. */
  readonly hole?: Figure | undefined;
  /** Where such a hole is still to be read; of two bushes the other's may be. */
  readonly holesUnread: readonly string[];
  /** Of two bushes in holes that were both read: which one is drawn, and the other with its own hole. */
  readonly pair?: { readonly end: string; readonly other: string; readonly hole: Figure };
  /** What turns in it; a pin where left out. */
  readonly runsOn?: string;
  /** Outside of the eye the thin way, and where it is read. */
  readonly eye: Figure | undefined;
  readonly eyeKey?: string;
  readonly length: Figure | undefined;
  readonly lengthKey: string;
  readonly lengthWhy: string;
  readonly clearance: string;
  readonly notes: readonly string[];
  readonly warnings: readonly string[];
  readonly unknowns?: readonly Unknown[];
  readonly cautions?: readonly string[];
  /** Wall where the eye leaves as much; 1/8 in where left out. */
  readonly wall?: number;
  /** True where the pin has a fillet at its collar: the bore is chamfered to clear it. */
  readonly overFillet?: boolean;
  /** True for an eye that is never drilled, as the rolled one of a hard leaf: oil goes in at the end of the bush. */
  readonly oiledAtEnd?: boolean;
  /** Further sizes for the table: another bore for the other end. */
  readonly more?: readonly MakingDimension[];
}

const DEFAULT_CAUTIONS = ['isolate', 'block-ram', 'spring-unload'];
/** Bore and outside turned in one setting. */
const TRUE_WITHIN = shopNumber('pin-clearance-least');
const SIXTY_FOURTH = shopNumber('plate-room');

/**
 * A bronze bush: bored to its pin, pressed r6 into an eye bored H7. The wall is what practice wants, or as much of it as leaves the eye at
 * least as thick; a bush for a rolled eye takes the eye as it is.
 * @returns the part; cannot be where the eye has no metal for a bush, or where the bore takes the whole wall
 */
export function bushing(figures: BushFigures, context: MakingContext): Making {
  const { kind, title, boreFigure, eye, seat, hole: old, length } = figures;
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, context.system);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind, title, because, problem });
  const bore = boreFigure.quantity.value;
  const thin = shopNumber('bush-wall-least');
  const outside = outsideOf(figures, context);
  const second = figures.pair === undefined ? outside : outsideOf({ ...figures, hole: figures.pair.hole }, context);
  const apart = Math.abs(second.quantity.value - outside.quantity.value) > SIXTY_FOURTH / 100;
  const widest = second.quantity.value > outside.quantity.value ? second : outside;
  const wall = (outside.quantity.value - bore) / 2;
  const from = (some: readonly Figure[]): string => [...new Set(some.flatMap((one) => one.from))].join(', ');
  if (seat !== undefined && wall < thin * 0.999) {
    return cannot(`The bush would have a wall of ${print(wall)}${wall <= 0 ? ', which is none' : ''}: one of the readings is wrong, or the pin goes in without a bush (${from([boreFigure, seat])}).`, `The eye must be wider than its pin by two walls of ${print(thin)}; above ${print(bore + 2 * thin)} is allowed: ${print(seat.quantity.value)}`);
  }
  if (eye !== undefined && (eye.quantity.value - bore) / 4 < thin * 0.999) {
    return cannot(`After boring there must be as much metal round the bush as the bush is thick: the eye is built up or made new, or the readings are wrong (${from([boreFigure, eye])}).`, `The eye has no metal for a bush; above ${print(bore + 4 * thin)} across is allowed: ${print(eye.quantity.value)}`);
  }
  if (old !== undefined && eye !== undefined && (eye.quantity.value - widest.quantity.value) / 2 < thin * 0.999) {
    return cannot(`Cleaned up for a new bush the eye would have less metal round it than ${print(thin)}: it is built up or made new, or one of the readings is wrong (${from([old, eye])}).`, `The hole leaves too little of the eye; above ${print(widest.quantity.value + 2 * thin)} across is allowed: ${print(eye.quantity.value)}`);
  }
  const pressed = shaftLimits(outside.quantity.value, 'r6');
  const pressedOther = shaftLimits(second.quantity.value, 'r6');
  if (pressed.state !== 'known' || pressedOther.state !== 'known') return outsideTable(kind, title, widest, context);
  const hole = shopFigure('oil-hole');
  const atEnd = figures.oiledAtEnd === true;
  const thinner = Math.min(wall, (second.quantity.value - bore) / 2);
  const edges = bushEdges(thinner, figures.overFillet === true);
  const long = length?.quantity.value;
  const groove = grooveOf(thinner, long, edges.bore);
  const blind = seat === undefined && old === undefined;
  const asked = seat === undefined ? figures.holesUnread : [];
  const fromHole = 'the hole as it was read and 0.010 in (0.25 mm) to clean up, up to the next reamer; eye bored H7 to it';
  const left = shopFigure('bore-left');
  const before = { ...reckon('length', [boreFigure, left], (size, less) => size! - less!), estimate: boreFigure.estimate };
  const edge = (name: string, words: string, size: number, why: string): MakingDimension => sized(name, words, chosen(size, 'length', 'common-practice'), { plus: 0, minus: Math.min(SIXTY_FOURTH, size / 2) }, why);
  const dimensions: MakingDimension[] = [
    figures.bore, ...(figures.more ?? []),
    sized('bore-before', 'bore, before pressing in', before, { plus: 0, minus: left.quantity.value / 2 }, 'left 1/64 in (0.4 mm) small: the bore closes as it is pressed in, and is finished in line'),
    sized('outside', apart ? `outside diameter, ${figures.pair!.end}` : 'outside diameter', outside, { plus: pressed.upper, minus: -pressed.lower }, seat !== undefined ? 'the eye as it is and 0.010 in (0.25 mm) to clean up, up to the next reamer; eye finished H7 to it' : blind ? `bore and a wall of ${print(wall)}; nobody read the hole with the old bush out, and where that is larger the bush is the next size` : old !== undefined && outside.from.join() === old.from.join() ? fromHole : eye === undefined ? `bore and a wall of ${print(wall)}; eye bored H7 to it` : `bore and a wall of ${print(wall)}, which leaves the eye ${print((eye.quantity.value - outside.quantity.value) / 2)} thick; eye bored H7 to it`, 'r6'),
    ...(apart ? [sized(`outside-${figures.pair!.other}`, `outside diameter, ${figures.pair!.other}`, second, { plus: pressedOther.upper, minus: -pressedOther.lower }, second.from.join() === figures.pair!.hole.from.join() ? fromHole : 'as practice wants the wall, or as much of it as the eye leaves; eye bored H7 to it', 'r6')] : []),
    ...(length === undefined ? [] : [sized('length', 'length', length, { plus: 0, minus: SIXTY_FOURTH }, figures.lengthWhy)]),
    ...(atEnd ? [] : [sized('oil-hole', 'oil hole, in the middle', { ...hole, estimate: false }, { plus: SIXTY_FOURTH, minus: 0 }, 'practice; drilled through bush and eye after pressing in')]),
    ...(groove === undefined ? [] : [
      edge('groove-width', 'oil groove, wide', groove.width, atEnd ? 'practice; cut along the bore, out at one end' : 'practice; cut along the bore through the oil hole'),
      edge('groove-depth', 'oil groove, deep', groove.depth, 'no more than a third of the wall'),
      edge('groove-end', atEnd ? 'oil groove, from the other end' : 'oil groove, from each end', groove.end, 'keeps the oil in'),
    ]),
    edge('chamfer', 'chamfer, outside, both ends', edges.outside, 'leads the bush in; no more than 1/32 in (0.8 mm) nor a third of the wall, so that the end keeps its face'),
    ...(figures.overFillet === true ? [sized('bore-chamfer', 'chamfer, bore, both ends', chosen(edges.bore, 'length', 'common-practice'), { plus: SIXTY_FOURTH / 2, minus: 0 }, 'more than the fillet at the collar of the pin: else the bush does not seat')] : []),
  ];
  return possible({
    state: 'to-make', kind, id: kind, title, quantity: figures.quantity, material: 'Leaded tin bronze: C93200 (SAE 660) or CuSn7Zn4Pb7, continuous cast', hardness: 'As cast, about 65 HB; no heat treatment', dimensions,
    ...(long === undefined ? {} : { mass: (Math.PI / 4) * (outside.quantity.value ** 2 - bore ** 2) * long * STOCK_DENSITIES.bronze }), roughness: 3.2e-6,
    shape: bushShape({ bore, outside: outside.quantity.value, length: long, chamfer: edges.outside, boreChamfer: figures.overFillet === true ? edges.bore : 0, oilHole: atEnd ? undefined : hole.quantity.value, trueWithin: TRUE_WITHIN, groove }),
    unknowns: [...(figures.unknowns ?? []), ...(length === undefined ? [unknownPlace(figures.lengthKey)] : []), ...(eye === undefined && figures.eyeKey !== undefined ? [unknownPlace(figures.eyeKey)] : []), ...asked.map((key) => unknownPlace(key))], disputes: [],
    notes: [
      ...(apart ? [`The two holes differ, and each bush has its own outside: ${figures.pair!.end} as drawn, ${figures.pair!.other} as in the table. Stamp each with its side.`] : []),
      ...figures.notes, `${seat === undefined ? 'Bore' : 'Ream'} the eye first, H7, read it, then turn the outside to it, r6; where the eye is not clean, take the next size. Outside and bore in one setting, 1/64 in (0.4 mm) left in the bore.`,
      `Pressed in with a drawn bolt${atEnd ? ', open end of the groove outward' : ', oil hole in line'}; then bored or reamed in line to the ${figures.runsOn ?? 'pin'}. Coaxial as drawn holds after that.`, figures.clearance,
      ...(atEnd ? ['The eye is not drilled: a hole through the rolled eye of a hard leaf is where it cracks. Where it has an oil hole already, drill the bush through that one, and no other.'] : []),
      atEnd ? groove === undefined ? 'Too short for an oil groove: oil goes in at its end. Deburr every edge.' : 'Oil groove along the bore on the unloaded side, out at one end, where the oil goes in beside the eye; it stops short of the other. Deburr every edge.' : groove === undefined ? 'Too short for an oil groove: the hole does. Deburr every edge.' : 'Oil groove along the bore on the unloaded side, through the oil hole; it stops short of both ends. Deburr every edge.',
    ],
    cautions: figures.cautions ?? DEFAULT_CAUTIONS, sources: ['iso-286', 'iso-1101', 'iso-21920', 'common-practice', 'from-memory', ...boreFigure.sources],
    warnings: [
      ...(blind ? ['The outside is an estimate, and the hole was never read: old bush out, read the hole, then turn the outside; where the hole is larger take the next size.'] : asked.length > 0 ? ['The outside is an estimate until both holes were read: old bushes out, read left and right, then turn each bush to its own hole.'] : []), ...figures.warnings,
      ...(figures.overFillet === true && edges.thin ? ['The eye leaves so thin a bush that the pin’s fillet is small, and a pin breaks there: better the eye is built up or renewed.'] : []),
    ],
  }, context.system);
}

/** Oil groove along the bore: a third of the wall deep at most, short of both ends. None in a bush that is too short for it. */
function grooveOf(wall: number, long: number | undefined, chamfer: number): Groove | undefined {
  const land = shopNumber('groove-land') + chamfer;
  const depth = Math.min(shopNumber('groove-depth'), Math.max(1, Math.floor(wall / 3 / SIXTY_FOURTH + 1e-6)) * SIXTY_FOURTH);
  const end = Math.ceil(land / SIXTY_FOURTH - 1e-6) * SIXTY_FOURTH;
  return long !== undefined && long < 4 * end ? undefined : { width: shopNumber('groove-width'), depth, end };
}

/** A size that is chosen, so that a shop has its reamer; only a rolled eye that was read coarsely leaves its doubt in it. */
function outsideOf({ boreFigure, eye, seat, hole, ...figures }: BushFigures, context: MakingContext): Figure {
  // The reamer takes more than the reading leaves open, or the doubt stays in the size.
  if (seat !== undefined) return { ...seat, quantity: { ...seat.quantity, value: reamerOver(seat.quantity.value, context), uncertainty: 2 * seat.quantity.uncertainty > shopNumber('clean-up') ? seat.quantity.uncertainty : 0 } };
  const bore = boreFigure.quantity.value;
  const wanted = bushOutside(bore, eye?.quantity.value, figures.wall ?? shopNumber('bush-wall'), context);
  const size = hole === undefined ? wanted : Math.max(wanted, reamerOver(hole.quantity.value, context));
  // A hole that was never read may be larger than any size chosen here.
  if (hole === undefined) return { ...chosen(wanted, 'length', 'derived', [...new Set([...boreFigure.from, ...(eye?.from ?? [])])]), estimate: true };
  return { ...chosen(size, 'length', 'derived', size > wanted ? hole.from : [...new Set([...boreFigure.from, ...(eye?.from ?? []), ...hole.from])]), estimate: boreFigure.estimate || figures.holesUnread.length > 0 };
}

/** The part lies outside the sizes that fits are printed for. */
export const outsideTable = (kind: PartKind, title: string, size: Figure, context: MakingContext): Making => ({
  state: 'cannot-be', kind, title, because: 'The table of fits does not hold this size; a fit would have to be chosen by hand.',
  problem: `The diameter lies outside the table of fits; over 6 and up to 180 mm is allowed: ${printQuantity({ ...size.quantity, uncertainty: 0 }, context.system)}`,
});
