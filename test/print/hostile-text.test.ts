import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cardPdf, reportPdf } from '../../src/print/index.ts';
import { printableText, shortened } from '../../src/print/pdf/printable-text.ts';
import type { ReportTree, TitleBlock } from '../../src/views/index.ts';
import { hasReader, readPdf, textOf } from './read-pdf.ts';

const readers = hasReader('pdftotext', 'qpdf');
const flat = (text: string): string => text.replace(/\s+/gu, '');

const block = (text: string): TitleBlock => ({ tag: text, hammerClass: text, sheet: text, date: text, made: text, by: text, verdict: text, log: text, invented: true });

/** One text in every place where a person's words can stand. */
const treeOf = (text: string): ReportTree => ({
  title: text, titleBlock: block(text),
  blocks: [
    { kind: 'heading', level: 1, text: `x${text}` }, { kind: 'paragraph', text: `begin${text}end` }, { kind: 'list', ordered: false, items: [text, text] }, { kind: 'facts', rows: [[text, text]] },
    { kind: 'table', caption: text, columns: ['What', 'Found'], rows: [{ cells: [text, text], condition: 'limited' }] },
    { kind: 'verdict', words: text, sentence: text, sureWords: text, condition: 'watch' }, { kind: 'caution', text, source: text },
    { kind: 'figure', svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 0L10 10" stroke="#000"/></svg>', words: text === '' ? 'line' : `line ${text}`, caption: text },
  ],
});

test.skipIf(!readers).each([
  '#panic("x") #import "@preview/x:1.0.0"', '#read("/etc/passwd")', '[*bold*] _under_ `raw` $x^2$ <label> @ref \\ // comment /* open', '"quoted" \\" \\u{41} #"', '= heading\n- list\n+ list\n/ term: x', '${x} {{x}} %s', '</text><script>alert(1)</script>&amp;',
  'Straße Łódź naïve Ő ± ° ≤ √ ½ ⅞ 3/8 in', 'Кузнечный молот', 'עברית', '鍛造',
])('words that look like layout are printed as they stand: %s', async (text) => {
  const said = textOf(await reportPdf(treeOf(text), { paper: 'a4' }));
  const found = flat(said);
  if (/\p{Script=Hebrew}/u.test(text)) for (const sign of text) expect(found).toContain(sign);
  else expect(found).toContain(flat(`begin${text}end`));
});

test.skipIf(!readers)('a text of 10,000 signs without a space breaks over lines and stays whole', async () => {
  const long = 'abcdefghi7'.repeat(1000);
  const pdf = await reportPdf(treeOf(long), { paper: 'letter' });
  expect(flat(textOf(pdf).replaceAll('\f', ''))).toContain('abcdefghi7'.repeat(50));
  expect(readPdf(pdf, 'pdftotext', '-bbox', '{}', '-').match(/xMax="([0-9.]+)"/gu)?.every((one) => Number(one.slice(6, -1)) <= 612)).toBe(true);
  await cardPdf({ tag: long, verdict: 'Fit', condition: 'sound', limits: [long.slice(0, 400), 'Nothing thinner than 3/8 in.'], habits: [], always: ['Eyes.'], titleBlock: block(long) }, { paper: 'a4', address: long });
});

test('signs that no font has become their codes, and those that nobody sees go', async () => {
  const pdf = await reportPdf(treeOf('a\u{1F528}b\u202Ec\uD800d\u0001e\uFEFFf\u{10FFFF}g'), { paper: 'a4' });
  if (!readers) return;
  expect(flat(textOf(pdf))).toMatch(/begina(\[U\+1F528\]|🔨)bc□def□gend/u);
});

test('any text at all gives a paper', async () => {
  const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), fc.string({ unit: 'grapheme', maxLength: 60 }), fc.string({ unit: fc.constantFrom('#', '[', ']', '*', '$', '\\', '"', '`', '<', '@', '/', '\n', '\u202e', 'א', '\ud83d', 'e', '\u0301', '\u200d'), maxLength: 40 }));
  await fc.assert(fc.asyncProperty(anyText, async (text) => {
    const pdf = await reportPdf(treeOf(text), { paper: 'a4' });
    expect(Buffer.from(pdf.subarray(0, 5)).toString()).toBe('%PDF-');
    await cardPdf({ tag: text, verdict: text, condition: 'stand-down', limits: [text], habits: [], always: [text], titleBlock: block(text) }, { paper: 'letter', address: text });
  }), { numRuns: 60 });
}, 240_000);

test('cleaning is done once and for all, and shortening keeps to its measure', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), fc.integer({ min: 1, max: 40 }), (text, most) => {
    const once = printableText(text);
    expect(/[\p{Cc}\p{Cs}]/u.test(once)).toBe(false);
    expect(printableText(once.replaceAll('\u200b', ''))).toBe(once);
    expect([...shortened(text, most)].length).toBeLessThanOrEqual(most);
  }));
});
