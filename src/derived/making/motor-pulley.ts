import { driverForSpeed } from '../../methods/elements/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { smallPulleyKeys } from './belt.ts';
import { FigureReader, reckon, unknownPlace, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making } from './part-to-make.ts';
import { pulley } from './pulley.ts';
import { shopNumber } from './shop-figures.ts';

const KIND = 'motor-pulley';
const TITLE = 'Small pulley on the motor';

/**
 * The motor pulley that gives the rate wanted: as made where that is known, else usual for the class. Crowned for a flat belt, face a
 * half inch over the belt, bored and keyed to the motor's shaft.
 * @returns the part; not known without motor speed and hammer pulley; not needed where a countershaft stands between; cannot be where the
 * belt is wider than the hammer's pulley or the shaft takes the rim
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
  const hammerFace = reader.find('pulley.face');
  if (hammerFace !== undefined && belt.quantity.value > hammerFace.quantity.value) {
    return { state: 'cannot-be', kind: KIND, title: TITLE, because: 'A belt wider than the hammer’s pulley runs off its edge, whatever the small pulley is.', problem: `The belt is wider than the face of the hammer’s pulley; up to ${print(hammerFace.quantity.value)} is allowed: ${print(belt.quantity.value)}` };
  }
  const diameter = { ...reckon('length', [speed, rate, large, slip], (turns, wanted, driven, lost) => driverForSpeed(turns!, wanted!, driven!, lost!)), estimate: rate.estimate };
  const thick = reader.find('belt.thickness#as-made|belt.thickness');
  const least = thick === undefined ? undefined : shopNumber('least-pulley-over-belt') * thick.quantity.value;
  const room = reader.find('motor.shaft-length');
  return pulley({
    kind: KIND, title: TITLE, diameter, diameterWhy: 'hammer pulley x rate wanted / motor speed, with 3 % slip', belt, shaft: reader.find('motor.shaft-diameter'), shaftKey: 'motor.shaft-diameter', shaftWords: 'motor shaft',
    key: reader.find('motor.key-width'), keyPlace: 'motor.key-width', room, unknowns: room === undefined ? [unknownPlace('motor.shaft-length')] : [],
    notes: [`Gives ${printQuantity({ ...rate.quantity, uncertainty: 0 }, context.system)} with ${printQuantity({ ...slip.quantity, uncertainty: 0 }, context.system)} slip. Count the blows when it runs, and turn the pulley down if it is fast.`],
    warnings: [
      ...(rate.estimate ? ['The rate as made is not known: the usual working rate of the class is taken. Start 15 to 20 % under it where the maker’s rate is not known.'] : []),
      ...(least !== undefined && diameter.quantity.value < least ? [`Too small for this belt, which wants ${print(least)} or more: a slower motor or a countershaft, or it slips.`] : []),
      ...(smallForWrap(reader, diameter.quantity.value) ? ['So small a pulley grips little: an idler on the slack side, or a countershaft.'] : []),
    ],
  }, context);
}

/** Less than 150 degrees of wrap, as the belt was measured. */
function smallForWrap(reader: FigureReader, diameter: number): boolean {
  const large = reader.find('pulley.diameter');
  const centres = reader.find('belt.centre-distance');
  if (large === undefined || centres === undefined) return false;
  const lean = (large.quantity.value - diameter) / (2 * centres.quantity.value);
  return lean > Math.sin(Math.PI / 12);
}
