import { biquad, type Biquad } from './biquad.ts';

const ALL_PASS: Biquad = { b0: 1, b1: 0, b2: 0, a1: 0, a2: 0 };

/**
 * Mean square of the samples in one band, frame by frame: a second-order Butterworth high-pass and a low-pass,
 * squared and averaged over whole frames. An edge at or above 0.45 of the rate is left open.
 * @param low lower edge, Hz, above 0
 * @param high upper edge, Hz
 * @param rate Hz
 * @param hop samples in a frame, 1 or more
 * @returns one value a frame, floor(length / hop) of them, moved back by the delay of the filters (whole frames)
 */
export function bandEnergies(samples: Float64Array | Float32Array, low: number, high: number, rate: number, hop: number): Float32Array {
  const frames = Math.floor(samples.length / hop);
  const energies = new Float32Array(frames);
  const upper = biquad('high-pass', Math.min(low, 0.45 * rate), rate);
  const lower = high < 0.45 * rate ? biquad('low-pass', high, rate) : ALL_PASS;
  const delay = Math.round(envelopeDelay(low, high, rate) / hop);
  const { b0: p0, b1: p1, b2: p2, a1: p3, a2: p4 } = upper;
  const { b0: q0, b1: q1, b2: q2, a1: q3, a2: q4 } = lower;
  let [u1, u2, v1, v2, at] = [0, 0, 0, 0, 0];
  for (let frame = 0; frame < frames; frame++) {
    let sum = 0;
    for (let i = 0; i < hop; i++, at++) {
      const x = samples[at]!;
      const y = p0 * x + u1;
      u1 = p1 * x - p3 * y + u2;
      u2 = p2 * x - p4 * y;
      const z = q0 * y + v1;
      v1 = q1 * y - q3 * z + v2;
      v2 = q2 * y - q4 * z;
      sum += z * z;
    }
    const to = frame - delay;
    if (to >= 0) energies[to] = sum / hop;
  }
  for (let frame = Math.max(0, frames - delay); frame < frames; frame++) energies[frame] = energies[Math.max(0, frames - delay - 1)] ?? 0;
  return energies;
}

/** Delay of such a band's envelope, samples: the slope of the filters' phase at the geometric middle of the band. */
export function envelopeDelay(low: number, high: number, rate: number): number {
  const open = high >= 0.45 * rate;
  const middle = Math.sqrt(low * Math.min(high, 0.45 * rate));
  const sections = open ? [biquad('high-pass', Math.min(low, 0.45 * rate), rate)] : [biquad('high-pass', low, rate), biquad('low-pass', high, rate)];
  const step = middle * 0.01;
  let delay = 0;
  for (const section of sections) {
    let turned = phaseAt(section, middle + step, rate) - phaseAt(section, middle - step, rate);
    turned -= 2 * Math.PI * Math.round(turned / (2 * Math.PI));
    delay -= turned / ((2 * Math.PI * 2 * step) / rate);
  }
  return Math.max(0, delay);
}

function phaseAt(f: Biquad, frequency: number, rate: number): number {
  const turn = (2 * Math.PI * frequency) / rate;
  const top = Math.atan2(-(f.b1 * Math.sin(turn) + f.b2 * Math.sin(2 * turn)), f.b0 + f.b1 * Math.cos(turn) + f.b2 * Math.cos(2 * turn));
  return top - Math.atan2(-(f.a1 * Math.sin(turn) + f.a2 * Math.sin(2 * turn)), 1 + f.a1 * Math.cos(turn) + f.a2 * Math.cos(2 * turn));
}
