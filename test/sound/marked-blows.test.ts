import { describe, expect, it } from 'vitest';
import { synthesise, type Recipe } from '../../bench/sound/synthesiser/index.ts';
import { analyseBeat, analyseFrom, type BeatHeard, type BeatResult } from '../../src/derived/sound/index.ts';

const KNOCKING: Recipe = {
  name: 'knocking', group: 'marks', seed: 622_001, seconds: 26, rate: 22_050, strokes: 230, jitter: 0.002, drift: 0, wander: 0, misses: 0, material: 'steel',
  runs: [{ start: 0.5, stop: 22, runDownStrokes: 5, runDownGrowth: 1.09 }], room: { decay: 0.6, direct: 4 }, signalToNoise: 18, hum: 0.5,
  second: { delay: 0.061, level: -8, jitter: 0.001, share: 1 },
};
const made = synthesise(KNOCKING);
const heard = (result: BeatResult): BeatHeard => {
  if (result.state !== 'heard') throw new Error(result.advice.map((one) => one.words).join(' '));
  return result;
};
const found = heard(analyseBeat(made.samples, made.rate));
const marksOf = (result: BeatHeard): readonly number[] => result.strokes.map((stroke) => stroke.time);
const from = (times: readonly number[]): BeatResult => analyseFrom(made.samples, made.rate, times);

describe('the beat from marks', () => {
  it('is the same as before where the marks are left as they are', () => {
    const again = heard(from(marksOf(found)));
    expect(again.byHand).toBe(true);
    expect(marksOf(again)).toEqual(marksOf(found));
    expect(again.rate.value / found.rate.value).toBeCloseTo(1, 7);
    expect(again.jitter).toBeCloseTo(found.jitter, 7);
    expect(again.runs.map((run) => [run.strokes, run.missed, run.runDown?.strokes])).toEqual(found.runs.map((run) => [run.strokes, run.missed, run.runDown?.strokes]));
    expect([again.second.verdict, again.second.place]).toEqual([found.second.verdict, found.second.place]);
    expect(again.second.verdict).toBe('double');
    expect(Math.abs(again.second.delay!.value - found.second.delay!.value)).toBeLessThan(0.0002);
    expect(again.folded.delays.length).toBe(found.folded.delays.length);
  });

  it('comes right where a wrong chain is put onto the blows', () => {
    const blows = Array.from(made.truth.blows);
    // Marks a third of a turn off, and only at every other stroke: nothing true follows from them.
    const wrong = blows.filter((_, i) => i % 2 === 0).map((time) => time + 0.087);
    const before = heard(from(wrong));
    const right = heard(from(blows));
    expect(before.rate.value / right.rate.value).toBeLessThan(0.55);
    expect(before.second.delay === undefined || Math.abs(before.second.delay.value - made.truth.delay!) > 0.008).toBe(true);
    expect(Math.abs(right.rate.value * 60 - KNOCKING.strokes)).toBeLessThan(0.1);
    expect(right.second.verdict).toBe('double');
    expect(Math.abs(right.second.delay!.value - made.truth.delay!)).toBeLessThan(0.0025);
    expect(right.runs[0]!.runDown!.strokes).toBe(5);
    console.log(`second sound at ${(1000 * right.second.delay!.value).toFixed(2)} ms from true marks, made at ${(1000 * made.truth.delay!).toFixed(2)}; from wrong ones ${before.second.verdict}`);
  });

  it('moves, adds and leaves out no mark: a stroke taken out is missed, one beside the beat is uneven', () => {
    const marks = marksOf(found);
    const without = heard(from(marks.filter((_, i) => i !== 20)));
    expect(without.missed).toBe(found.missed + 1);
    expect(without.runs[0]!.missedAt.some((time) => Math.abs(time - marks[20]!) < 0.02)).toBe(true);
    const dragged = heard(from(marks.map((time, i) => (i % 3 === 1 ? time + 0.02 : time)).toReversed()));
    expect(dragged.jitter).toBeGreaterThan(3 * found.jitter);
    expect(dragged.strokes).toHaveLength(marks.length);
  });

  it('cannot be told from three marks, and says so', () => {
    const few = from([1, 1.3, 1.6, 1.601]);
    expect(few.state).toBe('cannot tell');
    expect(few.advice[0]!.kind).toBe('few-marks');
  });
});

describe('the share that is done', () => {
  it.each([['of the blows found', (done: (share: number) => void) => analyseBeat(made.samples, made.rate, {}, done)], ['from marks', (done: (share: number) => void) => analyseFrom(made.samples, made.rate, marksOf(found), {}, done)], ['of silence', (done: (share: number) => void) => analyseBeat(new Float32Array(60_000), 22_050, {}, done)]] as const)('rises from 0 to 1 %s', (_words, run) => {
    const shares: number[] = [];
    run((share) => shares.push(share));
    expect([shares[0], shares.at(-1)]).toEqual([0, 1]);
    shares.forEach((share, i) => expect(i === 0 || share >= shares[i - 1]!).toBe(true));
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
  });
});
