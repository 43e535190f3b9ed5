import type { Candidate } from './candidates.ts';

/** Strokes that may be missing between two blows of one run. */
export const MOST_SKIPPED = 3;
/** A candidate gains its strength (the usual blow is 1) less this, so that weak ones between blows gain nothing. */
const ENTRANCE = 0.4;
const SKIP_COST = 0.45;
const BREAK_COST = 2.5;
const MOST_STRENGTH = 1.3;

export interface Chain {
  /** indices into the candidates, in time order */
  readonly members: readonly number[];
  /** how many times a stroke was skipped inside runs */
  readonly skipped: number;
  /** what the chain gains in all; the usual blow gains 0.6 */
  readonly gain: number;
}

/** Candidates as chains are made of them, in time order. */
export interface ChainEvents {
  /** s */
  readonly times: Float64Array;
  /** what each gains a chain that takes it in */
  readonly gains: Float64Array;
  /** by count, what so many of them gain at most */
  readonly most: Float64Array;
}

/** @param usual salience of a usual blow, above 0 */
export function chainEvents(list: readonly Candidate[], usual: number): ChainEvents {
  const count = list.length;
  const [times, gains, most] = [new Float64Array(count), new Float64Array(count), new Float64Array(count + 1)];
  for (let i = 0; i < count; i++) {
    times[i] = list[i]!.time;
    gains[i] = Math.min(MOST_STRENGTH, list[i]!.salience / usual) - ENTRANCE;
  }
  const inOrder = gains.slice().sort();
  for (let i = 0; i < count; i++) most[i + 1] = most[i]! + Math.max(0, inOrder[count - 1 - i]!);
  return { times, gains, most };
}

const reachOf = (slack: number): number => Math.min(0.2, 2.5 * slack);

/** What no chain of an even period can exceed: its members lie so far apart that only so many find room, and those are the best at most. */
export function mostGain({ times, most }: ChainEvents, period: number, slack: number): number {
  if (times.length === 0) return 0;
  const room = Math.floor((times[times.length - 1]! - times[0]!) / (period * (1 - reachOf(slack))) + 1e-6) + 1;
  return most[Math.min(times.length, room)]!;
}

/**
 * The chain of candidates that best fits a beat: dynamic programming over candidates (in the manner of D. P. W. Ellis,
 * Beat tracking by dynamic programming, J. New Music Research 36 (2007) 51), where a link may skip strokes, pays for
 * unevenness, and a pause may break the chain at any phase for a fee.
 * @param periods s, by candidate
 * @param slack share of the period at which unevenness costs half a blow, above 0
 */
export function bestChain({ times, gains }: ChainEvents, periods: Float64Array, slack: number): Chain {
  const count = times.length;
  const best = new Float64Array(count);
  const link = new Int32Array(count).fill(-1);
  const skips = new Uint8Array(count);
  const reach = reachOf(slack);
  let farBest = 0;
  let farAt = -1;
  let farNext = 0;
  let from = 0;
  /** by turns, the first candidate that lies so many before */
  const first = new Int32Array(MOST_SKIPPED + 2);
  for (let i = 0; i < count; i++) {
    const here = times[i]!;
    const p = periods[i]!;
    const uneven = 1 / (p * slack);
    while (from < i && here - times[from]! > p * (MOST_SKIPPED + 1 + reach)) from++;
    for (; farNext < from; farNext++)
      if (best[farNext]! > farBest) {
        farBest = best[farNext]!;
        farAt = farNext;
      }
    let top = 0;
    let to = -1;
    let skipped = 0;
    if (farAt >= 0 && farBest - BREAK_COST > top) {
      top = farBest - BREAK_COST;
      to = farAt;
    }
    for (let whole = MOST_SKIPPED + 1; whole > 0; whole--) {
      const farthest = here - p * (whole + reach);
      const nearest = here - p * (whole - reach);
      const fee = SKIP_COST * (whole - 1);
      let j = first[whole]!;
      while (j < i && times[j]! < farthest) j++;
      while (j > from && times[j - 1]! >= farthest) j--;
      first[whole] = j;
      for (; j < i && times[j]! <= nearest; j++) {
        if (best[j]! - fee <= top) continue;
        const off = (here - times[j]! - whole * p) * uneven;
        const value = best[j]! - 0.3 * off * off - fee;
        if (value > top) {
          top = value;
          to = j;
          skipped = whole - 1;
        }
      }
    }
    best[i] = top + gains[i]!;
    link[i] = to;
    skips[i] = skipped;
  }
  let end = -1;
  for (let i = 0; i < count; i++) if (end < 0 || best[i]! > best[end]!) end = i;
  const members: number[] = [];
  let total = 0;
  for (let i = end; i >= 0; i = link[i]!) {
    members.push(i);
    total += skips[i]!;
  }
  return { members: members.reverse(), skipped: total, gain: end < 0 ? 0 : Math.max(0, best[end]!) };
}
