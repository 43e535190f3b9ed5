import type { Picture } from '../../derived/index.ts';
import type { MotionDoubt, MotionRan, SurveySpec } from '../../derived/motion/index.ts';
import { BEAT_WORDS } from './class-words.ts';
import { shownEnergy, shownLength, shownRate } from './shown.ts';

/** One figure of the simulator beside what somebody read or heard. */
export interface BesideReading {
  readonly what: string;
  readonly reckoned: string;
  readonly seen: string;
  /** whether somebody found it at the hammer or it was worked out another way */
  readonly how: 'found' | 'estimate';
  readonly agrees: boolean;
  readonly words: string;
}

/** Where the motion as reckoned can be held against the hammer itself. What does not agree is said, and what it may mean. */
export function besideReadings(picture: Picture, survey: SurveySpec, run: MotionRan, doubt?: MotionDoubt): readonly BesideReading[] {
  const { system } = picture;
  const rows: BesideReading[] = [];
  const known = (key: string): { readonly value: number; readonly uncertainty: number } | undefined => {
    const outcome = picture.values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  const rate = known('running.rate');
  if (rate !== undefined) {
    const agrees = Math.abs(run.rate - rate.value) < Math.max(0.04 * rate.value, 2 * rate.uncertainty);
    rows.push({ what: 'blows', reckoned: shownRate(run.rate), seen: shownRate(rate.value), how: 'found', agrees, words: agrees ? '' : run.rate > rate.value ? 'It turns slower than motor, belt and clutch should let it: more slips than is reckoned. Look at clutch facing, belt and the motor under load.' : 'It turns faster than was reckoned from pulleys and motor: measure them again.' });
  }
  const estimate = known('capacity.blow-energy');
  if (estimate !== undefined && run.blowEnergy > 0) {
    const spread = doubt?.blowEnergy;
    const blow = spread?.middle ?? run.blowEnergy;
    const agrees = Math.abs(blow - estimate.value) < 2 * estimate.uncertainty + (spread === undefined ? 0 : (spread.high - spread.low) / 2);
    const half = 2 * estimate.uncertainty;
    rows.push({ what: 'blow energy', reckoned: spread === undefined ? shownEnergy(blow, system) : `about ${shownEnergy(blow, system)}, ${shownEnergy(spread.low, system)} to ${shownEnergy(spread.high, system)}`, seen: `${shownEnergy(estimate.value, system)} ± ${shownEnergy(half, system)} by rule of thumb`, how: 'estimate', agrees, words: agrees ? '' : blow < estimate.value ? 'The blow is weaker than throw and rate alone would give: it comes early, late or uneven.' : 'The blow is harder than throw and rate alone would give: the ram is thrown far.' });
  }
  const shortest = known('coil-spring.shortest-length');
  const solid = known('spring.solid-length');
  if (shortest !== undefined && solid !== undefined && survey.spec.suspension.kind === 'coil-toggle') {
    const reckoned = Math.max(solid.value, solid.value + run.left.spring);
    const agrees = Math.abs(reckoned - shortest.value) < 0.008;
    rows.push({ what: 'shortest spring', reckoned: shownLength(reckoned, system), seen: shownLength(shortest.value, system), how: 'found', agrees, words: agrees ? '' : reckoned < shortest.value ? 'The spring is reckoned to shorten more than was filmed: upper arm and lean of the arms are assumed; measure them.' : 'The spring shortens more than is reckoned: measure the arms.' });
  }
  const heard = picture.known.looks['running.sound']?.answer;
  const sound = heard === undefined ? undefined : ({ clean: 'one clean beat', double: 'a double beat', uneven: 'uneven' } as Readonly<Record<string, string>>)[heard];
  if (heard !== undefined && sound !== undefined) {
    const twice = run.secondSounds.length > 0 || run.beatClass === 'gallop';
    const uneven = ['gallop', 'irregular', 'misses'].includes(run.beatClass);
    const agrees = heard === 'clean' ? run.beatClass === 'clean' : heard === 'double' ? twice : uneven;
    const among = doubt?.classes.find((one) => (heard === 'clean' ? one.beatClass === 'clean' : heard === 'double' ? one.beatClass.endsWith('knock') || one.beatClass === 'die-re-strike' : ['gallop', 'irregular', 'misses'].includes(one.beatClass)));
    rows.push({ what: 'what is heard', reckoned: BEAT_WORDS[run.beatClass].words, seen: sound, how: 'found', agrees, words: agrees ? '' : among === undefined ? 'No likeness within the doubt does what was heard: something that matters was not read, or lies outside this reckoning.' : `${Math.round(among.share * 100)} in 100 likenesses within the doubt do what was heard.` });
  }
  return rows;
}
