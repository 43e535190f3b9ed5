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
  const shape = new Float64Array(2 * half + 1);
  const around = new Float64Array(2 * (half + reach) + 1);
  for (let round = 0; round < 2; round++) {
    shape.fill(0);
    for (const frame of frames) {
      cutAround(novelty, frame, half, shape.length, around);
      for (let k = 0; k < shape.length; k++) shape[k] = shape[k]! + around[k]! / frames.length;
    }
    const mean = shape.reduce((a, b) => a + b, 0) / shape.length;
    for (let k = 0; k < shape.length; k++) shape[k] = shape[k]! - mean;
    const shifts: number[] = [];
    for (const frame of frames) {
      cutAround(novelty, frame, half + reach, around.length, around);
      shifts.push(bestShift(around, shape));
    }
    // The mean shape itself may slide; what all blows share is taken out again.
    const shared = shifts.reduce((a, b) => a + b, 0) / shifts.length;
    frames = frames.map((frame, i) => frame + shifts[i]! - shared);
  }
  return frames.map((frame) => frame / frameRate);
}

/** The row around a place that lies between frames, by straight lines; 0 beyond its ends. */
function cutAround(row: Float32Array, place: number, before: number, count: number, into: Float64Array): void {
  const first = Math.floor(place);
  const share = place - first;
  for (let k = 0; k < count; k++) {
    const at = first - before + k;
    const low = at >= 0 && at < row.length ? row[at]! : 0;
    const high = at + 1 >= 0 && at + 1 < row.length ? row[at + 1]! : 0;
    into[k] = low + share * (high - low);
  }
}

/** Places by which a shape fits best off the middle of a longer row; 0 where it fits best at an end. */
function bestShift(row: Float64Array, shape: Float64Array): number {
  const count = row.length - shape.length + 1;
  const fits = new Float64Array(count);
  let top = 0;
  for (let s = 0; s < count; s++) {
    let sum = 0;
    for (let k = 0; k < shape.length; k++) sum += shape[k]! * row[s + k]!;
    fits[s] = sum;
    if (sum > fits[top]!) top = s;
  }
  if (top === 0 || top === count - 1) return 0;
  return top - (count - 1) / 2 + vertex(fits[top - 1]!, fits[top]!, fits[top + 1]!);
}
