import type { Fold } from './fold.ts';
import type { FoldRise } from './fold-rise.ts';

/** dB added to the computed limit, so that what lies above it is found in 97 of 100 made-up recordings. */
const MARGIN = 6;
const EVERY = 0.005;

/**
 * The weakest second sound that would have been noticed, by delay: one with the blow's own spectrum, at that level,
 * must lift the bands so far that together they reach what a verdict needs.
 * @param needed combined rise in spreads
 */
export function detectionLimit(fold: Fold, rise: FoldRise, origin: number, nearest: { readonly after: number; readonly before: number }, needed: number): { delay: number; levelDecibels: number }[] {
  const ahead = Math.round(0.008 / fold.step);
  // Mean energy of the blow over its first 8 ms, by band.
  const blow = Array.from({ length: fold.bands }, (_, band) => {
    let sum = 0;
    for (let i = 0; i < ahead; i++) sum += Math.exp(fold.means[band * fold.places + Math.min(fold.places - 1, origin + i)]!);
    return sum / ahead;
  });
  const out: { delay: number; levelDecibels: number }[] = [];
  const first = fold.firstDelay + 0.01;
  for (let k = 0; first + k * EVERY <= -fold.firstDelay - 0.01; k++) {
    const place = Math.round((first + k * EVERY - fold.firstDelay) / fold.step);
    const delay = (place - origin) * fold.step;
    if (delay > -nearest.before && delay < nearest.after) continue;
    let [low, high] = [-60, 10];
    for (let round = 0; round < 12; round++) {
      const middle = (low + high) / 2;
      if (reached(place, 10 ** (middle / 10)) >= needed) high = middle;
      else low = middle;
    }
    out.push({ delay, levelDecibels: Math.min(0, high + MARGIN) });
  }
  return out;

  function reached(place: number, ratio: number): number {
    let sum = 0;
    for (let band = 0; band < fold.bands; band++) {
      const at = band * fold.places + place;
      const there = Math.exp(fold.means[at]!);
      const lifted = 10 * Math.log10(1 + (ratio * blow[band]!) / there) / rise.spreads[at]!;
      sum += lifted > 5 ? 5 + 0.1 * (lifted - 5) : lifted;
    }
    return sum / Math.sqrt(fold.bands);
  }
}
