import { autocorrelation, peaks } from '../../methods/signal/index.ts';
import { bestChain, mostGain, type Chain, type ChainEvents } from './chain.ts';

export interface PeriodFound {
  /** s */
  readonly period: number;
  readonly chain: Chain;
}

const MOST_PERIODS = 10;
/** Share of the period that the first chains may be uneven by. */
const FIRST_SLACK = 0.08;

/** Periods that explain the candidates, each judged by the chain that it supports, best first. @param periods s */
export function searchPeriods(periods: readonly number[], events: ChainEvents): PeriodFound[] {
  return periods.map((period) => ({ period, chain: evenChain(events, period) })).sort((a, b) => b.chain.gain - a.chain.gain);
}

/** The first of them alone: what cannot be better is not followed. */
export function bestPeriod(periods: readonly number[], events: ChainEvents): PeriodFound | undefined {
  let best: PeriodFound | undefined;
  for (const period of periods) {
    if (best && mostGain(events, period, FIRST_SLACK) <= best.chain.gain) continue;
    const chain = evenChain(events, period);
    if (!best || chain.gain > best.chain.gain) best = { period, chain };
  }
  return best;
}

const evenChain = (events: ChainEvents, period: number): Chain => bestChain(events, new Float64Array(events.times.length).fill(period), FIRST_SLACK);

/**
 * Periods worth a trial: peaks of the novelty's autocorrelation summed over four multiples of the lag, with half and
 * twice each.
 * @param range s, shortest and longest period to look for
 */
export function likelyPeriods(novelty: Float32Array, frameRate: number, range: readonly [number, number]): number[] {
  const thin = 4;
  const rate = frameRate / thin;
  const row = new Float32Array(Math.floor(novelty.length / thin));
  for (let i = 0; i < row.length; i++) row[i] = Math.max(novelty[thin * i]!, novelty[thin * i + 1]!, novelty[thin * i + 2]!, novelty[thin * i + 3]!);
  const longest = Math.min(row.length - 1, Math.ceil(range[1] * 4 * rate) + 4);
  const lags = autocorrelation(row, longest);
  // Uneven blows blur the peaks of long lags more, so each multiple is looked for within a growing window.
  const comb = new Float64Array(Math.min(longest, Math.ceil(range[1] * rate) + 2));
  for (let lag = Math.floor(range[0] * rate); lag < comb.length; lag++) {
    let sum = 0;
    for (let tooth = 1; tooth <= 4; tooth++) {
      const width = Math.round(0.004 * rate * Math.sqrt(tooth)) + 1;
      let top = 0;
      for (let k = Math.max(0, tooth * lag - width), end = Math.min(lags.length - 1, tooth * lag + width); k <= end; k++) if (lags[k]! > top) top = lags[k]!;
      sum += top / Math.sqrt(tooth);
    }
    comb[lag] = Math.max(0, sum);
  }
  const found = peaks(comb, 1e-4, Math.round(0.01 * rate)).sort((a, b) => b.height - a.height).slice(0, MOST_PERIODS);
  const tried = new Set<number>();
  const periods: number[] = [];
  for (const peak of found) {
    for (const factor of [1, 0.5, 2]) {
      const period = (peak.at / rate) * factor;
      const key = Math.round(Math.log(period) / 0.015);
      if (period < range[0] || period > range[1] || tried.has(key)) continue;
      tried.add(key);
      periods.push(period);
    }
  }
  return periods;
}
