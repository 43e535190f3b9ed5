import type { SecondSound as ModelSound } from '../../derived/motion/index.ts';
import type { SecondSound } from '../../derived/sound/index.ts';

/** A kind of second sound that would fall where one was heard. */
export interface SecondCandidate {
  readonly kind: ModelSound['kind'];
  /** s from the blow, the reading of the place that it would fit */
  readonly delay: number;
}

/** Where each kind falls in the model of the motion over its classes and settings, s from the blow. Widened; held against no recording of a real hammer. */
const PLACES: readonly { readonly kind: ModelSound['kind']; readonly from: number; readonly to: number }[] = [
  { kind: 'joint-knock', from: 0.05, to: 0.13 },
  { kind: 'die-re-strike', from: 0.025, to: 0.105 },
  { kind: 'upper-stop-knock', from: -0.075, to: -0.02 },
];

/** dB under the blow above which it is not told which of the two is the blow. */
const AS_LOUD = -3;

/** Whether blow and second sound are so nearly equally loud that either may be the blow. */
export const eitherIsBlow = (second: SecondSound): boolean => second.delay !== undefined && (second.levelDecibels?.value ?? -99) > AS_LOUD;

/**
 * Kinds whose usual place holds the delay that was heard, best in the middle first. Candidates only: sound does not tell
 * what strikes. Empty where no second sound was heard.
 */
export function secondCandidates(second: SecondSound): readonly SecondCandidate[] {
  if (second.delay === undefined || (second.verdict !== 'double' && second.verdict !== 'possible')) return [];
  const delays = [second.delay.value, ...(second.place === 'either' && second.otherDelay !== undefined ? [second.otherDelay] : []), ...(eitherIsBlow(second) ? [-second.delay.value] : [])];
  return delays
    .flatMap((delay) => PLACES.filter(({ from, to }) => delay >= from && delay <= to).map(({ kind, from, to }) => ({ kind, delay, off: Math.abs(delay - (from + to) / 2) / (to - from) })))
    .sort((a, b) => a.off - b.off)
    .map(({ kind, delay }) => ({ kind, delay }));
}
