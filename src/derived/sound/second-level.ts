import { bootstrap, quantile } from '../../methods/signal/index.ts';
import type { Estimate } from './beat-result.ts';
import type { Fold } from './fold.ts';

/** s of sound that is compared, and of what lies before it */
const AHEAD = 0.008;
const BEHIND = 0.008;
const APART = 0.0015;
const ROUNDS = 48;
/** dB; what the tail takes with it, and the spread that drawing strokes again does not show. From made-up recordings. */
const OFFSET = 1.3;
const LEAST_SPREAD = 2;

/**
 * Energy of the second sound against the blow's, in decibels: what each adds over its first 8 ms to what was there
 * before, summed over the bands.
 * @returns undefined when it adds nothing that can be measured
 */
export function secondLevel(fold: Fold, origin: number, place: number, draw: () => number): Estimate | undefined {
  const first = addedEnergies(fold, origin);
  const second = addedEnergies(fold, place);
  const ratio = (chosen?: Uint32Array): number | undefined => {
    let [top, bottom] = [0, 0];
    const count = chosen?.length ?? fold.blows;
    for (let i = 0; i < count; i++) {
      const blow = chosen ? chosen[i]! : i;
      top += second[blow]!;
      bottom += first[blow]!;
    }
    return top > 0 && bottom > 0 ? 10 * Math.log10(top / bottom) + OFFSET : undefined;
  };
  const value = ratio();
  if (value === undefined) return undefined;
  const drawn = bootstrap(fold.blows, ROUNDS, draw, ratio);
  const [low, high] = drawn.length > 4 ? [quantile(drawn, 0.025), quantile(drawn, 0.975)] : [value - 6, value + 6];
  const half = Math.hypot(0.5 * (high - low), 1.96 * LEAST_SPREAD);
  return { value, low: value - half, high: Math.min(value + half, Math.max(value, 3)) };
}

/** Energy that each blow's turn gains at a place, over all bands; may be negative where noise wins. */
function addedEnergies(fold: Fold, place: number): Float64Array {
  const [ahead, behind, apart] = [AHEAD, BEHIND, APART].map((s) => Math.round(s / fold.step)) as [number, number, number];
  const out = new Float64Array(fold.blows);
  for (let blow = 0; blow < fold.blows; blow++) {
    for (let band = 0; band < fold.bands; band++) {
      const at = (blow * fold.bands + band) * fold.places;
      const [end, first] = [Math.min(fold.places, place + ahead), Math.max(0, place - apart - behind)];
      if (end > place - 1 && place - apart > first) out[blow] = out[blow]! + meanEnergy(fold.logs, at + place - 1, at + end) - meanEnergy(fold.logs, at + first, at + place - apart);
    }
  }
  return out;
}

function meanEnergy(logs: Float32Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += Math.exp(logs[i]!);
  return sum / (to - from);
}
