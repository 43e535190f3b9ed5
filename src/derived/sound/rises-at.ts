import type { OnsetBands } from './onset-bands.ts';

/** s around a moment in which the rises are looked for */
const NEAR = 0.004;

/** Highest rise of each band within 4 ms of a moment, in spreads. @param time s */
export function risesAt(bands: OnsetBands, time: number): Float64Array {
  const place = time * bands.frameRate;
  const reach = NEAR * bands.frameRate;
  return Float64Array.from(bands.rises, (row) => {
    let top = 0;
    for (let i = Math.max(0, Math.round(place - reach)), end = Math.min(row.length - 1, Math.round(place + reach)); i <= end; i++) top = Math.max(top, row[i]!);
    return top;
  });
}
