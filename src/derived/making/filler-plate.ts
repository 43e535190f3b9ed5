import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { chosen, estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import { seatOverPlate } from './over-plate.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { centreLine, circle, cross, rectangle, type Point, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'filler-plate';
const TITLE = 'Filler plate (packing)';
const SIXTY_FOURTH = shopNumber('plate-room');
/** Left on for grinding to the pocket: ten thousandths of an inch. */
const GRIND = SIXTY_FOURTH * 0.64;

/**
 * One plate as thick as the seat has lost. It fills the pocket that the die has beaten, or the whole floor where that is cut flat;
 * a plate that is already in it comes out.
 * @returns the part; not known without the depth or the size of the pocket; not needed where the seat has lost nothing
 */
export function makeFillerPlate(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const sunk = reader.need('seat.sunk');
  const seat = seatOverPlate(reader, { ...context, alsoMade: new Set([...context.alsoMade, KIND]) });
  const across = context.floorCut ? seat?.width ?? reader.need('seat.width') : reader.need('lower-die.width');
  const along = reader.need(context.floorCut ? 'seat.length' : 'lower-die.length');
  if (sunk === undefined || across === undefined || along === undefined) return reader.notKnown(KIND, TITLE);
  if (sunk.quantity.value <= 0) return { state: 'not-needed', kind: KIND, title: TITLE, because: 'The seat has lost nothing: the die has not sunk into it.' };
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const floor = reader.find('seat.width');
  if (floor !== undefined && across.quantity.value > floor.quantity.value + 2 * Math.hypot(floor.quantity.uncertainty, across.quantity.uncertainty)) {
    return {
      state: 'cannot-be', kind: KIND, title: TITLE, because: 'A die cannot be wider than the seat that it stands in: one of the two readings is wrong.',
      problem: `The lower die is wider at the seat than the seat floor; up to ${print(floor.quantity.value)} is allowed: ${print(across.quantity.value)}`,
    };
  }
  const room = shopFigure('plate-room');
  const length = { ...reckon('length', [along, room], (size, gap) => size! - gap!), estimate: along.estimate };
  const old = reader.find('filler-plate.thickness');
  // A floor cut flat over its whole width lies as deep as the cutter went, and no shallower than the die had sunk.
  const cut = context.floorCut ? reader.find('seat.cut') : undefined;
  if (cut !== undefined && cut.quantity.value < sunk.quantity.value - 2 * Math.hypot(cut.quantity.uncertainty, sunk.quantity.uncertainty)) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: 'A floor that is flat over its whole width lies at least as deep as the die had sunk: the cut or the depth sunk is wrong (seat.cut, seat.sunk).', problem: `The floor was cut less deep than the die had sunk; ${print(sunk.quantity.value)} and more is allowed: ${print(cut.quantity.value)}` };
  }
  const thickness = cut ?? (context.floorCut ? { ...sunk, estimate: true } : sunk);
  const lean = context.floorCut ? reader.find('dovetail.flank-angle@lower|dovetail.flank-angle@lower#as-made') : undefined;
  const width = { ...reckon('length', [across, room], (size, gap) => size! - gap!), estimate: across.estimate };
  const dimensions: MakingDimension[] = [
    sized('thickness', 'thickness', thickness, { plus: GRIND, minus: 0 }, cut !== undefined ? 'what was milled off the true floor; left full, then ground until it stands as high as that did' : context.floorCut ? 'the depth that the die had sunk, the least that the mill takes off right across; measured again when the floor is milled' : 'the depth that the seat has lost; left full, then ground until it is flush with the true floor'),
    sized('width', 'width', width, { plus: 0, minus: SIXTY_FOURTH }, context.floorCut ? lean === undefined ? 'the whole seat floor, with room' : 'the seat between its flanks at the top of the plate, with room: it slides in from the end' : 'the pocket that the die has beaten, with room to drop in'),
    sized('length', 'length', length, { plus: 0, minus: SIXTY_FOURTH }, context.floorCut ? 'full length of the seat, the way the key is driven' : 'length of the pocket, as the old die beat it'),
  ];
  const dowels = dowelsOf(width.quantity.value, length.quantity.value, thickness.quantity.value, context);
  const pocketEnds = reader.find('seat.length');
  // A pocket as long as the seat is open at both ends, and only the dowels keep its plate in.
  const openEnds = !context.floorCut && pocketEnds !== undefined && along.quantity.value >= pocketEnds.quantity.value - SIXTY_FOURTH;
  if (dowels !== undefined) {
    const whole = (size: number): Figure => chosen(size, 'length', 'common-practice');
    dimensions.push(
      sized('dowel-hole', 'holes for the dowels, two', whole(dowels.hole), { plus: SIXTY_FOURTH / 4, minus: 0 }, `dowel of ${print(dowels.size)} with a slip fit in the plate; tight in the seat, reamed through the plate in place`),
      sized('dowel-from-end', 'dowel holes from the ends', whole(dowels.fromEnd), plusMinus(SIXTY_FOURTH), 'on the middle line, a fifth of the length in'),
      sized('dowel', 'dowels, long', whole(dowels.long), plusMinus(0), 'as they are sold'),
      sized('dowel-depth', 'dowel holes, deep in the floor of the seat', whole(dowels.depth), { plus: 2 * SIXTY_FOURTH, minus: 0 }, `so deep that the dowel stays ${print(dowels.under)} under the face of the plate: the die never stands on it`),
    );
  }
  const thin = thickness.quantity.value < shopNumber('plate-thin');
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: 'Tough steel plate: 4140 (42CrMo4) prehard, or 1045 (C45)', hardness: 'Prehard as supplied, 28 to 32 HRC, or left as rolled; not glass hard',
    mass: width.quantity.value * length.quantity.value * thickness.quantity.value * STOCK_DENSITIES.steel, roughness: 1.6e-6, dimensions, shape: plateShape(width.quantity.value, length.quantity.value, thickness.quantity.value, dowels),
    notes: [
      'Both faces ground.',
      `Break all edges 1/32 in (0.8 mm).${context.floorCut ? lean === undefined ? '' : ' Long edges leaning as the flanks do.' : ' Round the corners to the corners of the pocket.'}`,
      'Bed with blue: no rock, contact over the whole face.',
      ...(dowels === undefined ? ['Too small for dowels: the pocket alone holds it. Never a stack of shims.'] : [`${context.floorCut ? 'The flanks hold it down and to the side, and two dowels keep it from walking out at an end' : openEnds ? 'The pocket holds it to the side, and two dowels keep it from walking out at an end' : 'The pocket holds it, and two dowels keep it where it was bedded'}: holes in the seat drilled and reamed through the plate when it is bedded, to the depth given, clear of anything below. The key of the die stands above the plate and holds nothing of it. Common practice, no source.`, 'Never a stack of shims.']),
      ...(context.floorCut ? [`The floor is milled first, right across from flank to flank and over the whole length, and the plate made to what was milled off it.`] : ['Fits the pocket that the die has beaten, trued at its bottom. Corner to corner flush with the floor beside it within 0.002 in (0.05 mm).', ...unmilled(reader, across, along, sunk, context)]),
    ],
    unknowns: context.floorCut ? [...(seat?.open === true ? [unknownPlace('seat.width-over-plate')] : []), ...(cut === undefined ? [unknownPlace('seat.cut')] : []), ...(lean === undefined ? [unknownPlace('dovetail.flank-angle@lower')] : [])] : [], disputes: [], ...(dowels === undefined ? {} : { besides: [`dowel ${print(dowels.size)} by ${print(dowels.long)}, 2 pieces`] }), cautions: ['isolate', 'block-ram', 'drift'], sources: [...new Set(['common-practice', 'owners-practice', ...sunk.sources])],
    warnings: [
      ...(old === undefined || old.quantity.value <= 0 ? [] : [`It takes the place of the plate of ${print(old.quantity.value)} that is in the seat now: one plate, not two.`]),
      ...(context.floorCut ? seat?.warnings ?? [] : []),
      ...(thin ? [`A plate thinner than ${print(shopNumber('plate-thin'))} curls: cut the floor deeper and make the plate thicker.`] : []),
      ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

/** Why the floor is not cut down to the pocket by the guided disc: what that would take off. */
function unmilled(reader: FigureReader, across: Figure, along: Figure, sunk: Figure, context: MakingContext): readonly string[] {
  const [wide, long] = [reader.find('seat.width')?.quantity.value, reader.find('seat.length')?.quantity.value];
  if (wide === undefined || long === undefined) return [];
  const off = (wide * long - across.quantity.value * along.quantity.value) * sunk.quantity.value;
  if (off <= 0) return [];
  const words = context.system === 'inch' ? `${(off / 0.0254 ** 3).toFixed(1)} cu in` : `${(off * 1e6).toFixed(0)} cubic cm`;
  return [`A plate from flank to flank would want ${words} of iron milled off right across, into the corners under the flanks: no disc does that. Where the seat is milled, this sheet is made again.`];
}

/** Two dowels on the middle line of the plate, m; undefined where the plate has no room for them. */
interface Dowels {
  readonly size: number;
  readonly hole: number;
  readonly fromEnd: number;
  readonly long: number;
  readonly depth: number;
  /** How far they stay under the face of the plate. */
  readonly under: number;
}

function dowelsOf(width: number, length: number, thickness: number, { system }: MakingContext): Dowels | undefined {
  const inch = 64 * SIXTY_FOURTH;
  const [size, long] = system === 'inch' ? [(3 / 8) * inch, inch] : [0.01, 0.025];
  const grain = system === 'inch' ? SIXTY_FOURTH : 0.00025;
  const under = Math.min(system === 'inch' ? 4 * SIXTY_FOURTH : 0.0015, Math.max(grain, Math.floor(thickness / 4 / grain + 1e-6) * grain));
  const step = system === 'inch' ? 8 * SIXTY_FOURTH : 0.001;
  const fromEnd = Math.max(2 * size, Math.round(length / 5 / step) * step);
  if (width < 3 * size || length < 2 * fromEnd + 3 * size || long <= thickness) return undefined;
  return { size, hole: size + SIXTY_FOURTH / 2, fromEnd, long, depth: long - (thickness - under), under };
}

function plateShape(width: number, length: number, thickness: number, dowels: Dowels | undefined): Shape {
  const centres = dowels === undefined ? [] : [dowels.fromEnd, length - dowels.fromEnd].map((y): Point => [0, y]);
  return {
    views: [
      {
        name: 'front', title: 'front', marks: [...rectangle(-width / 2, 0, width, thickness), centreLine([0, 0], [0, thickness])],
        dimensions: [
          { kind: 'straight', of: 'thickness', from: [width / 2, 0], to: [width / 2, thickness], side: 'right', row: 1 },
          { kind: 'datum', letter: 'A', at: [-width * 0.3, 0], side: 'below' },
          { kind: 'control', geometric: 'parallel', within: GRIND / 5, to: 'A', at: [-width * 0.4, thickness], toward: [-2, 3] },
        ],
      },
      {
        name: 'top', title: 'top', marks: [...rectangle(-width / 2, 0, width, length), centreLine([0, 0], [0, length]), ...centres.flatMap((centre) => [circle(centre, dowels!.hole / 2), ...cross(centre, dowels!.hole / 2)])],
        dimensions: [
          { kind: 'straight', of: 'width', from: [-width / 2, length], to: [width / 2, length], side: 'above', row: 1 },
          { kind: 'straight', of: 'length', from: [width / 2, 0], to: [width / 2, length], side: 'right', row: 2 },
          ...(dowels === undefined ? [] : [
            { kind: 'straight', of: 'dowel-from-end', from: [width / 2, 0], to: [0, dowels.fromEnd], side: 'right', row: 1 } as const,
            { kind: 'straight', of: 'dowel-from-end', from: [0, length - dowels.fromEnd], to: [width / 2, length], side: 'right', row: 1 } as const,
            { kind: 'leader', of: 'dowel-hole', at: [-(dowels.hole / 2) * Math.SQRT1_2, length - dowels.fromEnd - (dowels.hole / 2) * Math.SQRT1_2], toward: [-3, -2], sign: 'Ø', note: 'two, through', clear: true } as const,
          ]),
        ],
      },
    ],
  };
}
