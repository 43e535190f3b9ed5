import type { OtherChain, OtherReading } from './beat-result.ts';
import { splitRuns } from './runs.ts';
import { steadyRate } from './steady-rate.ts';
import type { ChainTrack } from './track-chains.ts';
import type { Track } from './track-blows.ts';

/** Periods that explain the events too, by how much of the chosen chain's gain theirs reaches; at most three. */
export function otherReadings(track: Track): OtherReading[] {
  const periods = track.periods();
  const best = Math.max(1e-9, ...periods.map((p) => p.chain.gain));
  const out: OtherReading[] = [];
  for (const { period, chain } of periods) {
    const ratio = period / track.period;
    if (Math.abs(ratio - 1) < 0.1 || out.some((o) => Math.abs(o.rate * period - 1) < 0.1)) continue;
    const kind = Math.abs(ratio - 2) < 0.1 ? 'half the rate' : Math.abs(ratio - 0.5) < 0.03 ? 'double the rate' : 'another rate';
    // Every other blow of a beat always makes a chain of half the gain; only what goes beyond that speaks for it.
    const share = chain.gain / best;
    out.push({ rate: 1 / period, kind, against: kind === 'half the rate' ? Math.max(0, 2 * share - 1) : share });
  }
  return out.sort((a, b) => b.against - a.against).slice(0, 3);
}

/** A second chain in figures. @param levelDecibels of its usual blow against the main one's */
export function otherChain({ track }: ChainTrack, levelDecibels: number): OtherChain {
  const runs = splitRuns(track.times, track.saliences, track.periodAt, [], track.usual, Infinity);
  const longest = [...runs].sort((a, b) => b.times.length - a.times.length)[0];
  const rate = (longest && steadyRate(longest)?.rate) ?? { value: 1 / track.period, low: 0.95 / track.period, high: 1.05 / track.period };
  return { rate, impacts: track.times.length, levelDecibels, times: track.times };
}
