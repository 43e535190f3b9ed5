import { RealFourier } from './real-fourier.ts';

/** Pole frequencies of the weighting, Hz (IEC 61672-1:2013, annex E). */
const POLES = [20.598997, 107.65265, 737.86223, 12194.217] as const;
/** dB; makes the weighting nought at 1 kHz. */
const AT_ONE_KILOHERTZ = 2.0;

/** A-weighting, dB. @param frequency Hz, above 0 */
export function aWeightingDecibels(frequency: number): number {
  const [f1, f2, f3, f4] = POLES;
  const f = frequency * frequency;
  const gain = (f4 * f4 * f * f) / ((f + f1 * f1) * Math.sqrt((f + f2 * f2) * (f + f3 * f3)) * (f + f4 * f4));
  return 20 * Math.log10(gain) + AT_ONE_KILOHERTZ;
}

/**
 * Mean square of a recording after A-weighting, block by block in the spectrum (Parseval); what is not a number counts
 * as silence.
 * @param rate samples a second
 * @returns in the square of the samples' unit; 0 for an empty row
 */
export function aWeightedMeanSquare(samples: Float32Array, rate: number): number {
  const size = 4096;
  const fourier = new RealFourier(size);
  const gains = Float64Array.from({ length: fourier.bins }, (_, k) => (k === 0 ? 0 : 10 ** (aWeightingDecibels((k * rate) / size) / 10)));
  const [re, im, block] = [new Float64Array(fourier.bins), new Float64Array(fourier.bins), new Float64Array(size)];
  let sum = 0;
  // Half-overlapping Hann blocks: their squares add up to the same weight everywhere but at the ends.
  for (let start = -size / 2; start < samples.length; start += size / 2) {
    for (let i = 0; i < size; i++) {
      const x = samples[start + i] ?? 0;
      block[i] = Math.abs(x) <= 1000 ? Math.sin((Math.PI * (i + 0.5)) / size) * x : 0;
    }
    fourier.forward(block, re, im);
    for (let k = 1; k < fourier.bins; k++) sum += (k === fourier.bins - 1 ? 1 : 2) * gains[k]! * (re[k]! ** 2 + im[k]! ** 2);
  }
  return samples.length === 0 ? 0 : sum / size / samples.length;
}
