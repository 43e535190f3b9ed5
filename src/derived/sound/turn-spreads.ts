import type { Fold } from './fold.ts';
import { risesOf } from './fold-rise.ts';

/** Turns that are looked at; more tell no more. */
const ENOUGH = 120;

/** dB, standard error of the mean rise by band and place, from how single turns differ. */
export function turnSpreads(fold: Fold): Float64Array {
  const row = fold.bands * fold.places;
  const [sums, squares] = [new Float64Array(row), new Float64Array(row)];
  const count = Math.min(ENOUGH, fold.blows);
  for (let n = 0; n < count; n++) {
    const rises = risesOf(fold, fold.logs, Math.floor((n * fold.blows) / count) * row);
    for (let i = 0; i < row; i++) {
      const rise = rises[i]!;
      sums[i] = sums[i]! + rise;
      squares[i] = squares[i]! + rise * rise;
    }
  }
  return sums.map((sum, i) => Math.sqrt(Math.max(0, squares[i]! / count - (sum / count) ** 2) / fold.blows));
}
