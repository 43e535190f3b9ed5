import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { analyseBeat } from '../../src/derived/sound/index.ts';
import { aacSetup, adtsStream } from '../../src/sound-files/adts.ts';
import { decodeAmr } from '../../src/sound-files/decode-amr.ts';
import { decodeFile } from '../../src/sound-files/decode-file.ts';
import { decodePcm } from '../../src/sound-files/decode-pcm.ts';
import { decodeWav, type DecodedSound, type DecodeOutcome } from '../../src/sound-files/index.ts';
import type { ReadPart } from '../../src/sound-files/mp4-boxes.ts';
import { readSoundTrack } from '../../src/sound-files/mp4-sound-track.ts';

/** Our own synthesised hammer of 260 blows a minute, 14 s, packed with opencore-amr at 12.2 kbit/s. */
const AMR = join(import.meta.dirname, 'hammer-260-a-minute.amr');
const FFMPEG = spawnSync('ffmpeg', ['-version']).status === 0;
const folder = mkdtempSync(join(tmpdir(), 'tupwise-other-files-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ffmpeg = (from: string, name: string, options: readonly string[]): string => {
  const path = join(folder, name);
  execFileSync('ffmpeg', ['-v', 'error', '-y', '-i', from, ...options, path]);
  return path;
};
const decoded = (outcome: DecodeOutcome | undefined): DecodedSound => {
  if (outcome?.state !== 'decoded') throw new Error(outcome?.words ?? 'another coding');
  return outcome;
};
const partsOf = (bytes: Uint8Array): ReadPart => async (from, length) => bytes.subarray(from, from + length);
/** 1: the same sound, whatever its loudness and a shift of so many samples. */
function likeness(a: Float32Array, b: Float32Array, reach = 400): number {
  const count = Math.min(a.length, b.length) - 2 * reach;
  let best = 0;
  for (let shift = -reach; shift <= reach; shift += 1) {
    let [ab, aa, bb] = [0, 0, 0];
    for (let i = reach; i < count; i += 3) {
      const [x, y] = [a[i]!, b[i + shift]!];
      ab += x * y;
      aa += x * x;
      bb += y * y;
    }
    best = Math.max(best, ab / Math.sqrt(aa * bb));
  }
  return best;
}
const strokes = (sound: DecodedSound): number => {
  const result = analyseBeat(sound.samples, sound.rate);
  if (result.state !== 'heard') throw new Error('no beat was heard');
  return result.rate.value * 60;
};

describe('AMR, without any other program', () => {
  it('is unpacked, and the same beat is heard in it', async () => {
    const sound = decoded(await decodeFile(AMR, { ffmpeg: '/nowhere/ffmpeg' }));
    expect(sound).toMatchObject({ rate: 8000, channels: 1, seconds: 14, kind: 'an AMR recording' });
    expect(Math.abs(strokes(sound) - 260)).toBeLessThan(0.5);
    expect(decoded(await decodeFile(AMR, { longest: 5 }))).toMatchObject({ secondsDecoded: 5, seconds: 14 });
  });

  it.runIf(FFMPEG)('sounds as another decoder unpacks it, by itself and in a 3GP file', async () => {
    const other = decoded(decodeWav(readFileSync(ffmpeg(AMR, 'other.wav', ['-c:a', 'pcm_s16le']))));
    const alone = likeness(decoded(await decodeFile(AMR)).samples, other.samples);
    const packed = ffmpeg(AMR, 'phone.3gp', ['-c:a', 'copy']);
    const sound = decoded(await decodeFile(packed, { ffmpeg: '/nowhere/ffmpeg' }));
    const inside = likeness(sound.samples, other.samples);
    console.log(`likeness to ffmpeg: alone ${alone.toFixed(4)}, in 3GP ${inside.toFixed(4)}`);
    expect(alone).toBeGreaterThan(0.99);
    expect(inside).toBeGreaterThan(0.99);
    expect(sound.kind).toBe('a 3GP file');
  });

  it('cut short, empty or filled with anything is an answer', { timeout: 120_000 }, async () => {
    const bytes = readFileSync(AMR);
    expect(decoded(await decodeAmr(bytes.subarray(0, 5000))).secondsDecoded).toBeCloseTo(3.1, 1);
    expect((await decodeAmr(bytes.subarray(0, 6))).state).toBe('not decoded');
    await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), fc.constantFrom('#!AMR\n', '#!AMR-WB\n', '#!AMR_MC1.0\n'), async (noise, head) => {
      const outcome = await decodeAmr(new Uint8Array([...Buffer.from(head, 'latin1'), ...noise]));
      if (outcome.state === 'decoded') expect(outcome.samples.every(Number.isFinite)).toBe(true);
      else expect(outcome.words).toMatch(/\.$/);
    }), { numRuns: 2000 });
  });
});

