import { bandEnergies } from '../../methods/signal/index.ts';

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
  for (let band = 0; band < bands; band++) {
    const energies = logEnergies(samples, edges[band]!, edges[band + 1]!, rate, hop);
    centres.forEach((centre, blow) => logs.set(energies.subarray(centre - side, centre + side + 1), (blow * bands + band) * places));
  }
  const fold = { firstDelay: (-side * hop) / rate, step: hop / rate, places, bands, blows: centres.length, logs };
  return { ...fold, means: meanLogs(fold) };
}

/** The means alone of the same fold of another row of samples. @returns index band * places + place */
export function meansLike(fold: Fold, samples: Float32Array, rate: number, hop: number, times: readonly number[]): Float64Array {
  const side = (fold.places - 1) / 2;
  const centres = centresOf(times, rate / hop, side, Math.floor(samples.length / hop));
  const edges = bandEdges(rate);
  const out = new Float64Array(fold.bands * fold.places);
  for (let band = 0; band < fold.bands; band++) {
    const energies = logEnergies(samples, edges[band]!, edges[band + 1]!, rate, hop);
    const at = band * fold.places;
    for (const centre of centres) for (let i = 0; i < fold.places; i++) out[at + i] = out[at + i]! + energies[centre - side + i]!;
    for (let i = 0; i < fold.places; i++) out[at + i] = out[at + i]! / centres.length;
  }
  return out;
}

/** Mean of the logarithms over chosen blows. @param chosen indices of blows, repeats allowed; all when absent */
export function meanLogs(fold: Omit<Fold, 'means'>, chosen?: ArrayLike<number>): Float64Array {
  const row = fold.bands * fold.places;
  const out = new Float64Array(row);
  const count = chosen?.length ?? fold.blows;
  for (let n = 0; n < count; n++) {
    const from = (chosen ? chosen[n]! : n) * row;
    for (let i = 0; i < row; i++) out[i] = out[i]! + fold.logs[from + i]!;
  }
  for (let i = 0; i < row; i++) out[i] = out[i]! / Math.max(1, count);
  return out;
}

/** Frames of the blows whose whole turn lies inside, thinned evenly where there are very many. */
function centresOf(times: readonly number[], frameRate: number, side: number, frames: number): number[] {
  const centres = times.map((t) => Math.round(t * frameRate)).filter((c) => c - side >= 0 && c + side < frames);
  return centres.length <= MOST_BLOWS ? centres : Array.from({ length: MOST_BLOWS }, (_, i) => centres[Math.floor((i * centres.length) / MOST_BLOWS)]!);
}

const bandEdges = (rate: number): number[] => Array.from({ length: BANDS + 1 }, (_, i) => LOWEST * (HIGHEST / LOWEST) ** (i / BANDS)).filter((edge) => edge < 0.45 * rate);

function logEnergies(samples: Float32Array, low: number, high: number, rate: number, hop: number): Float32Array {
  const energies = bandEnergies(samples, low, high, rate, hop);
  const frames = energies.length;
  let mean = 0;
  for (const e of energies) mean += e / frames;
  const floor = 1e-9 * mean + 1e-20;
  // Pairs of frames, so that the logarithm is not of a single square.
  for (let i = 0; i < frames; i++) energies[i] = Math.log(0.5 * (energies[i]! + energies[Math.min(frames - 1, i + 1)]!) + floor);
  return energies;
}
