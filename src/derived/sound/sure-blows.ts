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
  const alike = likeness(bands, times, others);
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
      const offs = new Float64Array(own.length);
      for (let i = 0; i < offs.length; i++) offs[i] = offLine(own, strokes, i, step > 0 ? Math.min(i, own.length - NEIGHBOURS - 1) : Math.max(0, i - NEIGHBOURS));
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
  const [x, y] = [new Float64Array(NEIGHBOURS), new Float64Array(NEIGHBOURS)];
  for (let j = start, n = 0; n < NEIGHBOURS; j++) {
    if (j === i) continue;
    x[n] = strokes[j]!;
    y[n++] = times[j]!;
  }
  const line = straightLine(x, y)!;
  return Math.abs(times[i]! - (line.intercept + line.slope * (strokes[i]! - line.middle)));
}

/** Share of blows that are no more like the usual blow than each is, and share of other onsets that are as like it. */
function likeness(bands: OnsetBands, times: readonly number[], others: readonly Candidate[]): { asBlow: number; asOther: number }[] {
  const rows: Float64Array[] = [];
  for (const time of times) rows.push(risesAt(bands, time));
  const usual = new Float64Array(bands.rises.length);
  const spreads = new Float64Array(usual.length);
  const column = new Float64Array(rows.length);
  for (let b = 0; b < usual.length; b++) {
    for (let i = 0; i < rows.length; i++) column[i] = rows[i]![b]!;
    usual[b] = median(column);
    spreads[b] = Math.max(LEAST_RISE_SPREAD, robustSpread(column, usual[b]));
  }
  const [own, foreign] = [new Float64Array(rows.length), new Float64Array(others.length)];
  for (let i = 0; i < own.length; i++) own[i] = unlike(rows[i]!, usual, spreads);
  for (let i = 0; i < foreign.length; i++) foreign[i] = unlike(risesAt(bands, others[i]!.time), usual, spreads);
  const [ownInOrder, foreignInOrder] = [sorted(own), sorted(foreign)];
  return Array.from(own, (value) => ({ asBlow: (own.length - below(ownInOrder, value)) / own.length, asOther: (below(foreignInOrder, value + 1e-9) + 0.5) / (foreign.length + 1) }));
}

/** How far a row lies from the usual one, in spreads, each band held. */
function unlike(row: Float64Array, usual: Float64Array, spreads: Float64Array): number {
  let sum = 0;
  for (let b = 0; b < row.length; b++) sum += Math.min(FARTHEST, Math.abs(row[b]! - usual[b]!) / spreads[b]!) ** 2;
  return sum;
}

/** How many values in order are less than one. */
function below(inOrder: Float64Array, value: number): number {
  let low = 0;
  let high = inOrder.length;
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
