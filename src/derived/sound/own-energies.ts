import { quantile, sorted } from '../../methods/signal/index.ts';

/** s in a frame, and frames before and after an onset in which a blow is still heard */
const FRAME = 0.003;
const EARLIER = 2;
const LATER = 38;
const LAGS = EARLIER + LATER;
/** Frames that count for how near a machine is: later ones hold more of the room than of the machine, and the room carries far. */
const EARLY = 6;
/** Frames louder than this share of all are held to it: one clank must not weigh as much as ten blows. */
const HELD = 0.995;

/**
 * Energy of the onset of the usual blow of each of several machines that strike into one another's sound: from 6 ms
 * before to 12 ms after it, where the nearer machine is the louder one, whatever the room adds.
 *
 * The mean square in each frame is taken as a constant background plus, for each machine, one course after each of its
 * blows, and all courses are found together by least squares over the whole recording: what rings on from another
 * machine is not counted as one's own.
 * @param meanSquares of the sound or of one band of it, frame by frame
 * @param frameRate their number a second
 * @param rows s, blows of each machine, in order
 * @returns mean square times seconds, one a machine; 0 where none is left or the recording is too short
 */
export function ownEnergies(meanSquares: Float32Array, frameRate: number, rows: readonly (readonly number[])[]): readonly number[] {
  const hop = Math.max(1, Math.round(FRAME * frameRate));
  const frames = Math.floor(meanSquares.length / hop);
  const size = rows.length * LAGS + 1;
  if (frames < 2 * size) return rows.map(() => 0);
  const energies = new Float64Array(frames);
  for (let f = 0, at = 0; f < frames; f++) {
    let sum = 0;
    for (let i = 0; i < hop; i++, at++) sum += meanSquares[at]!;
    energies[f] = sum / hop;
  }
  const most = quantile(sorted(energies), HELD);
  // Sums of products: a column is one machine at one lag, and the last one is the background.
  const sums = new Float64Array(size * size);
  const right = new Float64Array(size);
  const columns: number[][] = Array.from({ length: frames }, () => []);
  rows.forEach((times, r) => {
    for (const time of times) {
      const at = Math.round((time * frameRate) / hop - 0.5);
      for (let lag = 0; lag < LAGS; lag++) columns[at + lag - EARLIER]?.push(r * LAGS + lag);
    }
  });
  for (let f = 0; f < frames; f++) {
    const here = columns[f]!;
    here.push(size - 1);
    const y = Math.min(most, energies[f]!);
    for (const a of here) {
      right[a] = right[a]! + y;
      for (const b of here) sums[a * size + b] = sums[a * size + b]! + 1;
    }
  }
  const courses = solvePositive(sums, right);
  return rows.map((_, r) => {
    let sum = 0;
    for (let lag = 0; lag < EARLY; lag++) sum += courses[r * LAGS + lag]!;
    return Math.max(0, (sum * hop) / frameRate);
  });
}

/** x of A x = b for a symmetric matrix without negative directions, row by row, by Cholesky's method; a little is added to the diagonal so that columns without blows give nothing. */
function solvePositive(matrix: Float64Array, right: Float64Array): Float64Array {
  const n = right.length;
  const low = matrix.slice();
  const x = right.slice();
  for (let j = 0; j < n; j++) {
    let pivot = low[j * n + j]! + 1e-3;
    for (let k = 0; k < j; k++) pivot -= low[j * n + k]! ** 2;
    const root = Math.sqrt(Math.max(1e-9, pivot));
    low[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = low[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= low[i * n + k]! * low[j * n + k]!;
      low[i * n + j] = sum / root;
    }
  }
  for (let i = 0; i < n; i++) {
    let sum = x[i]!;
    for (let k = 0; k < i; k++) sum -= low[i * n + k]! * x[k]!;
    x[i] = sum / low[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= low[k * n + i]! * x[k]!;
    x[i] = sum / low[i * n + i]!;
  }
  return x;
}
