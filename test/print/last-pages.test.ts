import { expect, test } from 'vitest';
import { reportPdf } from '../../src/print/index.ts';
import type { ReportTree } from '../../src/views/index.ts';
import { everyTree, FIVE } from './every-paper.ts';
import { pictureOf } from './paper-cases.ts';
import { hasReader, readPdf } from './read-pdf.ts';

/** Points from the upper edge below which the title block stands on letter (792 pt high) and on A4 (842 pt). */
const FOOT = { letter: 792 - 96, a4: 842 - 96 } as const;
/** Fewer lines than this on the last page look like something that fell off. */
const FEW = 6;

/** Lines on each page above its title block. */
function linesOf(pdf: Uint8Array, paper: 'letter' | 'a4'): readonly number[] {
  const pages = readPdf(pdf, 'pdftotext', '-bbox', '{}', '-').split('<page ').slice(1);
  return pages.map((page) => new Set([...page.matchAll(/yMin="([\d.]+)"/gu)].map(([, y]) => Math.round(Number(y) / 3)).filter((y) => y * 3 < FOOT[paper])).size);
}

test.skipIf(!hasReader('pdftotext')).each(FIVE)('no paper of $name ends with a page of a few lines', async ({ entries }) => {
  for (const [system, paper] of [['inch', 'letter'], ['metric', 'a4']] as const) {
    const few: string[] = [];
    for (const tree of everyTree(pictureOf(entries, system), entries)) {
      const lines = linesOf(await reportPdf(tree, { paper }), paper);
      if (lines.length > 1 && (lines.at(-1) ?? 0) < FEW) few.push(`${tree.titleBlock.sheet} on ${paper}: ${lines.join(', ')}`);
    }
    expect(few).toEqual([]);
  }
}, 240_000);

test.skipIf(!hasReader('pdftotext'))('a paper that runs over by a line is set closer, or wider, so that its last page holds more than a few', async () => {
  const block = { tag: 'T', hammerClass: '50 lb', sheet: 'S', date: '2026-01-01', made: '2026-02-01', by: 'A', verdict: 'Fit', log: 'l', invented: true };
  const sheet = (count: number): ReportTree => ({ title: 't', titleBlock: block, blocks: [{ kind: 'heading', level: 1, text: 'Heading' }, ...Array.from({ length: count }, (_, index) => ({ kind: 'paragraph', text: `Line ${index}.` }) as const)] });
  const full = async (count: number): Promise<readonly number[]> => linesOf(await reportPdf(sheet(count), { paper: 'letter' }), 'letter');
  let most = 20;
  while ((await full(most)).length === 1) most += 1;
  // Whatever is at hand, the first sheet that needs a second page has more than a few lines on it.
  expect((await full(most)).at(-1)).toBeGreaterThanOrEqual(FEW);
}, 120_000);
