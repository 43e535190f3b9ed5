import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { encodeWav } from '../../src/sound-files/index.ts';
import { likeSpeech, synthesise } from '../../bench/sound/synthesiser/index.ts';
import { MadeRecordings } from '../doors/sound/made-recordings.ts';
import { EXAMPLES, typed } from './at-the-door.ts';

const folder = mkdtempSync(join(tmpdir(), 'tupwise-listen-'));
const recordings = new MadeRecordings();
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  recordings.remove();
});
const write = (name: string, bytes: Uint8Array | string): string => {
  writeFileSync(join(folder, name), bytes);
  return join(folder, name);
};
const struck = (second?: number): Uint8Array => {
  const made = synthesise({
    name: '', group: '', seed: 6, seconds: 24, rate: 22_050, strokes: 262, jitter: 0.001, drift: 0, wander: 0, misses: 0, material: 'steel',
    runs: [{ start: 0.4, stop: 23.6, runDownStrokes: 0, runDownGrowth: 1 }], room: { decay: 0.4, direct: 5 }, signalToNoise: 20, hum: 0.5,
    ...(second === undefined ? {} : { second: { delay: second, level: -6, jitter: 0.001, share: 1 } }),
  });
  return encodeWav(made.samples, made.rate);
};
const double = write('double.wav', struck(-0.045));
const single = write('single.wav', struck());
const survey = `${EXAMPLES}wrenhollow-65-knocks-before-the-blow.yaml`;

