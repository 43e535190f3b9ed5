import { makingSheets } from '../../src/views/making/index.ts';
import { partsToMake } from '../../src/derived/making/index.ts';
import type { Picture } from '../../src/derived/index.ts';
import type { Entry } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { wholeReport } from '../../src/print/index.ts';
import { drawnParts, handOverSheet, motionOnPaper, SHEET_IDS } from '../../src/views/work/index.ts';
import { limitsCard, OUTLOOK_IDS, outlookSheet, sheetTree, type Block, type ReportTree } from '../../src/views/index.ts';
import { kept } from '../kept.ts';
import { outlookOf, surveyed } from './paper-cases.ts';

/** The five invented hammers. */
export const FIVE: readonly { readonly name: string; readonly entries: readonly Entry[] }[] =
  ['sallowfield-40-sunken-seat', 'dunmarrow-90-cracked-leaf', 'tannerwick-150-worn-pivot', 'kettlebrae-50-simply-good', 'wrenhollow-65-knocks-before-the-blow'].map((name) => ({ name, entries: surveyed(name) }));

/** One text of a paper, and where it stands. */
export type Said = readonly [where: string, text: string];

const trees = kept((picture: Picture) => kept((entries: readonly Entry[]) => treesOf(picture, entries)));
const said = kept((picture: Picture) => kept((entries: readonly Entry[]) => saidBy(picture, entries)));

/** Every paper of a hand-over folder that is a tree. */
export const everyTree = (picture: Picture, entries: readonly Entry[]): readonly ReportTree[] => trees(picture)(entries);

/** Every text of every paper of a hand-over folder: trees, limits card, and the letters on the drawings of parts. */
export const everythingSaid = (picture: Picture, entries: readonly Entry[]): readonly Said[] => said(picture)(entries);

function treesOf(picture: Picture, entries: readonly Entry[]): readonly ReportTree[] {
  const worked = outlookOf(picture);
  return [
    wholeReport(picture, knowledge, { outlook: worked }), ...OUTLOOK_IDS.map((id) => outlookSheet(id, { picture, outlook: worked, knowledge })),
    ...SHEET_IDS.map((id) => handOverSheet(id, { picture, entries, knowledge })), sheetTree(picture, 'Motion', motionOnPaper(picture).blocks),
  ];
}

function saidBy(picture: Picture, entries: readonly Entry[]): readonly Said[] {
  const card = limitsCard(picture);
  return [
    ...everyTree(picture, entries).flatMap((tree) => [...saidIn(tree)]),
    ...[...card.limits, ...card.always].map((text) => ['Limits card', text] as const),
    ...drawnParts(partsToMake(picture)).flatMap((part) => makingSheets(picture, part).map((svg, index) => [`Drawing of ${part.title}, sheet ${index + 1}`, lettersOf(svg)] as const)),
  ];
}

/** Texts of one tree, each under its heading and its column. */
export function* saidIn(tree: ReportTree): Generator<Said> {
  let heading = '';
  for (const block of tree.blocks) {
    if (block.kind === 'heading') heading = block.text;
    const where = `${tree.titleBlock.sheet}, ${heading}`;
    for (const [cell, text] of textsOf(block)) yield [`${where}, ${cell}`, text];
  }
}

/** Letters of a drawing: what stands in one text element stands together, lines that follow each other are joined. */
export const lettersOf = (svg: string): string => svg.replace(/<style>.*?<\/style>/gsu, '').replace(/<tspan[^>]*>|<\/tspan>/gu, ' ').replace(/<\/text>\s*<text[^>]*>/gu, ' ').replace(/<[^>]*>/gu, '|').replace(/\|+/gu, '|').replace(/\d+ lb\|+class/u, '');

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
