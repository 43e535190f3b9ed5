import { decimate } from '../../methods/signal/index.ts';
import type { BeatOptions, RecordingFacts } from './beat-result.ts';

/** Samples ready to be read, at a rate between 4 and 33 kHz, cut into frames of about half a millisecond. */
export interface PreparedSound {
  readonly samples: Float32Array;
  /** samples a second */
  readonly rate: number;
  /** samples in a frame, and frames a second */
  readonly hop: number;
  readonly frameRate: number;
  readonly facts: RecordingFacts;
  /** greatest distance from the mean */
  readonly loudest: number;
}

export const LONGEST_READ = 600;
const AT_ONCE = 4096;

/**
 * Cleans and thins a recording: what is not a number becomes silence, the mean goes, rates above 44 kHz are halved or
 * more. The input is not changed.
 * @param samples one channel, full scale 1
 * @param rate samples a second, 4,000 to 400,000; otherwise a programmer's mistake and throws
 */
export function prepareSound(samples: Float32Array, rate: number, options: BeatOptions): PreparedSound {
  if (!(rate >= 4000 && rate <= 400_000)) throw new Error(`The sampling rate lies between 4,000 and 400,000 a second: ${rate}`);
  const longest = Math.min(options.longest ?? LONGEST_READ, 3600);
  const count = Math.min(samples.length, Math.floor(longest * rate));
  const clean = new Float32Array(count);
  const seen: Seen = { sum: 0, top: -Infinity, bottom: Infinity, notNumbers: 0, bursts: 0, run: 0 };
  for (let from = 0; from < count; from += AT_ONCE) keepNumbers(samples, clean, from, Math.min(count, from + AT_ONCE), seen);
  const mean = seen.sum / Math.max(1, count);
  const near = 0.002 * Math.max(seen.top, -seen.bottom);
  for (let from = 0; from < count; from += AT_ONCE) centre(clean, from, Math.min(count, from + AT_ONCE), mean, near, seen);
  const { notNumbers } = seen;
  const loudest = count > 0 ? Math.max(seen.top - mean, mean - seen.bottom) : 0;
  const factor = Math.max(1, Math.floor(rate / 22_000));
  const thin = factor === 1 ? clean : decimate(clean, factor);
  const thinRate = rate / factor;
  const hop = Math.max(2, Math.round(thinRate / 2000));
  return {
    samples: thin, rate: thinRate, hop, frameRate: thinRate / hop, loudest,
    facts: { seconds: samples.length / rate, secondsRead: count / rate, rate, notNumbers, clippedBursts: seen.bursts, gainControl: false },
  };
}

interface Seen {
  sum: number;
  top: number;
  bottom: number;
  notNumbers: number;
  /** of three or more neighbouring samples that stand together at the same greatest value */
  bursts: number;
  run: number;
}

/** Copies what is sound and remembers its sum and its ends; a piece at a time, so that the loop is compiled once and kept. */
function keepNumbers(samples: Float32Array, clean: Float32Array, from: number, to: number, seen: Seen): void {
  let { sum, top, bottom } = seen;
  let lost = 0;
  for (let i = from; i < to; i++) {
    const x = samples[i]!;
    // A float file may hold anything; beyond a thousand times full scale it is no sound.
    const y = Math.abs(x) <= 1000 ? x : 0;
    if (!(Math.abs(x) <= 1000)) lost++;
    clean[i] = y;
    sum += y;
    if (y > top) top = y;
    if (y < bottom) bottom = y;
  }
  seen.sum = sum;
  seen.top = top;
  seen.bottom = bottom;
  seen.notNumbers += lost;
}

/** Takes the mean out, and counts the bursts that stand within `near` of either end. */
function centre(clean: Float32Array, from: number, to: number, mean: number, near: number, seen: Seen): void {
  const high = seen.top - near;
  const low = seen.bottom + near;
  let { bursts, run } = seen;
  for (let i = from; i < to; i++) {
    const x = clean[i]!;
    clean[i] = x - mean;
    if (x < high && x > low) run = 0;
    else if (++run === 3) bursts++;
  }
  seen.bursts = bursts;
  seen.run = run;
}
