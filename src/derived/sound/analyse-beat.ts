import type { AdviceKind } from './advice.ts';
import type { BeatNotHeard, BeatOptions, BeatResult } from './beat-result.ts';
import { markedBlows } from './marked-blows.ts';
import { onsetBands } from './onset-bands.ts';
import { otherChain, otherReadings } from './other-readings.ts';
import { prepareSound, type PreparedSound } from './prepared-sound.ts';
import { notHeard, readBlows, type ShareDone } from './read-blows.ts';
import { splitRuns } from './runs.ts';
import { trackChains } from './track-chains.ts';

/** Range of stroke rates that is looked in when nothing better is known, strokes a second. */
export const SLOWEST = 70 / 60;
export const FASTEST = 520 / 60;
const SHORTEST = 1.5;
/** Shares of the work after which the recording is cleaned, the onsets are there, and the blows are found. */
const [CLEANED, ROSE, TRACKED] = [0.07, 0.2, 0.55];

/**
 * The beat of a running hammer from one recording: blow times, rate and its doubt, jitter, drift, missed strokes, runs
 * and run-downs, a second sound in every turn, and whatever else strikes regularly.
 *
 * Nothing in it names a cause, or even the hammer: it hears regular impacts. What it cannot tell it says, with what
 * would settle it.
 * @param samples one channel, full scale 1; not changed; may hold anything
 * @param rate samples a second, 4,000 to 400,000
 * @param done is told the share of the work that is done
 */
export function analyseBeat(samples: Float32Array, rate: number, options: BeatOptions = {}, done: ShareDone = () => undefined): BeatResult {
  const range = [1 / (options.fastest ?? FASTEST), 1 / (options.slowest ?? SLOWEST)] as const;
  if (!(range[0] > 0.02 && range[1] > range[0] && range[1] < 10)) throw new Error(`The slowest and fastest rate to look for make no range: ${1 / range[1]} to ${1 / range[0]} a second`);
  return told(done, samples, rate, options, (sound, notes) => {
    const seed = options.seed ?? 1;
    const bands = onsetBands(sound);
    done(ROSE);
    const chains = trackChains(bands, range, seed);
    done(TRACKED);
    if (!chains) return notHeard(sound.facts, ['no-beat', ...notes]);
    const { main, other } = chains;
    const { track } = main;
    const runs = splitRuns(track.times, track.saliences, track.periodAt, track.events, track.usual, sound.facts.secondsRead);
    const given = { track, runs, contrast: main.contrast, rhythm: main.rhythm, guessed: chains.guessed, byHand: false, readings: otherReadings(track), others: other ? [otherChain(other.chain, other.levelDecibels)] : [] };
    return readBlows(sound, given, notes, seed, (share) => done(TRACKED + (1 - TRACKED) * share));
  });
}

/**
 * The same from blows that a person has marked. No mark is moved, added or left out, and none is doubted; whatever else
 * strikes is not looked for.
 * @param times s from the start of the recording, in any order; those within 5 ms of the one before are left out
 */
export function analyseFrom(samples: Float32Array, rate: number, times: readonly number[], options: BeatOptions = {}, done: ShareDone = () => undefined): BeatResult {
  return told(done, samples, rate, options, (sound, notes) => {
    const bands = onsetBands(sound);
    const begun = 2 * ROSE;
    done(begun);
    const seed = options.seed ?? 1;
    const given = markedBlows(bands, times, sound.facts.secondsRead, seed);
    return given === undefined ? notHeard(sound.facts, ['few-marks', ...notes]) : readBlows(sound, given, notes, seed, (share) => done(begun + (1 - begun) * share));
  });
}

/** Cleans the recording and has it read, where there is anything to read; the end is told whatever comes out. */
function told(done: ShareDone, samples: Float32Array, rate: number, options: BeatOptions, read: (sound: PreparedSound, notes: readonly AdviceKind[]) => BeatResult): BeatResult {
  done(0);
  const sound = prepareSound(samples, rate, options);
  const { facts } = sound;
  const notes: AdviceKind[] = [];
  if (facts.secondsRead < facts.seconds - 1) notes.push('read-in-part');
  if (facts.notNumbers > 0) notes.push('not-numbers');
  const refusal: BeatNotHeard | undefined = facts.secondsRead < SHORTEST ? notHeard(facts, ['too-short', ...notes]) : !(sound.loudest > 1e-5) ? notHeard(facts, ['no-sound', ...notes]) : undefined;
  if (refusal === undefined) done(CLEANED);
  const result = refusal ?? read(sound, notes);
  done(1);
  return result;
}
