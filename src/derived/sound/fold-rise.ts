import { NORMAL_CONSISTENCY, middleOf } from '../../methods/signal/index.ts';
import type { Fold } from './fold.ts';

/** Where and how finely a fold is laid. */
export type FoldShape = Pick<Fold, 'firstDelay' | 'step' | 'places' | 'bands'>;

/** How the folded turn rises, by delay. */
export interface FoldRise {
  /** dB, mean rise of each band; index band * places + place */
  readonly rises: Float64Array;
  /** dB, usual spread of each band's rise around the place */
  readonly spreads: Float64Array;
  /** all bands together, in spreads of a turn without events */
  readonly combined: Float64Array;
}

/** s after and before the blow within which it is the blow itself */
export interface Guard {
  readonly after: number;
  readonly before: number;
}

export const AHEAD = 0.008;
const BEHIND = 0.008;
const APART = 0.001;
/** s on either side over which a band's usual spread is taken */
export const AROUND = 0.04;
const CAP = 5;
const BEYOND_CAP = 0.1;
const TO_DECIBELS = 10 / Math.LN10;
/** dB; rises are never measured finer than this. */
const LEAST_SPREAD = 0.08;

/** First and last place, both inclusive, of those that are asked about. */
export type Places = readonly [from: number, to: number];

/**
 * Rise of the mean logarithmic energies at each delay, dB: the next 8 ms, the nearest counting most, against the last 8.
 * @param only places that are asked about; elsewhere it is 0
 * @returns index band * places + place
 */
export function risesOf({ places, bands, step }: FoldShape, means: Float64Array, only: Places = [0, places - 1]): Float64Array {
  const [ahead, behind, apart] = [Math.round(AHEAD / step), Math.round(BEHIND / step), Math.round(APART / step)];
  const low = Math.max(0, only[0] - apart - behind);
  const last = Math.min(places - 1, only[1]);
  const high = Math.min(places, last + ahead);
  const rises = new Float64Array(bands * places);
  const sums = new Float64Array(places + 1);
  const sumsOfSums = new Float64Array(places + 1);
  for (let band = 0; band < bands; band++) {
    const at = band * places;
    for (let i = low; i < high; i++) {
      sums[i + 1] = sums[i]! + means[at + i]!;
      sumsOfSums[i + 1] = sumsOfSums[i]! + sums[i + 1]!;
    }
    for (let i = Math.max(0, only[0]); i <= last; i++) {
      const to = Math.min(places, i + ahead);
      const until = Math.max(0, i - apart);
      const first = Math.max(0, until - behind);
      const span = to - i;
      const after = (sumsOfSums[to]! - sumsOfSums[i]! - span * sums[i]!) / ((span * (span + 1)) / 2);
      if (until > first) rises[at + i] = (after - (sums[until]! - sums[first]!) / (until - first)) * TO_DECIBELS;
    }
  }
  return rises;
}

/** Bands together: each in its own spreads (so that false alarms are equally likely everywhere), capped, summed over the root of their number. */
export function combineBands({ places, bands }: FoldShape, rises: Float64Array, spreads: Float64Array, only: Places = [0, places - 1]): Float64Array {
  const combined = new Float64Array(places);
  const share = 1 / Math.sqrt(bands);
  for (let i = Math.max(0, only[0]); i <= Math.min(places - 1, only[1]); i++) {
    let sum = 0;
    for (let at = i; at < bands * places; at += places) {
      const rise = rises[at]! / spreads[at]!;
      sum += rise > CAP ? CAP + BEYOND_CAP * (rise - CAP) : rise < -CAP ? -CAP : rise;
    }
    combined[i] = share * sum;
  }
  return combined;
}

/**
 * Each band's usual spread around each place: the median absolute rise within 40 ms, thinned, outside the guard; the
 * falling of the tail does not count as spread.
 * @param only places from and to which it is wanted; elsewhere it is 1
 */
export function usualSpreads({ firstDelay, step, places, bands }: FoldShape, rises: Float64Array, nearest: Guard, only?: Places): Float64Array {
  const around = Math.round(AROUND / step);
  const spreads = new Float64Array(bands * places).fill(1);
  const stride = 3;
  const spaced = 8;
  const chosen = new Int32Array(Math.ceil((2 * around + 1) / stride));
  const values = new Float64Array(chosen.length);
  for (let i = 0; i < places; i += spaced) {
    if (only && (i + spaced <= only[0] || i > only[1])) continue;
    let count = 0;
    for (let j = Math.max(0, i - around); j <= Math.min(places - 1, i + around); j += stride) {
      const delay = firstDelay + j * step;
      if (delay >= nearest.after || delay <= -nearest.before) chosen[count++] = j;
    }
    for (let band = 0; band < bands; band++) {
      const at = band * places;
      const spread = count > 4 ? spreadOfRises(rises, at, chosen, values, count) : 1;
      spreads.fill(Math.max(LEAST_SPREAD, spread), at + i, at + Math.min(places, i + spaced));
    }
  }
  return spreads;
}

function spreadOfRises(rises: Float64Array, at: number, chosen: Int32Array, values: Float64Array, count: number): number {
  for (let n = 0; n < count; n++) values[n] = rises[at + chosen[n]!]!;
  const middle = Math.min(0, middleOf(values, count));
  for (let n = 0; n < count; n++) values[n] = Math.abs(values[n]! - middle);
  return NORMAL_CONSISTENCY * middleOf(values, count);
}
