import { median } from '../../methods/signal/index.ts';

/** A single late arrival of the blow itself. */
export interface Echo {
  /** s after the blow */
  readonly delay: number;
  /** dB against the blow */
  readonly levelDecibels: number;
}

/** s; nearer ones are any room's own, and farther ones reach into the next blow */
const NEAREST = 0.0265;
const FARTHEST = 0.11;
/** s, how long an arrival is, and around it what it must stand above */
const LONG = 0.001;
const AROUND = 0.012;
const LEAST = 9; // dB; over made-up rooms without a wall the highest was 7.7
const FIRST = 0.019;

/**
 * An echo of the blow: one place in the response of the room to the blow that stands alone above the ringing and the
 * reverberation around it. A second blow that repeats perfectly would look the same.
 * @param response to the blow, by sample
 */
export function echoIn(response: Float64Array, rate: number): Echo | undefined {
  const half = Math.max(1, Math.round(0.5 * LONG * rate));
  const levels: number[] = [];
  for (let from = 0; from + 2 * half <= response.length && from < (FARTHEST + AROUND) * rate; from += half) {
    let sum = 0;
    for (let k = 0; k < 2 * half; k++) sum += response[from + k]! ** 2;
    levels.push(10 * Math.log10(sum + 1e-20));
  }
  const [first, around] = [Math.round((FIRST * rate) / half), Math.round((AROUND * rate) / half)];
  let found: Echo | undefined;
  let most = LEAST;
  for (let i = Math.ceil((NEAREST * rate) / half) - 1; i < levels.length && (i + 1) * half < FARTHEST * rate; i++) {
    const height = levels[i]! - median(levels.slice(Math.max(first, i - around), i + around + 1));
    if (height > most) [most, found] = [height, { delay: ((i + 1) * half) / rate, levelDecibels: levels[i]! }];
  }
  return found;
}
