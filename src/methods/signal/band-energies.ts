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
  return allBandEnergies(samples, [[low, high]], rate, hop)[0]!;
}

/** The same for several bands, two at a time where both have two edges: each filter waits for its own last value, and two wait together. @param bands edges in Hz, as for one band */
export function allBandEnergies(samples: Float64Array | Float32Array, bands: readonly (readonly [low: number, high: number])[], rate: number, hop: number): Float32Array[] {
  const frames = Math.floor(samples.length / hop);
  const rows = bands.map(() => new Float32Array(frames));
  const sections = bands.map((band) => sectionsOf(band, rate));
  const closed = sections.flatMap(({ lower }, b) => (lower === ALL_PASS ? [] : [b]));
  for (let c = 0; c + 1 < closed.length; c += 2) {
    const [b, other] = [closed[c]!, closed[c + 1]!];
    twoBands(samples, sections[b]!, sections[other]!, hop, rows[b]!, rows[other]!);
  }
  sections.forEach((section, b) => {
    if (section.lower === ALL_PASS || (closed.length % 2 === 1 && b === closed[closed.length - 1])) oneBand(samples, section, hop, rows[b]!);
  });
  rows.forEach((row, b) => {
    const delay = Math.min(frames, Math.round(envelopeDelay(bands[b]![0], bands[b]![1], rate) / hop));
    if (delay === 0) return;
    row.copyWithin(0, delay);
    row.fill(row[Math.max(0, frames - delay - 1)] ?? 0, Math.max(0, frames - delay));
  });
  return rows;
}

/** What a high-pass and a low-pass need: of the feed-forward three, the outer two are alike and the middle one twice as great. */
interface Sections {
  readonly upper: Biquad;
  readonly lower: Biquad;
}

const sectionsOf = ([low, high]: readonly [number, number], rate: number): Sections =>
  ({ upper: biquad('high-pass', Math.min(low, 0.45 * rate), rate), lower: high < 0.45 * rate ? biquad('low-pass', high, rate) : ALL_PASS });

function oneBand(samples: Float64Array | Float32Array, { upper, lower }: Sections, hop: number, into: Float32Array): void {
  const { b0: p0, a1: p1, a2: p2 } = upper;
  const { b0: q0, b1: q1, b2: q2, a1: q3, a2: q4 } = lower;
  let [u1, u2, v1, v2, at] = [0, 0, 0, 0, 0];
  for (let frame = 0; frame < into.length; frame++) {
    let sum = 0;
    for (let i = 0; i < hop; i++, at++) {
      const x = p0 * samples[at]!;
      const y = x + u1;
      u1 = u2 - 2 * x - p1 * y;
      u2 = x - p2 * y;
      const z = q0 * y + v1;
      v1 = q1 * y - q3 * z + v2;
      v2 = q2 * y - q4 * z;
      sum += z * z;
    }
    into[frame] = sum / hop;
  }
}

/** Two bands with two edges each. The gains of their sections are left to the end, which leaves half the products. */
function twoBands(samples: Float64Array | Float32Array, one: Sections, other: Sections, hop: number, into: Float32Array, intoOther: Float32Array): void {
  const { a1: p1, a2: p2 } = one.upper;
  const { a1: q1, a2: q2 } = one.lower;
  const { a1: r1, a2: r2 } = other.upper;
  const { a1: s1, a2: s2 } = other.lower;
  const [gain, gainOther] = [(one.upper.b0 * one.lower.b0) ** 2 / hop, (other.upper.b0 * other.lower.b0) ** 2 / hop];
  let [u1, u2, v1, v2, m1, m2, n1, n2, at] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let frame = 0; frame < into.length; frame++) {
    let [sum, sumOther] = [0, 0];
    for (let i = 0; i < hop; i++, at++) {
      const x = samples[at]!;
      const twice = x + x;
      const y = x + u1;
      const k = x + m1;
      u1 = u2 - twice - p1 * y;
      m1 = m2 - twice - r1 * k;
      u2 = x - p2 * y;
      m2 = x - r2 * k;
      const z = y + v1;
      const l = k + n1;
      v1 = y + y - q1 * z + v2;
      n1 = k + k - s1 * l + n2;
      v2 = y - q2 * z;
      n2 = k - s2 * l;
      sum += z * z;
      sumOther += l * l;
    }
    into[frame] = gain * sum;
    intoOther[frame] = gainOther * sumOther;
  }
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
