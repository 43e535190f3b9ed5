import type { OnsetBands } from './onset-bands.ts';

/** s around a moment in which the rises are looked for */
const NEAR = 0.004;

/** Highest rise of each band within 4 ms of a moment, in spreads. @param time s */
export function risesAt(bands: OnsetBands, time: number): Float64Array {
  const place = time * bands.frameRate;
  const reach = NEAR * bands.frameRate;
  const out = new Float64Array(bands.rises.length);
  for (let b = 0; b < out.length; b++) out[b] = highestOf(bands.rises[b]!, Math.round(place - reach), Math.round(place + reach));
  return out;
}

/** Highest value between two places, both included, as far as the row reaches; 0 at least. */
export function highestOf(row: Float32Array, from: number, to: number): number {
  let top = 0;
  for (let i = Math.max(0, from), end = Math.min(row.length - 1, to); i <= end; i++) if (row[i]! > top) top = row[i]!;
  return top;
}
