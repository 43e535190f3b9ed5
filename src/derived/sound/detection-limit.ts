import { risesOf, type FoldShape, type Guard } from './fold-rise.ts';
import { restOf } from './likely-places.ts';
import { oddsOfSecond } from './second-chance.ts';
import { evidenceOf, featuresAt, type Evidence, type FoldedMeans } from './second-evidence.ts';

/** dB added to the computed limit, so that what lies above it is found in 97 of 100 made-up recordings. */
const MARGIN = 2.5;
const EVERY = 0.02;
const TO_DECIBELS = 10 / Math.LN10;
/** s of the turn on either side of a place that its evidence rests on */
const AROUND = 0.045;
/** s of the blow that are laid into the turn */
const BLOW = 0.025;
/** s before the blow whose energy is not the blow's */
const QUIET = 0.008;
const [FAINTEST, LOUDEST, ROUNDS] = [-42, 0, 5];
/** s from the ends of the turn within which nothing can be told */
const EDGE = 0.012;

/**
 * The weakest second sound that would have been noticed, by delay: the hammer's own blow, as this recording has it, is
 * laid fainter and fainter into this recording's own folded turn, and judged as any other place is.
 * @param needed odds that a verdict needs
 * @returns every 10 ms outside the guard, dB against the blow, never above 0; between places that were tried, the worse of the two
 */
export function detectionLimit(e: Evidence & { readonly least: readonly number[] }, nearest: Guard, period: number, needed: number): { delay: number; levelDecibels: number }[] {
  const { shape, wet } = e.means;
  const { step, bands, places } = shape;
  const length = Math.min(Math.round(BLOW / step), places - e.origin);
  const quiet = Math.max(1, Math.round(QUIET / step));
  // The blow's own energy by band over its first 25 ms, less what was there before it.
  const blow: Float64Array[] = [];
  for (let band = 0; band < bands; band++) {
    const at = band * places + e.origin;
    let before = 0;
    for (let i = 2; i < quiet + 2; i++) before += Math.exp(wet[at - i]!) / quiet;
    const own = new Float64Array(length);
    for (let i = 0; i < length; i++) own[i] = Math.max(0, Math.exp(wet[at + i]!) - before);
    blow.push(own);
  }
  const around = Math.round(AROUND / step);
  const whole = { rises: e.usual.rises, places, origin: e.origin };
  const out: { delay: number; levelDecibels: number }[] = [];
  const farthest = -shape.firstDelay - EDGE;
  for (const delay of placesTried(nearest, farthest)) {
    const place = e.origin + Math.round(delay / step);
    const from = Math.max(0, place - around);
    const to = Math.min(places, place + around + 1);
    const rest = restOf(e, nearest, period, place);
    const piece = withoutRise(cut(e.means, from, to), place - from);
    const energies = energiesUnder(piece, place - from, length);
    const judged = (level: number): number => {
      const laid = layIn(piece, energies, blow, place - from, 10 ** (level / 10));
      const own = evidenceOf(laid, nearest, { origin: e.origin - from, least: e.least }, [place - from - 3, place - from + 3]);
      return oddsOfSecond(featuresAt(own, place - from, rest, whole));
    };
    let [low, high] = [FAINTEST, LOUDEST];
    for (let round = 0; round < ROUNDS; round++) {
      const middle = (low + high) / 2;
      if (judged(middle) >= needed) high = middle;
      else low = middle;
    }
    out.push({ delay, levelDecibels: Math.min(0, high + MARGIN) });
  }
  return out.flatMap((one, i) => {
    const next = out[i + 1];
    return next && next.delay - one.delay < 1.5 * EVERY ? [one, { delay: (one.delay + next.delay) / 2, levelDecibels: Math.max(one.levelDecibels, next.levelDecibels) }] : [one];
  });
}

/** s, every 20 ms from the guard outward on either side, in order. */
function placesTried(nearest: Guard, farthest: number): number[] {
  const out: number[] = [];
  for (let delay = nearest.before + 0.001; delay < farthest; delay += EVERY) out.unshift(-delay);
  for (let delay = nearest.after + 0.001; delay < farthest; delay += EVERY) out.push(delay);
  return out;
}

/** The places from and to of folded means. */
function cut({ shape, dry, halves, wet, errors }: FoldedMeans, from: number, to: number): FoldedMeans {
  const places = to - from;
  const piece = (row: Float64Array): Float64Array => {
    const out = new Float64Array(shape.bands * places);
    for (let band = 0; band < shape.bands; band++) out.set(row.subarray(band * shape.places + from, band * shape.places + to), band * places);
    return out;
  };
  return { shape: { ...shape, firstDelay: shape.firstDelay + from * shape.step, places }, dry: piece(dry), halves: [piece(halves[0]), piece(halves[1])], wet: piece(wet), errors: piece(errors) };
}

/** What rises at a place already is taken as having been there before, so that it hides what is laid in instead of helping it. */
function withoutRise(means: FoldedMeans, place: number): FoldedMeans {
  const { shape } = means;
  return rowsOf(means, (row) => levelled(shape, row, place));
}

function levelled(shape: FoldShape, row: Float64Array, place: number): Float64Array {
  const rises = risesOf(shape, row, [place, place]);
  const out = row.slice();
  for (let band = 0; band < shape.bands; band++) {
    const at = band * shape.places;
    const step = Math.max(0, rises[at + place]!) / TO_DECIBELS;
    for (let i = 0; i < place; i++) out[at + i] = out[at + i]! + step;
  }
  return out;
}

/** The means with each of their four rows made anew. @param made is given the row and its number */
function rowsOf(means: FoldedMeans, made: (row: Float64Array, n: number) => Float64Array): FoldedMeans {
  return { ...means, dry: made(means.dry, 0), halves: [made(means.halves[0], 1), made(means.halves[1], 2)], wet: made(means.wet, 3) };
}

/** Energies of the four rows over the `length` places from one on, by band: the same for every level that is tried there. */
function energiesUnder(means: FoldedMeans, place: number, length: number): Float64Array[] {
  return [means.dry, ...means.halves, means.wet].map((row) => energiesFrom(means.shape, row, place, length));
}

function energiesFrom({ bands, places }: FoldShape, row: Float64Array, place: number, length: number): Float64Array {
  const out = new Float64Array(bands * length);
  for (let band = 0; band < bands; band++) for (let i = 0; i < length && place + i < places; i++) out[band * length + i] = Math.exp(row[band * places + place + i]!);
  return out;
}

function layIn(means: FoldedMeans, energies: readonly Float64Array[], blow: readonly Float64Array[], place: number, ratio: number): FoldedMeans {
  return rowsOf(means, (row, n) => laid(means.shape, row, energies[n]!, blow, place, ratio));
}

function laid({ bands, places }: FoldShape, row: Float64Array, energies: Float64Array, blow: readonly Float64Array[], place: number, ratio: number): Float64Array {
  const out = row.slice();
  for (let band = 0; band < bands; band++) {
    const own = blow[band]!;
    for (let i = 0; i < own.length && place + i < places; i++) out[band * places + place + i] = Math.log(energies[band * own.length + i]! + ratio * own[i]!);
  }
  return out;
}
