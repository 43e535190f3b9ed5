import { heatOfTestBar, workOutCapacity, type MotionEstimate } from './capacity/index.ts';
import { oilingLimit } from './duty/index.ts';
import { workOutGround } from './ground/index.ts';
import type { Ledger } from './ledger.ts';
import { motionWithDoubt, specOfSurvey, type MotionDoubt, type Spread, type SurveySpec } from './motion/index.ts';
import { workOutMoving } from './moving/index.ts';
import { oilingRound, workOutOiling, type OilingRound } from './oiling/index.ts';
import type { Picture } from './picture.ts';
import { workOutPower } from './power/index.ts';
import type { Value } from './value.ts';

/** What lies further off than the verdict: the motion of this hammer, what its blow does, and what it stands on, draws, drinks and weighs. */
export interface Outlook {
  /** The picture's values and those worked out here. */
  readonly values: Readonly<Record<string, Value>>;
  readonly motion: MotionDoubt;
  readonly survey: SurveySpec;
  readonly oiling: OilingRound;
}

/** Half of a normal distribution lies between these many standard deviations; nine in ten between 1.645. */
const NINE_IN_TEN = 1.645;
const NINETY_FIVE = 1.96;

/** A doubt above the value itself says that nothing is known; no sum that takes it asks for more. */
const MOST_DOUBT = 1;

/** The middle of the likenesses with its doubt; what is positive spreads by factors, so that the doubt is read off the logarithms. */
function estimateOf(spread: Spread | undefined): MotionEstimate | undefined {
  if (spread === undefined || !(spread.middle > 0 && spread.low > 0)) return undefined;
  // From nine in ten to 95 in a hundred, each side by its own logarithm, so that the wider chance is never the narrower interval.
  const outward = (end: number): number => spread.middle * (end / spread.middle) ** (NINETY_FIVE / NINE_IN_TEN);
  return { value: spread.middle, uncertainty: spread.middle * Math.min(MOST_DOUBT, Math.log(spread.high / spread.low) / (2 * NINE_IN_TEN)), interval: [outward(spread.low), outward(spread.high)] };
}

/**
 * Works out the outlook of a picture. It takes some tenths of a second, since it runs a population of likenesses; the picture itself stays quick.
 * @param seed for everything drawn by chance; the same seed gives the same outlook
 */
export function outlook(picture: Picture, seed: number): Outlook {
  const { known } = picture;
  const ledger: Ledger = { family: known.identity.family, values: new Map(Object.entries(picture.values)) };
  const survey = specOfSurvey(picture.values, known.identity.family, known.identity.ramClass.quantity.value);
  const motion = motionWithDoubt(survey, { seed });
  const blowEnergy = estimateOf(motion.blowEnergy);
  const impactSpeed = estimateOf(motion.impactSpeed);
  workOutCapacity(ledger, { seed, testBarHeat: heatOfTestBar(known.looks), ...(blowEnergy === undefined ? {} : { blowEnergy }), ...(impactSpeed === undefined ? {} : { impactSpeed }) });
  workOutMoving(ledger, known, seed);
  workOutGround(ledger, known, seed);
  workOutPower(ledger, known, seed);
  workOutOiling(ledger, known, oilingLimit(picture.duty));
  return { values: Object.fromEntries(ledger.values), motion, survey, oiling: oilingRound(known, undefined, oilingLimit(picture.duty)) };
}
