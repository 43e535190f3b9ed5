import { open } from 'node:fs/promises';
import { gathered } from './adts.ts';
import { amrHead, decodeAmr } from './decode-amr.ts';
import { decodeByFfmpeg } from './decode-by-ffmpeg.ts';
import { LONGEST_DECODED, notDecoded, type DecodeOutcome } from './decoded-sound.ts';
import { bytesOf, PCM_HEADS, pcmOutcome } from './decode-pcm.ts';
import { wavOutcome } from './decode-wav.ts';
import type { ReadPart } from './mp4-boxes.ts';
import { readSoundTrack } from './mp4-sound-track.ts';
import { KIND_WORDS, maySound, recogniseSound } from './recognise-sound.ts';
import { readWavHead } from './wav-header.ts';

/** Bytes in which the head of a WAV file must end; recorders put notes and pictures before the samples. */
const HEAD = 1 << 20;

/** Bytes of an AMR file that are looked through. */
const MOST_AMR = 64e6;

export interface DecodeFileOptions {
  /** s to decode at most */
  readonly longest?: number;
  /** name or path of ffmpeg */
  readonly ffmpeg?: string;
}

/**
 * One channel of samples out of a file on this computer. WAV, AIFF and CAF are read here, without holding more than is decoded, and AMR by
 * itself or in a 3GP file; everything else by the system's ffmpeg. What cannot be read gets a sentence.
 */
export async function decodeFile(path: string, options: DecodeFileOptions = {}): Promise<DecodeOutcome> {
  const longest = options.longest ?? LONGEST_DECODED;
  let file;
  try {
    file = await open(path, 'r');
  } catch {
    return notDecoded('missing', `The file cannot be opened; check its name: ${path}`);
  }
  try {
    const about = await file.stat();
    if (!about.isFile()) return notDecoded('missing', `This is a folder or a device and no file; choose the recording itself: ${path}`);
    const { size } = about;
    const head = new Uint8Array(Math.min(HEAD, size));
    await file.read(head, 0, head.length, 0);
    const kind = recogniseSound(head);
    if (!maySound(kind)) return notDecoded(KIND_WORDS[kind], `This file is ${KIND_WORDS[kind]}, whatever its name says, and no recording; choose the recording itself.`);
    if (kind === 'wav') {
      const read = readWavHead(head);
      if (read.state === 'read') {
        const { format } = read;
        const there = size - format.dataStart;
        const data = new Uint8Array(Math.max(0, Math.min(there, format.dataBytes, Math.floor(longest * format.rate) * format.frameBytes)));
        const { bytesRead } = await file.read(data, 0, data.length, format.dataStart);
        return wavOutcome(data.subarray(0, bytesRead), format, there);
      }
      if (read.state === 'broken') return notDecoded(KIND_WORDS.wav, read.words);
    }
    const read: ReadPart = async (from, length) => {
      const bytes = new Uint8Array(Math.max(0, Math.min(length, size - from)));
      const { bytesRead } = await file.read(bytes, 0, bytes.length, from);
      return bytes.subarray(0, bytesRead);
    };
    const own = PCM_HEADS[kind]?.(head);
    if (own?.state === 'broken') return notDecoded(KIND_WORDS[kind], own.words);
    if (own?.state === 'read') {
      const { format } = own;
      const there = Math.max(0, size - format.dataStart);
      return pcmOutcome(KIND_WORDS[kind], await read(format.dataStart, Math.min(there, format.dataBytes, bytesOf(format, longest))), format, there);
    }
    if (kind === 'amr') return await decodeAmr(await read(0, Math.min(size, MOST_AMR)), { longest });
    if (kind === '3gpp' || kind === 'mpeg-4') {
      const track = await readSoundTrack(read, size, longest);
      if (track?.coding === 'samr' || track?.coding === 'sawb') return await decodeAmr(Uint8Array.from([...amrHead(track.coding), ...(await gathered(read, track.packets, () => []))]), { kind: KIND_WORDS[kind], longest, whole: track.seconds });
    }
    return await decodeByFfmpeg(path, KIND_WORDS[kind], longest, options.ffmpeg);
  } finally {
    await file.close();
  }
}
