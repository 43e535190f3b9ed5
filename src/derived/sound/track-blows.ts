import { median, quantile, robustSpread, sorted } from '../../methods/signal/index.ts';
import { alignBlows } from './align-blows.ts';
import { blowsInPauses } from './bridge-pauses.ts';
import { candidates, type Candidate } from './candidates.ts';
import { bestChain, chainEvents } from './chain.ts';
import { learnedWeights } from './learned-weights.ts';
import { localPeriod } from './local-period.ts';
import { novelty, type OnsetBands } from './onset-bands.ts';
import { bestPeriod, likelyPeriods, searchPeriods, type PeriodFound } from './period-search.ts';
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
  /** periods tried with the last weights, best first; only then are all of them followed */
  readonly periods: () => readonly PeriodFound[];
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
  let search = searchIn(bands, start, FIRST_THRESHOLD, range, seconds);
  for (let round = 0; round < 2; round++) {
    const { best, list } = search;
    if (!best || best.chain.members.length < 4) return undefined;
    search = searchIn(bands, learnedWeights(bands, timesOf(list, best.chain.members), best.period), LATER_THRESHOLD, range, seconds);
  }
  const { best, list, row } = search;
  if (!best || best.chain.members.length < 4) return undefined;
  let members = best.chain.members;
  let times = timesOf(list, members);
  let period = usualPeriod(times, best.period);
  let periodAt = localPeriod(times, period);
  let usual = 1;
  for (let round = 0; round < 2; round++) {
    const slack = Math.min(0.1, Math.max(0.03, 2 * unevenness(times, periodAt)));
    usual = Math.max(1e-6, median(saliencesOf(list, members)));
    members = bestChain(chainEvents(list, usual), periodsOf(list, periodAt), slack).members;
    times = timesOf(list, members);
    if (times.length < 4) return undefined;
    period = usualPeriod(times, period);
    periodAt = localPeriod(times, period);
  }
  const blows = [...members.map((m) => list[m]!), ...blowsInPauses(row, bands.frameRate, times, periodAt).map((time) => ({ time, salience: LATER_THRESHOLD }))].sort((a, b) => a.time - b.time);
  const fine = alignBlows(row, bands.frameRate, blows.map((blow) => blow.time));
  const stays = sureBlows(bands, fine, periodAt, list);
  return { times: fine.filter((_, i) => stays[i]), saliences: blows.filter((_, i) => stays[i]).map((blow) => blow.salience), period, periodAt, events: list, periods: search.periods, novelty: row, usual };
}

interface Search {
  /** the novelty */
  readonly row: Float32Array;
  readonly list: readonly Candidate[];
  readonly best: PeriodFound | undefined;
  readonly periods: () => PeriodFound[];
}

/** Onsets with the bands so weighted, and the even chain that explains most of them. */
function searchIn(bands: OnsetBands, weights: readonly number[] | undefined, least: number, range: readonly [number, number], seconds: number): Search {
  const row = novelty(bands, weights);
  const list = candidates(row, bands.frameRate, least, bands.parts);
  if (list.length < 2) return { row, list, best: undefined, periods: () => [] };
  const events = chainEvents(list, usualSalience(list, seconds));
  const periods = likelyPeriods(row, bands.frameRate, range);
  return { row, list, best: bestPeriod(periods, events), periods: () => searchPeriods(periods, events) };
}

function timesOf(list: readonly Candidate[], members: readonly number[]): number[] {
  const out: number[] = [];
  for (const m of members) out.push(list[m]!.time);
  return out;
}

function saliencesOf(list: readonly Candidate[], members: readonly number[]): number[] {
  const out: number[] = [];
  for (const m of members) out.push(list[m]!.salience);
  return out;
}

/** s, period at each candidate */
export function periodsOf(list: readonly Candidate[], periodAt: (time: number) => number): Float64Array {
  const out = new Float64Array(list.length);
  for (let i = 0; i < out.length; i++) out[i] = periodAt(list[i]!.time);
  return out;
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
