import { noiseSource } from '../../methods/signal/index.ts';
import type { SecondSound } from './beat-result.ts';
import { detectionLimit } from './detection-limit.ts';
import { foldTurns, meanLogs, reachOf, type Fold } from './fold.ts';
import { foldRise, type FoldRise } from './fold-rise.ts';
import { highest } from './highest.ts';
import { locateSecond } from './locate-second.ts';
import { secondLevel } from './second-level.ts';
import { shareOfStrokes } from './share-of-strokes.ts';

/** What the folded turn must show, in spreads of a turn without events; set on made-up recordings with known truth. */
const DOUBLE = { combined: 6.5, halves: 4.8, riseDecibels: 0.5 };
const POSSIBLE = { combined: 4.8, halves: 3.6, riseDecibels: 0.3 };
/** Above this an echo can no longer be meant: what the tail leaves of one is weaker. */
const BEYOND_ECHO = 9;
const ECHO_SHARE = 0.8;
/** s, nearest that a second sound is looked for after and before the blow */
const NEAREST_AFTER = 0.026;
const NEAREST_BEFORE = 0.02;
const LEAST_STROKES = 15;
const LEAST_SECONDS = 8;

export interface SecondSearch {
  readonly second: SecondSound;
  readonly fold: Fold;
  readonly rise: FoldRise;
  /** place of the blow itself in the fold */
  readonly origin: number;
  /** by blow of the fold, whether the second sound was heard; empty without one */
  readonly heardWith: readonly boolean[];
}

/**
 * Looks for a second sound in every turn.
 * @param dry the recording without the blows' tails
 * @param wet the recording as it is
 * @param times s, blows of steady running
 * @param period s
 * @param jitter s
 * @returns undefined when fewer than four turns can be laid over one another
 */
export function findSecond(dry: Float32Array, wet: Float32Array, rate: number, hop: number, times: readonly number[], period: number, jitter: number, seed: number): SecondSearch | undefined {
  const fold = foldTurns(dry, rate, hop, times, reachOf(period));
  if (!fold) return undefined;
  const nearest = { after: NEAREST_AFTER, before: NEAREST_BEFORE + Math.min(2 * jitter, 0.1 * period) };
  const rise = foldRise(fold, fold.means, nearest);
  const middle = (fold.places - 1) / 2;
  const origin = highest(rise.combined, middle, Math.round(0.005 / fold.step));
  const limit = detectionLimit(fold, rise, origin, nearest, DOUBLE.combined);
  const nothing = (verdict: SecondSound['verdict']): SecondSearch => ({ second: { verdict, sure: 0, likeEcho: false, limit }, fold, rise, origin, heardWith: [] });
  const place = strongest(fold, rise.combined, origin, nearest);
  const few = times.length < LEAST_STROKES || times[times.length - 1]! - times[0]! < LEAST_SECONDS;
  if (place === undefined) return nothing(few ? 'cannot tell' : 'none seen');
  const combined = rise.combined[place]!;
  const halves = Math.min(...[0, 1].map((half) => {
    const chosen = Array.from({ length: Math.floor((fold.blows - half + 1) / 2) }, (_, i) => 2 * i + half);
    const own = foldRise(fold, meanLogs(fold, chosen), nearest, rise.spreads).combined;
    return own[highest(own, place, 3)]!;
  }));
  const mean = meanRise(fold, rise, place);
  const meets = (least: typeof DOUBLE): boolean => combined >= least.combined && halves >= least.halves && mean >= least.riseDecibels;
  if (!meets(POSSIBLE)) return nothing(few ? 'cannot tell' : 'none seen');
  const likeEcho = combined < BEYOND_ECHO && echoes(place, combined);
  const draw = noiseSource(seed);
  const delay = locateSecond(fold, rise, origin, place, draw);
  const share = shareOfStrokes(fold, rise, place, nearest);
  const level = secondLevel(fold, origin, place, draw);
  const verdict = meets(DOUBLE) && !likeEcho && !few ? 'double' : 'possible';
  const other = delay.value > 0 ? delay.value - period : delay.value + period;
  const nearHalf = Math.abs(delay.value) > 0.4 * period;
  return {
    second: {
      verdict, sure: chanceOf(combined, likeEcho, few), likeEcho, limit, delay, share: share.share,
      place: nearHalf ? 'either' : delay.value > 0 ? 'after' : 'before',
      ...(nearHalf && { otherDelay: other }),
      ...(level && { levelDecibels: level }),
    },
    fold, rise, origin, heardWith: share.heard,
  };

  /** Whether what was recorded rises there nearly as plainly before the tails are taken out, as an echo does. */
  function echoes(at: number, height: number): boolean {
    const raw = foldTurns(wet, rate, hop, times, reachOf(period));
    if (!raw) return false;
    const whole = foldRise(raw, raw.means, nearest).combined;
    return whole[highest(whole, at, Math.round(0.012 / raw.step))]! >= ECHO_SHARE * height;
  }
}

/** Chance that a second sound is there, from the height of the folded rise (logistic, from made-up recordings). */
function chanceOf(combined: number, likeEcho: boolean, few: boolean): number {
  const chance = 1 / (1 + Math.exp(-1.6 * (combined - 5.6)));
  return Math.min(0.99, likeEcho || few ? Math.min(0.6, chance) : chance);
}

function meanRise(fold: Fold, rise: FoldRise, place: number): number {
  let sum = 0;
  for (let band = 0; band < fold.bands; band++) sum += rise.rises[band * fold.places + place]! / fold.bands;
  return sum;
}

/** Highest local peak outside the guard, or undefined when nothing rises. */
function strongest(fold: Fold, combined: Float64Array, origin: number, nearest: { after: number; before: number }): number | undefined {
  let top: number | undefined;
  const margin = Math.round(0.009 / fold.step);
  for (let i = margin; i < combined.length - margin; i++) {
    const delay = (i - origin) * fold.step;
    if (delay > -nearest.before && delay < nearest.after) continue;
    if (combined[i]! < combined[i - 1]! || combined[i]! < combined[i + 1]!) continue;
    if (top === undefined || combined[i]! > combined[top]!) top = i;
  }
  return top;
}