describe.runIf(FFMPEG)('AIFF and CAF, without any other program', () => {
  const wav = join(folder, 'tone.wav');
  const CODINGS: readonly (readonly [string, 'aiff' | 'caf', readonly string[], number])[] = [
    ['16.aiff', 'aiff', ['-c:a', 'pcm_s16be'], 0.9999], ['24.aiff', 'aiff', ['-c:a', 'pcm_s24be'], 0.9999], ['8.aiff', 'aiff', ['-c:a', 'pcm_s8'], 0.99], ['32.aiff', 'aiff', ['-c:a', 'pcm_s32be'], 0.9999],
    ['float.aiff', 'aiff', ['-c:a', 'pcm_f32be', '-f', 'aiff'], 0.9999], ['double.aiff', 'aiff', ['-c:a', 'pcm_f64be', '-f', 'aiff'], 0.9999], ['sowt.aiff', 'aiff', ['-c:a', 'pcm_s16le', '-f', 'aiff'], 0.9999],
    ['mu.aiff', 'aiff', ['-c:a', 'pcm_mulaw', '-f', 'aiff'], 0.999], ['a.aiff', 'aiff', ['-c:a', 'pcm_alaw', '-f', 'aiff'], 0.999], ['ima.aiff', 'aiff', ['-c:a', 'adpcm_ima_qt', '-f', 'aiff'], 0.97],
    ['le.caf', 'caf', ['-c:a', 'pcm_s16le'], 0.9999], ['be.caf', 'caf', ['-c:a', 'pcm_s24be'], 0.9999], ['float.caf', 'caf', ['-c:a', 'pcm_f32le'], 0.9999], ['mu.caf', 'caf', ['-c:a', 'pcm_mulaw'], 0.999], ['a.caf', 'caf', ['-c:a', 'pcm_alaw'], 0.999],
    ['ima.caf', 'caf', ['-c:a', 'adpcm_ima_qt'], 0.97],
  ];
  it.each(CODINGS)('%s is the sound that was put in, from two channels too', async (name, kind, options, least) => {
    ffmpeg(AMR, 'tone.wav', ['-t', '6', '-ar', '16000', '-c:a', 'pcm_s16le']);
    const truth = decoded(decodeWav(readFileSync(wav)));
    for (const channels of ['1', '2']) {
      const path = ffmpeg(wav, `${channels}-${name}`, ['-ac', channels, ...options]);
      const sound = decoded(decodePcm(kind, readFileSync(path)));
      expect(sound.rate).toBe(16_000);
      expect(Math.abs(sound.seconds - 6)).toBeLessThan(0.01);
      const alike = likeness(sound.samples, truth.samples, 4);
      expect(alike, `${channels} channels`).toBeGreaterThan(least);
      const file = decoded(await decodeFile(path, { ffmpeg: '/nowhere/ffmpeg', longest: 2 }));
      expect(Math.abs(file.secondsDecoded - 2)).toBeLessThan(0.01);
      expect(file.notes).toHaveLength(1);
      const cut = readFileSync(path).subarray(0, 20_000);
      expect(decoded(decodePcm(kind, cut)).notes.join(' ')).toMatch(/cut short/);
    }
  });
});

