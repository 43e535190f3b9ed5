import { deflateSync } from 'node:zlib';
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { reportPdf, type Photograph } from '../../src/print/index.ts';
import { jpegHeader, withoutNotes } from '../../src/print/pdf/jpeg-header.ts';
import { standIn } from '../../src/print/pdf/carry-photographs.ts';
import { photographsOf, reportTree } from '../../src/views/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf } from './paper-cases.ts';
import { hasReader, readPdf, textOf } from './read-pdf.ts';

const readers = hasReader('pdfimages', 'pdftotext', 'qpdf');

/** A grey JPEG that says where it was taken and how the camera was held. */
function photograph(orientation: number, note: string): Buffer {
  const plain = standIn(note);
  const exif = Buffer.alloc(6 + 8 + 2 + 12 + 4);
  exif.write('Exif\0\0MM\0*\0\0\0\b\0\u0001', 'latin1');
  exif.writeUInt16BE(0x0112, 16);
  exif.writeUInt16BE(3, 18);
  exif.writeUInt32BE(1, 20);
  exif.writeUInt16BE(orientation, 24);
  const head = Buffer.from([0xff, 0xe1, 0, exif.length + 2]);
  return Buffer.concat([plain.subarray(0, 2), head, exif, plain.subarray(2)]);
}

const hash = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

const chunk = (type: string, body: Buffer): Buffer => {
  const head = Buffer.alloc(8);
  head.writeUInt32BE(body.length, 0);
  head.write(type, 4, 'latin1');
  const tail = Buffer.alloc(4);
  tail.writeUInt32BE(crc(Buffer.concat([head.subarray(4), body])), 0);
  return Buffer.concat([head, body, tail]);
};

function crc(bytes: Buffer): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}

const PNG = Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), chunk('IHDR', Buffer.from('00000004000000020800000000', 'hex')), chunk('IDAT', deflateSync(Buffer.alloc(10))), chunk('IEND', Buffer.alloc(0))]);

describe('the header of a JPEG', () => {
  test.each([1, 3, 6, 8])('orientation %i is read, and the notes go', (orientation) => {
    const bytes = photograph(orientation, 'GPS');
    expect(jpegHeader(bytes)).toEqual({ width: 8, height: 8, components: expect.any(Number), orientation, inverted: false });
    const bare = Buffer.concat(withoutNotes(bytes));
    expect(bare.includes('GPS')).toBe(false);
    expect(bare.includes('Exif')).toBe(false);
    expect(jpegHeader(bare)).toMatchObject({ width: 8, orientation: 1 });
  });

  test('what breaks off or is no JPEG has no header, wherever it breaks', () => {
    const bytes = photograph(6, 'x');
    const frame = bytes.indexOf(Buffer.from([0xff, 0xc0]));
    for (let length = 0; length < frame + 10; length += 1) expect(jpegHeader(bytes.subarray(0, length))).toBeUndefined();
    expect(jpegHeader(PNG)).toBeUndefined();
  });
});

test.skipIf(!readers)('photographs come in with captions, once each, upright; what cannot be printed is said', async () => {
  const upright = photograph(1, 'the first');
  const turned = photograph(6, 'the second');
  const held = new Map([upright, turned, PNG, Buffer.from('ftypheic'), PNG.subarray(0, 40)].map((bytes) => [hash(bytes), bytes]));
  const log = new LogOf('50 lb', 'coil-and-toggle');
  const words = ['crack at the throat', 'upper die from the left', 'plate of the motor', 'seen by a telephone', 'half a file', 'lost'];
  [...held.keys(), 'f'.repeat(64)].forEach((sha256, index) => log.put('photograph', { sha256, mediaType: 'image/jpeg', words: words[index] ?? '', part: 'frame' }));
  const found = pictureOf(log.entries, 'inch');
  expect(photographsOf(found).map((one) => one.number)).toEqual([1, 2, 3, 4, 5, 6]);
  const find = async (sha256: string): Promise<Photograph | undefined> => {
    const bytes = held.get(sha256);
    return bytes === undefined ? undefined : { bytes, mediaType: 'image/jpeg' };
  };
  const pdf = await reportPdf(reportTree(found, knowledge), { paper: 'a4', photographs: find });
  expect(readPdf(pdf, 'qpdf', '--check', '{}')).toContain('No syntax or stream encoding errors');
  const images = readPdf(pdf, 'pdfimages', '-list', '{}').trim().split('\n').slice(2);
  expect(images.filter((row) => / jpeg /u.test(row))).toHaveLength(2);
  expect(images).toHaveLength(3);
  const text = textOf(pdf).replace(/\s+/gu, ' ');
  for (const one of words) expect(text).toContain(one);
  expect(text).toContain('of a kind that a PDF cannot hold');
  expect(text).toContain('damaged and cannot be read');
  expect(text).toContain('not at hand');
  expect(Buffer.from(pdf).includes('Exif')).toBe(false);
  const pictures = Object.values((JSON.parse(readPdf(pdf, 'qpdf', '--json=2', '--json-key=qpdf', '{}')) as { qpdf: [unknown, Record<string, { value?: Record<string, unknown> }>] }).qpdf[1]).filter((one) => one.value?.['/S'] === '/Figure');
  expect(pictures).toHaveLength(3);
});

test('without photographs at hand the report still names them', async () => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  log.put('photograph', { sha256: 'a'.repeat(64), mediaType: 'image/jpeg', words: 'the seat', part: 'seat' });
  const pdf = await reportPdf(reportTree(pictureOf(log.entries, 'inch'), knowledge), { paper: 'letter' });
  expect(Buffer.from(pdf.subarray(0, 5)).toString()).toBe('%PDF-');
});

test('a photograph that changes while the paper is made is refused', async () => {
  const bytes = photograph(1, 'x');
  const log = new LogOf('50 lb', 'coil-and-toggle');
  log.put('photograph', { sha256: hash(bytes), mediaType: 'image/jpeg', words: 'the seat' });
  let asked = 0;
  const find = async (): Promise<Photograph> => ({ bytes: asked++ === 0 ? bytes : Buffer.concat([bytes, bytes]), mediaType: 'image/jpeg' });
  await expect(reportPdf(reportTree(pictureOf(log.entries, 'inch'), knowledge), { paper: 'a4', photographs: find })).rejects.toThrow('changed while its paper was made');
});
