import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { analyseBeat, type BeatHeard, type BeatResult, type SecondSound } from '../../src/derived/sound/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';
import { placeOf } from '../../src/hammer/index.ts';
import { beatDrawing, beatSentences, cureOf, expectedRates, foldedPicture, hardAndSoft, markedBeat, nearestMark, noiseSentences, readingsOfBeat, slipOf, soundView, strokeStrip, tidyMarks, withDoubt } from '../../src/views/sound/index.ts';
import { synthesise, type Recipe } from '../../bench/sound/synthesiser/index.ts';
import { readFileSync } from 'node:fs';

const recipe = (change: Partial<Recipe> = {}): Recipe => ({
  name: '', group: '', seed: 4, seconds: 24, rate: 22_050, strokes: 280, jitter: 0.001, drift: 0, wander: 0, misses: 0, material: 'steel',
  runs: [{ start: 0.4, stop: 23.6, runDownStrokes: 0, runDownGrowth: 1 }], room: { decay: 0.4, direct: 5 }, signalToNoise: 20, hum: 0.5, ...change,
});
const heardOf = (change: Partial<Recipe> = {}): BeatHeard => {
  const made = synthesise(recipe(change));
  const result = analyseBeat(made.samples, made.rate);
  if (result.state !== 'heard') throw new Error('no beat was heard');
  return result;
};
const double = heardOf({ second: { delay: 0.06, level: -6, jitter: 0.001, share: 1 } });
const single = heardOf();
const stopping = heardOf({ seconds: 40, misses: 0.05, runs: [{ start: 0.4, stop: 15, runDownStrokes: 6, runDownGrowth: 1.15 }, { start: 24, stop: 39, runDownStrokes: 0, runDownGrowth: 1 }] });
const silent = analyseBeat(new Float32Array(44_100), 22_050);
const example = (name: string) => picture(readSurveyFile(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'), { asOf: '2026-06-01T00:00:00Z' }).entries, knowledge, '2026-06-01T23:59:59Z', 1)!;
const hammer = example('wrenhollow-65-knocks-before-the-blow');
const all: readonly BeatResult[] = [double, single, stopping, silent];
const clean = (text: string): void => expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);

describe('sentences and drawings', () => {
  it('hold no number that is none, for every kind of answer, with and without a survey', () => {
    for (const result of all) {
      for (const one of [undefined, hammer]) {
        const sentences = beatSentences(result, one);
        expect(sentences[0]?.kind).toBe('headline');
        for (const { words } of sentences) {
          clean(words);
          expect(words).toMatch(/[.?]$/);
        }
      }
      clean(beatDrawing(result, { title: 'A < B & C', sentences: beatSentences(result), view: soundView(new Float32Array(2000), 22_050, 0, 0.09, 100, 8) }));
    }
    for (const width of [300, 360, 700, 1200]) {
      for (const result of [double, single, stopping]) {
        clean(foldedPicture(result, { width }));
        clean(strokeStrip(result, width));
      }
      const laid = foldedPicture(single, { width, before: double });
      clean(laid);
      expect(laid.match(/class="was"/g)?.length).toBeGreaterThanOrEqual(2);
    }
  });

  it('say the rate, the second sound with its place, and the run-down', () => {
    const words = beatSentences(double).map((one) => one.words).join(' ');
    expect(words).toMatch(/Regular blows, 280\.0 ± 0\.1 a minute, each with a second sound (59|60|61) ms after it/);
    expect(words).toMatch(/Candidate: the dies strike the work a second time/);
    expect(words).not.toMatch(/caused by|the cause is/i);
    expect(beatSentences(single).map((one) => one.words).join(' ')).toMatch(/no second sound is heard.*One would have been noticed/s);
    const stop = beatSentences(stopping).map((one) => one.words).join(' ');
    expect(stop).toMatch(/After the release at about 1[45] s it makes [567] more strokes in 1\.\d s|in 2\.\d s/);
    expect(stop).toMatch(/2 runs/);
    expect(beatSentences(silent)[0]?.words).toBe('No beat can be told from this recording.');
  });

  it('set the doubt and the value to the same place', () => {
    expect(withDoubt(238.437, 0.3)).toBe('238.4 ± 0.3');
    expect(withDoubt(238.437, 2.2)).toBe('238 ± 2');
    expect(withDoubt(0.4567, 0.04)).toBe('0.46 ± 0.04');
  });
});

describe('beside the survey', () => {
  it('expects less than an octave of rates, below the pulleys’ own', () => {
    const range = expectedRates(hammer)!;
    const without = hammer.values['drive.rate-without-slip']!.outcome;
    if (without.state !== 'known') throw new Error('the example has its pulleys read');
    expect(range.fastest / range.slowest).toBeLessThan(2);
    expect(range.slowest).toBeLessThan(without.quantity.value);
    expect(range.fastest).toBeGreaterThan(without.quantity.value);
    const at = (value: number) => slipOf(hammer, { value, low: value * 0.999, high: value * 1.001 })!;
    expect(at(without.quantity.value * 0.97).words).toMatch(/as a belt in good order does|does not let one judge/);
    expect(at(without.quantity.value * 0.8).share.value).toBeCloseTo(0.2, 6);
    expect(at(without.quantity.value * 0.8).words).toMatch(/more than the .* of a belt in good order/);
    expect(at(without.quantity.value * 0.5).words).toMatch(/about half/);
    expect(at(without.quantity.value * 1.2).words).toMatch(/faster than the pulleys allow/);
  });

  it('offers readings that the survey takes, and none of a light tread', () => {
    const offered = readingsOfBeat(stopping, 'release');
    expect(offered.map((one) => one.place)).toEqual(['running.rate', 'running.release-strokes', 'running.release-time']);
    for (const one of offered) {
      const { place } = placeOf(one.place)!;
      const read = readQuantity(one.asWritten, { dimension: place.dimension, field: place.name, tool: 'recording', min: place.plausible[0], max: place.plausible[1] });
      expect(read.ok).toBe(true);
      expect(one.dimension).toBe(place.dimension);
    }
    const rate = readQuantity(offered[0]!.asWritten, { dimension: 'rotation', field: 'rate' });
    expect(rate.ok && rate.quantity.value).toBeCloseTo(stopping.rate.value, 3);
    expect(readingsOfBeat(double, 'light')).toEqual([]);
  });

  it('tells how long one may stay only where a meter was read', () => {
    expect(noiseSentences(hammer).join(' ')).toMatch(/97 dB\(A\) at the ear, read by a meter/);
    const { ['running.noise']: _read, ...values } = hammer.values;
    expect(noiseSentences({ ...hammer, values }).join(' ')).toMatch(/A phone is no sound-level meter/);
  });
});

describe('before and after', () => {
  const without: SecondSound = { ...single.second, verdict: 'none seen', limit: [-0.08, -0.06, 0.055, 0.06, 0.065].map((delay) => ({ delay, levelDecibels: -20 })) };
  it('proves a cure only where what was heard would be noticed now', () => {
    expect(cureOf(double, { ...single, second: without }).cure).toBe('gone');
    expect(cureOf(double, { ...single, second: { ...without, limit: without.limit.map((row) => ({ ...row, levelDecibels: -5 })) } }).cure).toBe('cannot tell');
    expect(cureOf(double, { ...single, second: { ...without, limit: [] } }).cure).toBe('cannot tell');
    expect(cureOf({ ...single, second: without }, double).cure).toBe('new');
    expect(cureOf(double, double).cure).toBe('the same');
    const fainter = { ...double, second: { ...double.second, levelDecibels: { value: -18, low: -20, high: -16 } } };
    const louder = { ...double, second: { ...double.second, levelDecibels: { value: -4, low: -6, high: -2 } } };
    expect(cureOf(louder, fainter).cure).toBe('fainter');
    expect(cureOf(fainter, louder).cure).toBe('louder');
    expect(cureOf({ ...single, second: without }, { ...single, second: without }).cure).toBe('neither has one');
    expect(cureOf(silent, double).cure).toBe('cannot tell');
    const moved = { ...double, second: { ...double.second, delay: { value: -0.05, low: -0.051, high: -0.049 } } };
    expect(cureOf(double, moved)).toMatchObject({ cure: 'cannot tell' });
  });
});

describe('marks that a person puts right', () => {
  it('give the rate back that they were laid with, whatever is missing, in any order', () => {
    fc.assert(fc.property(fc.double({ min: 0.1, max: 0.8, noNaN: true }), fc.integer({ min: 8, max: 60 }), fc.array(fc.integer({ min: 2, max: 50 }), { maxLength: 4 }), (period, count, gaps) => {
      const kept = Array.from({ length: count }, (_, i) => i).filter((i) => !gaps.includes(i) || gaps.includes(i - 1));
      fc.pre(kept.length >= 6 && kept.every((one, i) => i === 0 || one - kept[i - 1]! <= 2));
      const beat = markedBeat([...kept].reverse().map((i) => 1 + i * period))!;
      expect(beat.rate.value * period).toBeCloseTo(1, 9);
      expect(beat.missed).toBe(kept.at(-1)! + 1 - kept[0]! - kept.length);
      expect(beat.strokes).toBe(kept.length);
    }));
  });

  it('scatter as they were scattered, whatever the rate drifts', () => {
    const times = Array.from({ length: 200 }, (_, i) => 0.25 * i - 0.00005 * i * i + 0.002 * Math.sin(i * i * 1.7));
    // The sine of a square is as good as chance here: standard deviation 0.002 over the root of two.
    expect(markedBeat(times)!.jitter).toBeCloseTo(0.002 / Math.SQRT2, 3);
  });

  it('are split into runs at a pause, and are no beat when there are too few', () => {
    const beat = markedBeat([0, 0.25, 0.5, 0.75, 1, 6, 6.25, 6.5])!;
    expect(beat.runs.map((run) => run.strokes)).toEqual([5, 3]);
    expect(beat.missed).toBe(0);
    expect(markedBeat([1, 2, 3])).toBeUndefined();
    expect(markedBeat([])).toBeUndefined();
    expect(markedBeat([1, 1, 1, 1, 1])).toBeUndefined();
    expect(nearestMark([], 1)).toBeUndefined();
    expect(nearestMark([1, 2, 4], 3.2)).toBe(2);
    expect(tidyMarks([2, 1, 1.003, 3])).toEqual([1, 2, 3]);
  });

  it('hears hard and soft by turns and does not make it up', () => {
    const strokes = (unevenness: number) => Array.from({ length: 60 }, (_, i) => ({ sinceLast: 0.2 + (i % 2 === 0 ? 1 : -1) * unevenness * 0.2 + 0.0005 * Math.sin(i * 12.9), levelDecibels: i % 2 === 0 ? 0 : -1, run: 0, runningDown: false }));
    expect(hardAndSoft(strokes(0.02), 0.2)!.unevenness).toBeCloseTo(0.02, 3);
    expect(hardAndSoft(strokes(0.002), 0.2)).toBeUndefined();
    expect(hardAndSoft(strokes(0.02).slice(0, 12), 0.2)).toBeUndefined();
  });
});

describe('the view of a recording', () => {
  it('keeps the greatest of each column and shows a tone at its height', () => {
    const rate = 16_000;
    const samples = Float32Array.from({ length: rate }, (_, i) => 0.5 * Math.sin((2 * Math.PI * 1000 * i) / rate));
    samples[8000] = -0.9;
    const view = soundView(samples, rate, 0, 1, 100, 48);
    expect(view.low[50]).toBeCloseTo(-0.9, 6);
    expect(Math.max(...view.high)).toBeCloseTo(0.5, 2);
    const column = Array.from({ length: view.rows }, (_, row) => view.loud[row * view.columns + 20]!);
    const loudest = column.indexOf(Math.max(...column));
    const frequency = view.lowest * (view.highest / view.lowest) ** ((loudest + 0.5) / view.rows);
    expect(Math.abs(frequency / 1000 - 1)).toBeLessThan(0.12);
  });

  it('draws silence, numbers that are none and what lies beyond the end without a fault', () => {
    const odd = new Float32Array(4000).fill(Number.NaN);
    odd[10] = Infinity;
    for (const samples of [new Float32Array(0), new Float32Array(4000), odd]) {
      const view = soundView(samples, 8000, -0.5, 2, 50, 16);
      expect([...view.low, ...view.high].every(Number.isFinite)).toBe(true);
      expect(view.loud.length).toBe(50 * 16);
    }
    expect(() => soundView(odd, 8000, 1, 1, 50, 16)).toThrow(/beginning before its end/);
  });
});
