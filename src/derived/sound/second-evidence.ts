import { middleOf } from '../../methods/signal/index.ts';
import { AHEAD, combineBands, risesOf, usualSpreads, type FoldRise, type FoldShape, type Guard, type Places } from './fold-rise.ts';
import { highest } from './highest.ts';

/** Mean logarithmic energies of a folded turn, index band * places + place, and how finely its rises are known. */
export interface FoldedMeans {
  readonly shape: FoldShape;
  /** without the blows' tails; the same of every other turn from the first and from the second; and as recorded */
  readonly dry: Float64Array;
  readonly halves: readonly [Float64Array, Float64Array];
  readonly wet: Float64Array;
  /** dB, standard errors of the dry rises */
  readonly errors: Float64Array;
}

/** What the folded turn says, by delay, for a second sound and for an echo or a leftover of the tail. */
export interface Evidence {
  readonly means: FoldedMeans;
  /** place of the blow itself */
  readonly origin: number;
  /** dry rises in their usual spread around the place, widened by what a tail's own rise may leave over */
  readonly usual: FoldRise;
  /** dry rises in the spread that chance over the turns gives, widened likewise; combined, and for each half */
  readonly drawn: Float64Array;
  readonly drawnSpreads: Float64Array;
  readonly drawnHalves: readonly [Float64Array, Float64Array];
  /** dB, rises as recorded */
  readonly wetRises: Float64Array;
}

/** Part of the rise heard before the tails are taken out that may be left over in what remains, and up to how many dB it counts. */
const LEFTOVER = 0.55;
const MOST_LEFTOVER = 2;
const DRAWN_LEFTOVER = 0.25;
const MOST_DRAWN_LEFTOVER = 4;
const DRAWN_WIDTH = 1.2;
const LEAST_ERROR = 0.05;
/** Part of a band's usual rise anywhere in the turn under which no spread is taken. */
const LEAST_SHARE = 0.6;

/**
 * @param given the origin and the least spreads by band, from the whole turn, when only a piece of it is looked at
 * @param only places that are asked about: elsewhere only the dry rises are right
 */
export function evidenceOf(means: FoldedMeans, nearest: Guard, given?: { readonly origin: number; readonly least: readonly number[] }, only?: Places): Evidence & { readonly least: readonly number[] } {
  const { shape } = means;
  const { places, bands } = shape;
  const rises = risesOf(shape, means.dry);
  const wetRises = risesOf(shape, means.wet, only);
  const plain = usualSpreads(shape, rises, nearest, only);
  const middle = (places - 1) / 2;
  const origin = given?.origin ?? highest(combineBands(shape, rises, plain), middle, Math.round(0.005 / shape.step));
  const spreads = widened(plain, wetRises);
  const least = given?.least ?? leastSpreads(shape, plain, nearest);
  const drawnSpreads = drawnWidened(means.errors, wetRises, least, places);
  const half = (n: 0 | 1): Float64Array => combineBands(shape, risesOf(shape, means.halves[n], only), drawnSpreads, only);
  return {
    means, origin, wetRises, drawnSpreads, least,
    usual: { rises, spreads, combined: combineBands(shape, rises, spreads, only) },
    drawn: combineBands(shape, rises, drawnSpreads, only), drawnHalves: bands > 0 ? [half(0), half(1)] : [new Float64Array(places), new Float64Array(places)],
  };
}

/** Spreads with what a tail's own rise may leave over. */
function widened(spreads: Float64Array, wetRises: Float64Array): Float64Array {
  const out = new Float64Array(spreads.length);
  for (let i = 0; i < out.length; i++) {
    const over = LEFTOVER * Math.min(MOST_LEFTOVER, Math.abs(wetRises[i]!));
    out[i] = Math.sqrt(spreads[i]! * spreads[i]! + over * over);
  }
  return out;
}

function drawnWidened(errors: Float64Array, wetRises: Float64Array, least: readonly number[], places: number): Float64Array {
  const out = new Float64Array(errors.length);
  for (let i = 0; i < out.length; i++) {
    const own = DRAWN_WIDTH * Math.max(LEAST_ERROR, errors[i]!);
    const over = DRAWN_LEFTOVER * Math.min(MOST_DRAWN_LEFTOVER, Math.abs(wetRises[i]!));
    out[i] = Math.max(Math.sqrt(own * own + over * over), least[Math.floor(i / places)]!);
  }
  return out;
}

function leastSpreads({ firstDelay, step, places, bands }: FoldShape, spreads: Float64Array, nearest: Guard): number[] {
  const row = new Float64Array(places);
  const out: number[] = [];
  for (let band = 0; band < bands; band++) {
    let count = 0;
    for (let i = 0; i < places; i++) {
      const delay = firstDelay + i * step;
      if (delay >= nearest.after || delay <= -nearest.before) row[count++] = spreads[band * places + i]!;
    }
    out.push(LEAST_SHARE * (count > 0 ? middleOf(row, count) : 1));
  }
  return out;
}

