import { allBandEnergies, takeLogarithms } from '../../methods/signal/index.ts';

/** Logarithmic energies around every blow, by band and delay. */
export interface Fold {
  /** s, delay of the first place and between places */
  readonly firstDelay: number;
  readonly step: number;
  readonly places: number;
  readonly bands: number;
  readonly blows: number;
  /** natural logarithm of the mean square; index (blow * bands + band) * places + place */
  readonly logs: Float32Array;
  /** mean of the logarithms over all blows; index band * places + place */
  readonly means: Float64Array;
}

const LOWEST = 220;
const HIGHEST = 11_000;
const BANDS = 9;
/** More blows than these are thinned evenly, which bounds the memory. */
const MOST_BLOWS = 1200;

/** Longest delay looked at on either side of a blow, s. */
export const reachOf = (period: number): number => Math.min(0.25, 0.62 * period);

/**
 * Lays the turns of a recording over one another.
 * @param samples the recording, with or without tails
 * @param hop samples in a frame
 * @param times s, blows
 * @param reach s, how far to look on either side
 * @returns undefined when fewer than four blows lie wholly inside
 */
export function foldTurns(samples: Float32Array, rate: number, hop: number, times: readonly number[], reach: number): Fold | undefined {
  const frames = Math.floor(samples.length / hop);
  const side = Math.round((reach * rate) / hop);
  const places = 2 * side + 1;
  const centres = centresOf(times, rate / hop, side, frames);
  if (centres.length < 4) return undefined;
  const edges = bandEdges(rate);
  const bands = edges.length - 1;
  const logs = new Float32Array(centres.length * bands * places);
  for (const [band, energies] of logEnergies(samples, edges, rate, hop).entries())
    for (const [blow, centre] of centres.entries()) logs.set(energies.subarray(centre - side, centre + side + 1), (blow * bands + band) * places);
  const fold = { firstDelay: (-side * hop) / rate, step: hop / rate, places, bands, blows: centres.length, logs };
  return { ...fold, means: meanLogs(fold) };
}

/** The means alone of the same fold of another row of samples. @returns index band * places + place */
export function meansLike(fold: Fold, samples: Float32Array, rate: number, hop: number, times: readonly number[]): Float64Array {
  const side = (fold.places - 1) / 2;
  const centres = centresOf(times, rate / hop, side, Math.floor(samples.length / hop));
  const edges = bandEdges(rate);
  const out = new Float64Array(fold.bands * fold.places);
  for (const [band, energies] of logEnergies(samples, edges, rate, hop).entries()) {
    const row = out.subarray(band * fold.places, (band + 1) * fold.places);
    for (const centre of centres) addRow(row, energies, centre - side, 1 / centres.length);
  }
  return out;
}

/** Mean of the logarithms over chosen blows. @param chosen indices of blows, repeats allowed; all when absent */
export function meanLogs(fold: Omit<Fold, 'means'>, chosen?: ArrayLike<number>): Float64Array {
  const row = fold.bands * fold.places;
  const out = new Float64Array(row);
  if (!chosen) {
    for (let n = 0; n < fold.blows; n++) addRow(out, fold.logs, n * row, 1 / fold.blows);
    return out;
  }
  // A blow that was drawn several times is read but once.
  const often = new Float64Array(fold.blows);
  for (let n = 0; n < chosen.length; n++) often[chosen[n]!] = often[chosen[n]!]! + 1 / chosen.length;
  for (let n = 0; n < fold.blows; n++) if (often[n]! > 0) addRow(out, fold.logs, n * row, often[n]!);
  return out;
}

/** Adds a stretch of a row, weighted. A function of its own is compiled once and kept; a loop in a caller that runs once a recording is not. */
function addRow(into: Float64Array, row: Float32Array, from: number, weight: number): void {
  for (let i = 0; i < into.length; i++) into[i] = into[i]! + weight * row[from + i]!;
}

/** Frames of the blows whose whole turn lies inside, thinned evenly where there are very many. */
function centresOf(times: readonly number[], frameRate: number, side: number, frames: number): number[] {
  const centres = times.map((t) => Math.round(t * frameRate)).filter((c) => c - side >= 0 && c + side < frames);
  return centres.length <= MOST_BLOWS ? centres : Array.from({ length: MOST_BLOWS }, (_, i) => centres[Math.floor((i * centres.length) / MOST_BLOWS)]!);
}

const bandEdges = (rate: number): number[] => Array.from({ length: BANDS + 1 }, (_, i) => LOWEST * (HIGHEST / LOWEST) ** (i / BANDS)).filter((edge) => edge < 0.45 * rate);

function logEnergies(samples: Float32Array, edges: readonly number[], rate: number, hop: number): Float32Array[] {
  const rows = allBandEnergies(samples, edges.slice(1).map((high, band) => [edges[band]!, high] as const), rate, hop);
  for (const energies of rows) {
    pairUp(energies);
    takeLogarithms(energies);
  }
  return rows;
}

/** Means of pairs of frames, so that the logarithm is not of a single square, on a floor far below their mean. */
function pairUp(energies: Float32Array): void {
  const frames = energies.length;
  let sum = 0;
  for (let i = 0; i < frames; i++) sum += energies[i]!;
  const floor = (1e-9 * sum) / frames + 1e-20;
  for (let i = 0; i + 1 < frames; i++) energies[i] = 0.5 * (energies[i]! + energies[i + 1]!) + floor;
  if (frames > 0) energies[frames - 1] = energies[frames - 1]! + floor;
}
