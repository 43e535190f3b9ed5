import { describe, expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { cardPdf, drawingPdf, reportPdf, type Paper } from '../../src/print/index.ts';
import { elevation, inSystem, limitsCard, reasonWords, reportTree, titleBlock, VERDICT_WORDS, type Block } from '../../src/views/index.ts';
import { CASES, pictureOf } from './paper-cases.ts';
import { checkStructure } from './check-structure.ts';
import { hasReader, readPdf, textOf } from './read-pdf.ts';

const readers = hasReader('pdfinfo', 'pdftotext', 'pdffonts', 'qpdf');
const WAYS = [['a4', 'inch'], ['letter', 'metric']] as const satisfies readonly (readonly [Paper, string])[];
const flat = (text: string): string => text.replace(/\s+/gu, '');

describe.skipIf(!readers).each(CASES)('papers of a hammer: $name', ({ entries }) => {
  test.each(WAYS)('report on %s in %s units opens clean, tagged and whole', async (paper, system) => {
    const found = pictureOf(entries, system);
    const tree = reportTree(found, knowledge, { elevation: elevation(found) });
    const pdf = await reportPdf(tree, { paper });
    checkStructure(pdf, paper, tree.title);
    const pages = textOf(pdf).split('\f').slice(0, -1);
    const headings = tree.blocks.filter((block): block is Extract<Block, { kind: 'heading' }> => block.kind === 'heading');
    for (const heading of headings) expect(flat(pages.join(''))).toContain(flat(heading.text));
    pages.forEach((page, index) => {
      for (const said of [found.known.identity.tag, `${index + 1} of ${pages.length}`, VERDICT_WORDS[found.duty.verdict], found.provenance.logHash.slice(0, 12), 'Invented hammer']) expect(flat(page)).toContain(flat(said));
    });
    const first = flat(pages[0] ?? '');
    for (const limit of found.duty.limits) expect(first).toContain(flat(inSystem(limit.sentence, system)));
    for (const reason of found.duty.reasons) expect(first).toContain(flat(reasonWords(reason.sentence, system)));
    for (const heading of ['What was not checked', 'What it would take']) expect(first).toContain(flat(heading));
    expect(flat(pages[1] ?? '')).toContain(flat('Elevation and parts'));
  });

  test.each(WAYS)('card on %s in %s units names every limit, at 25 pt or more', async (paper, system) => {
    const card = limitsCard(pictureOf(entries, system));
    const pdf = await cardPdf(card, { paper, address: 'https://hammer.invalid/KB-50' });
    // One sheet for every invented hammer, eleven limits included; a case where nothing was looked at has more to settle than a sheet holds.
    const pages = checkStructure(pdf, paper, `${card.tag}: limits card`);
    if (card.condition !== 'not-known') expect(pages).toBe(1);
    for (const limit of card.limits) expect(flat(textOf(pdf))).toContain(flat(limit.split(' in.')[0] ?? limit));
    const boxes = readPdf(pdf, 'pdftotext', '-bbox', '{}', '-');
    const word = card.limits[0]?.split(' ')[0] ?? '';
    const [, top, bottom] = new RegExp(`yMin="([0-9.]+)" xMax="[0-9.]+" yMax="([0-9.]+)">${word}<`, 'u').exec(boxes) ?? [];
    expect(Number(bottom) - Number(top)).toBeGreaterThan(25);
  });

  test.each(WAYS)('elevation on %s as a drawing', async (paper, system) => {
    const found = pictureOf(entries, system);
    const pdf = await drawingPdf(elevation(found), titleBlock(found, 'Elevation'), paper);
    const pages = checkStructure(pdf, paper, `${found.known.identity.tag}: elevation`);
    expect(pages).toBe(1);
  });
});
