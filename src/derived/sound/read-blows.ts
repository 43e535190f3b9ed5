import { median, quantile, sorted } from '../../methods/signal/index.ts';
import { advice, type AdviceKind } from './advice.ts';
import type { BeatNotHeard, BeatResult, OtherChain, OtherReading, RecordingFacts, Run } from './beat-result.ts';
import { foldedTurn, swells } from './folded-turn.ts';
import { turnsGainDown } from './gain-control.ts';
import type { PreparedSound } from './prepared-sound.ts';
import { longestOf, shiftedRuns, steadyTimesOf, type RunOfBlows } from './runs.ts';
import { findSecond, type SecondSearch } from './second-sound.ts';
import { BELIEVED, HEARD, reaches } from './self-check.ts';
import { steadyRate } from './steady-rate.ts';
import { runOf, strokesHeard } from './strokes-heard.ts';
import { withoutTails } from './tail-prediction.ts';
import type { Track } from './track-blows.ts';

/** dB; below this the blow rings through to the next */
const LEAST_FALL = 2;
/** dB; a second sound brighter by more than this than the marked one is the blow */
const BRIGHTER = 0;
const SURELY_BRIGHTER = 2;

/** Is told the share of the work that is done: 0 to 1, rising, 1 at the end. */
export type ShareDone = (share: number) => void;

/** Blows that a recording is read from, found by the program or marked by a person. */
export interface BlowsGiven {
  readonly track: Pick<Track, 'period' | 'saliences' | 'events'>;
  readonly runs: readonly RunOfBlows[];
  /** gain of their chain against what chance gives */
  readonly contrast: number;
  /** strokes that repeat in a pattern, as those of one hammer do not */
  readonly rhythm: boolean;
  /** which of two chains is the hammer is a guess */
  readonly guessed: boolean;
  /** a person put them there: which sound is the blow and whether there is a beat is not asked again */
  readonly byHand: boolean;
  readonly readings: readonly OtherReading[];
  readonly others: readonly OtherChain[];
}

/**
 * All that follows from the times of the blows: rate, jitter, drift, missed strokes, the folded turn and its second sound.
 * @param before what is already to be said of the recording
 * @param seed of what is drawn by chance
 * @param done the share of the work from here on
 */
