/** What the head of a WAV file says, checked. */
export interface WavFormat {
  readonly coding: 'integer' | 'float';
  readonly channels: number;
  /** samples a second */
  readonly rate: number;
  readonly bits: 8 | 16 | 24 | 32 | 64;
  /** bytes of one sample of all channels */
  readonly frameBytes: number;
  /** where the samples begin, and how many bytes of them the head promises; Infinity when a recorder left it open */
  readonly dataStart: number;
  readonly dataBytes: number;
}

export type WavHead =
  | { readonly state: 'read'; readonly format: WavFormat }
  /** another coding inside, which other decoders may know */
  | { readonly state: 'other coding'; readonly tag: number }
  | { readonly state: 'broken'; readonly words: string };

const INTEGER = 1;
const FLOAT = 3;
const EXTENSIBLE = 0xfffe;
const MOST_CHANNELS = 64;

/**
 * Reads the chunks of a WAV file up to its samples (Microsoft, Multimedia Programming Interface and Data Specifications
 * 1.0, 1991; WAVE_FORMAT_EXTENSIBLE as later published by the same).
 * @param bytes the beginning of the file, at least up to the data chunk
 */
export function readWavHead(bytes: Uint8Array): WavHead {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const name = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (bytes.length < 12 || name(0) !== 'RIFF' || name(8) !== 'WAVE') return { state: 'broken', words: 'This is no WAV recording: it does not begin like one.' };
  let format: Omit<WavFormat, 'dataStart' | 'dataBytes'> | undefined;
  let other: number | undefined;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const chunk = name(at);
    const length = view.getUint32(at + 4, true);
    const body = at + 8;
    if (chunk === 'fmt ') {
      if (length < 16 || body + 16 > bytes.length) return { state: 'broken', words: 'The description of the sound in this WAV recording is cut short.' };
      const read = readFormat(view, body, Math.min(length, bytes.length - body));
      if (typeof read === 'string') return { state: 'broken', words: read };
      if (typeof read === 'number') other = read;
      else format = read;
    } else if (chunk === 'data') {
      if (other !== undefined) return { state: 'other coding', tag: other };
      if (!format) return { state: 'broken', words: 'This WAV recording does not say how its sound is written.' };
      // Recorders that were switched off, and streams, leave the length at nothing or at the greatest number.
      const open = length === 0 || length >= 0xffffff00;
      return { state: 'read', format: { ...format, dataStart: body, dataBytes: open ? Infinity : length } };
    }
    at = body + length + (length % 2);
  }
  if (other !== undefined) return { state: 'other coding', tag: other };
  return { state: 'broken', words: format ? 'This WAV recording holds no sound: it ends before its samples.' : 'This WAV recording is cut short or damaged.' };
}

/** The format, the tag of another coding, or what is wrong. */
function readFormat(view: DataView, body: number, length: number): Omit<WavFormat, 'dataStart' | 'dataBytes'> | number | string {
  let tag = view.getUint16(body, true);
  const channels = view.getUint16(body + 2, true);
  const rate = view.getUint32(body + 4, true);
  const bits = view.getUint16(body + 14, true);
  // The first two bytes of the extensible form's identifier are the plain tag.
  if (tag === EXTENSIBLE && length >= 26) tag = view.getUint16(body + 24, true);
  if (tag !== INTEGER && tag !== FLOAT) return tag;
  if (channels < 1 || channels > MOST_CHANNELS) return `The number of channels in a WAV recording is 1 to ${MOST_CHANNELS}: ${channels}.`;
  if (rate < 4000 || rate > 400_000) return `The sampling rate of a recording that can be read here is 4,000 to 400,000 a second: ${rate}.`;
  const allowed = tag === FLOAT ? [32, 64] : [8, 16, 24, 32];
  if (!allowed.includes(bits)) return `The bits of a sample are ${allowed.join(', ')}: ${bits}.`;
  return { coding: tag === FLOAT ? 'float' : 'integer', channels, rate, bits: bits as WavFormat['bits'], frameBytes: (channels * bits) / 8 };
}
