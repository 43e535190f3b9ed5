import { expect, test } from 'vitest';
import { drawingPdf } from '../../src/print/index.ts';
import { printSvg } from '../../src/print/pdf/print-svg.ts';
import { elevation, titleBlock } from '../../src/views/index.ts';
import { CASES, pictureOf } from './paper-cases.ts';
import { hasReader, textOf } from './read-pdf.ts';

const PIXEL = 25.4 / 96;

test('page variables become inks, and the off-white sheet is the paper', () => {
  const { svg } = printSvg('<svg viewBox="0 0 10 10"><path style="fill:var(--paper,#f6f3ea);stroke:var(--ink,#16181d)"/><path style="fill:var(--other, var(--chalk,#b3261e))"/><path style="fill:var(--none)"/></svg>', 10);
  expect(svg).toContain('fill:#ffffff;stroke:#000000');
  expect(svg).toContain('fill:#b3261e');
  expect(svg).not.toContain('var(');
});

test.each([[100, 50], [2000, 180], [30, 90]])('a line of fixed width keeps it: %d units on %d mm', (units, width) => {
  const { svg } = printSvg(`<svg viewBox="0 0 ${units} 10"><style>svg .edge{stroke-width:2px;vector-effect:non-scaling-stroke}svg .part>.edge{stroke-dasharray:1.5 4}svg .limit{stroke-width:7}</style><line vector-effect="non-scaling-stroke" stroke-width="3"/></svg>`, width);
  const onPaper = (found: string | undefined): number => (Number(found) * width) / units / PIXEL;
  expect(onPaper(/edge\{stroke-width:([0-9.]+)/u.exec(svg)?.[1])).toBeCloseTo(2, 1);
  expect(onPaper(/dasharray:([0-9.]+) /u.exec(svg)?.[1])).toBeCloseTo(1.5, 1);
  expect(onPaper(/<line stroke-width="([0-9.]+)"/u.exec(svg)?.[1])).toBeCloseTo(3, 1);
  expect(svg).toContain('svg .limit{stroke-width:7}');
  expect(svg).not.toContain('vector-effect');
});

test('a drawing without a size is refused', () => {
  expect(() => printSvg('<svg></svg>', 10)).toThrow('viewBox');
});

test.each(CASES)('the elevation of a hammer has nothing left that only a screen understands: $name', ({ entries }) => {
  const { svg } = printSvg(elevation(pictureOf(entries, 'metric')), 180);
  expect(svg).not.toMatch(/var\(|vector-effect|tabindex|NaN|f6f3ea/u);
});

test.skipIf(!hasReader('pdftotext'))('a drawing to scale keeps its size, and says so where the sheet is too small', async () => {
  const block = titleBlock(pictureOf(CASES[2]?.entries ?? [], 'inch'), 'Filler plate');
  const drawing = (width: number): string => `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="80mm" viewBox="0 0 ${width} 80" aria-label="Filler plate"><rect width="${width}" height="80" fill="none" stroke="#000"/></svg>`;
  expect(textOf(await drawingPdf(drawing(150), block, 'a4'))).not.toContain('Reduced');
  expect(textOf(await drawingPdf(drawing(400), block, 'a4')).replace(/\s+/gu, ' ')).toMatch(/Reduced to \d\d % of the stated scale/u);
});