export function readBlows(sound: PreparedSound, given: BlowsGiven, before: readonly AdviceKind[], seed: number, done: ShareDone): BeatResult {
  const { facts } = sound;
  const { track, byHand } = given;
  const notes = [...before];
  let { runs } = given;
  let longest = longestOf(runs);
  let steady = longest && steadyRate(longest);
  if (!longest || !steady) return notHeard(facts, [byHand ? 'few-marks' : 'no-beat', ...notes]);
  const skipped = runs.reduce((sum, run) => sum + run.strokes[run.strokes.length - 1]! + 1 - run.strokes.length, 0);
  const all = runs.reduce((sum, run) => sum + run.times.length, 0);
  const selfCheck = { fill: all / (all + skipped), contrast: given.contrast, jitterShare: steady.jitter * steady.rate.value, strokes: all };
  if (!byHand && !reaches(selfCheck, HEARD)) return notHeard(facts, ['no-beat', ...notes]);

  const bent = facts.clippedBursts >= Math.max(5, 0.1 * all);
  let steadyTimes = steadyTimesOf(runs);
  const look = (): ReturnType<typeof findSecond> => {
    const without = withoutTails(sound.samples, sound.rate, steadyTimes, track.period);
    done(Math.max(0.45, share));
    return findSecond(without, sound.samples, sound.rate, sound.hop, steadyTimes, track.period, steady!.jitter, bent, seed);
  };
  let share = 0;
  let search = look();
  done((share = 0.85));
  const brighter = harderBy(search);
  if (search && brighter > BRIGHTER && !byHand) {
    // The onset that stands out best is not always the harder sound: what follows it may be. Then that is the blow,
    // unless, read from there, the first one is harder by still more.
    const asMarked = { runs, longest, steady, steadyTimes, search };
    runs = shiftedRuns(runs, search.second.delay!.value, track.events);
    longest = longestOf(runs)!;
    steady = steadyRate(longest) ?? steady;
    steadyTimes = steadyTimesOf(runs);
    search = look();
    if (!search || (brighter < SURELY_BRIGHTER && harderBy(search) > brighter)) ({ runs, longest, steady, steadyTimes, search } = asMarked);
  }
  if (!search) return notHeard(facts, ['too-short', ...notes]);
  const { turn, fall } = foldedTurn(sound, steadyTimes, search);
  const ringsThrough = fall < LEAST_FALL && search.second.verdict !== 'double';
  const second = ringsThrough && search.second.verdict === 'none seen' ? { ...search.second, verdict: 'cannot tell' as const } : search.second;
  const trust = reaches(byHand ? { ...selfCheck, contrast: BELIEVED.contrast } : selfCheck, BELIEVED) && !given.rhythm && !given.guessed ? 'good' : 'doubtful';
  const blowsClear = quantile(sorted(track.saliences), 0.05) > 5 && trust === 'good';
  const figures = runs.map((run) => runOf(run, byHand || blowsClear)).filter((run): run is Run => run !== undefined);
  const recording = { ...facts, gainControl: turnsGainDown(sound, steadyTimes) || swells(turn, track.period) };
  const { readings, others } = given;

  if (bent) notes.push('clipped');
  if (recording.gainControl) notes.push('gain-control');
  if (trust === 'doubtful' && !given.guessed) notes.push('uneven');
  if (all < 15 || longest.times[longest.times.length - 1]! - longest.times[0]! < 8) notes.push('few-strokes');
  if (readings.some((r) => r.against > 0.8)) notes.push('other-rate');
  if (others.length > 0) notes.push('other-chain');
  if (median(track.saliences) < 6) notes.push('weak-blows');
  if (second.verdict === 'possible') notes.push(second.likeEcho ? 'echo-or-beat' : 'possible-second');
  if (second.verdict === 'double' && second.place === 'either') notes.push('before-or-after');
  if (second.verdict === 'double' && (second.share ?? 1) < 0.75) notes.push('some-strokes-only');
  if (second.verdict === 'none seen') notes.push('only-a-limit');
  if (ringsThrough) notes.push('rings-through');
  if (steady.drift && Math.abs(steady.drift.value) > 0.0008) notes.push('rate-is-a-rate');
  notes.push('is-this-the-hammer', 'not-a-level-meter');

  return {
    state: 'heard', byHand, recording, trust, rate: steady.rate, jitter: steady.jitter, ...(steady.drift && { drift: steady.drift }),
    strokes: strokesHeard(sound, runs, heardWithStrokes(search.heardWith, runs)),
    runs: figures, missed: figures.reduce((sum, run) => sum + run.missed, 0),
    second, folded: turn, otherReadings: readings, otherChains: others, selfCheck, advice: notes.map((kind) => advice(kind)),
  };
}

/** dB by which a second sound that is surely there is brighter than the marked one; far less than none where there is none. */
const harderBy = (search: SecondSearch | undefined): number => (search?.second.verdict === 'double' ? (search.brighter ?? -Infinity) : -Infinity);

/** The answer where nothing can be read, with what to do. */
export const notHeard = (recording: RecordingFacts, kinds: readonly AdviceKind[]): BeatNotHeard => ({ state: 'cannot tell', recording, advice: kinds.map((kind) => advice(kind)) });

/** Lays what was heard with the folded blows on the strokes; the fold leaves out run-downs and, at the ends, blows without a whole turn. */
function heardWithStrokes(heard: readonly boolean[], runs: readonly { readonly times: readonly number[]; readonly runDown: number }[]): Map<number, boolean> {
  const out = new Map<number, boolean>();
  const steady: number[] = [];
  let index = 0;
  for (const run of runs) run.times.forEach((_, i) => {
    if (i < run.times.length - run.runDown) steady.push(index);
    index++;
  });
  // Thinned folds hold fewer blows than strokes and are not laid back.
  const lost = steady.length - heard.length;
  if (heard.length === 0 || lost < 0 || lost > 2) return out;
  const skip = lost === 0 ? 0 : lost === 2 ? 1 : undefined;
  heard.forEach((value, i) => {
    const at = steady[i + (skip ?? 0)];
    if (at !== undefined) out.set(at, value);
  });
  return out;
}
