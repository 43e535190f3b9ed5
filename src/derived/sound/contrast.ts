import { nextUniform, seeded } from '../../methods/chance/index.ts';
import { bestChain } from './chain.ts';
import type { Track } from './track-blows.ts';

const SHUFFLES = 3;

/**
 * Gain of the chain against the best that chance would give: the events are thrown to random times within the stretch
 * that the chain covers, with their saliences, and the best chain over nearby and distant periods is taken.
 */
export function contrastOf(track: Pick<Track, 'times' | 'events' | 'usual' | 'period' | 'periodAt'>, seed: number): number {
  const first = track.times[0]!;
  const last = track.times[track.times.length - 1]!;
  const events = track.events.filter((e) => e.time >= first - 0.01 && e.time <= last + 0.01).slice(0, 1500);
  const end = events[events.length - 1]?.time ?? last;
  const generator = seeded(seed, 'thrown events');
  const slack = 0.06;
  const gain = Math.max(...[0.985, 1, 1.015].map((f) => bestChain(events, track.usual, (t) => f * track.periodAt(t), slack).gain));
  let chance = 0;
  for (let round = 0; round < SHUFFLES; round++) {
    const thrown = events.map((e) => ({ time: first + nextUniform(generator) * (end - first), salience: e.salience })).sort((a, b) => a.time - b.time);
    let best = 0;
    for (const factor of [0.8, 0.9, 1, 1.1, 1.25]) best = Math.max(best, bestChain(thrown, track.usual, () => factor * track.period, slack).gain);
    chance += best / SHUFFLES;
  }
  return chance > 0 ? gain / chance : gain > 0 ? 10 : 0;
}
