import { NORMAL_CONSISTENCY, median } from '../../methods/signal/index.ts';
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

/**
 * Rise of the mean logarithmic energies at each delay: the next 8 ms, the nearest counting most,
 * against the last 8. Each band is measured by its
 * own spread around the place (so that false alarms are equally likely everywhere), capped, and summed over the bands.
 * @param given spreads from elsewhere, instead of the fold's own
 */
export function foldRise(fold: FoldShape, means: Float64Array, nearest: Guard, given?: Float64Array): FoldRise {
  const rises = risesOf(fold, means);
  const spreads = given ?? usualSpreads(fold, rises, nearest);
  return { rises, spreads, combined: combineBands(fold, rises, spreads) };
}

/** dB, rise of each band at each place; index band * places + place */
export function risesOf({ places, bands, step }: FoldShape, means: ArrayLike<number>, from = 0): Float64Array {
  const [ahead, behind, apart] = [AHEAD, BEHIND, APART].map((s) => Math.round(s / step)) as [number, number, number];
  const rises = new Float64Array(bands * places);
  const sums = new Float64Array(places + 1);
  const sumsOfSums = new Float64Array(places + 1);
  for (let band = 0; band < bands; band++) {
    const at = band * places;
    for (let i = 0; i < places; i++) {
      sums[i + 1] = sums[i]! + means[from + at + i]!;
      sumsOfSums[i + 1] = sumsOfSums[i]! + sums[i + 1]!;
    }
    for (let i = 0; i < places; i++) {
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

/** Bands together: each in its own spreads, capped, summed over the root of their number. */
export function combineBands({ places, bands }: FoldShape, rises: Float64Array, spreads: Float64Array): Float64Array {
  const combined = new Float64Array(places);
  for (let i = 0; i < bands * places; i++) {
    const rise = rises[i]! / spreads[i]!;
    combined[i % places] = combined[i % places]! + (rise > CAP ? CAP + BEYOND_CAP * (rise - CAP) : Math.max(-CAP, rise));
  }
  for (let i = 0; i < places; i++) combined[i] = combined[i]! / Math.sqrt(bands);
  return combined;
}

/**
 * Each band's usual spread around each place: the median absolute rise within 40 ms, thinned, outside the guard; the
 * falling of the tail does not count as spread.
 * @param only places from and to which it is wanted; elsewhere it is 1
 */
export function usualSpreads({ firstDelay, step, places, bands }: FoldShape, rises: Float64Array, nearest: Guard, only?: readonly [number, number]): Float64Array {
  const around = Math.round(AROUND / step);
  const spreads = new Float64Array(bands * places).fill(1);
  const stride = 3;
  const spaced = 8;
  for (let i = 0; i < places; i += spaced) {
    if (only && (i + spaced <= only[0] || i > only[1])) continue;
    const chosen: number[] = [];
    for (let j = Math.max(0, i - around); j <= Math.min(places - 1, i + around); j += stride) {
      const delay = firstDelay + j * step;
      if (delay >= nearest.after || delay <= -nearest.before) chosen.push(j);
    }
    for (let band = 0; band < bands; band++) {
      const at = band * places;
      let spread = 1;
      if (chosen.length > 4) {
        const values = chosen.map((j) => rises[at + j]!);
        const middle = Math.min(0, median(values));
        spread = NORMAL_CONSISTENCY * median(values.map((v) => Math.abs(v - middle)));
      }
      spreads.fill(Math.max(LEAST_SPREAD, spread), at + i, at + Math.min(places, i + spaced));
    }
  }
  return spreads;
}
