import { middleOf } from '../../methods/signal/index.ts';
import type { OnsetBands } from './onset-bands.ts';
import { highestOf, risesAt } from './rises-at.ts';
import type { Track } from './track-blows.ts';

/** A chain whose strokes are unlike one another in a way that comes again and again: several impacts a turn, or music. */
export interface Rhythm {
  /** strokes after which it repeats */
  readonly strokes: number;
  /** s, the same */
  readonly turn: number;
  /** likeness of strokes that far apart, 0 to 1 */
  readonly likeness: number;
}

/** Fewest strokes that make a rhythm: a hammer that strikes hard and soft by turns is a hammer. */
const FEWEST = 3;
const MOST = 16;
/** Strokes a turn apart must be that much alike, and those two turns apart nearly so. */
const LIKE = 0.66;
const LIKE_AGAIN = 0.5;
/** Variance over mean square from which strokes count as unlike one another. */
const UNLIKE = 0.16;
/** Turns before and after from which a moment is foretold. */
const TURNS = [-3, -2, -1, 1, 2, 3] as const;
/** Spreads; less is what noise alone foretells, and is not taken out. */
const FORETOLD = 1.5;

/**
 * Whether the strokes of a chain differ, band by band, and repeat after some strokes: autocorrelation over stroke
 * numbers of their rises about the mean. A hammer's strokes differ by chance only.
 */
export function rhythmOf(bands: OnsetBands, track: Track): Rhythm | undefined {
  const { times, periodAt } = track;
  const rows = new Map<number, Float64Array>();
  const mean = new Float64Array(bands.rises.length);
  let stroke = 0;
  for (let i = 0; i < times.length; i++) {
    if (i > 0) stroke += Math.max(1, Math.round((times[i]! - times[i - 1]!) / periodAt(times[i]!)));
    const row = risesAt(bands, times[i]!);
    addRow(mean, row, 1 / times.length);
    rows.set(stroke, row);
  }
  let whole = 0;
  for (const row of rows.values()) {
    addRow(row, mean, -1);
    whole += product(row, row) / rows.size;
  }
  if (!(whole > UNLIKE * product(mean, mean))) return undefined;
  const likeness = (lag: number): number => {
    let [sum, count] = [0, 0];
    for (const [at, row] of rows) {
      const other = rows.get(at + lag);
      if (!other) continue;
      count++;
      sum += product(row, other);
    }
    return count >= 20 ? sum / count / whole : 0;
  };
  let best: Rhythm | undefined;
  for (let lag = FEWEST; lag <= MOST; lag++) {
    const like = likeness(lag);
    if (like > Math.max(LIKE, (best?.likeness ?? 0) + 0.01) && likeness(2 * lag) > LIKE_AGAIN) best = { strokes: lag, turn: lag * track.period, likeness: like };
  }
  return best;
}

function addRow(into: Float64Array, row: Float64Array, weight: number): void {
  for (let b = 0; b < into.length; b++) into[b] = into[b]! + weight * row[b]!;
}

function product(row: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let b = 0; b < row.length; b++) sum += row[b]! * other[b]!;
  return sum;
}

/**
 * The rises less what the turns of a rhythm before and after foretell (their median, a millisecond to either side
 * allowed). What does not keep to the rhythm stays.
 * @returns undefined when the turn is too long for the recording
 */
export function withoutRhythm(bands: OnsetBands, rhythm: Rhythm): OnsetBands | undefined {
  const turn = exactTurn(bands, rhythm.turn);
  if (5 * turn > bands.frames) return undefined;
  return { ...bands, rises: bands.rises.map((row) => withoutForetold(row, turn)) };
}

function withoutForetold(row: Float32Array, turn: number): Float32Array {
  const wide = new Float32Array(row.length);
  for (let i = 0; i < row.length; i++) wide[i] = highestOf(row, i - 2, i + 2);
  const out = new Float32Array(row.length);
  const values = new Float64Array(TURNS.length);
  const steps = TURNS.map((k) => Math.round(k * turn));
  for (let i = 0; i < row.length; i++) {
    if (row[i] === 0) continue;
    let count = 0;
    for (const step of steps) if (i + step >= 0 && i + step < wide.length) values[count++] = wide[i + step]!;
    const foretold = middleOf(values, count);
    out[i] = foretold > FORETOLD ? Math.max(0, row[i]! - foretold) : row[i]!;
  }
  return out;
}

/** Frames of one turn, made finer: where the rises are most alike a turn later, near the length given. */
function exactTurn(bands: OnsetBands, turn: number): number {
  const around = turn * bands.frameRate;
  const reach = Math.ceil(0.006 * around);
  let [best, top] = [around, -Infinity];
  for (let lag = Math.round(around) - reach; lag <= around + reach; lag++) {
    // Three turns on, so that the turn is known to a third of a frame.
    for (const third of [0, 1 / 3, 2 / 3]) {
      const far = Math.round(3 * (lag + third));
      let sum = 0;
      for (const row of bands.rises) sum += productAcross(row, far);
      sum /= Math.max(1, bands.frames - far);
      if (sum > top) [top, best] = [sum, lag + third];
    }
  }
  return best;
}

/** Sum over a row of each value times the one so many places on. */
function productAcross(row: Float32Array, far: number): number {
  let sum = 0;
  for (let i = 0; i + far < row.length; i++) sum += row[i]! * row[i + far]!;
  return sum;
}
