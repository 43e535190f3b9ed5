import type { PreparedSound } from './prepared-sound.ts';

/** s after and before the onset that count */
const AFTER = 0.03;
const BEFORE = 0.015;

/** Mean square of each blow over its first 30 ms less that of the 15 ms before it, 0 or more. @param times s */
export function blowEnergies(sound: PreparedSound, times: readonly number[]): Float64Array {
  return Float64Array.from(times, (t) => Math.max(0, meanSquare(sound, t - 0.002, t + AFTER) - meanSquare(sound, t - 0.003 - BEFORE, t - 0.003)));
}

/** @param from s @param to s */
function meanSquare({ samples, rate }: PreparedSound, from: number, to: number): number {
  const first = Math.max(0, Math.round(from * rate));
  const last = Math.min(samples.length, Math.round(to * rate));
  let sum = 0;
  for (let i = first; i < last; i++) sum += samples[i]! * samples[i]!;
  return last > first ? sum / (last - first) : 0;
}
