import { driverForSpeed, keySize } from '../../methods/elements/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { smallPulleyKeys } from './belt.ts';
import { doubtWarnings, estimateWarnings, FigureReader, plusMinus, reckon, sized, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { arc, centreLine, circle, cross, line, type Mark, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'motor-pulley';
const TITLE = 'Small pulley on the motor';
const THOU = shopNumber('pin-clearance-least') / 2;

/**
 * The motor pulley that gives the rate wanted: as made where that is known, else usual for the class. Crowned for a flat belt, face a
 * half inch over the belt.
 * @returns the part; not known without motor speed and hammer pulley, or where a countershaft stands between
 */
export function makeMotorPulley(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  if (smallPulleyKeys(known) !== 'motor.pulley') {
    return { state: 'not-needed', kind: KIND, title: TITLE, because: 'A countershaft stands between motor and hammer: the speed is set by its pulleys, and they are worked out as a pair.' };
  }
  const speed = reader.need('motor.speed');
  const large = reader.need('pulley.diameter');
  const belt = reader.need('belt.width#as-made|belt.width');
  const rate = reader.need('running.rate#as-made|class.working-rate');
  const slip = reader.need('practice.belt-slip');
  if (speed === undefined || large === undefined || belt === undefined || rate === undefined || slip === undefined) return reader.notKnown(KIND, TITLE);
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, context.system);
  const diameter = { ...reckon('length', [speed, rate, large, slip], (turns, wanted, driven, lost) => driverForSpeed(turns!, wanted!, driven!, lost!)), estimate: rate.estimate };
  const hammerFace = reader.find('pulley.face');
  const wide = reckon('length', [belt, shopFigure('face-beyond-belt')], (width, more) => width! + more!);
  if (hammerFace !== undefined && belt.quantity.value > hammerFace.quantity.value) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: 'A belt wider than the hammer’s pulley runs off its edge, whatever the small pulley is.', problem: `The belt is wider than the face of the hammer’s pulley; up to ${print(hammerFace.quantity.value)} is allowed: ${print(belt.quantity.value)}` };
  }
  const face = { ...wide, estimate: belt.estimate };
  const crown = { ...reckon('length', [face, shopFigure('crown-share')], (width, share) => (width! * share!) / 2), estimate: false };
  const shaft = reader.find('motor.shaft-diameter');
  const key = shaft === undefined ? undefined : keySize(shaft.quantity.value);
  const dimensions: MakingDimension[] = [
    sized('diameter', 'diameter at the crown', diameter, plusMinus(10 * THOU), 'hammer pulley x rate wanted / motor speed, with 3 % slip'),
    sized('face', 'face', face, plusMinus(32 * THOU), 'belt and half an inch'),
    sized('crown', 'crown, on the radius', crown, plusMinus(5 * THOU), '1/8 in in a foot of face, half of it on each side'),
    ...(shaft === undefined ? [] : [sized('bore', 'bore', shaft, { plus: THOU, minus: 0 }, 'motor shaft')]),
  ];
  const thick = reader.find('belt.thickness#as-made|belt.thickness');
  const least = thick === undefined ? undefined : shopNumber('least-pulley-over-belt') * thick.quantity.value;
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: 'Grey iron or steel', hardness: 'Does not apply', dimensions,
    shape: pulleyShape(diameter.quantity.value, face.quantity.value, crown.quantity.value, shaft?.quantity.value), disputes: [],
    unknowns: shaft === undefined ? [{ what: 'motor shaft and its key', how: 'Micrometer on the shaft, width of the keyway, length of the shaft that stands out.' }] : [],
    notes: [
      'Turned on its own bore, so that it runs true. Rim smooth, not polished; edges rounded.',
      ...(key?.state === 'known' ? [`Keyway ${print(key.width)} wide by ANSI B17.1; set screw on the key.`] : ['Keyway and set screw to the motor shaft.']),
      `Gives ${printQuantity({ ...rate.quantity, uncertainty: 0 }, context.system)} with ${printQuantity({ ...slip.quantity, uncertainty: 0 }, context.system)} slip. Count the blows when it runs, and turn the pulley down if it is fast.`,
    ],
    cautions: ['isolate', 'pinch'], sources: ['belt-arithmetic', 'common-practice', 'from-memory', ...(key === undefined ? [] : ['asme-b17-1'])],
    warnings: [
      ...(rate.estimate ? ['The rate as made is not known: the usual working rate of the class is taken. Start 15 to 20 % under it where the maker’s rate is not known.'] : []),
      ...(least !== undefined && diameter.quantity.value < least ? [`Too small for this belt, which wants ${print(least)} or more: a slower motor or a countershaft, or it slips.`] : []),
      ...(smallForWrap(reader, diameter.quantity.value) ? ['So small a pulley grips little: an idler on the slack side, or a countershaft.'] : []),
      ...doubtWarnings(dimensions.slice(0, 1)), ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

/** Less than 150 degrees of wrap, as the belt was measured. */
function smallForWrap(reader: FigureReader, diameter: number): boolean {
  const large = reader.find('pulley.diameter');
  const centres = reader.find('belt.centre-distance');
  if (large === undefined || centres === undefined) return false;
  const lean = (large.quantity.value - diameter) / (2 * centres.quantity.value);
  return lean > Math.sin(Math.PI / 12);
}

function pulleyShape(diameter: number, face: number, crown: number, bore: number | undefined): Shape {
  const r = diameter / 2;
  const edge = r - crown;
  const radius = (face ** 2 / 4 + crown ** 2) / (2 * crown);
  const half = Math.asin(face / 2 / radius);
  const up = Math.PI / 2;
  const rim: Mark[] = [
    arc([0, r - radius], radius, up - half, up + half), arc([0, radius - r], radius, -up - half, -up + half),
    line([-face / 2, -edge], [-face / 2, edge]), line([face / 2, -edge], [face / 2, edge]), centreLine([-face / 2, 0], [face / 2, 0]),
    ...(bore === undefined ? [] : [line([-face / 2, bore / 2], [face / 2, bore / 2], 'hidden'), line([-face / 2, -bore / 2], [face / 2, -bore / 2], 'hidden')]),
  ];
  return {
    views: [
      {
        name: 'front', title: 'front', marks: rim,
        dimensions: [
          { kind: 'straight', of: 'face', from: [-face / 2, -edge], to: [face / 2, -edge], side: 'below', row: 1 },
          { kind: 'straight', of: 'diameter', from: [0, -r], to: [0, r], side: 'left', row: 1, sign: 'Ø' },
          { kind: 'leader', of: 'crown', at: [face * 0.35, edge + crown * 0.5], toward: [1.8, 2] },
        ],
      },
      { name: 'right', title: 'end', marks: [circle([0, 0], r), ...(bore === undefined ? [] : [circle([0, 0], bore / 2)]), ...cross([0, 0], r)], dimensions: bore === undefined ? [] : [{ kind: 'leader', of: 'bore', at: [bore * 0.35, bore * 0.35], toward: [3, 3], sign: 'Ø' }] },
    ],
  };
}
