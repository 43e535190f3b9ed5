/** Samples that are put out at a time. */
const AT_ONCE = 1024;

/**
 * Every `factor`-th sample of a row, after a linear-phase low-pass that keeps the folded part out: a sinc cut by a
 * Blackman window, sixteen lobes long, corner at 0.92 of the new half rate. No delay: sample k stands for time
 * k * factor / rate of the input. The ends are taken as silence.
 * @param factor whole number, 1 or more; 1 gives a copy
 */
export function decimate(samples: Float32Array, factor: number): Float32Array {
  if (!Number.isInteger(factor) || factor < 1) throw new Error(`A decimation factor is a whole number, 1 or more: ${factor}`);
  if (factor === 1) return samples.slice();
  const reach = 8 * factor;
  const taps = decimationTaps(factor);
  const length = Math.floor(samples.length / factor);
  const out = new Float32Array(length);
  // A piece at a time, with the samples before and after it: silence beyond the ends.
  const piece = new Float64Array(AT_ONCE * factor + 2 * reach);
  for (let from = 0; from < length; from += AT_ONCE) {
    const to = Math.min(length, from + AT_ONCE);
    const first = from * factor - reach;
    piece.fill(0);
    piece.set(samples.subarray(Math.max(0, first), Math.min(samples.length, to * factor + reach)), Math.max(0, -first));
    thinPiece(piece, taps, factor, out, from, to);
  }
  return out;
}

/** Two sums by turns, so that neither waits for its own last value. @param piece begins as many samples before the first as there are taps on a side */
function thinPiece(piece: Float64Array, taps: Float64Array, factor: number, out: Float32Array, from: number, to: number): void {
  const reach = taps.length - 1;
  for (let k = from, centre = reach; k < to; k++, centre += factor) {
    let sum = taps[0]! * piece[centre]!;
    let other = 0;
    for (let j = 1; j < reach; j += 2) {
      sum += taps[j]! * (piece[centre - j]! + piece[centre + j]!);
      other += taps[j + 1]! * (piece[centre - j - 1]! + piece[centre + j + 1]!);
    }
    out[k] = sum + other;
  }
}

/** The right half of the low-pass, from its middle outward; the whole sums to one. */
function decimationTaps(factor: number): Float64Array {
  const reach = 8 * factor;
  const corner = 0.92 / factor; // of half the input rate
  const taps = new Float64Array(reach + 1);
  let sum = 0;
  for (let j = 0; j <= reach; j++) {
    const x = Math.PI * corner * j;
    const sinc = j === 0 ? 1 : Math.sin(x) / x;
    const angle = (Math.PI * j) / (reach + 1);
    taps[j] = sinc * (0.42 + 0.5 * Math.cos(angle) + 0.08 * Math.cos(2 * angle));
    sum += (j === 0 ? 1 : 2) * taps[j]!;
  }
  for (let j = 0; j <= reach; j++) taps[j] = taps[j]! / sum;
  return taps;
}
