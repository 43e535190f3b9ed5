import { median, robustSpread, sorted, straightLine } from '../../methods/signal/index.ts';
import type { Candidate } from './candidates.ts';
import type { OnsetBands } from './onset-bands.ts';
import { risesAt } from './rises-at.ts';
import { othersAmong } from './runs.ts';

/** Neighbours by which the place of a blow is foretold. */
const NEIGHBOURS = 6;
/** How many blows at either end are in question. */
const MOST = 4;
/** Share of true blows that stand out of line, or are unlike any other. */
const ODD = 0.02;
/** s; no place is known better */
const LEAST_SPREAD = 0.0005;
/** Spreads of one band's rise: no narrower, and counted no farther. */
const LEAST_RISE_SPREAD = 0.7;
const FARTHEST = 3;
/** Natural logarithm of the odds against the outermost blows from which they are left out. */
const DOUBTFUL = 1;
/** A pause of more strokes than this is no place to foretell across. */
const LONGEST_GAP = 4.5;

/**
 * Which members of a chain stay when the ends of its stretches are looked at: there a chain takes along what the
 * background happens to bring near the beat before the hammer starts and after it stops, and this tilts the rate most.
 * Judged by how far they are out of line with their neighbours and how their rises, band by band, are like those of
 * the other blows, against the onsets that are none.
 * @param times s, in order
 * @param events all onsets
 * @returns for each, whether it stays
 */
export function sureBlows(bands: OnsetBands, times: readonly number[], periodAt: (time: number) => number, events: readonly Candidate[]): boolean[] {
  const stays = times.map(() => true);
  if (times.length < 2 * NEIGHBOURS) return stays;
  const others = othersAmong(times, events);
  const often = (others.length + 0.5) / (times[times.length - 1]! - times[0]!);
  const alike = likeness(bands, times, others.map((other) => other.time));
  for (const [from, to] of stretches(times, periodAt)) {
    if (to - from < 2 * NEIGHBOURS) continue;
    const own = times.slice(from, to);
    const strokes = [0];
    for (let i = 1; i < own.length; i++) strokes.push(strokes[i - 1]! + Math.max(1, Math.round((own[i]! - own[i - 1]!) / periodAt(own[i]!))));
    const missing = 0.02 + 1 - own.length / (strokes[own.length - 1]! + 1);
    const odds = (off: number, spread: number, i: number): number => {
      const { asBlow, asOther } = alike[from + i]!;
      const byChance = Math.min(1, often * asOther * 2 * Math.max(off, spread));
      return Math.log((Math.max(ODD, asBlow) * Math.max(ODD, Math.exp(-0.5 * (off / spread) ** 2))) / byChance);
    };
    for (const step of [1, -1]) {
      const offs = own.map((_, i) => offLine(own, strokes, i, step > 0 ? Math.min(i, own.length - NEIGHBOURS - 1) : Math.max(0, i - NEIGHBOURS)));
      const spread = Math.max(LEAST_SPREAD, robustSpread(offs));
      let [sum, least, cut] = [0, -DOUBTFUL, 0];
      for (let k = 0; k < MOST; k++) {
        const i = step > 0 ? k : own.length - 1 - k;
        sum += odds(offs[i]!, spread, i) + (Math.abs(strokes[i + step]! - strokes[i]!) - 1) * Math.log(missing);
        if (sum < least) [least, cut] = [sum, k + 1];
      }
      for (let k = 0; k < cut; k++) stays[step > 0 ? from + k : to - 1 - k] = false;
    }
  }
  return stays;
}

/** s by which a blow is off the line through its neighbours, the first of which is at `start`. */
function offLine(times: readonly number[], strokes: readonly number[], i: number, start: number): number {
  const near: number[] = [];
  for (let j = start; near.length < NEIGHBOURS; j++) if (j !== i) near.push(j);
  const line = straightLine(near.map((j) => strokes[j]!), near.map((j) => times[j]!))!;
  return Math.abs(times[i]! - (line.intercept + line.slope * (strokes[i]! - line.middle)));
}

/** Share of blows that are no more like the usual blow than each is, and share of other onsets that are as like it. */
function likeness(bands: OnsetBands, times: readonly number[], others: readonly number[]): { asBlow: number; asOther: number }[] {
  const rows = times.map((time) => risesAt(bands, time));
  const usual = bands.rises.map((_, b) => median(rows.map((row) => row[b]!)));
  const spreads = usual.map((_, b) => Math.max(LEAST_RISE_SPREAD, robustSpread(rows.map((row) => row[b]!))));
  const unlike = (row: Float64Array): number => row.reduce((sum, rise, b) => sum + Math.min(FARTHEST, Math.abs(rise - usual[b]!) / spreads[b]!) ** 2, 0);
  const [own, foreign] = [sorted(rows.map(unlike)), sorted(others.map((time) => unlike(risesAt(bands, time))))];
  return rows.map((row) => {
    const value = unlike(row);
    return { asBlow: (own.length - below(own, value)) / own.length, asOther: (below(foreign, value + 1e-9) + 0.5) / (foreign.length + 1) };
  });
}

/** How many values in order are less than one. */
function below(inOrder: Float64Array, value: number): number {
  let [low, high] = [0, inOrder.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (inOrder[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** First and last index, the last one exclusive, of what runs without a pause. */
function stretches(times: readonly number[], periodAt: (time: number) => number): [number, number][] {
  const out: [number, number][] = [];
  let start = 0;
  for (let i = 1; i <= times.length; i++) {
    if (i < times.length && times[i]! - times[i - 1]! <= LONGEST_GAP * periodAt(times[i]!)) continue;
    out.push([start, i]);
    start = i;
  }
  return out;
}
