import type { Fold } from './fold.ts';
import { risesOf } from './fold-rise.ts';

/** Turns that are looked at; more tell no more. */
const ENOUGH = 120;

/** dB, standard error of the mean rise by band and place, from how single turns differ. */
export function turnSpreads(fold: Fold): Float64Array {
  const row = fold.bands * fold.places;
  const [sums, squares] = [new Float64Array(row), new Float64Array(row)];
  const count = Math.min(ENOUGH, fold.blows);
  const turn = new Float64Array(row);
  for (let n = 0; n < count; n++) {
    const from = Math.floor((n * fold.blows) / count) * row;
    turn.set(fold.logs.subarray(from, from + row));
    addMoments(risesOf(fold, turn), sums, squares);
  }
  return errorsOf(sums, squares, count, fold.blows);
}

/** Standard errors of means over all blows, from the moments of `count` turns. */
function errorsOf(sums: Float64Array, squares: Float64Array, count: number, blows: number): Float64Array {
  const out = new Float64Array(sums.length);
  for (let i = 0; i < out.length; i++) out[i] = Math.sqrt(Math.max(0, squares[i]! / count - (sums[i]! / count) ** 2) / blows);
  return out;
}

function addMoments(row: Float64Array, sums: Float64Array, squares: Float64Array): void {
  for (let i = 0; i < row.length; i++) {
    const value = row[i]!;
    sums[i] = sums[i]! + value;
    squares[i] = squares[i]! + value * value;
  }
}
