import { sorted, median, straightLine } from '../../methods/signal/index.ts';
import type { Estimate } from '../../derived/sound/index.ts';

/** A stretch of marks without a pause. */
export interface MarkedRun {
  readonly first: number;
  readonly last: number;
  readonly strokes: number;
  readonly missedAt: readonly number[];
}

/** What marks that a person has put right amount to. */
export interface MarkedBeat {
  /** strokes a second over the longest run */
  readonly rate: Estimate;
  /** s, scatter about an even beat */
  readonly jitter: number;
  readonly strokes: number;
  readonly missed: number;
  readonly runs: readonly MarkedRun[];
}

/** Gap that ends a run, in periods. */
const PAUSE = 4;
const FEWEST = 4;

/**
 * Rate, scatter, missed strokes and runs of blows that were marked by hand, by least squares over the longest run.
 * @param times s, in any order
 * @returns undefined with fewer than four marks in any run
 */
export function markedBeat(times: readonly number[]): MarkedBeat | undefined {
  const marks = [...times].sort((a, b) => a - b);
  const gaps = marks.slice(1).map((time, i) => time - marks[i]!).filter((gap) => gap > 0.02);
  if (gaps.length < FEWEST - 1) return undefined;
  const period = median(gaps);
  const rows: number[][] = [];
  for (const time of marks) {
    const row = rows.at(-1);
    if (row === undefined || time - row.at(-1)! > PAUSE * period) rows.push([time]);
    else row.push(time);
  }
  const longest = [...rows].sort((a, b) => b.length - a.length)[0]!;
  if (longest.length < FEWEST) return undefined;
  const places = placesOf(longest, period);
  const line = straightLine(places, longest);
  if (line === undefined || !(line.slope > 0)) return undefined;
  const off = longest.map((time, i) => time - (line.slope * (places[i]! - line.middle) + line.intercept));
  const error = Math.sqrt(off.reduce((sum, x) => sum + x * x, 0) / Math.max(1, off.length - 2) / line.spreadOfX);
  const rate = 1 / line.slope;
  const doubt = (2 * error) / line.slope ** 2;
  const runs = rows.filter((row) => row.length > 1).map((row): MarkedRun => ({ first: row[0]!, last: row.at(-1)!, strokes: row.length, missedAt: missedIn(row, line.slope) }));
  return { rate: { value: rate, low: rate - doubt, high: rate + doubt }, jitter: scatterOf(longest, places), strokes: marks.length, missed: runs.reduce((sum, run) => sum + run.missedAt.length, 0), runs };
}

/** Scatter of each blow about its neighbours, so that a slow drift of the rate is not taken for unevenness: second differences of unbroken turns over the root of six. */
function scatterOf(times: readonly number[], places: readonly number[]): number {
  const bends = times.flatMap((time, i) => (i > 1 && places[i]! - places[i - 2]! === 2 && places[i]! - places[i - 1]! === 1 ? [time - 2 * times[i - 1]! + times[i - 2]!] : []));
  return bends.length === 0 ? 0 : Math.sqrt(bends.reduce((sum, x) => sum + x * x, 0) / bends.length / 6);
}

/** Number of the turn that each mark stands for. */
function placesOf(row: readonly number[], period: number): number[] {
  let place = 0;
  return row.map((time, i) => (i === 0 ? 0 : (place += Math.max(1, Math.round((time - row[i - 1]!) / period)))));
}

function missedIn(row: readonly number[], period: number): number[] {
  const missed: number[] = [];
  for (let i = 1; i < row.length; i++) {
    const turns = Math.round((row[i]! - row[i - 1]!) / period);
    for (let k = 1; k < turns; k++) missed.push(row[i - 1]! + ((row[i]! - row[i - 1]!) * k) / turns);
  }
  return missed;
}

/** The mark nearest to a time. @returns its index, or undefined where there is none */
export function nearestMark(times: readonly number[], time: number): number | undefined {
  let best: number | undefined;
  times.forEach((one, i) => {
    if (best === undefined || Math.abs(one - time) < Math.abs(times[best]! - time)) best = i;
  });
  return best;
}

/** Marks in order without doubles within 5 ms. */
export const tidyMarks = (times: readonly number[]): readonly number[] => Array.from(sorted(times)).filter((time, i, all) => i === 0 || time - all[i - 1]! > 0.005);
