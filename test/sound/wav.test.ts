import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeWav, encodeWav, recogniseSound } from '../../src/sound-files/index.ts';

/** A WAV file of any kind, from frames of samples between -1 and 1. */
function wav(frames: readonly (readonly number[])[], bits: number, options: { float?: boolean; extensible?: boolean; extra?: Uint8Array; rate?: number } = {}): Uint8Array {
  const channels = frames[0]?.length ?? 1;
  const { float = false, extensible = false, extra = new Uint8Array(0), rate = 8000 } = options;
  const formatLength = extensible ? 40 : 16;
  const extraLength = extra.length ? 8 + extra.length + (extra.length % 2) : 0;
  const dataLength = (frames.length * channels * bits) / 8;
  const bytes = new Uint8Array(12 + 8 + formatLength + extraLength + 8 + dataLength);
  const view = new DataView(bytes.buffer);
  const word = (at: number, letters: string): void => [...letters].forEach((l, i) => view.setUint8(at + i, l.charCodeAt(0)));
  word(0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, formatLength, true);
  const tag = float ? 3 : 1;
  view.setUint16(20, extensible ? 0xfffe : tag, true);
  view.setUint16(22, channels, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, (rate * channels * bits) / 8, true);
  view.setUint16(32, (channels * bits) / 8, true);
  view.setUint16(34, bits, true);
  if (extensible) {
    view.setUint16(36, 22, true);
    view.setUint16(38, bits, true);
    view.setUint16(44, tag, true);
  }
  let at = 20 + formatLength;
  if (extra.length) {
    word(at, 'LIST');
    view.setUint32(at + 4, extra.length, true);
    bytes.set(extra, at + 8);
    at += extraLength;
  }
  word(at, 'data');
  view.setUint32(at + 4, dataLength, true);
  at += 8;
  for (const frame of frames) for (const x of frame) {
    if (float && bits === 32) view.setFloat32(at, x, true);
    else if (float) view.setFloat64(at, x, true);
    else if (bits === 8) view.setUint8(at, Math.round(x * 127) + 128);
    else if (bits === 16) view.setInt16(at, Math.round(x * 32767), true);
    else if (bits === 32) view.setInt32(at, Math.round(x * 2147483647), true);
    else {
      const whole = Math.round(x * 8388607);
      view.setUint8(at, whole & 255);
      view.setUint8(at + 1, (whole >> 8) & 255);
      view.setInt8(at + 2, whole >> 16);
    }
    at += bits / 8;
  }
  return bytes;
}

const frames = Array.from({ length: 200 }, (_, i) => [Math.sin(i / 7), 0.5 * Math.cos(i / 11)]);

