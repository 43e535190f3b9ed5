import { nextUniform, seeded } from '../../methods/chance/index.ts';
import type { SecondSound } from './beat-result.ts';
import { detectionLimit } from './detection-limit.ts';
import { echoIn } from './echo.ts';
import { foldTurns, meanLogs, meansLike, reachOf, type Fold } from './fold.ts';
import type { FoldRise, Guard } from './fold-rise.ts';
import { brighterBy } from './harder-sound.ts';
import { likelyPlaces, type LikelyPlace } from './likely-places.ts';
import { locateSecond } from './locate-second.ts';
import { chanceOf, oddsOfSecond } from './second-chance.ts';
import { evidenceOf, type FoldedMeans } from './second-evidence.ts';
import { secondLevel } from './second-level.ts';
import { shareOfStrokes } from './share-of-strokes.ts';
import type { WithoutTails } from './tail-prediction.ts';
import { turnSpreads } from './turn-spreads.ts';

/** Odds (natural logarithm) at which a second sound is called double, and possible; set on made-up recordings. */
const DOUBLE = 1;
const POSSIBLE = 0;
/** With a recorder that clips, tails do not follow from blows by one fixed response, and only this is believed. */
const DOUBLE_WHEN_BENT = 3;
/** s; a second sound keeps its time better than this */
const VAGUE = 0.0033;
/** s, nearest that a second sound is looked for after and before the blow */
const NEAREST_AFTER = 0.029;
const NEAREST_BEFORE = 0.02;
const LEAST_STROKES = 15;
const LEAST_SECONDS = 8;
const MOST_SURE = 0.99;
const MOST_SURE_WHEN_DOUBTFUL = 0.6;

export interface SecondSearch {
  readonly second: SecondSound;
  readonly fold: Fold;
  readonly rise: FoldRise;
  /** place of the blow itself in the fold */
  readonly origin: number;
  /** by blow of the fold, whether the second sound was heard; empty without one */
  readonly heardWith: readonly boolean[];
  /** dB by which it is brighter than the marked sound; absent where no second sound is likely */
  readonly brighter?: number;
}

/**
 * Looks for a second sound in every turn.
 * @param without the recording without the blows' tails, and what was taken out
 * @param wet the recording as it is
 * @param times s, blows of steady running
 * @param period s
 * @param jitter s
 * @param bent the recorder clipped, so that tails do not follow from blows by one fixed response
 * @returns undefined when fewer than four turns can be laid over one another
 */
export function findSecond({ dry, response }: WithoutTails, wet: Float32Array, rate: number, hop: number, times: readonly number[], period: number, jitter: number, bent: boolean, seed: number): SecondSearch | undefined {
  const fold = foldTurns(dry, rate, hop, times, reachOf(period));
  if (!fold) return undefined;
  const nearest = nearestOf(jitter, period);
  const means: FoldedMeans = { shape: fold, dry: fold.means, halves: halvesOf(fold), wet: meansLike(fold, wet, rate, hop, times), errors: turnSpreads(fold) };
  const evidence = evidenceOf(means, nearest);
  const { origin, usual: rise } = evidence;
  const likely = best(likelyPlaces(evidence, nearest, period));
  const needed = bent ? DOUBLE_WHEN_BENT : DOUBLE;
  const limit = detectionLimit(evidence, nearest, period, needed);
  const few = times.length < LEAST_STROKES || times[times.length - 1]! - times[0]! < LEAST_SECONDS;
  const echo = echoIn(response, rate);
  if (likely === undefined || likely.odds < POSSIBLE)
    return { second: { verdict: few ? 'cannot tell' : 'none seen', sure: 0, likeEcho: false, limit, ...(echo && { echo }) }, fold, rise, origin, heardWith: [] };
  const { place, odds } = likely;
  const generator = seeded(seed, 'second sound');
  const draw = (): number => nextUniform(generator);
  const delay = locateSecond(fold, rise, evidence.wetRises, origin, place, draw);
  const vague = delay.high - delay.low > 2 * VAGUE;
  const share = shareOfStrokes(fold, rise, place, nearest);
  const level = secondLevel(fold, origin, place, draw);
  const sure = odds >= needed && !few && !vague;
  const nearHalf = Math.abs(delay.value) > 0.4 * period;
  const likeEcho = !sure && echo !== undefined && Math.abs(echo.delay - delay.value) < NEAR_ECHO;
  return {
    second: {
      verdict: sure ? 'double' : 'possible', sure: Math.min(chanceOf(odds), sure ? MOST_SURE : MOST_SURE_WHEN_DOUBTFUL), likeEcho, limit, delay, share: share.share,
      place: nearHalf ? 'either' : delay.value > 0 ? 'after' : 'before',
      ...(nearHalf && { otherDelay: delay.value > 0 ? delay.value - period : delay.value + period }),
      ...(level && { levelDecibels: level }),
      ...(echo && !sure && { echo }),
    },
    fold, rise, origin, heardWith: share.heard, brighter: brighterBy(fold, origin, place),
  };
}

/** How near to the blow a second sound is looked for. @param jitter s @param period s */
export const nearestOf = (jitter: number, period: number): Guard => ({ after: NEAREST_AFTER, before: NEAREST_BEFORE + Math.min(2 * jitter, 0.1 * period) });

/** s; an echo within this of a second sound is meant by it */
const NEAR_ECHO = 0.012;

/** Means of every other turn, from the first and from the second; what the first leaves of all is the second. */
function halvesOf(fold: Fold): [Float64Array, Float64Array] {
  const first = meanLogs(fold, Array.from({ length: Math.ceil(fold.blows / 2) }, (_, i) => 2 * i));
  const share = Math.ceil(fold.blows / 2) / fold.blows;
  const second = new Float64Array(first.length);
  for (let i = 0; i < second.length; i++) second[i] = (fold.means[i]! - share * first[i]!) / (1 - share);
  return [first, second];
}

function best(places: readonly LikelyPlace[]): { place: number; odds: number } | undefined {
  let top: { place: number; odds: number } | undefined;
  for (const { place, features } of places) {
    const odds = oddsOfSecond(features);
    if (top === undefined || odds > top.odds) top = { place, odds };
  }
  return top;
}
