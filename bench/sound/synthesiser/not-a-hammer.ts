import { biquad, filterThrough } from '../../../src/methods/signal/index.ts';
import { noiseSource } from './noise-source.ts';

/** Something like a person talking: syllables of uneven length and spacing, voiced or hissing, with pauses for breath. */
export function likeSpeech(seconds: number, rate: number, seed: number): Float32Array {
  const draw = noiseSource(seed);
  const out = new Float64Array(Math.round(seconds * rate));
  for (let t = 0.3; t < seconds - 0.5; ) {
    const length = draw.between(0.08, 0.3);
    const pitch = draw.between(90, 220);
    const piece = new Float64Array(Math.round(length * rate));
    const hiss = draw.uniform() < 0.25;
    let phase = 0;
    for (let i = 0; i < piece.length; i++) {
      phase += (pitch * (1 + 0.1 * Math.sin((6 * i) / piece.length))) / rate;
      const source = hiss ? draw.normal() * 0.3 : 2 * (phase - Math.floor(phase)) - 1 + 0.02 * draw.normal();
      piece[i] = source * Math.sin((Math.PI * i) / piece.length) ** 0.5;
    }
    for (const f of hiss ? [3500] : [draw.between(300, 800), draw.between(900, 2200)]) filterThrough(biquad('band-pass', f, rate, 3), piece, piece);
    const level = draw.between(0.3, 1);
    const at = Math.round(t * rate);
    for (let i = 0; i < piece.length && at + i < out.length; i++) out[at + i]! += level * piece[i]!;
    t += length + (draw.uniform() < 0.12 ? draw.between(0.3, 1.2) : draw.between(0.01, 0.12));
  }
  return finished(out, draw);
}

/** Something like a tune: notes of a scale, uneven in length within a loose beat, soft onsets, two voices. */
export function likeMusic(seconds: number, rate: number, seed: number): Float32Array {
  const draw = noiseSource(seed);
  const out = new Float64Array(Math.round(seconds * rate));
  for (let voice = 0; voice < 2; voice++)
    for (let t = 0.2; t < seconds - 1; ) {
      const length = 0.3 * draw.oneOf([0.5, 1, 1, 1.5, 2, 3]) * draw.between(0.9, 1.1);
      const pitch = 110 * 2 ** (draw.oneOf([0, 2, 4, 5, 7, 9, 11, 12, 14, 16]) / 12 + voice);
      const soft = draw.between(0.02, 0.06);
      const at = Math.round(t * rate);
      for (let i = 0; i < length * 1.3 * rate && at + i < out.length; i++) {
        const s = i / rate;
        let tone = 0;
        for (let h = 1; h <= 5; h++) tone += Math.sin(2 * Math.PI * pitch * h * s) / h ** 1.5;
        out[at + i]! += tone * Math.min(1, s / soft) * Math.exp(-s / length) * (0.6 + 0.4 * voice);
      }
      t += length;
    }
  return finished(out, draw);
}

function finished(row: Float64Array, draw: ReturnType<typeof noiseSource>): Float32Array {
  let loudest = 1e-9;
  for (const x of row) loudest = Math.max(loudest, Math.abs(x));
  return Float32Array.from(row, (x) => (0.7 * x) / loudest + 0.001 * draw.normal());
}