/** s on either side of a place whose rises are compared with the blow's */
const SHAPE = 0.006;
const EARLIEST = 0.029;
const EARLY_FADE = 0.01;
/** Highest of the few places around. */
const NEAR = 3;

/** Names of what a place is judged by, in the order of `featuresAt`. */
export const FEATURES = ['usual', 'drawn', 'halves', 'kept', 'aboveRest', 'likeBlow', 'early'] as const;

/**
 * What one place is judged by: its rise in usual spreads, in drawn spreads, in the weaker half of the turns (logarithms);
 * the part of the added energy that no blow's tail explains; by how much it stands above the rest of the turn
 * (logarithm); how like the blow it rises; and how near behind the blow it lies.
 * @param rest highest drawn rise elsewhere in the turn
 * @param blowRises dB, dry rises of the turn that holds the blow, and its place in it, where a piece without the blow is looked at
 */
export function featuresAt(e: Evidence, place: number, rest: number, blow: { readonly rises: Float64Array; readonly places: number; readonly origin: number }): number[] {
  const top = (row: Float64Array): number => row[highest(row, place, NEAR)]!;
  const { places, bands, step } = e.means.shape;
  const weights = Array.from({ length: bands }, (_, band) => 1e-3 + Math.min(5, Math.max(0, e.usual.rises[band * places + place]! / e.drawnSpreads[band * places + place]!)));
  const drawn = top(e.drawn);
  const delay = (place - e.origin) * step;
  return [
    signedLog(top(e.usual.combined)), signedLog(Math.min(drawn, 20)), signedLog(Math.min(20, top(e.drawnHalves[0]), top(e.drawnHalves[1]))),
    keptShare(e, place, weights), signedLog(drawn - rest), likeBlow(e, place, weights, blow), delay > 0 ? Math.exp(-(delay - EARLIEST) / EARLY_FADE) : 0,
  ];
}

const signedLog = (x: number): number => Math.sign(x) * Math.log1p(Math.abs(x));

/** Share of the energy that the recording gains at a place which is left when the tails are out, bands weighted; 1 where it gains none. */
function keptShare({ means: { shape, dry, wet } }: Evidence, place: number, weights: readonly number[]): number {
  let [sum, whole] = [0, 0];
  for (let band = 0; band < shape.bands; band++) {
    const [left, heard] = [gainAt(shape, dry, band * shape.places, place), gainAt(shape, wet, band * shape.places, place)];
    sum += weights[band]! * Math.min(1, Math.max(0, left / Math.max(1e-30, heard, left)));
    whole += weights[band]!;
  }
  return sum / whole;
}

/** What the energy after a place exceeds that before it by, in one band that begins at `at`. */
function gainAt({ step, places }: FoldShape, row: Float64Array, at: number, place: number): number {
  const [ahead, apart] = [Math.round(AHEAD / step), Math.round(0.001 / step)];
  return meanEnergy(row, at, Math.max(0, place), Math.min(places, place + ahead)) - meanEnergy(row, at, Math.max(0, place - apart - ahead), Math.min(places, place - apart));
}

function meanEnergy(row: Float64Array, at: number, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += Math.exp(row[at + i]!);
  return to > from ? sum / (to - from) : 0;
}

/** Greatest normalised correlation of the rises around a place with those around the blow, within a few places. */
function likeBlow({ means: { shape }, usual: { rises } }: Evidence, place: number, weights: readonly number[], blow: { readonly rises: Float64Array; readonly places: number; readonly origin: number }): number {
  const reach = Math.round(SHAPE / shape.step);
  const shapeOfBlow = profile(blow.rises, blow.places, blow.origin, reach, weights);
  const own = profile(rises, shape.places, place, reach + 2 * NEAR, weights);
  let best = 0;
  for (let from = 0; from <= 4 * NEAR; from++) best = Math.max(best, likeness(own, from, shapeOfBlow));
  return best;
}

/** Rises around a place, bands weighted; beyond the ends the last one stands. */
function profile(rises: Float64Array, places: number, place: number, reach: number, weights: readonly number[]): Float64Array {
  const out = new Float64Array(2 * reach + 1);
  for (let band = 0; band < weights.length; band++)
    for (let k = 0; k < out.length; k++) out[k] = out[k]! + weights[band]! * Math.max(0, rises[band * places + Math.max(0, Math.min(places - 1, place + k - reach))]!);
  return out;
}

function likeness(row: Float64Array, from: number, shape: Float64Array): number {
  let xy = 0;
  let xx = 0;
  let yy = 1e-9;
  for (let i = 0; i < shape.length; i++) {
    const [x, y] = [row[from + i]!, shape[i]!];
    xy += x * y;
    xx += x * x;
    yy += y * y;
  }
  return xy / Math.sqrt(xx * yy + 1e-9);
}
