import { median } from '../../methods/signal/index.ts';
import { highest } from './highest.ts';
import type { OnsetBands } from './onset-bands.ts';
import type { Track } from './track-blows.ts';

/** Standard errors by which the upper bands must rise together at the other place; share of it that they may at the marks. */
const CLEAR = 7;
const NOTHING_HERE = 0.33;
/** Share of it that they may reach at a third place. */
const ALONE = 0.65;
const EACH = 3.5;
/** s around the marks that still are the marks */
const AT_MARKS = 0.004;
const APART = 0.015;
/** A rise counts up to so many spreads. */
const CAP = 6;

/**
 * The chain moved to where the upper bands rise. A low thud that lasts from blow to blow sways with the turn and can
 * make the low bands rise anywhere in it, as regularly as the blows come; the click of the blow is in the upper bands.
 * Where these rise at one place of the turn together, and not at all at the marks, the blows are there.
 */
export function atOnset(bands: OnsetBands, track: Track): Track {
  const shift = clickAfter(bands, track);
  if (shift === 0) return track;
  return {
    ...track, times: track.times.map((t) => t + shift), periodAt: (time) => track.periodAt(time - shift),
    events: track.events.map((e) => ({ ...e, time: e.time + shift })),
  };
}

/** s from the marks to the click; 0 where they lie on it or none is sure */
function clickAfter(bands: OnsetBands, { times, period }: Track): number {
  const { frameRate, rises } = bands;
  const upper = rises.slice(Math.ceil(rises.length / 2));
  const half = Math.floor(0.5 * period * frameRate);
  if (upper.length < 2 || half < 20) return 0;
  const folds = upper.map((row) => standardFold(row, times.map((t) => Math.round(t * frameRate)), half));
  const sum = new Float64Array(folds[0]!.length);
  for (const fold of folds) addRow(sum, fold, 1 / Math.sqrt(folds.length));
  const top = highest(sum, half, half);
  let [here, third] = [0, 0];
  for (let i = 0; i < sum.length; i++) {
    if (Math.abs(i - half) <= AT_MARKS * frameRate) here = Math.max(here, sum[i]!);
    const away = Math.abs(i - top);
    if (Math.min(away, 2 * half - away) > APART * frameRate) third = Math.max(third, sum[i]!);
  }
  const together = folds.filter((fold) => Math.max(fold[top - 2] ?? 0, fold[top - 1] ?? 0, fold[top]!, fold[top + 1] ?? 0, fold[top + 2] ?? 0) > EACH).length;
  return sum[top]! >= CLEAR && here <= NOTHING_HERE * sum[top]! && third <= ALONE * sum[top]! && together >= 2 ? (top - half) / frameRate : 0;
}

/** Mean rise by place in the turn, from its middle value and in its standard errors. */
function standardFold(row: Float32Array, centres: readonly number[], half: number): Float64Array {
  const sums = new Float64Array(2 * half + 1);
  for (const centre of centres) addCapped(sums, row, centre - half);
  const smooth = new Float64Array(sums.length);
  const last = sums.length - 1;
  for (let i = 0; i <= last; i++) smooth[i] = (sums[Math.max(0, i - 1)]! + sums[i]! + sums[Math.min(last, i + 1)]!) / 3 / centres.length;
  const middle = median(smooth);
  let [mean, square, count] = [0, 0, 0];
  for (let i = 0; i < row.length; i += 7, count++) {
    mean += row[i]!;
    square += row[i]! ** 2;
  }
  const error = Math.sqrt(Math.max(1e-9, square / count - (mean / count) ** 2) / centres.length);
  for (let i = 0; i <= last; i++) smooth[i] = (smooth[i]! - middle) / error;
  return smooth;
}

function addRow(into: Float64Array, row: Float64Array, weight: number): void {
  for (let i = 0; i < into.length; i++) into[i] = into[i]! + weight * row[i]!;
}

function addCapped(into: Float64Array, row: Float32Array, from: number): void {
  for (let i = Math.max(0, -from), end = Math.min(into.length, row.length - from); i < end; i++) into[i] = into[i]! + Math.min(CAP, row[from + i]!);
}
