import { RealFourier, window } from '../../src/methods/signal/index.ts';

/**
 * Onsets by spectral flux with a maximum filter over frequency, written from the paper for comparison: S. Boeck and G.
 * Widmer, Maximum filter vibrato suppression for onset detection, DAFx-13 (2013). Frames of 2048 at 44.1 kHz, 200 a
 * second, 24 bands to the octave, lag by half the window's ramp, peaks picked as there.
 * @param threshold on the summed flux, in log10 units
 */
export function superflux(samples: Float32Array, rate: number, threshold: number): number[] {
  const size = 2 ** Math.round(Math.log2(2048 * (rate / 44_100)));
  const hop = rate / 200;
  const fourier = new RealFourier(size);
  const shape = window('hann', size);
  const bands = logBands(size, rate);
  const frames = Math.floor(samples.length / hop);
  const [re, im, piece] = [new Float64Array(fourier.bins), new Float64Array(fourier.bins), new Float64Array(size)];
  const spectra: Float64Array[] = [];
  for (let f = 0; f < frames; f++) {
    const start = Math.round(f * hop) - size / 2;
    for (let i = 0; i < size; i++) piece[i] = shape[i]! * (samples[start + i] ?? 0) * 32_768;
    fourier.forward(piece, re, im);
    spectra.push(Float64Array.from(bands, ([low, high]) => {
      let sum = 0;
      for (let k = low; k <= high; k++) sum += Math.hypot(re[k]!, im[k]!) / (high - low + 1);
      return Math.log10(1 + sum);
    }));
  }
  const lag = Math.max(1, Math.round((size * 0.25) / hop / 2));
  const flux = new Float64Array(frames);
  for (let f = lag; f < frames; f++) {
    const [now, before] = [spectra[f]!, spectra[f - lag]!];
    for (let b = 0; b < now.length; b++) flux[f] = flux[f]! + Math.max(0, now[b]! - Math.max(before[b - 1] ?? 0, before[b]!, before[b + 1] ?? 0));
  }
  const onsets: number[] = [];
  let last = -1;
  for (let f = 0; f < frames; f++) {
    // 30 ms before for the maximum, 100 ms before and 70 ms after for the mean, 30 ms apart.
    let [top, sum, count] = [0, 0, 0];
    for (let k = Math.max(0, f - 6); k <= Math.min(frames - 1, f + 6); k++) top = Math.max(top, flux[k]!);
    for (let k = Math.max(0, f - 20); k <= Math.min(frames - 1, f + 14); k++, count++) sum += flux[k]!;
    if (flux[f] === top && flux[f]! >= sum / count + threshold && f - last > 6) {
      onsets.push((f * hop) / rate);
      last = f;
    }
  }
  return onsets;
}

function logBands(size: number, rate: number): [number, number][] {
  const out: [number, number][] = [];
  let before = -1;
  for (let f = 27.5; f < Math.min(16_000, 0.48 * rate); f *= 2 ** (1 / 24)) {
    const bin = Math.round((f * size) / rate);
    if (bin === before || bin < 1) continue;
    out.push([Math.max(1, before + 1 > bin ? bin : Math.max(1, bin - Math.floor((bin - before) / 2))), bin]);
    before = bin;
  }
  return out;
}
