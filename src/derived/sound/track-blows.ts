import { median, quantile, robustSpread, sorted } from '../../methods/signal/index.ts';
import { alignBlows } from './align-blows.ts';
import { blowsInPauses } from './bridge-pauses.ts';
import { candidates, type Candidate } from './candidates.ts';
import { bestChain } from './chain.ts';
import { learnedWeights } from './learned-weights.ts';
import { localPeriod } from './local-period.ts';
import { novelty, type OnsetBands } from './onset-bands.ts';
import { searchPeriods, type PeriodFound } from './period-search.ts';
import { sureBlows } from './sure-blows.ts';

/** The blows of a recording, as far as onsets and an even beat tell. */
export interface Track {
  /** s, in order */
  readonly times: readonly number[];
  readonly saliences: readonly number[];
  /** s, the usual period and by time */
  readonly period: number;
  readonly periodAt: (time: number) => number;
  /** all that stood out, blows or not */
  readonly events: readonly Candidate[];
  /** periods tried with the last weights, best first */
  readonly periods: readonly PeriodFound[];
  readonly novelty: Float32Array;
  readonly usual: number;
}

/** Robust spreads that an onset must stand out by: first, and once the bands are weighted. */
const FIRST_THRESHOLD = 3.2;
const LATER_THRESHOLD = 2.6;

/**
 * Finds the chain of blows: a first chain on all bands alike, then twice with the bands weighted by how well they told
 * the blows found so far, then with the period allowed to follow the machine.
 * @param range s, shortest and longest period
 * @param left events to leave out, by time
 */
export function trackBlows(bands: OnsetBands, range: readonly [number, number], start?: readonly number[]): Track | undefined {
  const seconds = bands.parts.reduce((sum, [from, to]) => sum + to - from, 0) / bands.frameRate;
  let weights: readonly number[] | undefined = start;
  let row = novelty(bands, weights);
  let list = candidates(row, bands.frameRate, FIRST_THRESHOLD, bands.parts);
  let usual = usualSalience(list, seconds);
  let periods = searchPeriods(row, bands.frameRate, list, usual, range);
  for (let round = 0; round < 2; round++) {
    const best = periods[0];
    if (!best || best.chain.members.length < 4) return undefined;
    weights = learnedWeights(bands, best.chain.members.map((m) => list[m]!.time), best.period);
    row = novelty(bands, weights);
    list = candidates(row, bands.frameRate, LATER_THRESHOLD, bands.parts);
    usual = usualSalience(list, seconds);
    periods = searchPeriods(row, bands.frameRate, list, usual, range);
  }
  const best = periods[0];
  if (!best || best.chain.members.length < 4) return undefined;
  let members = best.chain.members;
  let times = members.map((m) => list[m]!.time);
  let period = usualPeriod(times, best.period);
  let periodAt = localPeriod(times, period);
  for (let round = 0; round < 2; round++) {
    const slack = Math.min(0.1, Math.max(0.03, 2 * unevenness(times, periodAt)));
    usual = Math.max(1e-6, median(members.map((m) => list[m]!.salience)));
    members = bestChain(list, usual, periodAt, slack).members;
    times = members.map((m) => list[m]!.time);
    if (times.length < 4) return undefined;
    period = usualPeriod(times, period);
    periodAt = localPeriod(times, period);
  }
  const blows = [...members.map((m) => list[m]!), ...blowsInPauses(row, bands.frameRate, times, periodAt).map((time) => ({ time, salience: LATER_THRESHOLD }))].sort((a, b) => a.time - b.time);
  const fine = alignBlows(row, bands.frameRate, blows.map((blow) => blow.time));
  const stays = sureBlows(bands, fine, periodAt, list);
  return { times: fine.filter((_, i) => stays[i]), saliences: blows.filter((_, i) => stays[i]).map((blow) => blow.salience), period, periodAt, events: list, periods, novelty: row, usual };
}

/** Salience of a usual strong event: the middle of the strongest two a second. */
function usualSalience(list: readonly Candidate[], seconds: number): number {
  if (list.length === 0) return 1;
  const inOrder = sorted(list.map((c) => c.salience));
  const strong = inOrder.slice(Math.max(0, inOrder.length - Math.max(4, Math.round(2 * seconds))));
  return Math.max(1e-6, quantile(strong, 0.5));
}

/** Median interval per stroke, s. */
function usualPeriod(times: readonly number[], period: number): number {
  const spans: number[] = [];
  for (let i = 1; i < times.length; i++) {
    const gap = times[i]! - times[i - 1]!;
    const turns = Math.round(gap / period);
    if (turns >= 1 && turns <= 4) spans.push(gap / turns);
  }
  return spans.length > 0 ? median(spans) : period;
}

/** Spread of the intervals about the local period, as a share of it. */
export function unevenness(times: readonly number[], periodAt: (time: number) => number): number {
  const off: number[] = [];
  for (let i = 1; i < times.length; i++) {
    const turns = (times[i]! - times[i - 1]!) / periodAt(times[i]!);
    if (turns < 4.5) off.push(turns - Math.round(turns));
  }
  return off.length > 2 ? robustSpread(off) : 0.05;
}
