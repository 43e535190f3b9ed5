import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import { driveForGap, taperHolds, taperRise } from '../../methods/elements/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { sturdyKey } from './die-blank.ts';
import { chosen, estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import { seatDepth } from './over-plate.ts';
import type { Making, MakingDimension, Unknown } from './part-to-make.ts';
import { possible } from './possible.ts';
import { centreLine, path, rectangle, type Shape, type View } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

type End = 'upper' | 'lower';
const FOOT = 0.3048;
const FRICTION_DRY = 0.15;
const FRICTION_OILED = 0.1;
const SIXTY_FOURTH = shopNumber('plate-room');
const FILE = SIXTY_FOURTH * 0.64;

export const makeLowerKey = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeKey('lower', values, known, context);
export const makeUpperKey = (values: Values, known: Known, context: MakingContext = ALONE): Making => makeKey('upper', values, known, context);

/**
 * A driven key: full length of the seat with 3/4 in left standing out at each end, and an inch more at the driving end until it is fitted;
 * tapered as the old one, thick enough not to bend.
 * @returns the part; not known without the length of the seat; cannot be where the taper would leave nothing at the small end
 */
function makeKey(end: End, values: Values, known: Known, context: MakingContext): Making {
  const kind = `${end}-key` as const;
  const title = end === 'lower' ? 'Key of the lower die (cotter)' : 'Key of the upper die (cotter)';
  const reader = new FigureReader(values);
  const seat = reader.need(end === 'lower' ? 'seat.length|lower-die.length#as-made|lower-die.length' : 'ram.dovetail-length#as-made|upper-die.length#as-made|ram.dovetail-length|upper-die.length');
  if (seat === undefined) return reader.notKnown(kind, title);
  const projection = { ...shopFigure('key-projection'), estimate: false };
  const read = reader.find(`keys.taper@${end}#as-made|keys.taper@${end}`);
  const taper = reckon('taper', [read ?? shopFigure('key-taper')], (perFoot) => perFoot! / FOOT);
  const fitted = reckon('length', [seat, projection], (along, out) => along! + 2 * out!);
  const leftOn = { ...shopFigure('key-left-on'), estimate: false };
  const length = reckon('length', [fitted, leftOn], (final, more) => final! + more!);
  const { middle, warnings: readWhere } = middleOf(end, reader, known, context, seat.quantity.value * taper.quantity.value);
  // Thickness counts from the middle of the seat; what is left on lies beyond the large end.
  const small = reckon('length', [middle, taper, fitted], (thick, slope, long) => thick! - (slope! * long!) / 2);
  const large = reckon('length', [middle, taper, fitted, leftOn], (thick, slope, long, more) => thick! + slope! * (long! / 2 + more!));
  const print = (one: number): string => printQuantity({ dimension: 'length', value: one, uncertainty: 0 }, context.system);
  if (small.quantity.value <= 0) {
    return { state: 'cannot-be', kind, title, because: 'With this taper over this length nothing is left at the small end: taper or thickness is wrong.', problem: `The taper takes more than the key is thick at its middle; up to ${print(2 * middle.quantity.value)} over the whole length is allowed: ${print(taperRise(taper.quantity.value, length.quantity.value))}` };
  }
  const gap = gapOf(end, reader);
  const old = reader.find(`keys.thickness@${end}|keys.thickness@${end}#as-made`);
  const reuses = !context.alsoMade.has(end === 'lower' ? 'lower-die' : 'upper-die');
  if (reuses && gap !== undefined && old !== undefined && old.quantity.value > gap.quantity.value + 2 * Math.hypot(old.quantity.uncertainty, gap.quantity.uncertainty)) {
    return { state: 'cannot-be', kind, title, because: `The key stands between die and flank: one of the readings is wrong (${[...old.from, ...gap.from].join(', ')}).`, problem: `The key is thicker than the gap that it is driven into; up to ${print(gap.quantity.value)} is allowed: ${print(old.quantity.value)}` };
  }
  const loose = reuses && gap !== undefined && old !== undefined && gap.quantity.value - old.quantity.value > shopNumber('key-thickness') / 3 ? [`Seat and die leave ${print(gap.quantity.value)} and the old key was ${print(old.quantity.value)}: find out what filled the rest. A key as thick as the gap is better than packing.`] : [];
  const depth = end === 'lower' ? seatDepth(reader, context) : reader.find('ram.dovetail-depth|ram.dovetail-depth#as-made');
  const oldHeight = reader.find(`keys.height@${end}#as-made|keys.height@${end}`);
  const angle = reader.find(`dovetail.flank-angle@${end}|dovetail.flank-angle@${end}#as-made`);
  const height = depth === undefined ? oldHeight : reckon('length', [depth, large, ...(angle === undefined ? [] : [angle])], (deep, thick, lean = 0) => (deep! - thick! * Math.sin(lean)) / Math.cos(lean) - SIXTY_FOURTH);
  const dimensions: MakingDimension[] = [
    sized('length', 'length over all, before fitting', length, plusMinus(16 * SIXTY_FOURTH), 'the seat, 3/4 in (19 mm) at each end to drive it in and out, and 1 in (25 mm) at the driving end, which is cut off when it sits'),
    sized('length-fitted', 'length when fitted', fitted, plusMinus(0), 'the seat and 3/4 in (19 mm) at each end'),
    sized('large-end', 'thickness at the large end', large, { plus: FILE, minus: 0 }, 'thickness at the middle of the seat and the taper up to this end; left full to be filed to blue'),
    sized('small-end', 'thickness at the small end', small, { plus: FILE, minus: 0 }, 'thickness at the middle of the seat less the taper down to this end'),
    ...(height === undefined ? [] : [sized('height', 'height, along the flank', height, { plus: 0, minus: SIXTY_FOURTH }, depth === undefined ? 'as the old key' : 'depth of the seat along its flank, clear of rim and root')]),
    sized('taper', 'taper, thickness over length', taper, plusMinus(taper.quantity.value * 0.05), read === undefined ? 'not measured: 1 : 96 to 1 : 48 is practice; match the seat' : 'as the old key'),
  ];
  const unknowns: Unknown[] = [
    ...(read === undefined ? [unknownPlace(`keys.taper@${end}`)] : []),
    ...(height !== undefined ? [] : [unknownPlace(end === 'lower' ? 'seat.depth' : 'ram.dovetail-depth')]),
    ...(angle === undefined ? [unknownPlace(`dovetail.flank-angle@${end}`)] : []),
  ];
  const slope = taper.quantity.value;
  const drive = driveForGap(slope, 10 * (shopNumber('pin-clearance-least') / 2));
  return possible({
    state: 'to-make', kind, id: kind, title, quantity: 1, material: 'Tough medium-carbon steel, 1045 (C45) hot rolled or normalised; nothing that splinters or cracks', hardness: 'Not hardened, about 170 to 210 HB',
    ...(height === undefined ? {} : { mass: height.quantity.value * ((large.quantity.value + small.quantity.value) / 2) * length.quantity.value * STOCK_DENSITIES.steel }), roughness: 3.2e-6, dimensions, shape: keyShape(length.quantity.value, large.quantity.value, small.quantity.value, height?.quantity.value), unknowns, disputes: [],
    notes: [
      ...(reuses ? [] : ['Cut after the new foot is in the seat, to the gap found.']),
      'Planed or milled, then filed to blue: contact over 80 % of the length or more, flat on the full flank.',
      'One face straight, the taper on the other. Break the long edges 1/32 in (0.8 mm).',
      'Chamfer both ends 1/8 in (3 mm), so that they do not swell under the drift.',
      `Going in by ${print(drive)} takes up 0.010 in (0.25 mm). Made full it stops short by as much: it is 1 in (25 mm) longer at the driving end, and cut when it sits, so that 3/4 in (19 mm) stands out.`,
      'Fit dry: dovetail, die and key washed with solvent. Try again after one hour and after ten.',
    ],
    cautions: ['isolate', 'block-ram', 'drift', 'dry-dovetail', 'eyes'], sources: [...new Set(['page-keys', 'common-practice', 'iso-21920', 'osha-1910-218', ...middle.sources])],
    warnings: [
      ...readWhere, ...loose, ...(small.quantity.value <= shopNumber('key-weak') ? [`At the small end the key is ${print(small.quantity.value)}: keys of ${print(shopNumber('key-weak'))} and less bend and swell. Let the new die leave more room.`] : []),
      ...(taperHolds(slope, FRICTION_DRY) ? [] : ['This taper is too steep to hold dry: it works out. Friction taken as 0.15, from memory.']),
      ...(taperHolds(slope, FRICTION_DRY) && !taperHolds(slope, FRICTION_OILED) ? ['This taper holds dry and not oiled.'] : []),
      ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

/**
 * Thickness at the middle of the seat. Where it is what die and flank leave, and the foot of the die may be tapered, the one width of the
 * foot may have been read anywhere along it: what that leaves open stands in the doubt.
 */
function middleOf(end: End, reader: FigureReader, known: Known, context: MakingContext, rise: number): { readonly middle: Figure; readonly warnings: readonly string[] } {
  const middle = thicknessOf(end, reader, context);
  const foot = reader.find(`${end}-die.width`);
  const fromGap = foot !== undefined && middle.from.includes(`${end}-die.width`);
  if (!fromGap || ['seat', 'none'].includes(known.looks[`keys.taper-flank@${end}`]?.answer ?? '')) return { middle, warnings: [] };
  const print = (length: number, inch: number, metric: number): string => formatQuantity({ dimension: 'length', value: length, uncertainty: 0 }, { unit: context.system === 'inch' ? 'in' : 'mm', resolution: context.system === 'inch' ? inch : metric, doubt: false });
  return {
    middle: { ...middle, quantity: { ...middle.quantity, uncertainty: Math.hypot(middle.quantity.uncertainty, rise / 4) } },
    warnings: [`The ${print(foot.quantity.value, SIXTY_FOURTH, 1e-4)} across the foot of the die is taken as read at the middle of its length. A foot that carries the taper is ${print(rise / 2, 0.0254e-3, 1e-5)} wider or narrower at its ends: measure it at the middle.`],
  };
}

/** At the middle of its length: as the new die leaves room for, as the old key, or as seat and die leave it. */
function thicknessOf(end: End, reader: FigureReader, context: MakingContext): Figure {
  if (context.alsoMade.has(end === 'lower' ? 'lower-die' : 'upper-die')) return sturdyKey(reader, end);
  const old = reader.find(`keys.thickness@${end}|keys.thickness@${end}#as-made`);
  if (old !== undefined) return old;
  return gapOf(end, reader) ?? shopFigure('key-thickness');
}

/** What die and flank leave for the key, square to it; undefined where either was not read, or where the die fills its seat. */
function gapOf(end: End, reader: FigureReader): Figure | undefined {
  const seat = reader.find(end === 'lower' ? 'seat.width|seat.width#as-made' : 'ram.dovetail-width|ram.dovetail-width#as-made');
  const die = reader.find(end === 'lower' ? 'lower-die.width' : 'upper-die.width');
  if (seat === undefined || die === undefined || seat.quantity.value <= die.quantity.value) return undefined;
  const angle = reader.find(`dovetail.flank-angle@${end}|dovetail.flank-angle@${end}#as-made`) ?? chosen(0, 'angle', 'derived');
  return reckon('length', [seat, die, angle], (floor, foot, lean) => (floor! - foot!) * Math.cos(lean!));
}

function keyShape(length: number, large: number, small: number, height: number | undefined): Shape {
  const tallest = height ?? large;
  const top: View = {
    name: 'top', title: 'top: the driving end is on the left', marks: [...path([[0, 0], [length, 0], [length, small], [0, large]])],
    dimensions: [
      { kind: 'straight', of: 'large-end', from: [0, 0], to: [0, large], side: 'left', row: 1 },
      { kind: 'straight', of: 'small-end', from: [length, 0], to: [length, small], side: 'right', row: 1 },
      { kind: 'leader', of: 'taper', at: [length * 0.5, (large + small) / 2], toward: [2, 2.2] },
      { kind: 'finish', roughness: 1.6e-6, at: [length * 0.25, large + (small - large) * 0.25] },
    ],
  };
  const front: View = {
    name: 'front', title: 'front', marks: rectangle(0, 0, length, tallest),
    dimensions: [
      { kind: 'straight', of: 'length', from: [0, 0], to: [length, 0], side: 'below', row: 1 },
      ...(height === undefined ? [] : [{ kind: 'straight', of: 'height', from: [length, 0], to: [length, height], side: 'right', row: 1 } as const]),
    ],
  };
  const below: View = { ...top, dimensions: [...top.dimensions, { kind: 'straight', of: 'length', from: [0, 0], to: [length, 0], side: 'below', row: 1 }] };
  const across: View = { name: 'right', title: 'small end', marks: [...rectangle(0, 0, small, tallest), ...rectangle(0, 0, large, tallest), centreLine([small / 2, 0], [small / 2, tallest])], dimensions: [{ kind: 'finish', roughness: 1.6e-6, at: [large, tallest * 0.7], toward: [1.6, 1.2] }] };
  return { views: height === undefined ? [{ ...below, name: 'front', title: 'the thin way: the driving end is on the left' }] : [front, top, across] };
}
