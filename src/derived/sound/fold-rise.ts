import { NORMAL_CONSISTENCY, median } from '../../methods/signal/index.ts';
import type { Fold } from './fold.ts';

/** How the folded turn rises, by delay. */
export interface FoldRise {
  /** dB, mean rise of each band; index band * places + place */
  readonly rises: Float64Array;
  /** dB, usual spread of each band's rise around the place */
  readonly spreads: Float64Array;
  /** all bands together, in spreads of a turn without events */
  readonly combined: Float64Array;
}

const AHEAD = 0.008;
const BEHIND = 0.008;
const APART = 0.001;
/** s on either side over which a band's usual spread is taken */
const AROUND = 0.04;
const CAP = 5;
const BEYOND_CAP = 0.1;
const TO_DECIBELS = 10 / Math.LN10;
/** dB; rises are never measured finer than this. */
const LEAST_SPREAD = 0.08;

/**
 * Rise of the mean logarithmic energies at each delay: the next 8 ms, the nearest counting most,
 * against the last 8. Each band is measured by its
 * own spread around the place (so that false alarms are equally likely everywhere), capped, and summed over the bands.
 * @param nearest s after and before the blow within which it is the blow itself
 * @param given spreads from elsewhere, instead of the fold's own
 */
export function foldRise(fold: Pick<Fold, 'firstDelay' | 'step' | 'places' | 'bands'>, means: Float64Array, nearest: { readonly after: number; readonly before: number }, given?: Float64Array): FoldRise {
  const { places, bands, step, firstDelay } = fold;
  const [ahead, behind, apart, around] = [AHEAD, BEHIND, APART, AROUND].map((s) => Math.round(s / step)) as [number, number, number, number];
  const rises = new Float64Array(bands * places);
  const spreads = given ?? new Float64Array(bands * places);
  const combined = new Float64Array(places);
  const inside = (place: number): boolean => {
    const delay = firstDelay + place * step;
    return delay >= nearest.after || delay <= -nearest.before;
  };
  for (let band = 0; band < bands; band++) {
    const at = band * places;
    const sums = new Float64Array(places + 1);
    const sumsOfSums = new Float64Array(places + 1);
    for (let i = 0; i < places; i++) {
      sums[i + 1] = sums[i]! + means[at + i]!;
      sumsOfSums[i + 1] = sumsOfSums[i]! + sums[i + 1]!;
    }
    for (let i = 0; i < places; i++) {
      const to = Math.min(places, i + ahead);
      const until = Math.max(0, i - apart);
      const from = Math.max(0, until - behind);
      const span = to - i;
      const after = (sumsOfSums[to]! - sumsOfSums[i]! - span * sums[i]!) / ((span * (span + 1)) / 2);
      if (until > from) rises[at + i] = (after - (sums[until]! - sums[from]!) / (until - from)) * TO_DECIBELS;
    }
    if (!given) localSpreads(rises.subarray(at, at + places), spreads.subarray(at, at + places), around, inside);
    for (let i = 0; i < places; i++) {
      const rise = rises[at + i]! / spreads[at + i]!;
      combined[i] = combined[i]! + (rise > CAP ? CAP + BEYOND_CAP * (rise - CAP) : Math.max(-CAP, rise));
    }
  }
  for (let i = 0; i < places; i++) combined[i] = combined[i]! / Math.sqrt(bands);
  return { rises, spreads, combined };
}

/** Median absolute rise within reach, thinned, outside the guard; the falling of the tail does not count as spread. */
function localSpreads(row: Float64Array, into: Float64Array, around: number, inside: (place: number) => boolean): void {
  const stride = 3;
  const spaced = 8;
  for (let i = 0; i < row.length; i += spaced) {
    const values: number[] = [];
    for (let j = Math.max(0, i - around); j <= Math.min(row.length - 1, i + around); j += stride) if (inside(j)) values.push(row[j]!);
    let spread = 1;
    if (values.length > 4) {
      const middle = median(values);
      spread = NORMAL_CONSISTENCY * median(values.map((v) => Math.abs(v - Math.min(0, middle))));
    }
    into.fill(Math.max(LEAST_SPREAD, spread), i, Math.min(row.length, i + spaced));
  }
}
