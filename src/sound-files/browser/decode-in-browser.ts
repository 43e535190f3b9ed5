import { aacSetup, adtsStream, gathered } from '../adts.ts';
import { AMR_BYTES_A_SECOND, amrHead, decodeAmr } from '../decode-amr.ts';
import { bytesOf, PCM_HEADS, pcmOutcome } from '../decode-pcm.ts';
import { decodeWav } from '../decode-wav.ts';
import { LONGEST_DECODED, notDecoded, partNote, type DecodeOutcome } from '../decoded-sound.ts';
import type { ReadPart } from '../mp4-boxes.ts';
import { readSoundTrack } from '../mp4-sound-track.ts';
import { KIND_WORDS, maySound, recogniseSound, type SoundKind } from '../recognise-sound.ts';
import { readWavHead } from '../wav-header.ts';
import { lengthOf } from './length-of.ts';

/** Bytes in which the head of a WAV file must end; recorders put notes and pictures before the samples. */
const HEAD = 1 << 20;
/** Bytes of a packed file that are handed to the browser's decoder at most. */
const MOST_PACKED = 64e6;
/** s of sound that the browser's decoder may unpack at once: it has no way of unpacking a part. At 48 kHz and two channels 350 MB. */
const MOST_UNPACKED = 900;
/** s of an AMR file that are looked through for its length. */
const MOST_AMR = 6 * 3600;
/** Kinds whose beginning is a recording by itself when it is cut off there. */
const CUT_ANYWHERE: ReadonlySet<SoundKind> = new Set(['mp3', 'aac', 'ogg', 'flac', 'webm']);

/**
 * One channel of samples out of a chosen or recorded file, in the browser. WAV is read by ourselves, and only as much as
 * is wanted, and so are AIFF and CAF; AMR by a decoder that is fetched when it is needed; the rest by the browser's own decoder.
 * Of a long recording only the beginning is read, or a sentence says
 * that it must be cut, so that a file of hours does not fill the memory.
 * @param longest s to decode at most
 */
export async function decodeInBrowser(blob: Blob, longest = LONGEST_DECODED): Promise<DecodeOutcome> {
  let head: Uint8Array;
  try {
    head = new Uint8Array(await blob.slice(0, HEAD).arrayBuffer());
  } catch {
    return notDecoded('missing', 'This file cannot be read any more; it may have been moved or changed. Choose it again.');
  }
  const kind = recogniseSound(head);
  const words = KIND_WORDS[kind];
  if (!maySound(kind)) return notDecoded(words, `This file is ${words}, whatever its name says, and no recording; choose the recording itself.`);
  if (kind === 'wav') {
    const read = readWavHead(head);
    if (read.state === 'broken') return notDecoded(words, read.words);
    if (read.state === 'read') return wav(blob, read.format, longest);
  }
  if (kind === 'amr') return decodeAmr(new Uint8Array(await blob.slice(0, Math.min(MOST_PACKED, Math.ceil(AMR_BYTES_A_SECOND * MOST_AMR))).arrayBuffer()), { longest });
  const own = PCM_HEADS[kind]?.(head);
  if (own?.state === 'broken') return notDecoded(words, own.words);
  if (own?.state === 'read') {
    const { format } = own;
    const there = Math.max(0, blob.size - format.dataStart);
    const wanted = Math.min(there, format.dataBytes, bytesOf(format, longest));
    return pcmOutcome(words, new Uint8Array(await blob.slice(format.dataStart, format.dataStart + wanted).arrayBuffer()), format, there);
  }
  const contained = kind === 'mpeg-4' || kind === '3gpp';
  const read: ReadPart = async (from, length) => new Uint8Array(await blob.slice(from, from + length).arrayBuffer());
  const track = contained ? await readSoundTrack(read, blob.size, longest) : undefined;
  if (track !== undefined && (track.coding === 'samr' || track.coding === 'sawb')) {
    const frames = await gathered(read, track.packets, () => []);
    const alone = new Uint8Array([...amrHead(track.coding), ...frames]);
    return decodeAmr(alone, { kind: words, longest, whole: track.seconds });
  }
  const seconds = track?.seconds ?? (await lengthOf(blob));
  let part = blob;
  if ((seconds ?? 0) > MOST_UNPACKED || blob.size > MOST_PACKED) {
    const setup = track?.config === undefined ? undefined : aacSetup(track.config);
    if (track !== undefined && setup !== undefined) part = new Blob([await adtsStream(read, track.packets, setup)], { type: 'audio/aac' });
    else if (!CUT_ANYWHERE.has(kind)) return notDecoded(words, `This is ${words}${seconds === undefined ? '' : ` of ${Math.round(seconds / 60)} minutes`}, more than can be unpacked at once here: ${MOST_UNPACKED / 60} minutes. Cut out the minute that matters and choose that.`);
    else {
      const share = seconds === undefined ? 1 : (1.1 * longest) / seconds;
      part = blob.slice(0, Math.min(MOST_PACKED, Math.ceil(blob.size * Math.min(1, share))), blob.type);
    }
  }
  try {
    // An offline context decodes without asking for the loudspeaker.
    const context = new OfflineAudioContext(1, 1, 44_100);
    const buffer = await context.decodeAudioData(await part.arrayBuffer());
    const count = Math.min(buffer.length, Math.floor(longest * buffer.sampleRate));
    if (count === 0) return notDecoded(words, `This is ${words}, and it holds no sound.`);
    const samples = new Float32Array(count);
    for (let c = 0; c < buffer.numberOfChannels; c++) {
      const channel = buffer.getChannelData(c);
      for (let i = 0; i < count; i++) samples[i] = samples[i]! + channel[i]! / buffer.numberOfChannels;
    }
    const secondsDecoded = count / buffer.sampleRate;
    const whole = Math.max(seconds ?? 0, buffer.duration);
    return { state: 'decoded', samples, rate: buffer.sampleRate, channels: buffer.numberOfChannels, seconds: whole, secondsDecoded, kind: words, notes: secondsDecoded < whole - 1 ? [partNote(whole, secondsDecoded)] : [] };
  } catch {
    return notDecoded(words, `This is ${words}, and this browser cannot read its sound; it may be cut short, or written in a way that the browser does not know. Record it here, or save it as WAV or M4A and choose that.`);
  }
}

async function wav(blob: Blob, format: { readonly dataStart: number; readonly dataBytes: number; readonly frameBytes: number; readonly rate: number }, longest: number): Promise<DecodeOutcome> {
  const wanted = format.dataStart + Math.min(format.dataBytes, Math.ceil(longest * format.rate) * format.frameBytes);
  const cut = blob.size > wanted;
  const bytes = new Uint8Array(await blob.slice(0, wanted).arrayBuffer());
  const outcome = decodeWav(bytes, longest);
  const seconds = Math.min(format.dataBytes, blob.size - format.dataStart) / format.frameBytes / format.rate;
  if (outcome.state !== 'decoded' || !cut || seconds < outcome.secondsDecoded + 1) return outcome;
  // Cut by ourselves: not the file's fault.
  return { ...outcome, seconds, notes: [partNote(seconds, outcome.secondsDecoded)] };
}
