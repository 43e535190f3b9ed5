import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { estimateWarnings, FigureReader, reckon, sized, unknownPlace, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import { seatOverPlate } from './over-plate.ts';
import type { Making } from './part-to-make.ts';
import { possible } from './possible.ts';
import { centreLine, rectangle, type Shape } from './shape.ts';
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
  const dimensions = [
    sized('thickness', 'thickness', thickness, { plus: GRIND, minus: 0 }, cut !== undefined ? 'what was cut off the true floor; left full, then ground until it stands as high as that did' : context.floorCut ? 'the depth that the die had sunk, the least that the cutter takes off; measured again when the floor is cut' : 'the depth that the seat has lost; left full, then ground until it is flush with the true floor'),
    sized('width', 'width', width, { plus: 0, minus: SIXTY_FOURTH }, context.floorCut ? lean === undefined ? 'the whole seat floor, with room' : 'the seat between its flanks at the top of the plate, with room: it slides in from the end' : 'the pocket that the die has beaten, with room to drop in'),
    sized('length', 'length', length, { plus: 0, minus: SIXTY_FOURTH }, 'full length of the seat, the way the key is driven'),
  ];
  const thin = thickness.quantity.value < shopNumber('plate-thin');
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: 'Tough steel plate: 4140 (42CrMo4) prehard, or 1045 (C45)', hardness: 'Prehard as supplied, 28 to 32 HRC, or left as rolled; not glass hard',
    mass: width.quantity.value * length.quantity.value * thickness.quantity.value * STOCK_DENSITIES.steel, roughness: 1.6e-6, dimensions, shape: plateShape(width.quantity.value, length.quantity.value, thickness.quantity.value),
    notes: [
      'Both faces ground.',
      'Break all edges 1/32 in (0.8 mm); round the corners to the corners of the pocket.',
      'Bed with blue: no rock, contact over the whole face.',
      'Hold it by the die key or two dowels of 3/8 in (10 mm) in the seat, never by the die alone; never a stack of shims.',
      ...(context.floorCut ? ['The floor is cut first, and the plate made to what was cut off it.'] : ['Corner to corner flush with the floor beside it within 0.002 in (0.05 mm).']),
    ],
    unknowns: context.floorCut ? [...(seat?.open === true ? [unknownPlace('seat.width-over-plate')] : []), ...(cut === undefined ? [unknownPlace('seat.cut')] : []), ...(lean === undefined ? [unknownPlace('dovetail.flank-angle@lower')] : [])] : [], disputes: [], cautions: ['isolate', 'block-ram', 'drift'], sources: [...new Set(['common-practice', 'owners-practice', ...sunk.sources])],
    warnings: [
      ...(old === undefined || old.quantity.value <= 0 ? [] : [`It takes the place of the plate of ${print(old.quantity.value)} that is in the seat now: one plate, not two.`]),
      ...(context.floorCut ? seat?.warnings ?? [] : []),
      ...(thin ? [`A plate thinner than ${print(shopNumber('plate-thin'))} curls: cut the floor deeper and make the plate thicker.`] : []),
      ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

function plateShape(width: number, length: number, thickness: number): Shape {
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
        name: 'top', title: 'top', marks: [...rectangle(-width / 2, 0, width, length), centreLine([0, 0], [0, length])],
        dimensions: [
          { kind: 'straight', of: 'width', from: [-width / 2, length], to: [width / 2, length], side: 'above', row: 1 },
          { kind: 'straight', of: 'length', from: [width / 2, 0], to: [width / 2, length], side: 'right', row: 1 },
        ],
      },
    ],
  };
}
