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
  const last = samples.length - 1;
  for (let k = 0; k < length; k++) {
    const centre = k * factor;
    let sum = taps[0]! * samples[centre]!;
    if (centre >= reach && centre + reach <= last) {
      for (let j = 1; j <= reach; j++) sum += taps[j]! * (samples[centre - j]! + samples[centre + j]!);
    } else {
      for (let j = 1; j <= reach; j++) sum += taps[j]! * ((samples[centre - j] ?? 0) + (samples[centre + j] ?? 0));
    }
    out[k] = sum;
  }
  return out;
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
