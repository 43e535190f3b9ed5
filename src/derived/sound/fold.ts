import { allBandEnergies } from '../../methods/signal/index.ts';

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
  logEnergies(samples, edges, rate, hop).forEach((energies, band) => {
    centres.forEach((centre, blow) => logs.set(energies.subarray(centre - side, centre + side + 1), (blow * bands + band) * places));
  });
  const fold = { firstDelay: (-side * hop) / rate, step: hop / rate, places, bands, blows: centres.length, logs };
  return { ...fold, means: meanLogs(fold) };
}

/** The means alone of the same fold of another row of samples. @returns index band * places + place */
export function meansLike(fold: Fold, samples: Float32Array, rate: number, hop: number, times: readonly number[]): Float64Array {
  const side = (fold.places - 1) / 2;
  const centres = centresOf(times, rate / hop, side, Math.floor(samples.length / hop));
  const edges = bandEdges(rate);
  const out = new Float64Array(fold.bands * fold.places);
  logEnergies(samples, edges, rate, hop).forEach((energies, band) => {
    const at = band * fold.places;
    for (const centre of centres) for (let i = 0; i < fold.places; i++) out[at + i] = out[at + i]! + energies[centre - side + i]!;
    for (let i = 0; i < fold.places; i++) out[at + i] = out[at + i]! / centres.length;
  });
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

function logEnergies(samples: Float32Array, edges: readonly number[], rate: number, hop: number): Float32Array[] {
  const rows = allBandEnergies(samples, edges.slice(1).map((high, band) => [edges[band]!, high] as const), rate, hop);
  for (const energies of rows) {
    const frames = energies.length;
    let sum = 0;
    for (let i = 0; i < frames; i++) sum += energies[i]!;
    const floor = (1e-9 * sum) / frames + 1e-20;
    // Pairs of frames, so that the logarithm is not of a single square.
    for (let i = 0; i < frames; i++) energies[i] = Math.log(0.5 * (energies[i]! + energies[Math.min(frames - 1, i + 1)]!) + floor);
  }
  return rows;
}
