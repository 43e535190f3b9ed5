import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likeMusic, likeSpeech } from '../../bench/sound/synthesiser/index.ts';
import { analyseBeat, type BeatResult } from '../../src/derived/sound/index.ts';
import { noiseSource } from '../../bench/sound/synthesiser/noise-source.ts';

const RATE = 16_000;
const says = (result: BeatResult, kind: string): void => {
  expect(result.advice.map((a) => a.kind)).toContain(kind);
  for (const a of result.advice) expect(a.words).toMatch(/[.?]$/);
};

describe('what is no beat gets a sentence', () => {
  it('nothing, silence, a constant, no numbers', () => {
    says(analyseBeat(new Float32Array(0), RATE), 'too-short');
    says(analyseBeat(new Float32Array(300).fill(0.1), RATE), 'too-short');
    says(analyseBeat(new Float32Array(RATE * 20), RATE), 'no-sound');
    says(analyseBeat(new Float32Array(RATE * 20).fill(0.5), RATE), 'no-sound');
    const none = analyseBeat(new Float32Array(RATE * 20).fill(NaN), RATE);
    says(none, 'not-numbers');
    expect(none.recording.notNumbers).toBe(RATE * 20);
  });

  it('one blow, two blows, a steady tone, hiss', () => {
    const blow = new Float32Array(RATE * 10);
    for (let i = 0; i < 500; i++) blow[50_000 + i] = Math.exp(-i / 80) * Math.sin(i);
    says(analyseBeat(blow, RATE), 'no-beat');
    blow.copyWithin(80_000, 50_000, 50_500);
    says(analyseBeat(blow, RATE), 'no-beat');
    says(analyseBeat(new Float32Array(RATE * 10).map((_, i) => Math.sin(i * 0.3)), RATE), 'no-beat');
    const draw = noiseSource(3);
    for (let k = 0; k < 6; k++) says(analyseBeat(new Float32Array(RATE * 25).map(() => 0.1 * draw.normal()), RATE), 'no-beat');
  });

  it('talk and tunes', () => {
    for (let seed = 1; seed <= 10; seed++) {
      says(analyseBeat(likeSpeech(25, RATE, seed), RATE), 'no-beat');
      says(analyseBeat(likeMusic(25, RATE, seed), RATE), 'no-beat');
    }
  });

  it('clanks at random', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const draw = noiseSource(seed * 77);
      const row = Float32Array.from({ length: RATE * 30 }, () => 0.003 * draw.normal());
      for (let t = 0.2; t < 29.5; t += -Math.log(1 - draw.uniform()) / 4) for (let i = 0; i < 800; i++) row[Math.round(t * RATE) + i]! += 0.5 * draw.normal() * Math.exp(-i / 100);
      const result = analyseBeat(row, RATE);
      if (result.state === 'heard') expect(result.trust).toBe('doubtful');
    }
  });
});

describe('whatever comes', () => {
  it('gets an answer, and finite numbers in it', () => {
    const finite = (value: unknown): boolean => (typeof value === 'number' ? Number.isFinite(value) : typeof value === 'object' && value !== null ? Object.values(value).every(finite) : true);
    const rates = [4000, 8000, 11_025, 44_100, 96_000, 192_000];
    fc.assert(fc.property(fc.integer({ min: 1, max: 1e6 }), fc.constantFrom(...rates), fc.constantFrom(0.05, 1.6, 4, 9), fc.constantFrom('noise', 'clicks', 'holes', 'wild', 'steps'), (seed, rate, seconds, kind) => {
      const draw = noiseSource(seed);
      const row = new Float32Array(Math.round(seconds * rate));
      for (let i = 0; i < row.length; i++) {
        if (kind === 'noise') row[i] = draw.normal() * 10 ** draw.between(-6, 0);
        else if (kind === 'clicks') row[i] = i % Math.max(1, Math.round(rate * 0.25)) === 0 ? draw.between(0.2, 1) : 0;
        else if (kind === 'holes') row[i] = draw.uniform() < 0.01 ? NaN : Math.floor(i / rate / 0.3) % 2 ? draw.normal() : 0;
        else if (kind === 'wild') row[i] = draw.oneOf([Infinity, -Infinity, 3e38, 1e-40, 1, -1, NaN, 0]);
        else row[i] = Math.floor((i / rate) * 4) % 2;
      }
      expect(finite(analyseBeat(row, rate))).toBe(true);
    }), { numRuns: 120 });
  });

  it('does not touch its input, and gives the same again', () => {
    const row = likeSpeech(5, RATE, 4);
    const copy = row.slice();
    const [a, b] = [analyseBeat(row, RATE), analyseBeat(row, RATE)];
    expect(row).toEqual(copy);
    expect(JSON.stringify(a)).toBe(JSON.stringify(b));
  });

  it('reads the first ten minutes of three hours, in bounded memory and time', () => {
    const rate = 8000;
    const hours = new Float32Array(3 * 3600 * rate);
    const draw = noiseSource(8);
    for (let i = 0; i < hours.length; i++) hours[i] = 0.002 * (draw.uniform() - 0.5);
    for (let t = 0.5; t < 3 * 3600 - 1; t += 0.25) for (let i = 0; i < 160; i++) hours[Math.round(t * rate) + i]! += Math.exp(-i / 30) * Math.sin(i * 0.9);
    const before = process.memoryUsage();
    const started = performance.now();
    const result = analyseBeat(hours, rate);
    const grown = (process.memoryUsage().rss - before.rss) / 1e6;
    console.log(`3 h: ${((performance.now() - started) / 1000).toFixed(1)} s, ${grown.toFixed(0)} MB more`);
    says(result, 'read-in-part');
    expect(result.recording.secondsRead).toBe(600);
    if (result.state !== 'heard') throw new Error('not heard');
    expect(Math.abs(result.rate.value - 4)).toBeLessThan(0.002);
    expect(grown).toBeLessThan(900);
  }, 120_000);

  it('throws on a rate or a range that no program should ask for', () => {
    expect(() => analyseBeat(new Float32Array(99_000), 0)).toThrow(/4,000 and 400,000 a second: 0/);
    expect(() => analyseBeat(new Float32Array(99_000).fill(1).map((_, i) => i % 7), RATE, { slowest: 5, fastest: 2 })).toThrow(/no range/);
  });
});
