import { boxesIn, topBox, type Box, type ReadPart } from './mp4-boxes.ts';

/** One packet of the sound track: where it lies in the file. */
export interface Packet {
  readonly at: number;
  readonly length: number;
}

export interface SoundTrack {
  /** `mp4a`, `samr`, `sawb`, `alac` and the like */
  readonly coding: string;
  /** bytes that describe an AAC stream (ISO/IEC 14496-3, AudioSpecificConfig); absent for others */
  readonly config?: Uint8Array;
  /** s of the whole track */
  readonly seconds: number;
  /** packets from the beginning for so many seconds, and how many they are */
  readonly packets: readonly Packet[];
  readonly secondsTaken: number;
}

/** Bytes of a table of contents at most; that of ten hours of sound and video has about 20 million. */
const MOST_CONTENTS = 64e6;
/** Bytes of one packet at most: uncompressed sound and lossless packets are the longest. */
const LONGEST_PACKET = 1 << 20;
const MOST_PACKETS = 1_000_000;

/**
 * The first sound track of an MP4, M4A, MOV or 3GP file by its table of contents (ISO/IEC 14496-12), without reading the sound, or any video.
 * @param longest s of packets to list at most
 * @returns undefined where the file has no table of contents, or none that can be followed: it may be in fragments, cut short or broken
 */
export async function readSoundTrack(read: ReadPart, size: number, longest: number): Promise<SoundTrack | undefined> {
  const moov = await topBox(read, size, 'moov', MOST_CONTENTS);
  if (moov === undefined) return undefined;
  try {
    for (const track of boxesIn(moov, 0, moov.length)) {
      if (track.type !== 'trak') continue;
      const found = trackOf(moov, track, longest);
      if (found !== undefined) return found;
    }
  } catch (failure) {
    // A table that points outside of itself: the file is broken, and is answered as one.
    if (!(failure instanceof RangeError)) throw failure;
  }
  return undefined;
}

function trackOf(moov: Uint8Array, track: Box, longest: number): SoundTrack | undefined {
  const view = new DataView(moov.buffer, moov.byteOffset, moov.byteLength);
  const find = (inside: Box | undefined, type: string): Box | undefined => (inside === undefined ? undefined : boxesIn(moov, inside.body, inside.end).find((box) => box.type === type));
  const media = find(track, 'mdia');
  const handler = find(media, 'hdlr');
  if (handler === undefined || String.fromCharCode(...moov.subarray(handler.body + 8, handler.body + 12)) !== 'soun') return undefined;
  const header = find(media, 'mdhd');
  const table = find(find(media, 'minf'), 'stbl');
  const [about, times, sizes, runs] = ['stsd', 'stts', 'stsz', 'stsc'].map((type) => find(table, type));
  const places = find(table, 'stco') ?? find(table, 'co64');
  if (header === undefined || about === undefined || times === undefined || sizes === undefined || runs === undefined || places === undefined) return undefined;
  const long = view.getUint8(header.body) === 1;
  const scale = view.getUint32(header.body + (long ? 20 : 12));
  const duration = long ? view.getUint32(header.body + 24) * 2 ** 32 + view.getUint32(header.body + 28) : view.getUint32(header.body + 16);
  const [entry] = boxesIn(moov, about.body + 8, about.end);
  if (scale === 0 || entry === undefined) return undefined;
  const config = configOf(moov, view, entry);
  const taken = packetsOf(view, { times, sizes, runs, places }, places.type === 'co64', scale * longest);
  return { coding: entry.type, ...(config === undefined ? {} : { config }), seconds: duration / scale, packets: taken.packets, secondsTaken: taken.ticks / scale };
}

function packetsOf(view: DataView, at: { readonly times: Box; readonly sizes: Box; readonly runs: Box; readonly places: Box }, wide: boolean, most: number): { readonly packets: readonly Packet[]; readonly ticks: number } {
  const same = view.getUint32(at.sizes.body + 4);
  const count = Math.min(MOST_PACKETS, view.getUint32(at.sizes.body + 8));
  const runCount = view.getUint32(at.runs.body + 4);
  const chunkCount = view.getUint32(at.places.body + 4);
  const packets: Packet[] = [];
  let ticks = 0;
  let [timeRow, timeLeft] = [0, view.getUint32(at.times.body + 4) === 0 ? 0 : view.getUint32(at.times.body + 8)];
  let run = 0;
  for (let chunk = 0; chunk < chunkCount && packets.length < count; chunk++) {
    // Each row of runs holds from its first chunk on, counted from 1.
    while (run + 1 < runCount && view.getUint32(at.runs.body + 8 + (run + 1) * 12) <= chunk + 1) run++;
    const inChunk = view.getUint32(at.runs.body + 12 + run * 12);
    let place = wide ? view.getUint32(at.places.body + 8 + chunk * 8) * 2 ** 32 + view.getUint32(at.places.body + 12 + chunk * 8) : view.getUint32(at.places.body + 8 + chunk * 4);
    for (let i = 0; i < inChunk && packets.length < count; i++) {
      if (ticks >= most) return { packets, ticks };
      const length = same !== 0 ? same : view.getUint32(at.sizes.body + 12 + packets.length * 4);
      if (length > LONGEST_PACKET) throw new RangeError(`no packet of sound is so long: ${length}`);
      packets.push({ at: place, length });
      place += length;
      while (timeLeft === 0 && timeRow + 1 < view.getUint32(at.times.body + 4)) {
        timeRow++;
        timeLeft = view.getUint32(at.times.body + 8 + timeRow * 8);
      }
      if (timeLeft > 0) {
        ticks += view.getUint32(at.times.body + 12 + timeRow * 8);
        timeLeft--;
      }
    }
  }
  return { packets, ticks };
}

/** The bytes that describe the stream, out of the elementary stream descriptor, which QuickTime puts into a box of its own. */
function configOf(moov: Uint8Array, view: DataView, entry: Box): Uint8Array | undefined {
  if (entry.type !== 'mp4a') return undefined;
  // QuickTime's second and third form of the description are longer.
  const version = view.getUint16(entry.body + 8);
  const inside = boxesIn(moov, entry.body + 28 + (version === 1 ? 16 : version === 2 ? 36 : 0), entry.end);
  const wave = inside.find((box) => box.type === 'wave');
  const esds = inside.find((box) => box.type === 'esds') ?? (wave === undefined ? undefined : boxesIn(moov, wave.body, wave.end).find((box) => box.type === 'esds'));
  if (esds === undefined) return undefined;
  let at = esds.body + 4;
  const descriptor = (): { readonly tag: number; readonly body: number; readonly end: number } => {
    const tag = view.getUint8(at++);
    let length = 0;
    for (let i = 0; i < 4; i++) {
      const byte = view.getUint8(at++);
      length = (length << 7) | (byte & 0x7f);
      if (byte < 0x80) break;
    }
    return { tag, body: at, end: at + length };
  };
  const stream = descriptor();
  if (stream.tag !== 3) return undefined;
  const flags = view.getUint8(at + 2);
  at += 3 + (flags & 0x80 ? 2 : 0) + (flags & 0x20 ? 2 : 0);
  if (flags & 0x40) at += 1 + view.getUint8(at);
  const decoder = descriptor();
  if (decoder.tag !== 4) return undefined;
  at = decoder.body + 13;
  const own = descriptor();
  return own.tag === 5 && own.end <= esds.end && own.end > own.body ? moov.slice(own.body, own.end) : undefined;
}
