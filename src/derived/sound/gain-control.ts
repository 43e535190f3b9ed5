import { bandEnergies, quantile, sorted } from '../../methods/signal/index.ts';
import type { PreparedSound } from './prepared-sound.ts';

/** Hz; room and ringing have died away soonest up here */
const [LOW, HIGH] = [3000, 8000] as const;
/** s before the first blow that must be there, and how long before a blow the quiet is measured */
const LEAST_BEFORE = 0.25;
const SHORTLY = 0.012;
const CLEAR = 0.02;
const LEAST_BLOWS = 8;
/** dB; on made-up recordings without gain control the highest was 0.2 */
const LOUDER = 1.2;

/**
 * Whether the recorder turned its gain down at the first blow and never quite up again: the background before the first
 * blow is louder than it is shortly before any later one. Whatever rings on makes it quieter, never louder. Where the
 * recording begins with a blow, or a room rings on from blow to blow, this cannot be seen.
 * @param times s, blows
 */
export function turnsGainDown(sound: PreparedSound, times: readonly number[]): boolean {
  const first = (times[0] ?? 0) - CLEAR;
  if (first < LEAST_BEFORE || times.length < LEAST_BLOWS || 0.4 * sound.rate < LOW) return false;
  const hop = 4 * sound.hop;
  const energies = bandEnergies(sound.samples, LOW, HIGH, sound.rate, hop);
  const frameOf = (time: number): number => Math.round((time * sound.rate) / hop);
  const before = energies.subarray(2, frameOf(first));
  const between = times.slice(3).flatMap((time) => energies[frameOf(time - SHORTLY)] ?? []);
  // The lower quarter, so that a word or a step before the first blow does not count.
  const decibels = (row: ArrayLike<number>): number => 10 * Math.log10(quantile(sorted(row), 0.25) + 1e-20);
  return before.length > 20 && decibels(before) - decibels(between) > LOUDER;
}
