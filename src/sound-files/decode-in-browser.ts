import { decodeWav } from './decode-wav.ts';
import { LONGEST_DECODED, notDecoded, partNote, type DecodeOutcome } from './decoded-sound.ts';
import { KIND_WORDS, maySound, recogniseSound } from './recognise-sound.ts';
import { readWavHead } from './wav-header.ts';

/** Bytes of a packed file that are handed to the browser at most; it decodes the whole at once. */
const MOST_PACKED = 200e6;
const HEAD = 1 << 20;

/**
 * One channel of samples out of a chosen or recorded file, in the browser. WAV is read by ourselves, and only as much
 * as is wanted; the rest by the browser's own decoder.
 * @param longest s to decode at most
 */
export async function decodeInBrowser(blob: Blob, longest = LONGEST_DECODED): Promise<DecodeOutcome> {
  const head = new Uint8Array(await blob.slice(0, HEAD).arrayBuffer());
  const kind = recogniseSound(head);
  const words = KIND_WORDS[kind];
  if (!maySound(kind)) return notDecoded(words, `This file is ${words}, whatever its name says, and no recording; choose the recording itself.`);
  if (kind === 'wav') {
    const read = readWavHead(head);
    if (read.state === 'broken') return notDecoded(words, read.words);
    if (read.state === 'read') {
      const wanted = read.format.dataStart + Math.min(read.format.dataBytes, Math.ceil(longest * read.format.rate) * read.format.frameBytes);
      const outcome = decodeWav(new Uint8Array(await blob.slice(0, wanted).arrayBuffer()), longest);
      const seconds = Math.min(read.format.dataBytes, blob.size - read.format.dataStart) / read.format.frameBytes / read.format.rate;
      if (outcome.state !== 'decoded' || seconds < outcome.secondsDecoded + 1) return outcome;
      return { ...outcome, seconds, notes: [partNote(seconds, outcome.secondsDecoded)] };
    }
  }
  if (blob.size > MOST_PACKED) return notDecoded(words, 'This file is too large to be read at once; cut out the minute that matters and choose that.');
  try {
    // An offline context decodes without asking for the loudspeaker.
    const context = new OfflineAudioContext(1, 1, 44_100);
    const buffer = await context.decodeAudioData(await blob.arrayBuffer());
    const count = Math.min(buffer.length, Math.floor(longest * buffer.sampleRate));
    const samples = new Float32Array(count);
    for (let c = 0; c < buffer.numberOfChannels; c++) {
      const channel = buffer.getChannelData(c);
      for (let i = 0; i < count; i++) samples[i] = samples[i]! + channel[i]! / buffer.numberOfChannels;
    }
    const secondsDecoded = count / buffer.sampleRate;
    return { state: 'decoded', samples, rate: buffer.sampleRate, channels: buffer.numberOfChannels, seconds: buffer.duration, secondsDecoded, kind: words, notes: secondsDecoded < buffer.duration - 1 ? [partNote(buffer.duration, secondsDecoded)] : [] };
  } catch {
    return notDecoded(words, `This is ${words}, and this browser cannot read its sound; it may be cut short, or written in a way that the browser does not know. Record it here, or save it as WAV or M4A and choose that.`);
  }
}
