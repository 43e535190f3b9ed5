import { describe, expect, it } from 'vitest';
import { synthesise, type Recipe } from '../../bench/sound/synthesiser/index.ts';
import { analyseBeat } from '../../src/derived/sound/index.ts';

const PLAIN: Recipe = {
  name: 'plain', group: 'plain', seed: 11, seconds: 20, rate: 16_000, strokes: 240, jitter: 0.002, drift: 0, wander: 0, misses: 0, material: 'steel',
  runs: [{ start: 0.4, stop: 19.7, runDownStrokes: 0, runDownGrowth: 1 }], room: { decay: 0.4, direct: 6 }, signalToNoise: 12, hum: 0.5,
};

describe('a recording that is empty for the most part', () => {
  for (const change of [{ seed: 11 }, { seed: 12, strokes: 180, signalToNoise: 4 }]) {
    const made = synthesise({ ...PLAIN, ...change });
    const alone = analyseBeat(made.samples, made.rate);
    // s of nothing before and after, and the level of that nothing
    for (const [before, after, level] of [[0, 40, 0], [0, 200, 0], [200, 0, 0], [30, 60, 0.01]] as const) {
      it(`is read as its sounding part alone: ${change.seed}, ${before} s before and ${after} s after`, () => {
        const row = new Float32Array(made.samples.length + (before + after) * made.rate).fill(level);
        made.samples.forEach((x, i) => (row[i + before * made.rate] = x + level));
        const result = analyseBeat(row, made.rate);
        if (alone.state !== 'heard' || result.state !== 'heard') throw new Error('not heard');
        expect(result.strokes.length).toBe(alone.strokes.length);
        expect(Math.abs(result.rate.value / alone.rate.value - 1)).toBeLessThan(1e-6);
        for (const [i, stroke] of result.strokes.entries()) expect(Math.abs(stroke.time - before - alone.strokes[i]!.time)).toBeLessThan(1e-3);
        expect(result.trust).toBe('good');
      });
    }
  }

  it('is read on both sides of silence in its midst', () => {
    const { samples, rate } = synthesise(PLAIN);
    const row = samples.slice().fill(0, 6 * rate, 14 * rate);
    const result = analyseBeat(row, rate);
    if (result.state !== 'heard') throw new Error('not heard');
    expect(result.runs.length).toBe(2);
    expect(Math.abs(result.rate.value * 60 - 240)).toBeLessThan(0.5);
  });
});
