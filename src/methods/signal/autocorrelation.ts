import { RealFourier, transformSize } from './real-fourier.ts';

/**
 * Autocorrelation of a row about its mean, by way of its power spectrum (Wiener-Khinchin), each lag divided by the
 * number of pairs that it has and by the value at lag zero.
 * @param longest greatest lag, 0 to length - 1
 * @returns lags 0 to `longest`; all zero for a constant row
 */
export function autocorrelation(row: Float64Array | Float32Array, longest: number): Float64Array {
  const out = new Float64Array(longest + 1);
  const length = row.length;
  if (length === 0) return out;
  let mean = 0;
  for (let i = 0; i < length; i++) mean += row[i]! / length;
  const size = transformSize(length + longest + 1);
  const fourier = new RealFourier(size);
  const padded = new Float64Array(size);
  for (let i = 0; i < length; i++) padded[i] = row[i]! - mean;
  const re = new Float64Array(fourier.bins);
  const im = new Float64Array(fourier.bins);
  fourier.forward(padded, re, im);
  for (let k = 0; k < re.length; k++) {
    re[k] = re[k]! ** 2 + im[k]! ** 2;
    im[k] = 0;
  }
  fourier.inverse(re, im, padded);
  const whole = padded[0]! / length;
  // A constant row leaves only what rounding left of its mean.
  if (!(whole > 1e-24 * mean * mean)) return out;
  for (let lag = 0; lag <= longest; lag++) out[lag] = padded[lag]! / (length - lag) / whole;
  return out;
}