describe('reading WAV', () => {
  for (const [bits, float] of [[8, false], [16, false], [24, false], [32, false], [32, true], [64, true]] as const)
    for (const extensible of [false, true])
      it(`${bits} bits${float ? ' of floating point' : ''}${extensible ? ', extensible' : ''}, two channels averaged, behind a chunk of odd length`, () => {
        const read = decodeWav(wav(frames, bits, { float, extensible, extra: new Uint8Array(13) }));
        if (read.state !== 'decoded') throw new Error(read.words);
        expect([read.rate, read.channels, read.samples.length, read.notes.length]).toEqual([8000, 2, 200, 0]);
        const step = float ? 1e-7 : 2 / 2 ** (bits - 1) + 1e-7;
        frames.forEach((frame, i) => expect(Math.abs(read.samples[i]! - (frame[0]! + frame[1]!) / 2)).toBeLessThan(step));
      });

  it('comes back from our own writing', () => {
    fc.assert(fc.property(fc.array(fc.float({ min: -1, max: Math.fround(0.9999), noNaN: true }), { minLength: 1, maxLength: 300 }), fc.integer({ min: 4000, max: 192_000 }), (samples, rate) => {
      const read = decodeWav(encodeWav(Float32Array.from(samples), rate));
      if (read.state !== 'decoded') throw new Error(read.words);
      expect(read.rate).toBe(rate);
      samples.forEach((x, i) => expect(Math.abs(read.samples[i]! - x)).toBeLessThan(2e-5));
    }));
  });

  it('reads what is there of a file cut short, at every place, or says what is wrong', () => {
    const whole = wav(frames, 16);
    for (let length = 0; length < whole.length; length++) {
      const read = decodeWav(whole.subarray(0, length));
      if (read.state === 'decoded') {
        expect(read.samples.length).toBe(Math.floor((length - 44) / 4));
        expect(read.notes.join()).toMatch(/cut short/);
      } else expect(read.words).toMatch(/\.$/);
    }
  });

  it('reads no more than is wanted of a long one, and says so', () => {
    const read = decodeWav(wav(Array.from({ length: 80_000 }, () => [0.1]), 16), 3);
    if (read.state !== 'decoded') throw new Error(read.words);
    expect([read.samples.length, read.seconds, read.secondsDecoded]).toEqual([24_000, 10, 3]);
    expect(read.notes.join()).toMatch(/only its first/);
  });

  it('names what is not allowed with the value', () => {
    const broken = (change: (view: DataView) => void): string => {
      const bytes = wav(frames, 16);
      change(new DataView(bytes.buffer));
      const read = decodeWav(bytes);
      return read.state === 'decoded' ? 'decoded' : read.words;
    };
    expect(broken((v) => v.setUint16(22, 0, true))).toMatch(/1 to 64: 0/);
    expect(broken((v) => v.setUint32(24, 1, true))).toMatch(/4,000 to 400,000 a second: 1\./);
    expect(broken((v) => v.setUint16(34, 12, true))).toMatch(/8, 16, 24, 32: 12/);
    expect(broken((v) => v.setUint16(20, 17, true))).toMatch(/number 17/);
  });

  it('answers 100,000 random byte strings, half of them behind a true head, without a crash', () => {
    const head = wav(frames, 16).subarray(0, 44);
    let decoded = 0;
    fc.assert(fc.property(fc.uint8Array({ maxLength: 120 }), fc.boolean(), fc.nat(43), (tail, behind, at) => {
      const bytes = behind ? new Uint8Array([...head.subarray(0, at), ...tail]) : tail;
      recogniseSound(bytes);
      const read = decodeWav(bytes);
      if (read.state === 'decoded') {
        decoded++;
        expect(read.samples.length).toBeLessThanOrEqual(bytes.length);
      } else expect(read.words.length).toBeGreaterThan(10);
    }), { numRuns: 100_000 });
    console.log(`${decoded} of 100,000 held something to read`);
  });
});

describe('telling files apart by what is in them', () => {
  it('knows sounds, pictures and texts', () => {
    const text = (s: string): Uint8Array => new TextEncoder().encode(s);
    expect(recogniseSound(text('date,reading\n2020,12'))).toBe('text');
    expect(recogniseSound(new Uint8Array(0))).toBe('empty');
    expect(recogniseSound(wav(frames, 16))).toBe('wav');
    expect(recogniseSound(text('\0\0\0\x20ftypM4A '))).toBe('mpeg-4');
    expect(recogniseSound(text('\0\0\0\x18ftyp3gp4'))).toBe('3gpp');
    expect(recogniseSound(text('OggS\0\x02'))).toBe('ogg');
    expect(recogniseSound(text('fLaC\0'))).toBe('flac');
    expect(recogniseSound(new Uint8Array([0xff, 0xfb, 0x90, 0]))).toBe('mp3');
    expect(recogniseSound(new Uint8Array([0xff, 0xf1, 0x50, 0x80]))).toBe('aac');
    expect(recogniseSound(new Uint8Array([0x1a, 0x45, 0xdf, 0xa3]))).toBe('webm');
    expect(recogniseSound(text('RIFF\0\0\0\0WEBPVP8 '))).toBe('picture');
  });
});
