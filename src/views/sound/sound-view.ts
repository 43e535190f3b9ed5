import { RealFourier, window } from '../../methods/signal/index.ts';

/** A stretch of a recording made small enough to be drawn: least and greatest sample of each column, and how loud each height of pitch is. */
export interface SoundView {
  /** s */
  readonly from: number;
  readonly to: number;
  readonly columns: number;
  readonly low: Float32Array;
  readonly high: Float32Array;
  readonly rows: number;
  /** row by row from the lowest pitch, 0 quiet to 255 loudest of the stretch, over 60 dB */
  readonly loud: Uint8Array;
  /** Hz of the lowest and the highest row, which stand evenly in octaves between */
  readonly lowest: number;
  readonly highest: number;
}

const SPAN = 60; // dB
const LOWEST = 100; // Hz
const HIGHEST = 12_000;
/** Transforms in a column at most: a long stretch is sampled, not read through. */
const LOOKS = 4;

/**
 * @param samples full scale 1; what is not finite counts as silence
 * @param rate samples a second
 * @param from s, and `to` above it; beyond the recording there is silence
 * @param columns 1 to 4000
 * @param rows 1 to 256
 */
export function soundView(samples: Float32Array, rate: number, from: number, to: number, columns: number, rows: number): SoundView {
  if (!(to > from) || !(columns >= 1 && columns <= 4000) || !(rows >= 1 && rows <= 256)) throw new Error(`a view has a beginning before its end, 1 to 4000 columns and 1 to 256 rows: ${from} to ${to}, ${columns}, ${rows}`);
  const low = new Float32Array(columns);
  const high = new Float32Array(columns);
  const at = (column: number): number => Math.round((from + ((to - from) * column) / columns) * rate);
  for (let column = 0; column < columns; column++) {
    const start = Math.max(0, at(column));
    const end = Math.min(samples.length, Math.max(at(column + 1), start + 1));
    let [least, most] = [0, 0];
    for (let i = start; i < end; i++) {
      const x = samples[i]!;
      if (x < least) least = x;
      else if (x > most) most = x;
    }
    low[column] = Math.max(-1000, least);
    high[column] = Math.min(1000, most);
  }
  const highest = Math.min(HIGHEST, 0.45 * rate);
  return { from, to, columns, low, high, rows, loud: loudness(samples, rate, at, columns, rows, highest), lowest: LOWEST, highest };
}

function loudness(samples: Float32Array, rate: number, at: (column: number) => number, columns: number, rows: number, highest: number): Uint8Array {
  const step = Math.max(1, at(1) - at(0));
  // As short as the columns are close, so that a blow keeps its place, and long enough for the low tones.
  const wanted = Math.min(0.024, Math.max(0.006, step / rate)) * rate;
  const size = Math.max(64, 2 ** Math.round(Math.log2(wanted)));
  const transform = new RealFourier(size);
  const shape = window('hann', size);
  const piece = new Float64Array(size);
  const re = new Float64Array(transform.bins);
  const im = new Float64Array(transform.bins);
  const power = new Float64Array(rows * columns);
  const bins = Array.from({ length: rows + 1 }, (_, row) => (LOWEST * (highest / LOWEST) ** (row / rows) * size) / rate);
  const looks = Math.max(1, Math.min(LOOKS, Math.round(step / size)));
  let loudest = 1e-12;
  for (let column = 0; column < columns; column++)
    for (let look = 0; look < looks; look++) {
      const start = at(column) + Math.round((step * (look + 0.5)) / looks) - size / 2;
      for (let i = 0; i < size; i++) {
        const x = samples[start + i] ?? 0;
        piece[i] = Math.abs(x) <= 1000 ? x * shape[i]! : 0;
      }
      transform.forward(piece, re, im);
      for (let row = 0; row < rows; row++) {
        const first = Math.max(1, Math.floor(bins[row]!));
        const last = Math.min(transform.bins - 1, Math.max(first, Math.ceil(bins[row + 1]!) - 1));
        let sum = 0;
        for (let bin = first; bin <= last; bin++) sum += re[bin]! ** 2 + im[bin]! ** 2;
        // Sounds fall towards high pitch; drawn by octaves evenly, a click is a line from floor to ceiling.
        const value = (sum / (last - first + 1)) * (row + 1);
        if (value > power[row * columns + column]!) power[row * columns + column] = value;
        if (value > loudest) loudest = value;
      }
    }
  const loud = new Uint8Array(rows * columns);
  for (let i = 0; i < loud.length; i++) loud[i] = Math.round(255 * Math.max(0, 1 + (10 * Math.log10(power[i]! / loudest + 1e-30)) / SPAN));
  return loud;
}
