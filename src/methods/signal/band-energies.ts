import { biquad, type Biquad } from './biquad.ts';

const ALL_PASS: Biquad = { b0: 1, b1: 0, b2: 0, a1: 0, a2: 0 };
/** Frames that are filtered at a time, so that a piece stays near while every band goes over it. */
const AT_ONCE = 256;
/** Older samples that the feed-forward part of a band needs. */
const BACK = 4;

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

/**
 * The same for several bands. The feed-forward part of a high-pass, 1 - 2 z^-1 + z^-2, and that of a low-pass,
 * 1 + 2 z^-1 + z^-2, make together 1 - 2 z^-2 + z^-4, which is reckoned first; both recursive parts follow. Two bands at
 * a time wait for their own last values together.
 * @param bands edges in Hz, as for one band
 */
export function allBandEnergies(samples: Float64Array | Float32Array, bands: readonly (readonly [low: number, high: number])[], rate: number, hop: number): Float32Array[] {
  const frames = Math.floor(samples.length / hop);
  const filters = bands.map(([low, high]) => recursionOf(low, high, rate, hop, frames));
  const piece = new Float64Array(BACK + AT_ONCE * hop);
  for (let from = 0; from < frames; from += AT_ONCE) {
    const to = Math.min(frames, from + AT_ONCE);
    piece.copyWithin(0, AT_ONCE * hop);
    piece.set(samples.subarray(from * hop, to * hop), BACK);
    for (let b = 0; b < filters.length; b += 2) {
      const [one, other] = [filters[b]!, filters[b + 1]];
      if (other) twoBands(one, other, piece, hop, from, to);
      else oneBand(one, piece, hop, from, to);
    }
  }
  return filters.map(({ row }, b) => {
    const delay = Math.min(frames, Math.round(envelopeDelay(bands[b]![0], bands[b]![1], rate) / hop));
    if (delay === 0) return row;
    row.copyWithin(0, delay);
    return row.fill(row[Math.max(0, frames - delay - 1)] ?? 0, Math.max(0, frames - delay));
  });
}

/** The recursive part of one band: feed-back of both sections, what the squares are multiplied by, and the last two values of each. */
interface Recursion {
  readonly upper: Biquad;
  readonly lower: Biquad;
  /** Places in a piece of the two older samples that the feed-forward part takes, against the newest one at `BACK`. */
  readonly middle: number;
  readonly oldest: number;
  readonly gain: number;
  readonly last: Float64Array;
  /** receives the mean squares */
  readonly row: Float32Array;
}

function recursionOf(low: number, high: number, rate: number, hop: number, frames: number): Recursion {
  const open = high >= 0.45 * rate;
  const [upper, lower] = [biquad('high-pass', Math.min(low, 0.45 * rate), rate), open ? ALL_PASS : biquad('low-pass', high, rate)];
  return { upper, lower, middle: BACK - (open ? 1 : 2), oldest: BACK - (open ? 2 : 4), gain: (upper.b0 * lower.b0) ** 2 / hop, last: new Float64Array(4), row: new Float32Array(frames) };
}

