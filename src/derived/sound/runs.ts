import { median } from '../../methods/signal/index.ts';
import type { Candidate } from './candidates.ts';

/** Blows of one stretch of running. */
export interface RunOfBlows {
  /** s, in order */
  readonly times: readonly number[];
  readonly saliences: readonly number[];
  /** number of the stroke that each blow is, from 0; gaps are strokes not heard */
  readonly strokes: readonly number[];
  /** how many of the last blows belong to the slowing down; 0 when there is none */
  readonly runDown: number;
}

/** A pause of more strokes than this ends a run. */
const LONGEST_GAP = 4.5;
const LEAST_BLOWS = 3;
/** s; an onset this near to a blow is the blow */
const NEAR = 0.012;
/** Natural logarithm of the odds against chance that a slowing down must have, and what each of its strokes pays. */
const SURELY_SLOWING = 4;
const ENTRANCE = 0.5;

/**
 * Cuts a chain of blows into runs, follows each beyond its end while the hammer slows down, and numbers the strokes.
 * @param events all onsets, for the slowing down, whose strokes the even chain leaves out
 * @param usual salience of a usual blow
 * @param seconds length of the recording
 */
export function splitRuns(times: readonly number[], saliences: readonly number[], periodAt: (time: number) => number, events: readonly Candidate[], usual: number, seconds: number): RunOfBlows[] {
  const starts = [0];
  for (let i = 1; i < times.length; i++) if (times[i]! - times[i - 1]! > LONGEST_GAP * periodAt(times[i]!)) starts.push(i);
  const runs: RunOfBlows[] = [];
  starts.forEach((start, k) => {
    const end = starts[k + 1] ?? times.length;
    if (end - start < LEAST_BLOWS) return;
    const own = times.slice(start, end);
    const strengths = saliences.slice(start, end);
    const period = periodAt(own[own.length - 1]!);
    const limit = Math.min(times[end] ?? seconds, seconds);
    const followed = limit - own[own.length - 1]! > 1.5 * period ? followDown(own, events, 0.35 * usual, limit - 0.5 * period, period) : [];
    const slowing = [...own, ...followed.map((event) => event.time)];
    const strokes = [0];
    for (let i = 1; i < slowing.length; i++) strokes.push(strokes[i - 1]! + Math.max(1, Math.round((slowing[i]! - slowing[i - 1]!) / Math.max(periodAt(slowing[i]!), i >= own.length ? slowing[i]! - slowing[i - 1]! : 0))));
    const runDown = limit - slowing[slowing.length - 1]! > 1.5 * period ? runDownBlows(slowing, strokes) : 0;
    // What was followed but does not slow down like a hammer came from the background.
    const count = runDown > 0 ? slowing.length : own.length;
    runs.push({ times: slowing.slice(0, count), saliences: [...strengths, ...followed.map((event) => event.salience)].slice(0, count), strokes: strokes.slice(0, count), runDown });
  });
  return runs;
}

/** The run with most steady blows. */
export function longestOf(runs: readonly RunOfBlows[]): RunOfBlows | undefined {
  return [...runs].sort((a, b) => b.times.length - b.runDown - (a.times.length - a.runDown))[0];
}

/** s, all blows but those of run-downs. */
export const steadyTimesOf = (runs: readonly RunOfBlows[]): number[] => runs.flatMap((run) => run.times.slice(0, run.times.length - run.runDown));

/** The same strokes marked by their other sound. @param delay s from the one to the other; onsets within 6 ms of it are taken */
export function shiftedRuns(runs: readonly RunOfBlows[], delay: number, events: readonly Candidate[]): RunOfBlows[] {
  return runs.map((run) => {
    let from = 0;
    const times = run.times.map((time) => {
      const wanted = time + delay;
      while (from < events.length && events[from]!.time < wanted - 0.006) from++;
      let best = wanted;
      let nearest = 0.006;
      for (let i = from; i < events.length && events[i]!.time <= wanted + 0.006; i++) {
        const away = Math.abs(events[i]!.time - wanted);
        if (away < nearest) [nearest, best] = [away, events[i]!.time];
      }
      return Math.max(0, best);
    });
    return { ...run, times };
  });
}

/**
 * Blows after the last of a run whose intervals grow, one after another; none where chance would bring as many of the
 * run's other onsets to such places.
 */
function followDown(times: readonly number[], events: readonly Candidate[], least: number, limit: number, period: number): Candidate[] {
  const others = othersAmong(times, events);
  const length = times[times.length - 1]! - times[0]!;
  const followed: Candidate[] = [];
  let last = times[times.length - 1]!;
  let interval = Math.min(1.2 * period, Math.max(0.95 * period, last - times[times.length - 2]!));
  // How much longer each turn may take than the last: anything up to half as much again at first, then much the same as before.
  let slowest: readonly [number, number] = [0.97, 1.45];
  let [evidence, most, count] = [0, 0, 0];
  for (let round = 0; round < 40; round++) {
    let chosen: Candidate | undefined;
    let top = 0;
    for (const event of events) {
      const gap = (event.time - last) / interval;
      if (event.time > limit || gap < slowest[0] || gap > slowest[1] || event.salience < least) continue;
      const value = event.salience * (1 - 1.5 * Math.abs(gap - 1.07));
      if (value > top) [top, chosen] = [value, event];
    }
    if (!chosen) break;
    const { salience } = chosen;
    const byChance = ((others.filter((other) => other.salience >= salience).length + 0.5) / length) * (slowest[1] - slowest[0]) * interval;
    evidence += -Math.log(byChance) - ENTRANCE;
    followed.push(chosen);
    if (evidence > most) [most, count] = [evidence, followed.length];
    const growth = (chosen.time - last) / interval;
    slowest = [Math.max(0.97, growth - 0.12), Math.min(1.45, Math.max(1.22, growth + 0.12))];
    interval = Math.max(period, chosen.time - last);
    last = chosen.time;
  }
  return most >= SURELY_SLOWING ? followed.slice(0, count) : [];
}

/** Onsets of the run's stretch that are none of its blows; times in order. */
export function othersAmong(times: readonly number[], events: readonly Candidate[]): Candidate[] {
  const out: Candidate[] = [];
  let i = 0;
  for (const event of events) {
    if (event.time < times[0]! || event.time > times[times.length - 1]!) continue;
    while (i + 1 < times.length && Math.abs(times[i + 1]! - event.time) <= Math.abs(times[i]! - event.time)) i++;
    if (Math.abs(times[i]! - event.time) > NEAR) out.push(event);
  }
  return out;
}

/** How many blows at the end come slower and slower. */
function runDownBlows(times: readonly number[], strokes: readonly number[]): number {
  const count = times.length;
  if (count < 8) return 0;
  const intervals: number[] = [];
  for (let i = 1; i < count; i++) intervals.push((times[i]! - times[i - 1]!) / (strokes[i]! - strokes[i - 1]!));
  const steady = median(intervals.slice(0, Math.max(4, intervals.length - 8)));
  if (intervals[intervals.length - 1]! < 1.07 * steady) return 0;
  let blows = 0;
  for (let i = intervals.length - 1; i >= 0 && intervals[i]! > 1.025 * steady && blows < 40; i--) {
    // Going back in time, the intervals must shrink, but for jitter.
    if (i + 1 < intervals.length && intervals[i]! > 1.06 * intervals[i + 1]!) break;
    blows++;
  }
  return blows >= 2 ? blows : 0;
}
