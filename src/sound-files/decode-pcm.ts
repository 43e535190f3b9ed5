import { readAiffHead } from './aiff-header.ts';
import { readCafHead } from './caf-header.ts';
import { LONGEST_DECODED, notDecoded, partNote, type DecodeOutcome } from './decoded-sound.ts';
import { pieceOf, type PcmFormat, type PcmHead } from './pcm-format.ts';
import { pcmToMono } from './pcm-to-mono.ts';
import { KIND_WORDS } from './recognise-sound.ts';

/** Kinds other than WAV whose samples are read here. */
export const PCM_HEADS: Readonly<Partial<Record<string, (bytes: Uint8Array) => PcmHead>>> = { aiff: readAiffHead, caf: readCafHead };

/** Bytes of samples that so many seconds take, whole pieces. */
export function bytesOf(format: PcmFormat, seconds: number): number {
  const { bytes, frames } = pieceOf(format);
  return Math.floor((seconds * format.rate) / frames) * bytes;
}

/**
 * @param kind in words
 * @param data bytes of whole pieces and perhaps a last broken one
 * @param there bytes that the file has after its head
 */
export function pcmOutcome(kind: string, data: Uint8Array, format: PcmFormat, there: number): DecodeOutcome {
  const samples = pcmToMono(data, format);
  if (samples.length === 0) return notDecoded(kind, `This is ${kind}, and it holds no sound: it ends before its samples.`);
  const { bytes, frames } = pieceOf(format);
  const seconds = (Math.floor(Math.min(there, format.dataBytes) / bytes) * frames) / format.rate;
  const secondsDecoded = samples.length / format.rate;
  const notes: string[] = [];
  if (format.dataBytes !== Infinity && there < format.dataBytes) notes.push('The file is cut short: its head promises more sound than there is. What is there was read.');
  if (secondsDecoded < seconds - 1) notes.push(partNote(seconds, secondsDecoded));
  return { state: 'decoded', samples, rate: format.rate, channels: format.channels, seconds, secondsDecoded, kind, notes };
}

/** One channel out of an AIFF or CAF file that lies whole in the memory; undefined for a coding that is not read here. */
export function decodePcm(kind: 'aiff' | 'caf', bytes: Uint8Array, longest = LONGEST_DECODED): DecodeOutcome | undefined {
  const head = PCM_HEADS[kind]!(bytes);
  if (head.state === 'broken') return notDecoded(KIND_WORDS[kind], head.words);
  if (head.state === 'other coding') return undefined;
  const { format } = head;
  const there = Math.max(0, bytes.length - format.dataStart);
  const wanted = Math.min(there, format.dataBytes, bytesOf(format, longest));
  return pcmOutcome(KIND_WORDS[kind], bytes.subarray(format.dataStart, format.dataStart + wanted), format, there);
}