/** @param piece begins `BACK` samples earlier. Two samples a step, so that the older and the newer value of each section change places without being moved. */
function oneBand({ upper, lower, middle, oldest, gain, last, row }: Recursion, piece: Float64Array, hop: number, from: number, to: number): void {
  const { a1: p1, a2: p2 } = upper;
  const { a1: q1, a2: q2 } = lower;
  let [y1, y2, z1, z2] = [last[0]!, last[1]!, last[2]!, last[3]!];
  for (let frame = from, at = 0; frame < to; frame++) {
    const end = at + hop;
    let sum = 0;
    for (; at + 1 < end; at += 2) {
      y2 = piece[at + BACK]! - 2 * piece[at + middle]! + piece[at + oldest]! - p2 * y2 - p1 * y1;
      z2 = y2 - q2 * z2 - q1 * z1;
      sum += z2 * z2;
      y1 = piece[at + 1 + BACK]! - 2 * piece[at + 1 + middle]! + piece[at + 1 + oldest]! - p2 * y1 - p1 * y2;
      z1 = y1 - q2 * z1 - q1 * z2;
      sum += z1 * z1;
    }
    if (at < end) {
      y2 = piece[at + BACK]! - 2 * piece[at + middle]! + piece[at + oldest]! - p2 * y2 - p1 * y1;
      z2 = y2 - q2 * z2 - q1 * z1;
      sum += z2 * z2;
      at++;
      let older = y1;
      y1 = y2;
      y2 = older;
      older = z1;
      z1 = z2;
      z2 = older;
    }
    row[frame] = gain * sum;
  }
  last.set([y1, y2, z1, z2]);
}

/** The same for two bands, which wait for their own last values together. */
function twoBands(one: Recursion, other: Recursion, piece: Float64Array, hop: number, from: number, to: number): void {
  const [p1, p2, q1, q2] = [one.upper.a1, one.upper.a2, one.lower.a1, one.lower.a2];
  const [r1, r2, s1, s2] = [other.upper.a1, other.upper.a2, other.lower.a1, other.lower.a2];
  const { gain, row, middle, oldest } = one;
  const { gain: gainOther, row: rowOther, middle: middleOther, oldest: oldestOther } = other;
  let [y1, y2, z1, z2] = [one.last[0]!, one.last[1]!, one.last[2]!, one.last[3]!];
  let [k1, k2, l1, l2] = [other.last[0]!, other.last[1]!, other.last[2]!, other.last[3]!];
  for (let frame = from, at = 0; frame < to; frame++) {
    const end = at + hop;
    let sum = 0;
    let sumOther = 0;
    for (; at + 1 < end; at += 2) {
      y2 = piece[at + BACK]! - 2 * piece[at + middle]! + piece[at + oldest]! - p2 * y2 - p1 * y1;
      k2 = piece[at + BACK]! - 2 * piece[at + middleOther]! + piece[at + oldestOther]! - r2 * k2 - r1 * k1;
      z2 = y2 - q2 * z2 - q1 * z1;
      l2 = k2 - s2 * l2 - s1 * l1;
      sum += z2 * z2;
      sumOther += l2 * l2;
      y1 = piece[at + 1 + BACK]! - 2 * piece[at + 1 + middle]! + piece[at + 1 + oldest]! - p2 * y1 - p1 * y2;
      k1 = piece[at + 1 + BACK]! - 2 * piece[at + 1 + middleOther]! + piece[at + 1 + oldestOther]! - r2 * k1 - r1 * k2;
      z1 = y1 - q2 * z1 - q1 * z2;
      l1 = k1 - s2 * l1 - s1 * l2;
      sum += z1 * z1;
      sumOther += l1 * l1;
    }
    if (at < end) {
      y2 = piece[at + BACK]! - 2 * piece[at + middle]! + piece[at + oldest]! - p2 * y2 - p1 * y1;
      k2 = piece[at + BACK]! - 2 * piece[at + middleOther]! + piece[at + oldestOther]! - r2 * k2 - r1 * k1;
      z2 = y2 - q2 * z2 - q1 * z1;
      l2 = k2 - s2 * l2 - s1 * l1;
      sum += z2 * z2;
      sumOther += l2 * l2;
      at++;
      let older = y1;
      y1 = y2;
      y2 = older;
      older = z1;
      z1 = z2;
      z2 = older;
      older = k1;
      k1 = k2;
      k2 = older;
      older = l1;
      l1 = l2;
      l2 = older;
    }
    row[frame] = gain * sum;
    rowOther[frame] = gainOther * sumOther;
  }
  one.last.set([y1, y2, z1, z2]);
  other.last.set([k1, k2, l1, l2]);
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
