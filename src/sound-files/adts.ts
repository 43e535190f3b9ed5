import type { Packet } from './mp4-sound-track.ts';
import type { ReadPart } from './mp4-boxes.ts';

/** What the head of a bare AAC stream has to say of it (ISO/IEC 14496-3, 1.6.2.1 and 1.A.2.2). */
export interface AacSetup {
  /** object type less one, 0 to 3 */
  readonly profile: number;
  readonly rateIndex: number;
  readonly channels: number;
}

const LC = 2;

/** What the config says; undefined for a stream that cannot stand in the bare form. A stream with band replication is carried as its plain core, which finds the rest by itself. */
export function aacSetup(config: Uint8Array): AacSetup | undefined {
  let at = 0;
  const bits = (count: number): number => {
    let value = 0;
    for (let i = 0; i < count; i++, at++) value = (value << 1) | (((config[at >> 3] ?? 0) >> (7 - (at & 7))) & 1);
    return value;
  };
  const type = bits(5);
  const rateIndex = bits(4);
  if (rateIndex > 12) return undefined;
  const channels = bits(4);
  if (channels < 1 || channels > 7 || config.length < 2) return undefined;
  if (type === 5 || type === 29) return { profile: LC - 1, rateIndex, channels };
  return type >= 1 && type <= 4 ? { profile: type - 1, rateIndex, channels } : undefined;
}

/** The seven bytes before each packet. */
function head({ profile, rateIndex, channels }: AacSetup, length: number): readonly number[] {
  const whole = length + 7;
  return [0xff, 0xf1, (profile << 6) | (rateIndex << 2) | (channels >> 2), ((channels & 3) << 6) | ((whole >> 11) & 3), (whole >> 3) & 0xff, ((whole & 7) << 5) | 0x1f, 0xfc];
}

/** Packets of one read at most; neighbours are fetched together. */
const MOST_GAP = 1 << 16;
const LONGEST_PACKET = 8184;

/**
 * Packets of a file put one behind the other, each after a head of its own.
 * @param headOf bytes before a packet of this length; undefined where such a packet cannot be
 */
export async function gathered(read: ReadPart, packets: readonly Packet[], headOf: (length: number) => readonly number[] | undefined): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array[] = [];
  for (let i = 0; i < packets.length; ) {
    // What lies close together is read at once: a phone's file has thousands of packets.
    const start = packets[i]!.at;
    let end = start;
    let j = i;
    while (j < packets.length && packets[j]!.at >= end && packets[j]!.at - end < MOST_GAP && packets[j]!.at + packets[j]!.length - start < 16 * MOST_GAP) {
      end = packets[j]!.at + packets[j]!.length;
      j++;
    }
    if (j === i) {
      j = i + 1;
      end = start + packets[i]!.length;
    }
    const bytes = await read(start, end - start);
    for (; i < j; i++) {
      const { at, length } = packets[i]!;
      const before = headOf(length);
      const packet = bytes.subarray(at - start, at - start + length);
      // Beyond the end of the file: it is cut short.
      if (before === undefined || packet.length < length) continue;
      parts.push(Uint8Array.from(before), packet);
    }
  }
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}

/** A bare AAC stream out of a file's packets. */
export const adtsStream = (read: ReadPart, packets: readonly Packet[], setup: AacSetup): Promise<Uint8Array<ArrayBuffer>> =>
  gathered(read, packets, (length) => (length > 0 && length <= LONGEST_PACKET ? head(setup, length) : undefined));
