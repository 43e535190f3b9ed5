import { withoutNotes, type JpegHeader } from './jpeg-header.ts';

/** A JPEG that stands in the paper as a small grey stand-in while it is set, and is put in its place afterwards. */
export interface Carried {
  /** File name of the stand-in for the typesetter. */
  readonly name: string;
  readonly header: JpegHeader;
  /** Length without its notes, bytes. */
  readonly length: number;
  readonly fetch: () => Promise<Uint8Array>;
}

/** Grey, 8 by 8 pixels, baseline. */
const GREY = Buffer.from('/9j/4AAQSkZJRgABAgAAAQABAAD//gAQTGF2YzU5LjM3LjEwMAD/2wBDAAgEBAQEBAUFBQUFBQYGBgYGBgYGBgYGBgYHBwcICAgHBwcGBgcHCAgICAkJCQgICAgJCQoKCgwMCwsODg4RERT/xABKAAEAAAAAAAAAAAAAAAAAAAAAAQEAAAAAAAAAAAAAAAAAAAAAEAEAAAAAAAAAAAAAAAAAAAAAEQEAAAAAAAAAAAAAAAAAAAAA/8AAEQgACAAIAwEiAAIRAAMRAP/aAAwDAQACEQMRAD8AAA//2Q==', 'base64');

const markOf = (name: string): string => `tupwise stand-in ${name};`;

/** A stand-in that can be found again in the finished file by the comment that it carries. */
export function standIn(name: string): Buffer {
  const mark = Buffer.from(markOf(name), 'latin1');
  const head = Buffer.from([0xff, 0xfe, 0, 0]);
  head.writeUInt16BE(mark.length + 2, 2);
  return Buffer.concat([GREY.subarray(0, 2), head, mark, GREY.subarray(2)]);
}

const SPACES = { 1: '/DeviceGray', 3: '/DeviceRGB', 4: '/DeviceCMYK' } as const;

/**
 * Puts the photographs in the place of their stand-ins, byte for byte and one at a time, as an incremental update
 * (ISO 32000-1, 7.5.6). The typesetter would unpack each of them whole: 36 MB for a picture of 12 million pixels.
 * The file is handed on piece by piece, so that the photographs never all lie in memory.
 * @param pdf a finished file with a classic cross-reference table
 * @throws where a stand-in or the trailer is not found, or a photograph changed since its header was read
 */
export async function* withPhotographs(pdf: Buffer, carried: readonly Carried[]): AsyncGenerator<Uint8Array, void, undefined> {
  if (carried.length === 0) {
    yield pdf;
    return;
  }
  const objects = carried.map((one) => objectOf(pdf, one));
  const before = /startxref\s+(\d+)\s+%%EOF\s*$/u.exec(pdf.toString('latin1', Math.max(0, pdf.length - 64)))?.[1];
  const trailer = pdf.toString('latin1', pdf.lastIndexOf('trailer', undefined, 'latin1'), pdf.length);
  const kept = ['Size', 'Root', 'Info', 'ID'].map((name) => new RegExp(`/${name} (?:\\[[^\\]]*\\]|[^/>]*)`, 'u').exec(trailer)?.[0].trim() ?? '');
  if (before === undefined || kept[0] === '' || kept[1] === '') throw new Error(`the finished paper has no trailer that can be carried on: ${trailer.slice(0, 200)}`);
  let at = pdf.length;
  const rows = objects.map(({ number, head, length, tail }) => {
    const row = { number, at };
    at += head.length + length + tail.length;
    return row;
  }).sort((a, b) => a.number - b.number);
  const sections = rows.map((row) => `${row.number} 1\n${String(row.at).padStart(10, '0')} 00000 n \n`).join('');
  const foot = Buffer.from(`xref\n${sections}trailer\n<< ${kept.join(' ')} /Prev ${before} >>\nstartxref\n${at}\n%%EOF\n`, 'latin1');
  yield pdf;
  for (const [index, { head, length, tail }] of objects.entries()) {
    const parts = withoutNotes(await (carried[index] as Carried).fetch());
    const now = parts.reduce((sum, part) => sum + part.length, 0);
    if (now !== length) throw new Error(`a photograph changed while its paper was made; it had ${length} bytes: ${now}`);
    yield head;
    yield* parts;
    yield tail;
  }
  yield foot;
}

interface Replacement {
  readonly number: number;
  readonly head: Buffer;
  readonly length: number;
  readonly tail: Buffer;
}

function objectOf(pdf: Buffer, { name, header, length }: Carried): Replacement {
  const mark = pdf.indexOf(markOf(name), 0, 'latin1');
  const start = mark < 0 ? -1 : pdf.lastIndexOf(' 0 obj', mark, 'latin1');
  const number = start < 0 ? Number.NaN : Number(/(\d+)$/u.exec(pdf.toString('latin1', Math.max(0, start - 12), start))?.[1]);
  if (!Number.isInteger(number)) throw new Error(`the stand-in ${name} is not in the finished paper`);
  const head = `${number} 0 obj\n<< /Type /XObject /Subtype /Image /Width ${header.width} /Height ${header.height} /ColorSpace ${SPACES[header.components]} /BitsPerComponent 8${header.inverted ? ' /Decode [1 0 1 0 1 0 1 0]' : ''} /Filter /DCTDecode /Length ${length} >>\nstream\n`;
  return { number, head: Buffer.from(head, 'latin1'), length, tail: Buffer.from('\nendstream\nendobj\n', 'latin1') };
}
