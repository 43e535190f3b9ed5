import { shaftLimits } from '../../methods/elements/index.ts';
import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import { printQuantity } from '../print-system.ts';
import { bushShape } from './bush-shape.ts';
import { doubtWarnings, reckon, sized, unknownPlace, type Figure } from './figure.ts';
import type { MakingContext } from './making-context.ts';
import type { Making, MakingDimension, PartKind, Unknown } from './part-to-make.ts';
import { possible } from './possible.ts';
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
  const { kind, title, boreFigure, eye, seat, length } = figures;
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, context.system);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind, title, because, problem });
  const bore = boreFigure.quantity.value;
  const thin = shopNumber('bush-wall-least');
  const outside = outsideOf(figures);
  const wall = (outside.quantity.value - bore) / 2;
  const from = (some: readonly Figure[]): string => [...new Set(some.flatMap((one) => one.from))].join(', ');
  if (seat !== undefined && wall < thin * 0.999) {
    return cannot(`The bush would have a wall of ${print(wall)}${wall <= 0 ? ', which is none' : ''}: one of the readings is wrong, or the pin goes in without a bush (${from([boreFigure, seat])}).`, `The eye must be wider than its pin by two walls of ${print(thin)}; above ${print(bore + 2 * thin)} is allowed: ${print(seat.quantity.value)}`);
  }
  if (eye !== undefined && (eye.quantity.value - bore) / 4 < thin * 0.999) {
    return cannot(`After boring there must be as much metal round the bush as the bush is thick: the eye is built up or made new, or the readings are wrong (${from([boreFigure, eye])}).`, `The eye has no metal for a bush; above ${print(bore + 4 * thin)} across is allowed: ${print(eye.quantity.value)}`);
  }
  const pressed = shaftLimits(outside.quantity.value, 'r6');
  if (pressed.state !== 'known') return outsideTable(kind, title, outside, context);
  const hole = shopFigure('oil-hole');
  const lead = shopFigure('chamfer');
  const long = length?.quantity.value;
  const dimensions: MakingDimension[] = [
    figures.bore,
    sized('outside', 'outside diameter', outside, { plus: pressed.upper, minus: -pressed.lower }, seat !== undefined ? 'the eye as it is, cleaned up to the next reamer; eye finished H7 to it' : eye === undefined ? 'bore and a wall of 1/8 in; eye bored H7 to it' : `bore and a wall of ${print(wall)}, which leaves the eye ${print((eye.quantity.value - outside.quantity.value) / 2)} thick; eye bored H7 to it`, 'r6'),
    ...(length === undefined ? [] : [sized('length', 'length', length, { plus: 0, minus: SIXTY_FOURTH }, figures.lengthWhy)]),
    sized('oil-hole', 'oil hole, in the middle', { ...hole, estimate: false }, { plus: SIXTY_FOURTH, minus: 0 }, 'practice; drilled through bush and eye after pressing in'),
    sized('chamfer', 'chamfer, outside, both ends', { ...lead, estimate: false }, { plus: SIXTY_FOURTH, minus: 0 }, 'leads the bush in'),
  ];
  return possible({
    state: 'to-make', kind, id: kind, title, quantity: figures.quantity, material: 'Leaded tin bronze: C93200 (SAE 660) or CuSn7Zn4Pb7, continuous cast', hardness: 'As cast, about 65 HB; no heat treatment', dimensions,
    ...(long === undefined ? {} : { mass: (Math.PI / 4) * (outside.quantity.value ** 2 - bore ** 2) * long * STOCK_DENSITIES.bronze }), roughness: 3.2e-6,
    shape: bushShape({ bore, outside: outside.quantity.value, length: long, chamfer: lead.quantity.value, oilHole: hole.quantity.value, trueWithin: TRUE_WITHIN }),
    unknowns: [...(figures.unknowns ?? []), ...(length === undefined ? [unknownPlace(figures.lengthKey)] : []), ...(eye === undefined && figures.eyeKey !== undefined ? [unknownPlace(figures.eyeKey)] : [])], disputes: [],
    notes: [
      ...figures.notes, `Bore and outside turned in one setting. Eye ${seat === undefined ? 'bored' : 'reamed'} H7; bush r6, pressed in with a drawn bolt, oil hole in line; the bore closes, so it is reamed afterwards, in line.`, figures.clearance,
      'Oil groove cut inside on the unloaded side, ending 1/8 in (3 mm) short of both ends. Deburr every edge.',
    ],
    cautions: figures.cautions ?? DEFAULT_CAUTIONS, sources: ['iso-286', 'iso-1101', 'iso-21920', 'common-practice', 'from-memory', ...boreFigure.sources],
    warnings: [
      ...figures.warnings, ...(outside.estimate && eye === undefined && seat === undefined ? ['The outside is an estimate: bore the eye clean first, keep metal round it, and make the bush to the eye.'] : []),
      ...worn(dimensions.slice(0, 1)), ...doubtWarnings(dimensions.filter((one) => one.name === 'length')),
    ],
  }, context.system);
}

function outsideOf({ boreFigure, eye, seat }: BushFigures): Figure {
  const rounding = SIXTY_FOURTH;
  if (seat !== undefined) return { ...reckon('length', [seat], (hole) => Math.ceil(hole! / rounding - 1e-9) * rounding), estimate: seat.estimate };
  if (eye === undefined) return { ...reckon('length', [boreFigure, shopFigure('bush-wall')], (hole, wall) => hole! + 2 * wall!), estimate: true };
  const whole = shopNumber('bush-wall');
  const bore = boreFigure.quantity.value;
  const wall = Math.min(whole, (eye.quantity.value - bore) / 4);
  return { ...reckon('length', [boreFigure], (hole) => hole! + 2 * wall), estimate: boreFigure.estimate, from: [...new Set([...boreFigure.from, ...eye.from])] };
}

/** The part lies outside the sizes that fits are printed for. */
export const outsideTable = (kind: PartKind, title: string, size: Figure, context: MakingContext): Making => ({
  state: 'cannot-be', kind, title, because: 'The table of fits does not hold this size; a fit would have to be chosen by hand.',
  problem: `The diameter lies outside the table of fits; over 6 and up to 180 mm is allowed: ${printQuantity({ ...size.quantity, uncertainty: 0 }, context.system)}`,
});

/** The doubt of a worn pin does not matter to a size that is chosen; that of a size as made does. */
export const worn = (dimensions: readonly MakingDimension[]): readonly string[] => doubtWarnings(dimensions).map((warning) => `${warning} The fit is made between the parts themselves.`);