it('heads of AIFF and CAF that say anything are an answer', () => {
  const heads = { aiff: ['FORM\0\0\0\x40AIFFCOMM\0\0\0\x12', 'FORM\0\0\0\x40AIFCCOMM\0\0\0\x18'], caf: ['caff\0\x01\0\0desc\0\0\0\0\0\0\0\x20', 'caff\0\x01\0\0'] };
  for (const kind of ['aiff', 'caf'] as const)
    fc.assert(fc.property(fc.uint8Array({ maxLength: 200 }), fc.constantFrom(...heads[kind]), (noise, head) => {
      const outcome = decodePcm(kind, new Uint8Array([...Buffer.from(head, 'latin1'), ...noise]));
      if (outcome?.state === 'not decoded') expect(outcome.words).toMatch(/\.$/);
      if (outcome?.state === 'decoded') expect(outcome.samples.every(Number.isFinite)).toBe(true);
    }), { numRuns: 20_000 });
});

describe.runIf(FFMPEG)('the sound track of an MP4 file, without its video', () => {
  const made = (name: string, options: readonly string[]): Uint8Array => readFileSync(ffmpeg(AMR, name, ['-ar', '44100', '-c:a', 'aac', '-b:a', '64k', ...options]));

  it.each([['plain.m4a', []], ['front.mp4', ['-movflags', '+faststart']], ['quick.mov', []]] as const)('%s: its first seconds stand alone as a bare stream that another decoder unpacks', async (name, options) => {
    const bytes = made(name, options);
    const track = (await readSoundTrack(partsOf(bytes), bytes.length, 5))!;
    expect(track.coding).toBe('mp4a');
    expect(Math.abs(track.seconds - 14)).toBeLessThan(0.1);
    expect(track.secondsTaken).toBeGreaterThanOrEqual(5);
    expect(track.secondsTaken).toBeLessThan(5.1);
    const stream = await adtsStream(partsOf(bytes), track.packets, aacSetup(track.config!)!);
    const bare = join(folder, `${name}.aac`);
    writeFileSync(bare, stream);
    const sound = decoded(decodeWav(readFileSync(ffmpeg(bare, `${name}.wav`, ['-ar', '8000']))));
    const whole = decoded(decodeWav(readFileSync(ffmpeg(join(folder, name), `${name}.whole.wav`, ['-ar', '8000']))));
    expect(Math.abs(sound.seconds - 5)).toBeLessThan(0.15);
    expect(likeness(sound.samples, whole.samples)).toBeGreaterThan(0.98);
  });

  it('only the table of contents and the packets are read', async () => {
    const bytes = made('counted.m4a', []);
    let read = 0;
    const counting: ReadPart = async (from, length) => {
      read += Math.min(length, bytes.length - from);
      return bytes.subarray(from, from + length);
    };
    const track = (await readSoundTrack(counting, bytes.length, 2))!;
    await adtsStream(counting, track.packets, aacSetup(track.config!)!);
    expect(read).toBeLessThan(bytes.length / 2);
  });

  it('fragments, cut files and bytes changed at any place are an answer', { timeout: 60_000 }, async () => {
    const fragments = made('fragments.mp4', ['-movflags', '+frag_keyframe+empty_moov']);
    expect((await readSoundTrack(partsOf(fragments), fragments.length, 5))?.packets ?? []).toEqual([]);
    const whole = made('front2.mp4', ['-movflags', '+faststart']);
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.nat(6000), fc.nat(255)), { maxLength: 12 }), fc.nat(whole.length), async (changes, length) => {
      const bytes = whole.slice(0, Math.max(100, length));
      for (const [at, value] of changes) if (at < bytes.length) bytes[at] = value;
      const track = await readSoundTrack(partsOf(bytes), bytes.length, 5);
      if (track === undefined) return;
      const setup = track.config === undefined ? undefined : aacSetup(track.config);
      if (setup !== undefined) expect((await adtsStream(partsOf(bytes), track.packets, setup)).length).toBeLessThan(3 * whole.length + 1e6);
    }), { numRuns: 2000 });
  });
});
