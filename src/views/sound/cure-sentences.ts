import type { BeatHeard, BeatResult, SecondSound } from '../../derived/sound/index.ts';
import { halfWidth, plainDelay, shownRate } from './shown.ts';

/** What laying two recordings over one another proves, in one word. */
export type Cure = 'gone' | 'fainter' | 'the same' | 'louder' | 'new' | 'neither has one' | 'cannot tell';

export interface CureShown {
  readonly cure: Cure;
  readonly words: readonly string[];
}

/** s; a second sound is taken for the same within this and its doubt */
const SAME_PLACE = 0.012;
/** dB that the detection limit must lie under what was heard before, so that hearing nothing means something */
const CLEAR_OF_LIMIT = 3;

/**
 * Whether a second sound of an earlier recording is gone in a later one. That nothing is heard now proves nothing unless
 * what was heard before would be noticed now as well.
 */
export function cureOf(before: BeatResult, after: BeatResult): CureShown {
  if (before.state !== 'heard' || after.state !== 'heard') return { cure: 'cannot tell', words: [`Nothing can be laid over one another: in the ${before.state === 'heard' ? 'later' : 'earlier'} recording no beat is heard.`] };
  return { ...judge(before, after), words: [...judge(before, after).words, ...beside(before, after)] };
}

function judge(before: BeatHeard, after: BeatHeard): CureShown {
  const was = before.second;
  const is = after.second;
  const heard = (one: SecondSound): boolean => one.verdict === 'double' && one.delay !== undefined;
  if (!heard(was) && !heard(is)) {
    const sure = was.verdict === 'none seen' && is.verdict === 'none seen';
    return sure ? { cure: 'neither has one', words: ['Neither recording has a second sound above what would be noticed.'] } : { cure: 'cannot tell', words: ['In one of the two the second sound is not sure, so nothing is proven.'] };
  }
  if (!heard(was)) {
    const limit = limitAt(was, is.delay!.value);
    const noticed = limit !== undefined && (is.levelDecibels?.value ?? 0) > limit + CLEAR_OF_LIMIT && was.verdict === 'none seen';
    return noticed
      ? { cure: 'new', words: [`There is a second sound now, ${place(is)}, that was not there before.`] }
      : { cure: 'cannot tell', words: [`There is a second sound now, ${place(is)}; in the earlier recording one as faint might not have been noticed, so it may have been there already.`] };
  }
  if (!heard(is)) {
    const limit = limitAt(is, was.delay!.value);
    const level = was.levelDecibels?.value;
    if (is.verdict === 'possible') return { cure: 'cannot tell', words: [`The second sound ${place(was)} is fainter or gone: there may be one still. Record 20 seconds more, from where the first was recorded.`] };
    if (limit === undefined || level === undefined || is.verdict === 'cannot tell') return { cure: 'cannot tell', words: [`The second sound ${place(was)} is not heard now, but this recording cannot tell what lies at that place. Record again from where the first was recorded.`] };
    if (level < limit + CLEAR_OF_LIMIT) return { cure: 'cannot tell', words: [`The second sound ${place(was)} is not heard now, but one as faint as before would not be noticed in this recording. Go closer, and record again.`] };
    return { cure: 'gone', words: [`Gone: the second sound ${place(was)} is not heard now, and one ${Math.round(level - limit)} dB fainter than it was would still be noticed.`] };
  }
  const apart = Math.abs(was.delay!.value - is.delay!.value);
  if (apart > SAME_PLACE + halfWidth(was.delay!) + halfWidth(is.delay!)) return { cure: 'cannot tell', words: [`The second sound has moved: ${place(was)} before, ${place(is)} now. Setting or speed may have changed, or it is another one.`] };
  const change = (is.levelDecibels?.value ?? 0) - (was.levelDecibels?.value ?? 0);
  const doubt = Math.hypot(is.levelDecibels === undefined ? 3 : halfWidth(is.levelDecibels), was.levelDecibels === undefined ? 3 : halfWidth(was.levelDecibels));
  if (Math.abs(change) <= doubt) return { cure: 'the same', words: [`The second sound is still there, ${place(is)}, as loud as before within ${Math.round(doubt)} dB.`] };
  return { cure: change < 0 ? 'fainter' : 'louder', words: [`The second sound is still there, ${place(is)}, ${Math.abs(Math.round(change))} ± ${Math.round(doubt)} dB ${change < 0 ? 'fainter' : 'louder'} than before.`] };
}

const place = (second: SecondSound): string => `${plainDelay(second.delay!.value)} ${second.place === 'either' ? 'from' : second.delay!.value < 0 ? 'before' : 'after'} the blow`;

/** dB of the least second sound that would be noticed about a delay, or undefined where nothing is said of that place. */
export function limitAt(second: SecondSound, delay: number): number | undefined {
  const near = second.limit.filter((row) => Math.abs(row.delay - delay) < 0.008);
  return near.length === 0 ? undefined : Math.max(...near.map((row) => row.levelDecibels));
}

function beside(before: BeatHeard, after: BeatHeard): readonly string[] {
  const change = after.rate.value / before.rate.value - 1;
  const doubt = Math.hypot(halfWidth(after.rate) / after.rate.value, halfWidth(before.rate) / before.rate.value, 0.0005);
  return [
    `Rate before ${shownRate(before.rate)}, now ${shownRate(after.rate)}${Math.abs(change) > doubt ? '' : ': the same'}.`,
    ...(Math.abs(change) > 0.05 ? ['The two were not run at the same speed, and second sounds come and go with speed: run both at the same speed for a proof.'] : []),
    `Scatter before ${(before.jitter * 1000).toFixed(1)} ms, now ${(after.jitter * 1000).toFixed(1)} ms.`,
    'Both were heard alike only if the phone lay at the same place and the same piece was under the die.',
  ];
}
