import { describe, expect, it } from 'vitest';
import { synthesise, type Recipe } from '../../bench/sound/synthesiser/index.ts';
import { noiseSource } from '../../bench/sound/synthesiser/noise-source.ts';
import { analyseBeat } from '../../src/derived/sound/index.ts';
import { splitRuns } from '../../src/derived/sound/runs.ts';

const PLAIN: Recipe = {
  name: 'plain', group: 'plain', seed: 11, seconds: 30, rate: 22_050, strokes: 240, jitter: 0.002, drift: 0, wander: 0, misses: 0, material: 'steel',
  runs: [{ start: 0.4, stop: 29.7, runDownStrokes: 0, runDownGrowth: 1 }], room: { decay: 0.4, direct: 6 }, signalToNoise: 18, hum: 0.5,
};

/** Noise for six seconds, against the recording's own root mean square. */
const LOUD = 3;

describe('the chain of blows', () => {
  it('follows a hammer that is braked hard after release', () => {
    let [right, all] = [0, 0];
    for (const runDownGrowth of [1.15, 1.25, 1.35]) for (const seed of [900, 901, 902]) {
      const made = synthesise({ ...PLAIN, seed, runs: [{ start: 0.5, stop: 11, runDownStrokes: 4, runDownGrowth }, { start: 19, stop: 24, runDownStrokes: 4, runDownGrowth }] });
      const result = analyseBeat(made.samples, made.rate);
      for (const truth of made.truth.runs) {
        all++;
        const run = result.state === 'heard' ? result.runs.find((r) => Math.abs(r.first - truth.first) < 1) : undefined;
        if (run?.runDown && Math.abs(run.runDown.strokes - truth.runDownStrokes) <= 1 && Math.abs(run.last - truth.last) < 0.05) right++;
      }
    }
    console.log(`hard run-downs: ${right} of ${all}`);
    expect(right / all).toBeGreaterThanOrEqual(0.85);
  });

  it('does not take what clatters after the last blow for a slowing down', () => {
    const period = 0.25;
    const blows = Array.from({ length: 80 }, (_, i) => 0.5 + i * period);
    const draw = noiseSource(17);
    const events = blows.map((time) => ({ time, salience: 10 }));
    // Clatter of any strength, all the time, three times as often as blows.
    for (let t = 0.1; t < 22.5; t += -Math.log(1 - draw.uniform()) / 12) if (blows.every((b) => Math.abs(b - t) > 0.03)) events.push({ time: t, salience: draw.between(4, 11) });
    events.sort((a, b) => a.time - b.time);
    const [run] = splitRuns(blows, blows.map(() => 10), () => period, events, 10, 23);
    expect(run!.times).toEqual(blows);
    expect(run!.runDown).toBe(0);
  });

  it('takes no pause where only the background rises, and keeps a true one', () => {
    for (const [seed, stops] of [[31, false], [32, false], [33, true], [34, true]] as const) {
      const made = synthesise({ ...PLAIN, seed, jitter: 0.001, runs: stops ? [{ start: 0.4, stop: 11, runDownStrokes: 0, runDownGrowth: 1 }, { start: 17, stop: 29.7, runDownStrokes: 0, runDownGrowth: 1 }] : PLAIN.runs });
      const draw = noiseSource(seed);
      let power = 0;
      for (const x of made.samples) power += (x * x) / made.samples.length;
      const samples = made.samples.map((x, i) => (i > 11 * made.rate && i < 17 * made.rate ? x + LOUD * Math.sqrt(power) * draw.normal() : x));
      const result = analyseBeat(samples, made.rate);
      if (result.state !== 'heard') throw new Error('not heard');
      console.log(`background risen, ${stops ? 'stopped' : 'running on'}: ${result.runs.map((run) => `${run.first.toFixed(2)} to ${run.last.toFixed(2)} s, ${run.strokes} strokes`).join('; ')}`);
      expect(result.runs.length).toBe(stops ? 2 : 1);
    }
  });
}, 120_000);
