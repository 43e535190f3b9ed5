import { nextUniform, seeded } from '../../methods/chance/index.ts';
import type { SecondSound } from './beat-result.ts';
import { detectionLimit } from './detection-limit.ts';
import { foldTurns, meanLogs, reachOf, type Fold } from './fold.ts';
import { foldRise, type FoldRise } from './fold-rise.ts';
import { highest } from './highest.ts';
import { locateSecond } from './locate-second.ts';
import { secondLevel } from './second-level.ts';
import { shareOfStrokes } from './share-of-strokes.ts';

/** What the folded turn must show, in spreads of a turn without events; set on made-up recordings with known truth. */
const DOUBLE = { combined: 5.6, halves: 4.4, riseDecibels: 0.5 };
const POSSIBLE = { combined: 4.5, halves: 3.4, riseDecibels: 0.3 };
/** s after the blow within which its own ringing leaves most behind, and what is believed there */
const EARLY = 0.0305;
const DOUBLE_WHEN_EARLY = 8.5;
/** Above this an echo can no longer be meant: what the tail leaves of one is weaker. */
const BEYOND_ECHO = 6.6;
/** With a recorder that clips or turns its gain, only this much is believed. */
const DOUBLE_WHEN_BENT = 10;
/** s; a second sound keeps its time better than this */
const VAGUE = 0.0028;
/** s, nearest that a second sound is looked for after and before the blow */
const NEAREST_AFTER = 0.029;
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
 * @param bent the recorder clipped or turned its gain, so that tails do not follow from blows by one fixed response
 * @returns undefined when fewer than four turns can be laid over one another
 */
export function findSecond(dry: Float32Array, wet: Float32Array, rate: number, hop: number, times: readonly number[], period: number, jitter: number, bent: boolean, seed: number): SecondSearch | undefined {
  const fold = foldTurns(dry, rate, hop, times, reachOf(period));
  if (!fold) return undefined;
  const nearest = { after: NEAREST_AFTER, before: NEAREST_BEFORE + Math.min(2 * jitter, 0.1 * period) };
  let rise = foldRise(fold, fold.means, nearest);
  const middle = (fold.places - 1) / 2;
  const origin = highest(rise.combined, middle, Math.round(0.005 / fold.step));
  let place = strongest(fold, rise.combined, origin, nearest);
  let raw: Fold | undefined;
  if (place !== undefined && rise.combined[place]! >= POSSIBLE.combined && (raw = foldTurns(wet, rate, hop, times, reachOf(period)))) {
    rise = foldRise(fold, fold.means, nearest, withLeftover(rise.spreads, foldRise(raw, raw.means, nearest).rises));
    place = strongest(fold, rise.combined, origin, nearest);
  }
  const limit = detectionLimit(fold, rise, origin, nearest, bent ? DOUBLE_WHEN_BENT : DOUBLE.combined);
  const few = times.length < LEAST_STROKES || times[times.length - 1]! - times[0]! < LEAST_SECONDS;
  const nothing: SecondSearch = { second: { verdict: few ? 'cannot tell' : 'none seen', sure: 0, likeEcho: false, limit }, fold, rise, origin, heardWith: [] };
  if (place === undefined || !raw) return nothing;
  const combined = rise.combined[place]!;
  const halves = Math.min(...[0, 1].map((half) => {
    const chosen = Array.from({ length: Math.floor((fold.blows - half + 1) / 2) }, (_, i) => 2 * i + half);
    const own = foldRise(fold, meanLogs(fold, chosen), nearest, rise.spreads).combined;
    return own[highest(own, place, 3)]!;
  }));
  const mean = meanRise(fold, rise, place);
  const meets = (least: typeof DOUBLE): boolean => combined >= least.combined && halves >= least.halves && mean >= least.riseDecibels;
  if (!meets(POSSIBLE)) return nothing;
  const generator = seeded(seed, 'second sound');
  const draw = (): number => nextUniform(generator);
  const delay = locateSecond(fold, rise, origin, place, draw);
  const vague = delay.high - delay.low > 2 * VAGUE;
  const whole = foldRise(raw, raw.means, nearest).combined;
  const likeEcho = combined < BEYOND_ECHO && whole[highest(whole, place, Math.round(0.012 / raw.step))]! >= combined;
  const share = shareOfStrokes(fold, rise, place, nearest);
  const level = secondLevel(fold, origin, place, draw);
  const sure = meets(DOUBLE) && !likeEcho && !few && !vague && (!bent || combined >= DOUBLE_WHEN_BENT) && (delay.value < 0 || delay.value > EARLY || combined >= DOUBLE_WHEN_EARLY);
  const nearHalf = Math.abs(delay.value) > 0.4 * period;
  return {
    second: {
      verdict: sure ? 'double' : 'possible', sure: chanceOf(combined, !sure), likeEcho, limit, delay, share: share.share,
      place: nearHalf ? 'either' : delay.value > 0 ? 'after' : 'before',
      ...(nearHalf && { otherDelay: delay.value > 0 ? delay.value - period : delay.value + period }),
      ...(level && { levelDecibels: level }),
    },
    fold, rise, origin, heardWith: share.heard,
  };
}

/** Part of the rise heard before the tails are taken out that may be left over in what remains, and up to how many dB it counts. */
const LEFTOVER = 0.55;
const MOST_LEFTOVER = 2;

/** Spreads that allow for what taking out the tails leaves of their own rises: beating of close tones, echoes. */
function withLeftover(spreads: Float64Array, wetRises: Float64Array): Float64Array {
  return spreads.map((spread, i) => Math.hypot(spread, LEFTOVER * Math.min(MOST_LEFTOVER, Math.abs(wetRises[i]!))));
}

/** Chance that a second sound is there, from the height of the folded rise (logistic, from made-up recordings). */
function chanceOf(combined: number, doubtful: boolean): number {
  const chance = 1 / (1 + Math.exp(-2 * (combined - 4.9)));
  return Math.min(0.99, doubtful ? Math.min(0.6, chance) : chance);
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
