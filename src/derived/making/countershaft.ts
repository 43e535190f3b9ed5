import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { FigureReader, reckon, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making } from './part-to-make.ts';
import { pulley } from './pulley.ts';
import { shopNumber } from './shop-figures.ts';

const TITLES = { driven: 'Countershaft pulley driven by the motor', driver: 'Countershaft pulley that drives the hammer' } as const;
const KINDS = { driven: 'countershaft-driven', driver: 'countershaft-driver' } as const;
type End = keyof typeof TITLES;

/** True where motor and hammer are to be joined through a countershaft: one is there, or one motor pulley would be too small for its belt. */
export function wantsCountershaft(values: Values, known: Known): boolean {
  if (known.looks['drive-line.kind']?.answer === 'countershaft') return true;
  const reader = new FigureReader(values);
  const [speed, large, rate, slip] = [reader.find('motor.speed'), reader.find('pulley.diameter'), reader.find('running.rate#as-made|class.working-rate'), reader.find('practice.belt-slip')];
  const thick = reader.find('belt.thickness#as-made|belt.thickness');
  if (known.looks['drive-line.kind']?.answer !== 'motor-flat-belt' || speed === undefined || large === undefined || rate === undefined || slip === undefined || thick === undefined) return false;
  return (large.quantity.value * rate.quantity.value) / (speed.quantity.value * (1 - slip.quantity.value)) < shopNumber('countershaft-pulley-least') * thick.quantity.value;
}

/** The pulley on the countershaft that the motor drives. */
export const makeCountershaftDriven = (values: Values, known: Known, context: MakingContext = ALONE): Making => countershaftPulley('driven', values, known, context);
/** The pulley on the countershaft that drives the hammer. */
export const makeCountershaftDriver = (values: Values, known: Known, context: MakingContext = ALONE): Making => countershaftPulley('driver', values, known, context);

/**
 * One of the pair on the countershaft that gives the rate wanted. Where the driven one is there it stays and the driver is made to it; else
 * both belts step down alike.
 * @returns the part; not known without motor and hammer pulley, motor speed and both belts; not needed where it stays, or where the motor
 * drives the hammer by itself; cannot be where a belt is wider than the hammer's pulley, or where the hammer would have to step up
 */
function countershaftPulley(end: End, values: Values, known: Known, context: MakingContext): Making {
  const [kind, title] = [KINDS[end], TITLES[end]];
  if (known.looks['drive-line.kind'] === undefined) return { state: 'not-known', kind, title, missing: [{ key: 'drive-line.kind', what: 'what drives the hammer', how: 'Follow the belt from the motor: is there a shaft with two pulleys between?' }] };
  if (!wantsCountershaft(values, known)) return { state: 'not-needed', kind, title, because: 'The motor drives the hammer by one belt: its own pulley sets the speed.' };
  const reader = new FigureReader(values);
  const there = reader.find('drive-line.countershaft-driven');
  const speed = reader.need('motor.speed');
  const small = reader.need('motor.pulley');
  const large = reader.need('pulley.diameter');
  const rate = reader.need('running.rate#as-made|class.working-rate');
  const slip = reader.need('practice.belt-slip');
  const hammerBelt = reader.need('belt.width#as-made|belt.width');
  const motorBelt = reader.find('drive-line.motor-belt-width');
  if (speed === undefined || small === undefined || large === undefined || rate === undefined || slip === undefined || hammerBelt === undefined) return reader.notKnown(kind, title);
  const print = (length: number): string => printQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system);
  const turns = (figure: Figure): string => printQuantity({ ...figure.quantity, uncertainty: 0 }, context.system);
  if (end === 'driven' && there !== undefined) return { state: 'not-needed', kind, title, because: `The driven pulley of ${print(there.quantity.value)} stays; the driver is made to it.` };
  const total = reckon('ratio', [speed, rate, slip], (motor, wanted, lost) => (motor! * (1 - lost!) ** 2) / wanted!);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind, title, because, problem });
  if (total.quantity.value <= 1) return cannot(`The motor turns slower than the hammer is to strike: one of the readings is wrong (${[...speed.from, ...rate.from].join(', ')}).`, `The motor must turn faster than the hammer strikes, slip taken off; above ${turns(rate)} is allowed: ${turns(speed)}`);
  const face = reader.find('pulley.face');
  if (face !== undefined && hammerBelt.quantity.value > face.quantity.value) return cannot('A belt wider than the hammer’s pulley runs off its edge, whatever drives it.', `The belt is wider than the face of the hammer’s pulley; up to ${print(face.quantity.value)} is allowed: ${print(hammerBelt.quantity.value)}`);
  const guessed = (figure: Figure): Figure => ({ ...figure, estimate: figure.estimate || rate.estimate });
  // Half of the step to each belt; a driven pulley that stays takes its own share and leaves the rest to the driver.
  const driven = there ?? guessed(reckon('length', [small, total], (motor, ratio) => motor! * Math.sqrt(ratio!)));
  const driver = guessed(there === undefined ? reckon('length', [large, total], (hammer, ratio) => hammer! / Math.sqrt(ratio!)) : reckon('length', [large, there, small, total], (hammer, stays, motor, ratio) => (hammer! * stays!) / (motor! * ratio!)));
  const shaft = reader.find('drive-line.countershaft-diameter');
  const thick = reader.find('belt.thickness#as-made|belt.thickness');
  const least = thick === undefined ? undefined : shopNumber('countershaft-pulley-least') * thick.quantity.value;
  const between = reckon('rotation', [speed, small, driven, slip], (motor, from, to, lost) => (motor! * from! * (1 - lost!)) / to!);
  const mine = end === 'driven' ? driven : driver;
  return pulley({
    kind, title, diameter: mine, belt: end === 'driven' ? motorBelt ?? { ...hammerBelt, estimate: true } : hammerBelt, shaft, shaftKey: 'drive-line.countershaft-diameter', shaftWords: 'countershaft', key: undefined,
    diameterWhy: end === 'driven' ? 'motor pulley x root of the whole step down: each belt takes half' : there === undefined ? 'hammer pulley / root of the whole step down: each belt takes half' : 'hammer pulley x driven pulley that stays / motor pulley / step down, with slip in both belts',
    unknowns: end === 'driven' && motorBelt === undefined ? [{ key: 'drive-line.motor-belt-width', what: 'width of the belt from motor to countershaft', how: 'Measure across the belt away from the joint.' }] : [],
    notes: [
      `Countershaft turns about ${turns(between)}; the hammer strikes ${turns(rate)} with ${turns(slip)} slip in each belt. Count the blows, and turn the driver down if it is fast.`,
      `The pair is ${print(driven.quantity.value)} driven and ${print(driver.quantity.value)} driver, with ${print(small.quantity.value)} on the motor and ${print(large.quantity.value)} on the hammer.`,
      'Shaft level and square to both belts; collars against its bearings. Guard both belts.',
    ],
    warnings: [
      ...(rate.estimate ? ['The rate as made is not known: the usual working rate of the class is taken. Start 15 to 20 % under it where the maker’s rate is not known.'] : []),
      ...(known.looks['drive-line.kind']?.answer === 'countershaft' ? [] : ['There is no countershaft yet: one motor pulley for this speed would be too small for its belt. Shaft, hangers and a second belt come with it.']),
      ...(least !== undefined && mine.quantity.value < least ? [`Too small for this belt, which wants ${print(least)} or more: another driven pulley, or a thinner belt.`] : []),
    ],
  }, context);
}
