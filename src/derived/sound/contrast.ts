import { nextUniform, seeded, type Generator } from '../../methods/chance/index.ts';
import type { Candidate } from './candidates.ts';
import { bestChain, chainEvents } from './chain.ts';
import { periodsOf, type Track } from './track-blows.ts';

const SHUFFLES = 3;
const MOST_EVENTS = 1500;
const SLACK = 0.06;
const NEARBY = [0.985, 1, 1.015] as const;
const DISTANT = [0.8, 0.9, 1, 1.1, 1.25] as const;

/**
 * Gain of the chain against the best that chance would give: the events are thrown to random times within the stretch
 * that the chain covers, with their saliences, and the best chain over nearby and distant periods is taken.
 */
export function contrastOf(track: Pick<Track, 'times' | 'events' | 'usual' | 'period' | 'periodAt'>, seed: number): number {
  const first = track.times[0]!;
  const last = track.times[track.times.length - 1]!;
  const events = within(track.events, first - 0.01, last + 0.01);
  const end = events[events.length - 1]?.time ?? last;
  const generator = seeded(seed, 'thrown events');
  const gain = bestGain(events, track.usual, periodsOf(events, track.periodAt), NEARBY);
  let chance = 0;
  for (let round = 0; round < SHUFFLES; round++) chance += bestGain(thrown(events, first, end, generator), track.usual, new Float64Array(events.length).fill(track.period), DISTANT) / SHUFFLES;
  return chance > 0 ? gain / chance : gain > 0 ? 10 : 0;
}

function within(events: readonly Candidate[], from: number, to: number): Candidate[] {
  const out: Candidate[] = [];
  for (const event of events) if (event.time >= from && event.time <= to && out.length < MOST_EVENTS) out.push(event);
  return out;
}

/** The events at random times, in order. */
function thrown(events: readonly Candidate[], first: number, end: number, generator: Generator): Candidate[] {
  const out: Candidate[] = [];
  for (const { salience } of events) out.push({ time: first + nextUniform(generator) * (end - first), salience });
  return out.sort(byTime);
}

const byTime = (a: Candidate, b: Candidate): number => a.time - b.time;

/** Gain of the best chain over some multiples of the period. @param periods s, by event */
function bestGain(events: readonly Candidate[], usual: number, periods: Float64Array, factors: readonly number[]): number {
  const all = chainEvents(events, usual);
  const scaled = new Float64Array(periods.length);
  let best = 0;
  for (const factor of factors) {
    for (let i = 0; i < scaled.length; i++) scaled[i] = factor * periods[i]!;
    best = Math.max(best, bestChain(all, scaled, SLACK).gain);
  }
  return best;
}
