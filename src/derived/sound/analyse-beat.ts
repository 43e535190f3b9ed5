import { median, quantile, sorted } from '../../methods/signal/index.ts';
import { advice, type Advice, type AdviceKind } from './advice.ts';
import type { BeatNotHeard, BeatOptions, BeatResult, RecordingFacts, Run } from './beat-result.ts';
import { foldedTurn, swells } from './folded-turn.ts';
import { onsetBands } from './onset-bands.ts';
import { otherChain, otherReadings } from './other-readings.ts';
import { prepareSound } from './prepared-sound.ts';
import { longestOf, shiftedRuns, splitRuns, steadyTimesOf } from './runs.ts';
import { findSecond } from './second-sound.ts';
import { BELIEVED, HEARD, reaches } from './self-check.ts';
import { steadyRate } from './steady-rate.ts';
import { runOf, strokesHeard } from './strokes-heard.ts';
import { withoutTails } from './tail-prediction.ts';
import { trackChains } from './track-chains.ts';

/** Range of stroke rates that is looked in when nothing better is known, strokes a second. */
export const SLOWEST = 70 / 60;
export const FASTEST = 520 / 60;
const SHORTEST = 1.5;
/** dB; below this the blow rings through to the next */
const LEAST_FALL = 2;
/** dB; a second sound louder than this against the marked one is the blow: where marks are right, it reads lower */
const LOUDER = -0.5;
const SURELY_LOUDER = 2;

/**
 * The beat of a running hammer from one recording: blow times, rate and its doubt, jitter, drift, missed strokes, runs
 * and run-downs, a second sound in every turn, and whatever else strikes regularly.
 *
 * Nothing in it names a cause, or even the hammer: it hears regular impacts. What it cannot tell it says, with what
 * would settle it.
 * @param samples one channel, full scale 1; not changed; may hold anything
 * @param rate samples a second, 4,000 to 400,000
 */
export function analyseBeat(samples: Float32Array, rate: number, options: BeatOptions = {}): BeatResult {
  const sound = prepareSound(samples, rate, options);
  const { facts } = sound;
  const notes: AdviceKind[] = [];
  if (facts.secondsRead < facts.seconds - 1) notes.push('read-in-part');
  if (facts.notNumbers > 0) notes.push('not-numbers');
  if (facts.secondsRead < SHORTEST) return notHeard(facts, ['too-short', ...notes]);
  if (!(sound.loudest > 1e-5)) return notHeard(facts, ['no-sound', ...notes]);
  const range = [1 / (options.fastest ?? FASTEST), 1 / (options.slowest ?? SLOWEST)] as const;
  if (!(range[0] > 0.02 && range[1] > range[0] && range[1] < 10)) throw new Error(`The slowest and fastest rate to look for make no range: ${1 / range[1]} to ${1 / range[0]} a second`);
  const seed = options.seed ?? 1;
  const bands = onsetBands(sound);
  const chains = trackChains(sound, bands, range, seed);
  const main = chains[0];
  if (!main) return notHeard(facts, ['no-beat', ...notes]);
  const { track } = main;
  let runs = splitRuns(track.times, track.saliences, track.periodAt, track.events, track.usual, facts.secondsRead);
  let longest = longestOf(runs);
  let steady = longest && steadyRate(longest);
  if (!longest || !steady) return notHeard(facts, ['no-beat', ...notes]);
  const skipped = runs.reduce((sum, run) => sum + run.strokes[run.strokes.length - 1]! + 1 - run.strokes.length, 0);
  const all = runs.reduce((sum, run) => sum + run.times.length, 0);
  const selfCheck = { fill: all / (all + skipped), contrast: main.contrast, jitterShare: steady.jitter * steady.rate.value, strokes: all };
  if (!reaches(selfCheck, HEARD)) return notHeard(facts, ['no-beat', ...notes]);

  const bent = facts.clippedBursts >= Math.max(5, 0.1 * all);
  let steadyTimes = steadyTimesOf(runs);
  const look = (): ReturnType<typeof findSecond> =>
    findSecond(withoutTails(sound.samples, sound.rate, steadyTimes, track.period), sound.samples, sound.rate, sound.hop, steadyTimes, track.period, steady!.jitter, bent, seed);
  let search = look();
  const level = search?.second.verdict === 'double' ? (search.second.levelDecibels?.value ?? -9) : -9;
  if (search && level > LOUDER) {
    // The onset that stands out best is not always the louder sound: what follows it may be. Then that is the blow,
    // unless, read from there, the first one is louder by still more.
    const before = { runs, longest, steady, steadyTimes, search };
    runs = shiftedRuns(runs, search.second.delay!.value, track.events);
    longest = longestOf(runs)!;
    steady = steadyRate(longest) ?? steady;
    steadyTimes = steadyTimesOf(runs);
    search = look();
    if (!search || (level < SURELY_LOUDER && search.second.verdict === 'double' && (search.second.levelDecibels?.value ?? -9) > level)) ({ runs, longest, steady, steadyTimes, search } = before);
  }
  if (!search) return notHeard(facts, ['too-short', ...notes]);
  const { turn, fall } = foldedTurn(sound, steadyTimes, search);
  const ringsThrough = fall < LEAST_FALL && search.second.verdict !== 'double';
  const second = ringsThrough && search.second.verdict === 'none seen' ? { ...search.second, verdict: 'cannot tell' as const } : search.second;
  const trust = reaches(selfCheck, BELIEVED) && !main.rhythm ? 'good' : 'doubtful';
  const blowsClear = quantile(sorted(track.saliences), 0.05) > 5 && trust === 'good';
  const figures = runs.map((run) => runOf(run, blowsClear)).filter((run): run is Run => run !== undefined);
  const recording = { ...facts, gainControl: swells(turn, track.period) };
  const readings = otherReadings(track);
  const others = chains[1] ? [otherChain(chains[1], main)] : [];

  if (bent) notes.push('clipped');
  if (recording.gainControl) notes.push('gain-control');
  if (trust === 'doubtful') notes.push('uneven');
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
    state: 'heard', recording, trust, rate: steady.rate, jitter: steady.jitter, ...(steady.drift && { drift: steady.drift }),
    strokes: strokesHeard(sound, runs, heardWithStrokes(search.heardWith, runs)),
    runs: figures, missed: figures.reduce((sum, run) => sum + run.missed, 0),
    second, folded: turn, otherReadings: readings, otherChains: others, selfCheck, advice: notes.map((kind) => advice(kind)),
  };
}

function notHeard(recording: RecordingFacts, kinds: readonly AdviceKind[]): BeatNotHeard {
  const words: Advice[] = kinds.map((kind) => advice(kind));
  return { state: 'cannot tell', recording, advice: words };
}

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
