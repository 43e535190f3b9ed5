import { bootstrap, quantile, vertex, type NoiseSource } from '../../methods/signal/index.ts';
import type { Estimate } from './beat-result.ts';
import { meanLogs, type Fold } from './fold.ts';
import { foldRise, type FoldRise } from './fold-rise.ts';
import { highest } from './highest.ts';

const ROUNDS = 48;
const MOST_BLOWS = 300;
/** s; how far the peak may wander between draws */
const WANDER = 0.006;
/** s; added to every delay, and the part of the error that drawing strokes again does not show. From made-up recordings. */
const OFFSET = 0;
const LEAST_SPREAD = 0.0006;
const WIDTH = 1.5;

/**
 * Delay of the second sound: place of its rise less that of the blow's, by bootstrap over the strokes.
 * @param origin place of the blow in the fold
 * @param place place of the second sound
 */
export function locateSecond(fold: Fold, rise: FoldRise, origin: number, place: number, draw: NoiseSource): Estimate {
  const at = peakOf(rise.combined, place);
  const value = (at - peakOf(rise.combined, origin)) * fold.step + OFFSET;
  const piece = cutOut(fold, rise, place);
  const drawn = bootstrap(piece.fold.blows, ROUNDS, () => draw.uniform(), (chosen) => {
    const { combined } = foldRise(piece.fold, meanLogs(piece.fold, chosen), { after: 0, before: 0 }, piece.spreads);
    return peakOf(combined, highest(combined, place - piece.from, Math.round(WANDER / fold.step))) + piece.from;
  });
  const [low, high] = drawn.length > 0 ? [quantile(drawn, 0.025), quantile(drawn, 0.975)] : [at, at];
  const half = Math.hypot(WIDTH * 0.5 * (high - low) * fold.step, 1.96 * LEAST_SPREAD);
  return { value, low: value - half, high: value + half };
}

function peakOf(row: Float64Array, place: number): number {
  return place + vertex(row[place - 1] ?? 0, row[place]!, row[place + 1] ?? 0);
}

/** The fold's surroundings of one place, with at most 300 blows, so that drawing again is cheap. */
function cutOut(fold: Fold, rise: FoldRise, place: number): { fold: Fold; spreads: Float64Array; from: number } {
  const reach = Math.round(0.018 / fold.step);
  const from = Math.max(0, place - reach);
  const places = Math.min(fold.places, place + reach + 1) - from;
  const blows = Math.min(MOST_BLOWS, fold.blows);
  const logs = new Float32Array(blows * fold.bands * places);
  const spreads = new Float64Array(fold.bands * places);
  for (let band = 0; band < fold.bands; band++) {
    spreads.set(rise.spreads.subarray(band * fold.places + from, band * fold.places + from + places), band * places);
    for (let b = 0; b < blows; b++) {
      const blow = Math.floor((b * fold.blows) / blows);
      const at = (blow * fold.bands + band) * fold.places + from;
      logs.set(fold.logs.subarray(at, at + places), (b * fold.bands + band) * places);
    }
  }
  return { fold: { ...fold, firstDelay: fold.firstDelay + from * fold.step, places, blows, logs, means: new Float64Array(0) }, spreads, from };
}
