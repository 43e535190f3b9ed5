import { motionWithDoubt, specOfSurvey } from '../motion/index.ts';
import type { Known } from '../survey/index.ts';
import type { Value } from '../value.ts';
import type { ExpectedBlow } from './acceptance-point.ts';

/**
 * What the motion of a hammer as set lets expect of a full blow: a population of likenesses is run, which takes some tenths
 * of a second.
 * @returns undefined where no likeness strikes
 */
export function expectedBlow(known: Known, values: Readonly<Record<string, Value>>, seed: number): ExpectedBlow | undefined {
  const energy = motionWithDoubt(specOfSurvey(values, known.identity.family, known.identity.ramClass.quantity.value), { seed }).blowEnergy;
  return energy === undefined || energy.middle <= 0 ? undefined : energy;
}