describe('listening at the command line', () => {
  it('says what it hears, beside the survey’s pulleys', async () => {
    const { exit, out } = await typed(['listen', double, '--survey', survey]);
    expect(exit).toBe(0);
    expect(out).toMatch(/^WH-65: how it sounds\nAn invented hammer\.\n\nRegular blows, 262\.0 ± 0\.1 a minute, each with a second sound 4[456] ms before it\./);
    expect(out).toMatch(/Candidate: the ram knocks on what carries it/);
    expect(out).toMatch(/By its pulleys it would make \d+ a minute without slip/);
    expect(out).toMatch(/whether they are the hammer is for the ear/);
  });

  it('writes for machines, all of it numbers', async () => {
    const { exit, out } = await typed(['listen', double, '--survey', survey, '--json']);
    expect(exit).toBe(0);
    const read = JSON.parse(out) as { beat: { state: string; rate: { value: number }; second: { verdict: string; place: string }; strokes: unknown[] }; slip: { share: { value: number } }; candidates: { kind: string }[]; expected: { slowest: number } };
    expect(read.beat.rate.value * 60).toBeCloseTo(262, 0);
    expect(read.beat.second).toMatchObject({ verdict: 'double', place: 'before' });
    expect(read.beat.strokes.length).toBeGreaterThan(95);
    expect(read.candidates[0]!.kind).toBe('upper-stop-knock');
    expect(read.slip.share.value).toBeGreaterThan(0.05);
    expect(out).not.toMatch(/NaN|null,\n\s*"high"/);
  });

  it('draws it, and lays an earlier recording beside it', async () => {
    const svg = join(folder, 'beat.svg');
    const { exit, out, err } = await typed(['listen', single, '--before', double, '--svg', svg]);
    expect(exit).toBe(0);
    expect(err).toBe(`written: ${svg}\n`);
    expect(out).toMatch(/Beside the earlier recording\n {2}- (Gone: )?[Tt]he second sound 4[456] ms before the blow is not heard now/);
    const drawing = readFileSync(svg, 'utf8');
    expect(drawing).toMatch(/^<svg/);
    expect(drawing).not.toMatch(/NaN|undefined/);
    expect(drawing).toMatch(/class="was"/);
    if (spawnSync('xmllint', ['--version']).status === 0) expect(spawnSync('xmllint', ['--noout', svg]).status).toBe(0);
  });

  it('ends with 20 and what to do where no beat can be told: silence, one blow, talk', async () => {
    const blow = new Float32Array(22_050 * 6);
    for (let i = 0; i < 3000; i++) blow[30_000 + i] = Math.exp(-i / 300) * Math.sin(i * 0.6);
    for (const [path, words] of [[write('silence.wav', encodeWav(new Float32Array(60_000), 22_050)), /Nothing is to be heard/], [write('one.wav', encodeWav(blow, 22_050)), /No regular blows were found/], [write('short.wav', encodeWav(new Float32Array(9000).fill(0.1), 22_050)), /too short/], [write('talk.wav', encodeWav(likeSpeech(20, 16_000, 1), 16_000)), /No regular blows were found/]] as const) {
      const { exit, out } = await typed(['listen', path]);
      expect(exit).toBe(20);
      expect(out).toMatch(/No beat can be told from this recording\.\n\nWhat to do\n/);
      expect(out).toMatch(words);
      const json = await typed(['listen', path, '--json', '--svg', join(folder, 'none.svg')]);
      expect(json.exit).toBe(20);
      expect((JSON.parse(json.out) as { beat: { state: string } }).beat.state).toBe('cannot tell');
      expect(existsSync(join(folder, 'none.svg'))).toBe(true);
    }
  });

  it('calls a doubtful beat doubtful and ends with 20: talk that happens to go evenly', async () => {
    const { exit, out } = await typed(['listen', write('even-talk.wav', encodeWav(likeSpeech(20, 16_000, 3), 16_000))]);
    expect(exit).toBe(20);
    expect(out).toMatch(/Perhaps regular blows/);
    expect(out).toMatch(/All of this is doubtful/);
  });

  it('tells a level from a calibrator alone', async () => {
    const tone = write('tone.wav', encodeWav(Float32Array.from({ length: 44_100 }, (_, i) => 0.05 * Math.sin((2 * Math.PI * 1000 * i) / 22_050)), 22_050));
    expect((await typed(['listen', single])).out).toMatch(/A phone is no sound-level meter/);
    const { exit, out } = await typed(['listen', single, '--calibrator', tone]);
    expect(exit).toBe(0);
    expect(out).toMatch(/At 1?\d\d dB\(A\) at the ear, by a recording beside a calibrator: without protection/);
    expect((await typed(['listen', single, '--calibrator', tone, '--calibrator-level', '300'])).err).toMatch(/whole number from 60 to 130: 300/);
  });

  it('ends with 2 and a sentence where there is no recording', async () => {
    for (const [words, said] of [
      [['listen', write('list.wav', 'Bolts, oil and belts.\n'.repeat(40))], /is a text, whatever its name says/],
      [['listen', write('empty.wav', '')], /This file is empty/],
      [['listen', join(folder, 'absent.wav')], /cannot be opened; check its name/],
      [['listen', folder], /is a folder or a device and no file/],
      [['listen', write('head.wav', struck().subarray(0, 44))], /holds no sound/],
      [['listen', single, '--rate', 'fast'], /such as 180-330: fast/],
      [['listen', single, '--rate', '300-200'], /the slower first/],
      [['listen', single, '--longest', '0'], /whole number from 2 to 3600: 0/],
      [['listen', single, '--survey', join(folder, 'absent.yaml')], /there is no such file/],
      [['listen', single, '--before', write('b.wav', 'words '.repeat(50))], /is a text/],
      [['listen'], /missing required argument/],
    ] as const) {
      const { exit, out, err } = await typed(words);
      expect([words[1], exit], err).toEqual([words[1], 2]);
      expect(out).toBe('');
      expect(err).toMatch(said);
      expect(err).not.toMatch(/own fault|Error:|\n\s+at /);
    }
  });

  it('reads a recording cut short, and says so; looks only where it was asked', async () => {
    const cut = await typed(['listen', write('cut.wav', struck().subarray(0, 600_000))]);
    expect(cut.exit).toBe(0);
    expect(cut.out).toMatch(/The file is cut short/);
    expect((await typed(['listen', single, '--rate', '200-330'])).out).toMatch(/from 200 to 330 a minute, as asked/);
  });

  it('reads the beginning of three hours within bounds', { timeout: 60_000 }, async () => {
    const path = recordings.hours('three-hours.wav', 3);
    const before = process.memoryUsage().rss;
    const { exit, out } = await typed(['listen', path, '--longest', '120']);
    expect(exit).toBe(0);
    expect(out).toMatch(/lasts 180 minutes; only its first 2 were read/);
    expect(out).toMatch(/Regular blows, 240\.0/);
    expect(process.memoryUsage().rss - before).toBeLessThan(300e6);
  });
});
