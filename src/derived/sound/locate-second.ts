import { bootstrap, quantile, vertex } from '../../methods/signal/index.ts';
import type { Estimate } from './beat-result.ts';
import { meanLogs, type Fold } from './fold.ts';
import { risesOf, type FoldRise } from './fold-rise.ts';
import { highest } from './highest.ts';

const ROUNDS = 48;
const MOST_BLOWS = 300;
/** s; how far the peak may wander between draws */
const WANDER = 0.006;
/** s; added to every delay, and the part of the error that drawing strokes again does not show. From made-up recordings. */
const OFFSET = -0.0004;
/** s on either side of a place that is compared */
const SHAPE = 0.006;
const LEAST_SPREAD = 0.0007;
const WIDTH = 2.1;

/**
 * Delay of the second sound: where its rises, band by band, lie most like those of the blow, by cross correlation; and
 * by bootstrap over the strokes how far that wanders.
 * @param origin place of the blow in the fold
 * @param place place of the second sound
 * @param wetRises dB, rises as recorded. Before the blow its own tail hides nothing, while taking tails out shifts a sound that they partly predict: there the mean of both is taken.
 */
export function locateSecond(fold: Fold, rise: FoldRise, wetRises: Float64Array, origin: number, place: number, draw: () => number): Estimate {
  const wander = Math.round(WANDER / fold.step);
  const weights = Array.from({ length: fold.bands }, (_, band) => Math.min(5, Math.max(0, rise.rises[band * fold.places + place]! / rise.spreads[band * fold.places + place]!)));
  const shape = profile(fold, rise.rises, weights, origin);
  const lagIn = (rises: Float64Array): number => bestLag(shape, profile(fold, rises, weights, place, wander));
  const lag = place < origin ? 0.5 * (lagIn(rise.rises) + lagIn(wetRises)) : lagIn(rise.rises);
  const value = (lag + place - origin) * fold.step + OFFSET;
  const piece = cutOut(fold, place);
  const drawn = bootstrap(piece.fold.blows, ROUNDS, draw, (chosen) => {
    return bestLag(shape, profile(piece.fold, risesOf(piece.fold, meanLogs(piece.fold, chosen)), weights, place - piece.from, wander));
  });
  const spread = drawn.length > 0 ? quantile(drawn, 0.975) - quantile(drawn, 0.025) : 2 * wander;
  const half = Math.hypot(WIDTH * 0.5 * spread * fold.step, 1.96 * LEAST_SPREAD);
  return { value, low: value - half, high: value + half };
}

/** Weighted rises around a place, each band's own square root against the outliers. */
function profile(fold: Pick<Fold, 'bands' | 'places' | 'step'>, rises: Float64Array, weights: readonly number[], place: number, more = 0): Float64Array {
  const reach = Math.round(SHAPE / fold.step) + more;
  const out = new Float64Array(2 * reach + 1);
  for (let band = 0; band < fold.bands; band++)
    for (let k = -reach; k <= reach; k++) out[k + reach] = out[k + reach]! + weights[band]! * Math.max(0, rises[band * fold.places + Math.max(0, Math.min(fold.places - 1, place + k))]!);
  return out;
}

/** Lag in places at which a longer row is most like a shorter one (normalised correlation), with a fraction. */
function bestLag(shape: Float64Array, row: Float64Array): number {
  const lags = row.length - shape.length + 1;
  const values = new Float64Array(lags);
  for (let lag = 0; lag < lags; lag++) {
    let [xy, yy] = [0, 1e-12];
    for (let i = 0; i < shape.length; i++) {
      xy += shape[i]! * row[lag + i]!;
      yy += row[lag + i]! ** 2;
    }
    values[lag] = xy / Math.sqrt(yy);
  }
  const top = highest(values, (lags - 1) / 2, lags);
  return peakOf(values, top) - (lags - 1) / 2;
}

function peakOf(row: Float64Array, place: number): number {
  return place + vertex(row[place - 1] ?? 0, row[place]!, row[place + 1] ?? 0);
}

/** The fold's surroundings of one place, with at most 300 blows, so that drawing again is cheap. */
function cutOut(fold: Fold, place: number): { fold: Fold; from: number } {
  const reach = Math.round(0.018 / fold.step);
  const from = Math.max(0, place - reach);
  const places = Math.min(fold.places, place + reach + 1) - from;
  const blows = Math.min(MOST_BLOWS, fold.blows);
  const logs = new Float32Array(blows * fold.bands * places);
  for (let band = 0; band < fold.bands; band++) {
    for (let b = 0; b < blows; b++) {
      const blow = Math.floor((b * fold.blows) / blows);
      const at = (blow * fold.bands + band) * fold.places + from;
      logs.set(fold.logs.subarray(at, at + places), (b * fold.bands + band) * places);
    }
  }
  return { fold: { ...fold, firstDelay: fold.firstDelay + from * fold.step, places, blows, logs, means: new Float64Array(0) }, from };
}
