import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { synthesise } from '../../bench/sound/synthesiser/index.ts';
import { analyseBeat } from '../../src/derived/sound/index.ts';
import { decodeFile } from '../../src/sound-files/decode-file.ts';
import { encodeWav } from '../../src/sound-files/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'tupwise-files-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const there = spawnSync('ffmpeg', ['-version']).status === 0;
const made = synthesise({
  name: '', group: '', seed: 3, seconds: 16, rate: 44_100, strokes: 260, jitter: 0.001, drift: 0, wander: 0, misses: 0, material: 'steel',
  runs: [{ start: 0.4, stop: 15.7, runDownStrokes: 0, runDownGrowth: 1 }], room: { decay: 0.5, direct: 4 }, signalToNoise: 20, hum: 0.5,
});
const wav = join(folder, 'hammer.wav');
writeFileSync(wav, encodeWav(made.samples, made.rate));

describe('sound files on this computer', () => {
  it('reads WAV without any other program', async () => {
    const read = await decodeFile(wav, { ffmpeg: '/nowhere/ffmpeg' });
    if (read.state !== 'decoded') throw new Error(read.words);
    expect(read.samples.length).toBe(made.samples.length);
    const part = await decodeFile(wav, { longest: 5 });
    expect(part.state === 'decoded' && part.secondsDecoded).toBe(5);
  });

  it('says what to do where ffmpeg is missing', async () => {
    const path = join(folder, 'voice.m4a');
    writeFileSync(path, Buffer.from('\0\0\0\x20ftypM4A \0\0\0\0M4A mp42isom', 'latin1'));
    const read = await decodeFile(path, { ffmpeg: '/nowhere/ffmpeg' });
    expect(read.state === 'not decoded' && read.words).toMatch(/MPEG-4 .*ffmpeg must be installed.*WAV/);
  });

  it('is not taken in by names', async () => {
    const text = join(folder, 'text.wav');
    writeFileSync(text, 'This is a shopping list and no sound at all: bolts, oil, belts, files.\n'.repeat(20));
    const read = await decodeFile(text);
    expect(read.state === 'not decoded' && read.words).toMatch(/is a text, whatever its name says/);
    expect((await decodeFile(join(folder, 'absent.wav'))).state).toBe('not decoded');
    const empty = join(folder, 'empty.wav');
    writeFileSync(empty, '');
    expect((await decodeFile(empty)).state).toBe('not decoded');
  });

  const formats: [string, string[]][] = [
    ['m4a', ['-c:a', 'aac', '-b:a', '64k']], ['mov', ['-c:a', 'aac']], ['webm', ['-c:a', 'libopus', '-b:a', '32k', '-ar', '48000']], ['ogg', ['-c:a', 'libvorbis']],
    ['mp3', ['-c:a', 'libmp3lame', '-b:a', '64k']], ['flac', []], ['3gp', ['-c:a', 'aac', '-ar', '16000']], ['aiff', []], ['caf', []], ['adpcm.wav', ['-c:a', 'adpcm_ima_wav']], ['8k.wav', ['-ar', '8000']], ['96k.wav', ['-ar', '96000', '-ac', '2', '-c:a', 'pcm_s24le']], ['mu-law.wav', ['-ar', '16000', '-c:a', 'pcm_mulaw']],
  ];
  for (const [ending, options] of formats)
    it.runIf(there)(`reads ${ending} and hears the same beat in it; cut short, it is an answer too`, async () => {
      const path = join(folder, `a.${ending}`);
      execFileSync('ffmpeg', ['-v', 'error', '-y', '-i', wav, ...options, path]);
      const read = await decodeFile(path);
      if (read.state !== 'decoded') throw new Error(read.words);
      const result = analyseBeat(read.samples, read.rate);
      if (result.state !== 'heard') throw new Error('not heard');
      expect(Math.abs(result.rate.value * 60 - 260)).toBeLessThan(0.3);
      truncateSync(path, 3000);
      const cut = await decodeFile(path);
      if (cut.state === 'not decoded') expect(cut.words).toMatch(/\.$/);
    });
});
