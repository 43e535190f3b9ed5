/** What a paper must know of a JPEG to place it without decoding it. */
export interface JpegHeader {
  /** Stored size, pixels; turn it by `orientation` to see it upright. */
  readonly width: number;
  readonly height: number;
  readonly components: 1 | 3 | 4;
  /** Exif orientation, 1 to 8; 1 where none is given. */
  readonly orientation: number;
  /** True where four inks are stored upside down, as the Adobe marker tells. */
  readonly inverted: boolean;
}

/** One marker segment: `from` points at its 0xff, `to` behind its last byte. */
interface Segment {
  readonly marker: number;
  readonly from: number;
  readonly to: number;
}

const APP0 = 0xe0;
const APP1 = 0xe1;
const ADOBE = 0xee;
const LAST_APP = 0xef;
const COMMENT = 0xfe;
const SCAN = 0xda;
/** Huffman-coded frames of 8 bits: baseline, extended, progressive; nothing else may stand in a PDF. */
const FRAMES = new Set([0xc0, 0xc1, 0xc2]);

/**
 * Reads the header of a JPEG (ITU-T T.81, annex B; Exif 2.3, tag 0112).
 * @returns the header, or undefined where it is not a JPEG that a PDF can carry as it is
 */
export function jpegHeader(bytes: Uint8Array): JpegHeader | undefined {
  let orientation = 1;
  let inverted = false;
  for (const { marker, from, to } of segmentsOf(bytes)) {
    const body = Buffer.from(bytes.buffer, bytes.byteOffset + from + 4, to - from - 4);
    if (marker === APP1) orientation = exifOrientation(body) ?? orientation;
    if (marker === ADOBE && body.toString('latin1', 0, 5) === 'Adobe') inverted = true;
    if (!FRAMES.has(marker)) continue;
    if (body.length < 6 || body[0] !== 8) return undefined;
    const [height, width, components] = [body.readUInt16BE(1), body.readUInt16BE(3), body[5]];
    if (height === 0 || width === 0 || (components !== 1 && components !== 3 && components !== 4)) return undefined;
    return { width, height, components, orientation, inverted: inverted && components === 4 };
  }
  return undefined;
}

/**
 * The same picture without its notes: camera, day and the place where it was taken stay out of a paper that changes hands.
 * The Adobe marker stays, since colours depend on it.
 * @returns the parts to keep, in order, as views into the same bytes
 */
export function withoutNotes(bytes: Uint8Array): readonly Uint8Array[] {
  const parts: Uint8Array[] = [bytes.subarray(0, 2)];
  let at = 2;
  for (const { marker, from, to } of segmentsOf(bytes)) {
    const note = (marker > APP0 && marker <= LAST_APP && marker !== ADOBE) || marker === COMMENT;
    if (!note) parts.push(bytes.subarray(from, to));
    at = to;
  }
  parts.push(bytes.subarray(at));
  return parts;
}

/** Marker segments before the scan; stops where the file breaks off. */
function* segmentsOf(bytes: Uint8Array): Generator<Segment> {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return;
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const to = at + 2 + (((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0));
    if (marker === SCAN || to > bytes.length || to < at + 4) return;
    yield { marker, from: at, to };
    at = to;
  }
}

function exifOrientation(body: Buffer): number | undefined {
  if (body.length < 18 || body.toString('latin1', 0, 6) !== 'Exif\0\0') return undefined;
  const tiff = body.subarray(6);
  const little = tiff.toString('latin1', 0, 2) === 'II';
  const word = (at: number): number => (at + 2 > tiff.length ? 0 : little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
  const directory = little ? tiff.readUInt32LE(4) : tiff.readUInt32BE(4);
  for (let index = 0; index < word(directory); index += 1) {
    const at = directory + 2 + index * 12;
    if (word(at) !== 0x0112) continue;
    const value = word(at + 8);
    return value >= 1 && value <= 8 ? value : undefined;
  }
  return undefined;
}
