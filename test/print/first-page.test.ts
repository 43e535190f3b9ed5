import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { reportPdf, wholeReport } from '../../src/print/index.ts';
import type { Block } from '../../src/views/index.ts';
import { FIVE } from './every-paper.ts';
import { CASES, outlookOf, pictureOf } from './paper-cases.ts';
import { hasReader, readPdf } from './read-pdf.ts';

const headed = (blocks: readonly Block[]): ReadonlyMap<string, Block | undefined> => new Map(blocks.flatMap((block, index) => (block.kind === 'heading' ? [[block.text, blocks[index + 1]] as const] : [])));
const flat = (text: string): string => text.replace(/[\s⁄/]+/gu, '');

test.each([...CASES, ...FIVE])('the first page of $name is a buyer’s path: verdict, limits, reasons, what was not checked, what it would take', async ({ entries }) => {
  for (const [system, paper] of [['inch', 'letter'], ['metric', 'a4']] as const) {
    const picture = pictureOf(entries, system);
    const tree = wholeReport(picture, knowledge, { outlook: outlookOf(picture) });
    const first = tree.blocks.slice(0, tree.blocks.findIndex((block) => block.kind === 'new-page'));
    const under = headed(first);
    expect(first.find((block) => block.kind === 'verdict')).toBeDefined();
    if (picture.duty.limits.length > 0) expect(under.get(picture.duty.verdict === 'stand-down' ? 'Limits that hold once what stops it is cured' : 'Limits')).toMatchObject({ kind: 'list' });
    const why = under.get(picture.duty.verdict === 'fit' ? 'What speaks for it' : 'Why');
    const reasons = why?.kind === 'list' ? why.items : [];
    // Three reasons as long as there are three matters of weight, each said once and with its place.
    const weighty = new Set(picture.findings.filter((one) => one.grade === 'stand-down' || one.grade === 'limited' || (picture.duty.verdict === 'fit' && one.gate && one.grade === 'sound') || (picture.duty.verdict === 'not-known-yet' && one.gate && one.grade === 'not-known')).map((one) => one.criterion));
    expect(reasons.length).toBeGreaterThanOrEqual(Math.min(3, weighty.size, picture.duty.verdict === 'fit-within-limits' ? 1 : 3));
    expect(new Set(reasons).size).toBe(reasons.length);
    expect(under.get('What was not checked')).toMatchObject({ kind: 'paragraph' });
    const takes = under.get('What it would take');
    expect(takes?.kind === 'paragraph' ? takes.text : '').not.toMatch(/\b1 jobs|\b0 of them/u);
    if (!hasReader('pdftotext')) continue;
    const page = flat(readPdf(await reportPdf(tree, { paper }), 'pdftotext', '-f', '1', '-l', '1', '{}', '-'));
    for (const text of [...reasons, takes?.kind === 'paragraph' ? takes.text : '']) expect(page).toContain(flat(text).slice(0, 40));
  }
}, 60_000);
