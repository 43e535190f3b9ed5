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
  const out = new Float64Array(fold.blows);
  for (let blow = 0; blow < fold.blows; blow++) for (let band = 0; band < fold.bands; band++) out[blow] = out[blow]! + addedEnergy(fold, blow, band, place);
  return out;
}

/** Energy that one band of one turn gains over the first 8 ms at a place to what was there before; 0 at the ends of the turn. */
export function addedEnergy({ logs, bands, places, step }: Fold, blow: number, band: number, place: number): number {
  const at = (blow * bands + band) * places;
  const until = place - Math.round(APART / step);
  const [end, first] = [Math.min(places, place + Math.round(AHEAD / step)), Math.max(0, until - Math.round(BEHIND / step))];
  return end > place - 1 && until > first ? meanEnergy(logs, at + place - 1, at + end) - meanEnergy(logs, at + first, at + until) : 0;
}

function meanEnergy(logs: Float32Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += Math.exp(logs[i]!);
  return sum / (to - from);
}
