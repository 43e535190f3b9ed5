import { describe, expect, it } from 'vitest';
import { analyseBeat, type BeatHeard } from '../../src/derived/sound/index.ts';
import type { MotionRan } from '../../src/derived/motion/index.ts';
import { beatSentences, beatsOfRun, eitherIsBlow, hardAndSoft, secondCandidates, soundOfBeats } from '../../src/views/sound/index.ts';
import { HAMMERS, ran, recordingBySynthesiser, recordingOf } from './model-hammers.ts';

/** s; the sound is laid with 1 ms of scatter of its own, and the reader is good to a millisecond */
const DELAY = 0.002;
const RATE = 0.0005; // share

const heardIn = (samples: Float32Array): BeatHeard => {
  const result = analyseBeat(samples, 44_100);
  if (result.state !== 'heard') throw new Error('no beat was heard');
  return result;
};

function agrees(result: BeatHeard, run: MotionRan, where: string): void {
  const { second } = result;
  const [truth] = run.secondSounds;
  console.log(`${run.beatClass}, ${where}: ${(result.rate.value * 60).toFixed(2)} of ${(run.blowsPerSecond * 60).toFixed(2)} a minute; ${second.verdict} ${second.place ?? ''} ${((second.delay?.value ?? 0) * 1e3).toFixed(1)} of ${((truth?.delay ?? 0) * 1e3).toFixed(1)} ms, ${(second.levelDecibels?.value ?? 0).toFixed(1)} of ${(truth?.level ?? 0).toFixed(1)} dB`);
  expect(Math.abs(result.rate.value / run.blowsPerSecond - 1)).toBeLessThan(RATE);
  expect(result.trust).toBe('good');
  if (truth === undefined) expect(second.verdict).not.toBe('double');
  else {
    expect(second.verdict).toBe('double');
    // Where the two are said to be equally loud, either may be taken for the blow.
    const delay = eitherIsBlow(second) && Math.sign(second.delay!.value) !== Math.sign(truth.delay) ? -second.delay!.value : second.delay!.value;
    expect(Math.abs(delay - truth.delay)).toBeLessThan(DELAY);
    if (!eitherIsBlow(second)) expect([truth.delay < 0 ? 'before' : 'after', 'either']).toContain(second.place);
    expect(secondCandidates(second).map((one) => one.kind)).toContain(truth.kind);
  }
  const uneven = hardAndSoft(result.strokes, 1 / result.rate.value);
  if (run.beatClass === 'gallop') expect(Math.abs(2 * uneven!.unevenness - run.unevenness)).toBeLessThan(0.01);
  else expect(uneven).toBeUndefined();
  expect(beatSentences(result).some((one) => /hard and soft by turns/.test(one.words))).toBe(run.beatClass === 'gallop');
}

describe('the model’s hammers, made heard, in a noisy room, read back', () => {
  for (const { name, beatClass, spec } of HAMMERS) {
    it(`${name}: ${beatClass}, struck by the bench’s voices`, { timeout: 120_000 }, () => {
      const run = ran(spec);
      expect(run.beatClass).toBe(beatClass);
      for (const material of ['steel', 'hot'] as const)
        for (const signalToNoise of [18, 12]) {
          const result = heardIn(recordingBySynthesiser(run, { material, signalToNoise }));
          expect(eitherIsBlow(result.second) ? result.second.place : 'told').toMatch(/told|before/);
          agrees(result, run, `${material}, ${signalToNoise} dB`);
        }
    });
    it(`${name}: ${beatClass}, in the program’s own sound`, { timeout: 120_000 }, () => {
      const run = ran(spec);
      for (const signalToNoise of [18, 12]) agrees(heardIn(recordingOf(run, { signalToNoise })), run, `own sound, ${signalToNoise} dB`);
    });
  }
});

describe('the sound of beats', () => {
  it('lays every beat at its time, silent before the first and finite throughout', () => {
    const beats = [{ time: 0.1, kind: 'die' as const, level: 0 }, { time: 0.175, kind: 'joint' as const, level: -6 }];
    for (const rate of [8000, 22_050, 48_000]) {
      const samples = soundOfBeats(beats, 0.5, rate, 3);
      expect(samples.length).toBe(Math.ceil(0.5 * rate));
      expect(samples.every(Number.isFinite)).toBe(true);
      expect(samples.findIndex((one) => one !== 0) / rate).toBeCloseTo(0.1, 3);
      expect(Math.max(...samples.map(Math.abs))).toBeCloseTo(0.8, 6);
    }
  });

  it('is the same for the same seed and another for another; no beats are silence', () => {
    const beats = [{ time: 0.1, kind: 'upper' as const, level: 0 }];
    expect(soundOfBeats(beats, 0.3, 16_000, 4)).toEqual(soundOfBeats(beats, 0.3, 16_000, 4));
    expect(soundOfBeats(beats, 0.3, 16_000, 4)).not.toEqual(soundOfBeats(beats, 0.3, 16_000, 5));
    expect(soundOfBeats([], 0.1, 16_000, 1).every((one) => one === 0)).toBe(true);
    expect(() => soundOfBeats(beats, 1, 4000, 1)).toThrow(/8000 to 96000/);
  });

  it('makes the meetings equally strong for equal levels', () => {
    const energy = (kind: 'die' | 'joint' | 'upper'): number => {
      const both = soundOfBeats([{ time: 0.05, kind: 'die', level: 12 }, { time: 1, kind, level: 0 }], 1.8, 16_000, 2);
      const part = (from: number, to: number): number => both.subarray(from * 16_000, to * 16_000).reduce((sum, x) => sum + x * x, 0);
      return 10 * Math.log10(part(1, 1.8) / part(0, 0.9));
    };
    for (const kind of ['die', 'joint', 'upper'] as const) expect(Math.abs(energy(kind) + 12)).toBeLessThan(3);
  });

  it('goes round at the run’s own rate', () => {
    const run = ran(HAMMERS[0]!.spec);
    const blows = beatsOfRun(run, 20, 1, { blow: 0, second: 0 }).filter((beat) => beat.kind === 'die').map((beat) => beat.time);
    expect((blows.length - 1) / (blows.at(-1)! - blows[0]!)).toBeCloseTo(run.blowsPerSecond, 3);
  });
});
