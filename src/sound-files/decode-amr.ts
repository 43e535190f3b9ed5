import { LONGEST_DECODED, notDecoded, partNote, type DecodeOutcome } from './decoded-sound.ts';
import { KIND_WORDS } from './recognise-sound.ts';

const NARROW = '#!AMR\n';
const WIDE = '#!AMR-WB\n';
/** Bytes of a frame by its mode, its own first byte counted in (3GPP TS 26.101 and 26.201, storage format of RFC 4867, section 5). */
const NARROW_SIZES = [13, 14, 16, 18, 20, 21, 27, 32, 6, 6, 6, 6, 1, 1, 1, 1];
const WIDE_SIZES = [18, 24, 33, 37, 41, 47, 51, 59, 61, 6, 1, 1, 1, 1, 1, 1];
const FRAMES_A_SECOND = 50;
/** Bytes that a second of it takes at most. */
export const AMR_BYTES_A_SECOND = FRAMES_A_SECOND * 61;

const begins = (bytes: Uint8Array, with_: string): boolean => [...with_].every((letter, i) => bytes[i] === letter.charCodeAt(0));

/** What stands before the frames of this track of a 3GP file, so that they are a file by themselves. */
export const amrHead = (coding: 'samr' | 'sawb'): Uint8Array => Uint8Array.from([...(coding === 'samr' ? NARROW : WIDE)].map((letter) => letter.charCodeAt(0)));

/** Where the frames of the first `seconds` end, and how many they are; a mode that does not exist or a cut frame ends them. */
function framesOf(bytes: Uint8Array, seconds: number): { readonly end: number; readonly frames: number } {
  const wide = begins(bytes, WIDE);
  const sizes = wide ? WIDE_SIZES : NARROW_SIZES;
  let at = wide ? WIDE.length : NARROW.length;
  let frames = 0;
  while (at < bytes.length && frames < seconds * FRAMES_A_SECOND) {
    const mode = (bytes[at]! >> 3) & 0x0f;
    // Modes 9 to 14 (narrow) and 10 to 13 (wide) mean nothing here: what follows cannot be told apart.
    if ((wide && mode >= 10 && mode <= 13) || (!wide && mode >= 9 && mode <= 14) || at + sizes[mode]! > bytes.length) break;
    at += sizes[mode]!;
    frames++;
  }
  return { end: at, frames };
}

/**
 * One channel out of an AMR recording, narrow or wide, as older phones make it.
 * @param kind in words, where it lay in another file
 * @param whole s of the whole recording where that is known
 */
export async function decodeAmr(bytes: Uint8Array, { kind = KIND_WORDS.amr, longest = LONGEST_DECODED, whole }: { readonly kind?: string; readonly longest?: number; readonly whole?: number } = {}): Promise<DecodeOutcome> {
  if (!begins(bytes, NARROW) && !begins(bytes, WIDE)) return notDecoded(kind, `This is ${kind} of several channels or of a kind that cannot be read here; save it as WAV or M4A and choose that.`);
  const all = framesOf(bytes, Infinity);
  const { end, frames } = framesOf(bytes, longest);
  if (frames === 0) return notDecoded(kind, `This is ${kind}, and it holds no sound: it ends before its samples.`);
  try {
    // The decoder is large, and few recordings need it.
    const { default: decode } = await import('@audio/decode-amr');
    const { channelData, sampleRate } = await decode(bytes.subarray(0, end));
    const [samples] = channelData;
    if (samples === undefined || samples.length === 0) return notDecoded(kind, `This is ${kind}, and it holds no sound.`);
    const seconds = Math.max(whole ?? 0, all.frames / FRAMES_A_SECOND);
    const secondsDecoded = samples.length / sampleRate;
    const notes = [...(secondsDecoded < seconds - 1 ? [partNote(seconds, secondsDecoded)] : []), 'AMR is made for speech: weak second sounds may be lost in it. Record as WAV or M4A where the phone can.'];
    return { state: 'decoded', samples: samples.map((value) => (Number.isFinite(value) ? value : 0)), rate: sampleRate, channels: 1, seconds, secondsDecoded, kind, notes };
  } catch {
    return notDecoded(kind, `This is ${kind}, and its sound cannot be unpacked; it may be damaged. Record it here, or save it as WAV or M4A and choose that.`);
  }
}
