/** Windows by name, as sums of cosines: w[n] = sum over j of (-1)^j a_j cos(2 pi j n / N). */
const COSINE_WEIGHTS = {
  rectangle: [1],
  hann: [0.5, 0.5],
  hamming: [0.54, 0.46],
  blackman: [0.42, 0.5, 0.08],
  /** Minimum side lobe, three terms. */
  'blackman-harris-3': [0.42323, 0.49755, 0.07922],
  /** Minimum side lobe, four terms. */
  'blackman-harris-4': [0.35875, 0.48829, 0.14128, 0.01168],
} as const;

export type WindowName = keyof typeof COSINE_WEIGHTS;

/**
 * A window for spectra, periodic over its length.
 * Coefficients: F. J. Harris, On the use of windows for harmonic analysis with the DFT, Proc. IEEE 66 (1978) 51.
 * @param name which
 * @param length samples, 1 or more
 */
export function window(name: WindowName, length: number): Float64Array {
  if (!Number.isInteger(length) || length < 1) throw new Error(`A window has a whole number of samples, 1 or more: ${length}`);
  const weights = COSINE_WEIGHTS[name];
  const row = new Float64Array(length);
  for (let n = 0; n < length; n++) {
    let sum = 0;
    for (let j = 0; j < weights.length; j++) sum += (j % 2 === 0 ? 1 : -1) * weights[j]! * Math.cos((2 * Math.PI * j * n) / length);
    row[n] = sum;
  }
  return row;
}

/** Mean of the window: how much of a steady sine's height it leaves, 0 to 1. */
export function coherentGain(row: Float64Array): number {
  let sum = 0;
  for (const w of row) sum += w;
  return sum / row.length;
}

/** Equivalent noise bandwidth in bins, 1 or more (Harris 1978, equation 11). */
export function noiseBandwidthBins(row: Float64Array): number {
  let sum = 0;
  let squares = 0;
  for (const w of row) {
    sum += w;
    squares += w * w;
  }
  return (row.length * squares) / (sum * sum);
}

/** Loss of a sine halfway between two bins against one on a bin, dB, 0 or more (Harris 1978, equation 14). */
export function scallopLossDecibels(row: Float64Array): number {
  return -20 * Math.log10(responseAt(row, 0.5) / responseAt(row, 0));
}

/** Size of the window's transform at a distance from its centre. @param bins distance in bins */
export function responseAt(row: Float64Array, bins: number): number {
  let re = 0;
  let im = 0;
  for (let n = 0; n < row.length; n++) {
    const angle = (2 * Math.PI * bins * n) / row.length;
    re += row[n]! * Math.cos(angle);
    im -= row[n]! * Math.sin(angle);
  }
  return Math.hypot(re, im);
}
