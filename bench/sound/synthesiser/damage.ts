/** What a phone does to the sound: low cut, automatic gain, clipping. The row is changed. */
import { biquad, filterThrough } from '../../../src/methods/signal/index.ts';
import type { Recipe } from './recipe.ts';

export function damage(row: Float64Array, recipe: Recipe): Float32Array {
  const { rate } = recipe;
  if (recipe.lowCut !== undefined) filterThrough(biquad('high-pass', recipe.lowCut, rate), row, row);
  if (recipe.automaticGain) {
    // 4:1 above a threshold, 4 ms up, 250 ms down.
    const [up, down] = [Math.exp(-1 / (0.004 * rate)), Math.exp(-1 / (0.25 * rate))];
    let envelope = 0;
    let loudest = 0;
    for (const x of row) loudest = Math.max(loudest, Math.abs(x));
    const threshold = 0.05 * loudest;
    for (let i = 0; i < row.length; i++) {
      const size = Math.abs(row[i]!);
      const keep = size > envelope ? up : down;
      envelope = keep * envelope + (1 - keep) * size;
      if (envelope > threshold) row[i]! *= (threshold / envelope) ** 0.75;
    }
  }
  let loudest = 1e-12;
  for (const x of row) loudest = Math.max(loudest, Math.abs(x));
  // Clipping is given in dB that the loudest sample stands over the rail.
  const scale = recipe.clip === undefined ? 0.7 / loudest : 10 ** (recipe.clip / 20) / loudest;
  const out = new Float32Array(row.length);
  for (let i = 0; i < row.length; i++) out[i] = Math.round(Math.max(-1, Math.min(0.99997, row[i]! * scale)) * 32768) / 32768;
  return out;
}
