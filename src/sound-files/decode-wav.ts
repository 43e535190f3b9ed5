import { LONGEST_DECODED, notDecoded, partNote, type DecodeOutcome } from './decoded-sound.ts';
import { readWavHead, type WavFormat } from './wav-header.ts';

/**
 * One channel out of a WAV file that lies whole in the memory: 8, 16, 24 or 32 bits, or 32 or 64 bits of floating point,
 * plain or extensible. Several channels are averaged. A file cut short gives what is there, and says so.
 * @param longest s to decode at most
 */
export function decodeWav(bytes: Uint8Array, longest = LONGEST_DECODED): DecodeOutcome {
  const head = readWavHead(bytes);
  if (head.state === 'broken') return notDecoded('a WAV recording', head.words);
  if (head.state === 'other coding') return notDecoded('a WAV recording', otherCoding(head.tag));
  const { format } = head;
  const there = bytes.length - format.dataStart;
  const wanted = Math.min(there, format.dataBytes, Math.floor(longest * format.rate) * format.frameBytes);
  return wavOutcome(bytes.subarray(format.dataStart, format.dataStart + wanted), format, there);
}

export const otherCoding = (tag: number): string =>
  `The sound in this WAV recording is written in a way (number ${tag}) that cannot be read here; save it again as plain PCM.`;

/**
 * @param data bytes of whole and perhaps a last broken frame
 * @param there bytes that the file has after its head
 */
export function wavOutcome(data: Uint8Array, format: WavFormat, there: number): DecodeOutcome {
  const samples = framesToMono(data, format);
  if (samples.length === 0) return notDecoded('a WAV recording', 'This WAV recording holds no sound: it ends before its samples.');
  const seconds = Math.floor(Math.min(there, format.dataBytes) / format.frameBytes) / format.rate;
  const secondsDecoded = samples.length / format.rate;
  const notes: string[] = [];
  if (format.dataBytes !== Infinity && there < format.dataBytes) notes.push('The file is cut short: its head promises more sound than there is. What is there was read.');
  if (secondsDecoded < seconds - 1) notes.push(partNote(seconds, secondsDecoded));
  return { state: 'decoded', samples, rate: format.rate, channels: format.channels, seconds, secondsDecoded, kind: 'a WAV recording', notes };
}

/** Frames of interleaved samples as one channel, the mean of all; a broken last frame is left out. */
export function framesToMono(data: Uint8Array, format: WavFormat): Float32Array {
  const { channels, bits, coding, frameBytes } = format;
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const frames = Math.floor(data.byteLength / frameBytes);
  const out = new Float32Array(frames);
  const bytes = bits / 8;
  const read = reader(view, bits, coding);
  for (let frame = 0, at = 0; frame < frames; frame++) {
    let sum = 0;
    for (let c = 0; c < channels; c++, at += bytes) sum += read(at);
    out[frame] = sum / channels;
  }
  return out;
}

function reader(view: DataView, bits: number, coding: WavFormat['coding']): (at: number) => number {
  if (coding === 'float') return bits === 32 ? (at) => view.getFloat32(at, true) : (at) => view.getFloat64(at, true);
  if (bits === 8) return (at) => (view.getUint8(at) - 128) / 128;
  if (bits === 16) return (at) => view.getInt16(at, true) / 32768;
  if (bits === 24) return (at) => ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8388608;
  return (at) => view.getInt32(at, true) / 2147483648;
}
