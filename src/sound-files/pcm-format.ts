/** How sound that is not packed, or packed sample by sample, lies in a file. */
export interface PcmFormat {
  readonly coding: 'integer' | 'unsigned' | 'float' | 'mu-law' | 'a-law' | 'ima4';
  readonly littleEndian: boolean;
  readonly channels: number;
  /** samples a second */
  readonly rate: number;
  /** bits of one sample of one channel, as it is stored; 4 for IMA 4:1 */
  readonly bits: number;
  /** where the samples begin, and how many bytes of them the head promises; Infinity where it leaves that open */
  readonly dataStart: number;
  readonly dataBytes: number;
}

export type PcmHead =
  | { readonly state: 'read'; readonly format: PcmFormat }
  /** another coding inside, which other decoders may know */
  | { readonly state: 'other coding'; readonly name: string }
  | { readonly state: 'broken'; readonly words: string };

/** Bytes and frames of the smallest piece that can be read by itself: one frame, or a packet of IMA 4:1. */
export const pieceOf = ({ coding, bits, channels }: PcmFormat): { readonly bytes: number; readonly frames: number } =>
  coding === 'ima4' ? { bytes: 34 * channels, frames: 64 } : { bytes: (bits / 8) * channels, frames: 1 };

const MOST_CHANNELS = 64;

/** What is wrong with a head that says this, in a sentence; undefined where it can be read. */
export function formatProblem(kind: string, { channels, rate, bits, coding }: Pick<PcmFormat, 'channels' | 'rate' | 'bits' | 'coding'>): string | undefined {
  if (!(channels >= 1 && channels <= MOST_CHANNELS)) return `The number of channels in ${kind} is 1 to ${MOST_CHANNELS}: ${channels}.`;
  if (!(rate >= 4000 && rate <= 400_000)) return `The sampling rate of a recording that can be read here is 4,000 to 400,000 a second: ${rate}.`;
  const allowed = coding === 'float' ? [32, 64] : coding === 'ima4' ? [4] : coding === 'mu-law' || coding === 'a-law' ? [8] : [8, 16, 24, 32];
  return allowed.includes(bits) ? undefined : `The bits of a sample are ${allowed.join(', ')}: ${bits}.`;
}
