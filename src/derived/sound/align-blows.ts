import { vertex } from '../../methods/signal/index.ts';

/**
 * Blow times made finer: the mean shape of the novelty around the blows is slid over each blow, and each is moved to
 * where it fits best; twice over.
 * @param times s
 * @returns times in s, each within 6 ms of where it was
 */
export function alignBlows(novelty: Float32Array, frameRate: number, times: readonly number[]): number[] {
  const reach = Math.round(0.006 * frameRate);
  const half = Math.round(0.012 * frameRate);
  let frames = times.map((t) => t * frameRate);
  if (times.length < 4) return [...times];
  for (let round = 0; round < 2; round++) {
    const shape = new Float64Array(2 * half + 1);
    for (const frame of frames) for (let k = -half; k <= half; k++) shape[k + half] = shape[k + half]! + at(novelty, frame + k) / frames.length;
    const mean = shape.reduce((a, b) => a + b, 0) / shape.length;
    for (let k = 0; k < shape.length; k++) shape[k] = shape[k]! - mean;
    const shifts = frames.map((frame) => {
      const fits = new Float64Array(2 * reach + 1);
      for (let s = -reach; s <= reach; s++) {
        let sum = 0;
        for (let k = -half; k <= half; k++) sum += shape[k + half]! * at(novelty, frame + s + k);
        fits[s + reach] = sum;
      }
      let top = 0;
      for (let s = 0; s < fits.length; s++) if (fits[s]! > fits[top]!) top = s;
      if (top === 0 || top === fits.length - 1) return 0;
      return top - reach + vertex(fits[top - 1]!, fits[top]!, fits[top + 1]!);
    });
    // The mean shape itself may slide; what all blows share is taken out again.
    const shared = shifts.reduce((a, b) => a + b, 0) / shifts.length;
    frames = frames.map((frame, i) => frame + shifts[i]! - shared);
  }
  return frames.map((frame) => frame / frameRate);
}

function at(row: Float32Array, place: number): number {
  const below = Math.floor(place);
  const low = row[below] ?? 0;
  return low + (place - below) * ((row[below + 1] ?? 0) - low);
}
