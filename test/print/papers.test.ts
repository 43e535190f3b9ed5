import { describe, expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { cardPdf, drawingPdf, PAPER_SIZES, reportPdf, type Paper } from '../../src/print/index.ts';
import { elevation, inSystem, limitsCard, reasonWords, reportTree, titleBlock, VERDICT_WORDS, type Block } from '../../src/views/index.ts';
import { CASES, pictureOf } from './paper-cases.ts';
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

/** Everything that both readers can say of a tagged PDF; gives the number of pages. */
function checkStructure(pdf: Uint8Array, paper: Paper, title: string): number {
  expect(readPdf(pdf, 'qpdf', '--check', '{}')).toContain('No syntax or stream encoding errors');
  const info = readPdf(pdf, 'pdfinfo', '{}');
  expect(info).toMatch(/Tagged: +yes/u);
  expect(info.replaceAll('\u200b', '')).toContain(title);
  const [, across, up] = /Page size: +([0-9.]+) x ([0-9.]+)/u.exec(info) ?? [];
  const { width, height } = PAPER_SIZES[paper];
  expect([Number(across), Number(up)].sort((a, b) => a - b).map(Math.round)).toEqual([width, height].map((side) => Math.round((side / 25.4) * 72)));
  for (const font of readPdf(pdf, 'pdffonts', '{}').trim().split('\n').slice(2)) expect(font).toMatch(/ yes yes yes +\d+ +\d+$/u);
  checkTags(pdf);
  return Number(/Pages: +(\d+)/u.exec(info)?.[1]);
}

interface TagNode { readonly role: string; readonly alt: string | undefined }

/** Reads the objects themselves: language, marks, title shown, heading order, an alternative text on every figure, heads in every table. */
function checkTags(pdf: Uint8Array): void {
  const objects = Object.values((JSON.parse(readPdf(pdf, 'qpdf', '--json=2', '--json-key=qpdf', '{}')) as { qpdf: [unknown, Record<string, { value?: Record<string, unknown> }>] }).qpdf[1]).map((one) => one.value).filter((one) => typeof one === 'object' && one !== null);
  const catalog = objects.find((one) => one['/Type'] === '/Catalog') ?? {};
  expect(catalog['/Lang']).toMatch(/^u:en/u);
  expect(catalog['/MarkInfo']).toMatchObject({ '/Marked': true });
  expect(catalog['/StructTreeRoot']).toBeDefined();
  expect(catalog['/ViewerPreferences']).toMatchObject({ '/DisplayDocTitle': true });
  const nodes: readonly TagNode[] = objects.filter((one) => '/S' in one && '/P' in one && '/K' in one).map((one) => ({ role: String(one['/S']), alt: one['/Alt'] as string | undefined }));
  const levels = nodes.flatMap(({ role }) => /^\/H([1-6])$/u.exec(role)?.[1] ?? []).map(Number);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  expect(new Set(levels).has(3) && !new Set(levels).has(2)).toBe(false);
  for (const figure of nodes.filter(({ role }) => role === '/Figure')) expect(figure.alt ?? '').not.toBe('');
  const tables = nodes.filter(({ role }) => role === '/Table').length;
  if (tables > 0) expect(nodes.filter(({ role }) => role === '/TH').length).toBeGreaterThanOrEqual(tables * 2);
}
