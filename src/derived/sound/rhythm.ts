import type { OnsetBands } from './onset-bands.ts';
import { risesAt } from './rises-at.ts';
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
  times.forEach((time, i) => {
    if (i > 0) stroke += Math.max(1, Math.round((time - times[i - 1]!) / periodAt(time)));
    const row = risesAt(bands, time);
    row.forEach((value, b) => (mean[b] = mean[b]! + value / times.length));
    rows.set(stroke, row);
  });
  let whole = 0;
  for (const row of rows.values()) row.forEach((value, b) => {
    row[b] = value - mean[b]!;
    whole += row[b]! ** 2 / rows.size;
  });
  if (!(whole > UNLIKE * mean.reduce((sum, m) => sum + m * m, 0))) return undefined;
  const likeness = (lag: number): number => {
    let [sum, count] = [0, 0];
    for (const [at, row] of rows) {
      const other = rows.get(at + lag);
      if (!other) continue;
      count++;
      row.forEach((value, b) => (sum += value * other[b]!));
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

/**
 * The rises less what the turns of a rhythm before and after foretell (their median, a millisecond to either side
 * allowed). What does not keep to the rhythm stays.
 * @returns undefined when the turn is too long for the recording
 */
export function withoutRhythm(bands: OnsetBands, rhythm: Rhythm): OnsetBands | undefined {
  const turn = exactTurn(bands, rhythm.turn);
  if (5 * turn > bands.frames) return undefined;
  const rises = bands.rises.map((row) => {
    const wide = new Float32Array(row.length);
    for (let i = 0; i < row.length; i++) wide[i] = Math.max(row[i]!, row[i - 1] ?? 0, row[i + 1] ?? 0, row[i - 2] ?? 0, row[i + 2] ?? 0);
    const out = new Float32Array(row.length);
    const values: number[] = [];
    for (let i = 0; i < row.length; i++) {
      if (row[i] === 0) continue;
      values.length = 0;
      for (const k of TURNS) {
        const value = wide[i + Math.round(k * turn)];
        if (value !== undefined) values.push(value);
      }
      values.sort((a, b) => a - b);
      const middle = values.length >> 1;
      const foretold = values.length % 2 === 1 ? values[middle]! : (values[middle - 1]! + values[middle]!) / 2;
      out[i] = foretold > FORETOLD ? Math.max(0, row[i]! - foretold) : row[i]!;
    }
    return out;
  });
  return { ...bands, rises };
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
      for (const row of bands.rises) for (let i = 0; i + far < row.length; i += 1) sum += row[i]! * row[i + far]!;
      sum /= Math.max(1, bands.frames - far);
      if (sum > top) [top, best] = [sum, lag + third];
    }
  }
  return best;
}
