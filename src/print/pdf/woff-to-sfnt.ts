import { inflateSync } from 'node:zlib';

interface Table {
  readonly tag: string;
  readonly checksum: number;
  readonly bytes: Buffer;
}

const WOFF_SIGNATURE = 0x774f4646;
const WOFF_HEADER = 44;
const WOFF_ENTRY = 20;
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;

/**
 * Unpacks a WOFF 1.0 font into the TrueType or OpenType file that it was made from.
 * The typesetter reads no WOFF; the registry carries no other form of this typeface.
 * @param woff the whole file
 * @param family gives the face another family name, so that two subsets of one face can stand beside each other
 * @returns the font as TrueType or OpenType
 * @throws where the bytes are not a WOFF 1.0 file or a table does not come out at its stated length
 * Source: WOFF File Format 1.0, W3C Recommendation of 13 December 2012, sections 3 to 5.
 */
export function woffToSfnt(woff: Buffer, family?: string): Buffer {
  if (woff.length < WOFF_HEADER || woff.readUInt32BE(0) !== WOFF_SIGNATURE) throw new Error(`the font file is not WOFF 1.0; its first bytes must be 774f4646: ${woff.subarray(0, 4).toString('hex')}`);
  const flavor = woff.readUInt32BE(4);
  const tables = Array.from({ length: woff.readUInt16BE(12) }, (_, index) => unpackTable(woff, WOFF_HEADER + index * WOFF_ENTRY));
  return sfntOf(flavor, family === undefined ? tables : tables.map((table) => (table.tag === 'name' ? renamed(table, family) : table)));
}

function unpackTable(woff: Buffer, at: number): Table {
  const tag = woff.toString('latin1', at, at + 4);
  const offset = woff.readUInt32BE(at + 4);
  const packed = woff.readUInt32BE(at + 8);
  const length = woff.readUInt32BE(at + 12);
  const raw = woff.subarray(offset, offset + packed);
  const bytes = packed < length ? inflateSync(raw) : raw;
  if (bytes.length !== length) throw new Error(`table ${tag} of the font unpacks to ${bytes.length} bytes, not to ${length}`);
  return { tag, checksum: woff.readUInt32BE(at + 16), bytes };
}

function sfntOf(flavor: number, tables: readonly Table[]): Buffer {
  const power = Math.floor(Math.log2(tables.length));
  const header = Buffer.alloc(SFNT_HEADER + tables.length * SFNT_ENTRY);
  header.writeUInt32BE(flavor, 0);
  header.writeUInt16BE(tables.length, 4);
  header.writeUInt16BE(2 ** power * 16, 6);
  header.writeUInt16BE(power, 8);
  header.writeUInt16BE(tables.length * 16 - 2 ** power * 16, 10);
  const parts: Buffer[] = [header];
  let offset = header.length;
  tables.forEach((table, index) => {
    const at = SFNT_HEADER + index * SFNT_ENTRY;
    header.write(table.tag, at, 'latin1');
    header.writeUInt32BE(table.checksum, at + 4);
    header.writeUInt32BE(offset, at + 8);
    header.writeUInt32BE(table.bytes.length, at + 12);
    const padding = (4 - (table.bytes.length % 4)) % 4;
    parts.push(table.bytes, Buffer.alloc(padding));
    offset += table.bytes.length + padding;
  });
  return Buffer.concat(parts);
}

/** A name table that holds the family, its style and their joins and nothing else (OpenType, table `name`, format 0). */
function renamed(table: Table, family: string): Table {
  const style = nameOf(table.bytes, 2) ?? 'Regular';
  const names: readonly (readonly [number, string])[] = [[1, family], [2, style], [3, `${family} ${style}`], [4, `${family} ${style}`], [6, `${family} ${style}`.replaceAll(' ', '')]];
  const texts = names.map(([, text]) => Buffer.from(text, 'utf16le').swap16());
  const head = Buffer.alloc(6 + names.length * 12);
  head.writeUInt16BE(names.length, 2);
  head.writeUInt16BE(head.length, 4);
  let offset = 0;
  names.forEach(([id], index) => {
    const length = texts[index]?.length ?? 0;
    [3, 1, 0x409, id, length, offset].forEach((field, place) => head.writeUInt16BE(field, 6 + index * 12 + place * 2));
    offset += length;
  });
  const bytes = Buffer.concat([head, ...texts]);
  return { tag: table.tag, checksum: checksumOf(bytes), bytes };
}

function nameOf(bytes: Buffer, wanted: number): string | undefined {
  const storage = bytes.readUInt16BE(4);
  for (let index = 0; index < bytes.readUInt16BE(2); index += 1) {
    const at = 6 + index * 12;
    if (bytes.readUInt16BE(at) !== 3 || bytes.readUInt16BE(at + 6) !== wanted) continue;
    const from = storage + bytes.readUInt16BE(at + 10);
    return Buffer.from(bytes.subarray(from, from + bytes.readUInt16BE(at + 8))).swap16().toString('utf16le');
  }
  return undefined;
}

function checksumOf(bytes: Buffer): number {
  const padded = Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
  let sum = 0;
  for (let at = 0; at < padded.length; at += 4) sum = (sum + padded.readUInt32BE(at)) >>> 0;
  return sum;
}
