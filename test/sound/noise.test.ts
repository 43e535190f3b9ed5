import { describe, expect, it } from 'vitest';
import { noiseAtEar } from '../../src/derived/sound/index.ts';

describe('noise at the ear', () => {
  it('gives no time from a phone alone', () => {
    const answer = noiseAtEar({ by: 'phone' });
    expect(answer.state === 'not known' && answer.words).toMatch(/no sound-level meter/);
  });

  it('gives the printed times from a meter: 95 dB(A) is 4 h (29 CFR 1910.95, table G-16), 94 dB(A) is 1 h (NIOSH 98-126, table 1-1)', () => {
    const at = (level: number, rule: string): number => {
      const answer = noiseAtEar({ by: 'sound-level meter', level });
      if (answer.state !== 'known') throw new Error(answer.words);
      return answer.allowed.find((a) => a.rule === rule)!.seconds.value;
    };
    expect(at(95, 'osha')).toBeCloseTo(4 * 3600, 6);
    expect(at(94, 'niosh')).toBeCloseTo(3600, 6);
    expect(noiseAtEar({ by: 'sound-level meter', level: 300 }).state).toBe('not known');
  });

  it('finds a level beside a calibrator, and refuses a silent one', () => {
    const tone = new Float32Array(44_100).map((_, i) => 0.1 * Math.sin((2 * Math.PI * 1000 * i) / 44_100));
    const louder = tone.map((x) => x * 2);
    const answer = noiseAtEar({ by: 'calibrated recording', samples: louder, rate: 44_100, tone, toneRate: 44_100, toneLevel: 94 });
    if (answer.state !== 'known') throw new Error(answer.words);
    expect(answer.level.value).toBeCloseTo(94 + 20 * Math.log10(2), 3);
    expect(answer.level.high - answer.level.low).toBeGreaterThan(5);
    expect(noiseAtEar({ by: 'calibrated recording', samples: louder, rate: 44_100, tone: new Float32Array(99), toneRate: 44_100, toneLevel: 94 }).state).toBe('not known');
  });
});
