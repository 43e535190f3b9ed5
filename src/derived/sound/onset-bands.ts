import { allBandEnergies, quantileOf, robustSpread, takeLogarithms } from '../../methods/signal/index.ts';
import type { PreparedSound } from './prepared-sound.ts';
import { soundingParts, thinnedParts, type Part } from './sounding-parts.ts';

/** Edges of the bands in which onsets are looked for, Hz. */
const EDGES = [60, 160, 420, 1000, 2400, 5500, 12000] as const;
/** A rise counts up to so many spreads: one loud clank must not outweigh ten blows. */
const CAP = 6;
const BEYOND_CAP = 0.1;

/** Rises of loudness in bands, frame by frame, each in spreads of its own band. */
export interface OnsetBands {
  /** one row a band */
  readonly rises: readonly Float32Array[];
  readonly frameRate: number;
  readonly frames: number;
  /** where there is sound at all */
  readonly parts: readonly Part[];
  /** mean square by frame between 2.4 and 5.5 kHz, or in the highest band there is */
  readonly bright: Float32Array;
}

/** High enough that distance and walls tell, low enough for every phone and codec. */
const BRIGHT = 4;

/**
 * How much louder the next milliseconds are than the last ones, in decibels over the band's own robust spread: 9 ms
 * ahead (20 ms in the lowest band) against 10 to 20 ms behind.
 */
export function onsetBands(sound: PreparedSound): OnsetBands {
  const rises: Float32Array[] = [];
  const frames = Math.floor(sound.samples.length / sound.hop);
  const edges = EDGES.slice(1).map((high, b) => [EDGES[b]!, high] as const).filter(([low]) => low < 0.4 * sound.rate);
  const bands = allBandEnergies(sound.samples, edges, sound.rate, sound.hop);
  const parts = soundingParts(bands, sound.frameRate);
  for (const [b, energies] of bands.entries()) {
    const ahead = Math.round((b === 0 ? 0.02 : 0.009) * sound.frameRate);
    const behind = Math.round((b === 0 ? 0.02 : b === 1 ? 0.015 : 0.01) * sound.frameRate);
    rises.push(scaled(decibelRise(energies, ahead, behind, parts), parts));
  }
  return { rises, frameRate: sound.frameRate, frames, parts, bright: bands[Math.min(BRIGHT, bands.length - 1)] ?? new Float32Array(frames) };
}

/**
 * dB by which the next `ahead` frames exceed the mean of the `behind` frames before. Those ahead are weighted less and
 * less the farther they lie, so that the rise is greatest where the onset is and not anywhere within the window.
 */
export function decibelRise(energies: Float32Array, ahead: number, behind: number, parts: readonly Part[] = [[0, energies.length]]): Float32Array {
  const frames = energies.length;
  if (frames === 0) return new Float32Array(0);
  const sums = new Float64Array(frames + 1);
  const sumsOfSums = new Float64Array(frames + 1);
  sumUp(energies, sums, sumsOfSums);
  // A floor well under the quietest frames keeps digital silence from looking like a rise without end.
  const held = parts.reduce((sum, [from, to]) => sum + to - from, 0);
  const floor = 0.05 * quantileOf(thinnedParts(energies, parts, 16), 0.1) + 1e-5 * (sums[frames]! / held) + 1e-20;
  const out = ratios(sums, sumsOfSums, ahead, behind, floor);
  takeLogarithms(out);
  scale(out, 10 / Math.LN10);
  return out;
}

// Loops over all frames stand in functions of their own, which are compiled once and kept.

function sumUp(row: Float32Array, sums: Float64Array, sumsOfSums: Float64Array): void {
  let sum = 0;
  let sumOfSums = 0;
  for (let i = 0; i < row.length; i++) {
    sum += row[i]!;
    sumOfSums += sum;
    sums[i + 1] = sum;
    sumsOfSums[i + 1] = sumOfSums;
  }
}

/** Energy ahead over energy behind, both above the floor; 1 at the first frame. */
function ratios(sums: Float64Array, sumsOfSums: Float64Array, ahead: number, behind: number, floor: number): Float32Array {
  const frames = sums.length - 1;
  const out = new Float32Array(frames);
  out[0] = 1;
  for (let i = 1; i < frames; i++) {
    const to = Math.min(frames, i + ahead);
    const from = Math.max(0, i - behind);
    const span = to - i;
    const after = (sumsOfSums[to]! - sumsOfSums[i]! - span * sums[i]!) / ((span * (span + 1)) / 2);
    const before = (sums[i]! - sums[from]!) / (i - from);
    out[i] = (after + floor) / (before + floor);
  }
  return out;
}

function scale(row: Float32Array, factor: number): void {
  for (let i = 0; i < row.length; i++) row[i] = factor * row[i]!;
}

function scaled(rises: Float32Array, parts: readonly Part[]): Float32Array {
  const spread = Math.max(0.3, robustSpread(thinnedParts(rises, parts, 7)));
  cap(rises, 1 / spread);
  return rises;
}

/** Rises in spreads; falling counts as none, and what lies beyond the cap counts little. */
function cap(rises: Float32Array, factor: number): void {
  for (let i = 0; i < rises.length; i++) {
    const rise = Math.max(0, factor * rises[i]!);
    rises[i] = rise <= CAP ? rise : CAP + BEYOND_CAP * (rise - CAP);
  }
}

/** Weighted sum of the rises. @param weights one a band; absent gives all the same */
export function novelty(bands: OnsetBands, weights?: readonly number[]): Float32Array {
  const out = new Float32Array(bands.frames);
  for (const [b, row] of bands.rises.entries()) {
    const weight = weights?.[b] ?? 1 / bands.rises.length;
    if (weight > 0) addWeighted(out, row, weight);
  }
  return out;
}

function addWeighted(into: Float32Array, row: Float32Array, weight: number): void {
  for (let i = 0; i < row.length; i++) into[i] = into[i]! + weight * row[i]!;
}
