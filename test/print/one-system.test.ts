import { describe, expect, test } from 'vitest';
import { outlook } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { wholeReport } from '../../src/print/index.ts';
import { limitsCard, OUTLOOK_IDS, outlookSheet, type Block, type ReportTree } from '../../src/views/index.ts';
import { CASES, pictureOf, surveyed } from './paper-cases.ts';

/** Units of the other system with a figure before them, and lengths that are said without one. */
const OTHER = {
  metric: /(?<![\w.])\d[\d,./ ]*\s?(?:in|inch|inches|thou|ft|feet|lb|lbf|psi|psf|ksi|hp|°F|fl oz)(?![\w·°])|\bten feet\b|\ban? (?:half )?inch\b/gu,
  inch: /(?<![\w.])\d[\d,.]*\s?(?:mm|cm|m|kg|kPa|MPa|kN|N|kW|W|J|°C|cm³|m³)(?![\w²³/(])/gu,
} as const;
/** What somebody wrote stands as he wrote it; a class and the name of a source are names. */
const asWritten = (text: string): string => text.replace(/\(written [^)]*\)/gu, '').replace(/\d+ lb class/gu, '').replace(/Rules for leather belts: [^;(]*/gu, '');
const NAMES: readonly string[] = ['As written', 'How known, and when', 'Ram class and linkage', 'Source', 'Where', 'Found', 'What, and what was found', 'How'];

function* said(tree: ReportTree): Generator<readonly [where: string, text: string]> {
  let heading = '';
  for (const block of tree.blocks) {
    if (block.kind === 'heading') heading = block.text;
    const where = `${tree.titleBlock.sheet}, ${heading}`;
    for (const [cell, text] of textsOf(block)) yield [`${where}, ${cell}`, text];
  }
}

function textsOf(block: Block): readonly (readonly [cell: string, text: string])[] {
  switch (block.kind) {
    case 'table':
      return [['caption', block.caption], ...block.rows.flatMap((row) => row.cells.map((text, index) => [block.columns[index] ?? '', text] as const))];
    case 'facts':
      return block.rows;
    case 'list':
      return block.items.map((text) => ['list', text] as const);
    case 'figure':
      return [['caption', block.caption], ['words', block.words], ['letters', block.svg.replace(/<style>.*?<\/style>/gsu, '').replace(/<[^>]*>/gu, '|').replace(/\d+ lb\|+class/u, '')]];
    case 'answer':
      return [['answer', `${block.words} ${block.sentence} ${block.rests}`]];
    case 'verdict':
      return [['verdict', `${block.words} ${block.sentence}`]];
    case 'photograph':
    case 'new-page':
      return [];
    default:
      return [[block.kind, block.text]];
  }
}

const ALL = [...CASES, ...['kettlebrae-50-simply-good', 'dunmarrow-90-cracked-leaf', 'wrenhollow-65-knocks-before-the-blow'].map((name) => ({ name, entries: surveyed(name) }))];

describe.each(ALL)('papers of $name', ({ entries }) => {
  test.each(['inch', 'metric'] as const)('speak in one system: %s', (system) => {
    const picture = pictureOf(entries, system);
    const worked = outlook(picture, picture.provenance.seed);
    const trees = [wholeReport(picture, knowledge, { outlook: worked }), ...OUTLOOK_IDS.map((id) => outlookSheet(id, { picture, outlook: worked, knowledge }))];
    const strange = [...trees.flatMap((tree) => [...said(tree)]), ...limitsCard(picture).limits.map((text) => ['card', text] as const)]
      .filter(([where]) => !NAMES.some((name) => where.endsWith(`, ${name}`)))
      .flatMap(([where, text]) => [...asWritten(text).matchAll(OTHER[system])].map(({ 0: found, index }) => `${where}: ${asWritten(text).slice(Math.max(0, index - 30), index + found.length + 15)}`));
    expect(strange).toEqual([]);
  });
});
