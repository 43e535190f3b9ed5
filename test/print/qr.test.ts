import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cardPdf, LONGEST_ADDRESS, qrSvg } from '../../src/print/index.ts';
import { greyPage, hasReader } from './read-pdf.ts';
import { readQr } from './read-qr.ts';

/** Modules of an SVG of ours, without the quiet zone. */
function modulesOf(svg: string): boolean[][] {
  const side = Number(/viewBox="0 0 (\d+)/u.exec(svg)?.[1]) - 8;
  const dark = Array.from({ length: side }, () => Array<boolean>(side).fill(false));
  for (const [, x, y, run] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1/gu)) for (let step = 0; step < Number(run); step += 1) (dark[Number(y) - 4] as boolean[])[Number(x) - 4 + step] = true;
  return dark;
}

test('the code reads back as the address, by a reader of our own after ISO/IEC 18004', () => {
  fc.assert(fc.property(fc.webUrl({ size: 'small' }), (address) => {
    fc.pre(address.length <= 100);
    expect(readQr(modulesOf(qrSvg(address) ?? ''))).toBe(address);
  }), { numRuns: 50 });
});

test('an address that a card cannot carry gives no code', () => {
  expect(qrSvg('')).toBeUndefined();
  expect(qrSvg('x'.repeat(LONGEST_ADDRESS + 1))).toBeUndefined();
  expect(qrSvg('http://\ud800')).toBeUndefined();
});

test.skipIf(!hasReader('pdftoppm'))('the code can be read off the printed card', async () => {
  const address = 'https://192.168.1.20:8443/#/hammer/01JX4Z9QK2ABCDEFGHJKMNPQRS';
  const svg = qrSvg(address) ?? '';
  const pdf = await cardPdf({ tag: 'KB-50', verdict: 'Fit', condition: 'sound', limits: ['It may run.'], habits: [], always: ['Never die on die cold.'], titleBlock: { tag: 'KB-50', hammerClass: '50 lb', sheet: 'Limits card', date: '2026-11-25', made: '2026-11-25', by: 'A. Quill', verdict: 'Fit', log: '0123456789ab', invented: true } }, { paper: 'a4', address });
  const dots = 200;
  const page = greyPage(pdf, 1, dots);
  const side = modulesOf(svg).length;
  const module = ((32 / 25.4) * dots) / (side + 8);
  const dark = (x: number, y: number): boolean => page.at(x, y) < 128;
  const corner = findCorner(page.width, page.height, module, dark);
  const seen = Array.from({ length: side }, (_, row) => Array.from({ length: side }, (_unused, column) => dark(corner.x + (column + 0.5) * module, corner.y + (row + 0.5) * module)));
  expect(readQr(seen)).toBe(address);
});

/** Upper left corner of the upper left finder: 7 dark, and the 1:1:3:1:1 pattern along its middle, both ways. */
function findCorner(width: number, height: number, module: number, dark: (x: number, y: number) => boolean): { x: number; y: number } {
  const pattern = [true, false, true, true, true, false, true];
  const fits = (x: number, y: number): boolean => pattern.every((want, index) => dark(x + (index + 0.5) * module, y + 3.5 * module) === want && dark(x + 3.5 * module, y + (index + 0.5) * module) === want) && !dark(x - module, y + 3.5 * module) && !dark(x + 3.5 * module, y - module);
  for (let y = Math.ceil(module); y < height - 8 * module; y += 1) {
    for (let x = Math.floor(width / 2); x < width - 8 * module; x += 1) if (fits(x, y) && fits(x + 1, y + 1)) return { x: x + 0.5, y: y + 0.5 };
  }
  throw new Error('no finder pattern on the page');
}
