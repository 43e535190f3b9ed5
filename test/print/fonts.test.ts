import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { paperFonts } from '../../src/print/pdf/paper-fonts.ts';
import { woffToSfnt } from '../../src/print/pdf/woff-to-sfnt.ts';

const woff = readFileSync(createRequire(import.meta.url).resolve('@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-400-normal.woff'));

/** Sum of a table as big-endian words (OpenType, table directory). */
function sumOf(bytes: Buffer): number {
  const padded = Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
  let sum = 0;
  for (let at = 0; at < padded.length; at += 4) sum = (sum + padded.readUInt32BE(at)) >>> 0;
  return sum;
}

test('every table of every face comes out with the checksum that its maker wrote', async () => {
  for (const font of await paperFonts()) {
    for (let index = 0; index < font.readUInt16BE(4); index += 1) {
      const at = 12 + index * 16;
      const tag = font.toString('latin1', at, at + 4);
      const bytes = Buffer.from(font.subarray(font.readUInt32BE(at + 8), font.readUInt32BE(at + 8) + font.readUInt32BE(at + 12)));
      if (tag === 'head') bytes.writeUInt32BE(0, 8);
      expect({ tag, sum: sumOf(bytes) }).toEqual({ tag, sum: font.readUInt32BE(at + 4) });
    }
  }
});

test('what is no WOFF, or is damaged, is refused', () => {
  expect(() => woffToSfnt(Buffer.from('wOF2 and so on, long enough to be looked at'))).toThrow('WOFF 1.0');
  expect(() => woffToSfnt(Buffer.alloc(0))).toThrow('WOFF 1.0');
  const cut = Buffer.from(woff);
  cut.writeUInt32BE(cut.readUInt32BE(44 + 12) + 4, 44 + 12);
  expect(() => woffToSfnt(cut)).toThrow();
});
