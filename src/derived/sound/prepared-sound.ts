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
  let notNumbers = 0;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const x = samples[i]!;
    // A float file may hold anything; beyond a thousand times full scale it is no sound.
    if (Math.abs(x) <= 1000) {
      clean[i] = x;
      sum += x;
    } else notNumbers++;
  }
  const mean = sum / Math.max(1, count);
  let loudest = 0;
  for (let i = 0; i < count; i++) {
    const x = (clean[i] = clean[i]! - mean);
    if (Math.abs(x) > loudest) loudest = Math.abs(x);
  }
  const factor = Math.max(1, Math.floor(rate / 22_000));
  const thin = factor === 1 ? clean : decimate(clean, factor);
  const thinRate = rate / factor;
  const hop = Math.max(2, Math.round(thinRate / 2000));
  return {
    samples: thin, rate: thinRate, hop, frameRate: thinRate / hop, loudest,
    facts: { seconds: samples.length / rate, secondsRead: count / rate, rate, notNumbers, clippedBursts: clippedBursts(clean, mean), gainControl: false },
  };
}

/** Bursts of three or more neighbouring samples that stand together at the same greatest value. */
function clippedBursts(samples: Float32Array, mean: number): number {
  let [top, bottom] = [0, 0];
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i]!;
    if (x > top) top = x;
    else if (x < bottom) bottom = x;
  }
  const near = 0.002 * Math.max(top + mean, -(bottom + mean));
  const [high, low] = [top - near, bottom + near];
  let [bursts, run] = [0, 0];
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i]!;
    if (x < high && x > low) run = 0;
    else if (++run === 3) bursts++;
  }
  return bursts;
}
