import { median, robustSpread, thinned } from '../../methods/signal/index.ts';
import { candidates } from './candidates.ts';
import { contrastOf } from './contrast.ts';
import { learnedWeights } from './learned-weights.ts';
import { localPeriod } from './local-period.ts';
import { novelty, type OnsetBands } from './onset-bands.ts';
import type { BlowsGiven } from './read-blows.ts';
import { splitRuns } from './runs.ts';

const FEWEST = 4;
/** s; marks nearer to one another are one */
const APART = 0.005;
/** s around a mark within which its onset may stand */
const NEAR = 0.006;
/** A turn while it slows down takes at least and at most so many times the last one. */
const [NO_FASTER, NO_SLOWER] = [0.95, 1.45];
/** Part by which the last turn of a slowing down exceeds the usual one. */
const SLOWED = 1.07;
const THRESHOLD = 2.6;

/**
 * Blows as a person marked them, made ready to be read like those that the program finds.
 * @param marks s, in any order
 * @param seconds length of the recording
 * @param seed of the chance that they are held against
 * @returns undefined with fewer than four inside the recording
 */
export function markedBlows(bands: OnsetBands, marks: readonly number[], seconds: number, seed: number): BlowsGiven | undefined {
  const inOrder = marks.filter((time) => time >= 0 && time <= seconds).sort((a, b) => a - b);
  const times = inOrder.filter((time, i) => i === 0 || time - inOrder[i - 1]! > APART);
  if (times.length < FEWEST) return undefined;
  const period = usualTurn(times);
  const steady = localPeriod(times, period);
  const slow = slowingTurns(times, steady);
  const periodAt = (time: number): number => slow.get(time) ?? steady(time);
  const row = novelty(bands, learnedWeights(bands, times, period));
  const thin = thinned(row, 5);
  const [base, spread] = [median(thin), Math.max(1e-3, robustSpread(thin))];
  const near = Math.round(NEAR * bands.frameRate);
  const saliences = times.map((time) => {
    const at = Math.round(time * bands.frameRate);
    let top = base;
    for (let i = Math.max(0, at - near); i <= Math.min(row.length - 1, at + near); i++) top = Math.max(top, row[i]!);
    return (top - base) / spread;
  });
  const usual = Math.max(1e-6, median(saliences));
  const events = candidates(row, bands.frameRate, THRESHOLD);
  return {
    track: { period, saliences, events }, runs: splitRuns(times, saliences, periodAt, [], usual, seconds),
    contrast: contrastOf({ times, period, periodAt, usual, events }, seed), rhythm: false, guessed: false, byHand: true, readings: [], others: [],
  };
}

/** s, median turn; a gap that holds several counts as so many. */
function usualTurn(times: readonly number[]): number {
  const gaps = times.slice(1).map((time, i) => time - times[i]!);
  const rough = median(gaps);
  return median(gaps.flatMap((gap) => (Math.round(gap / rough) >= 1 && Math.round(gap / rough) <= 4 ? [gap / Math.round(gap / rough)] : [])));
}

/** By mark, the length of its own turn, where a run ends in turns that take longer and longer: no stroke is missing there. */
function slowingTurns(times: readonly number[], steady: (time: number) => number): ReadonlyMap<number, number> {
  const gap = (i: number): number => times[i]! - times[i - 1]!;
  const out = new Map<number, number>();
  for (let last = times.length - 1; last > 1; last--) {
    const ends = last + 1 === times.length || gap(last + 1) > NO_SLOWER * gap(last) * 2;
    if (!ends || gap(last) < SLOWED * steady(times[last]!)) continue;
    for (let i = last; i > 1; i--) {
      const growth = gap(i) / gap(i - 1);
      if (!(growth >= NO_FASTER && growth <= NO_SLOWER)) break;
      out.set(times[i]!, gap(i));
    }
  }
  return out;
}
