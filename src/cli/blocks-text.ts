import { CONDITION_WORDS, type Block } from '../views/index.ts';
import { table } from './words.ts';

/** Widest table that is set in columns; a wider one is set as one record after the other. */
const WIDEST = 110;

/** Blocks of a paper as text for a terminal: drawings are said in words, conditions stand in brackets. */
export const blocksText = (blocks: readonly Block[]): string => blocks.map(blockText).join('');

function blockText(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `\n${block.text}\n`;
    case 'paragraph':
      return `  ${block.text}\n`;
    case 'verdict':
      return `  ${block.words.toUpperCase()}\n  ${block.sentence}\n${block.sureWords === '' ? '' : `  ${block.sureWords}\n`}`;
    case 'answer':
      return `  ${block.words}\n${block.sentence === '' ? '' : `  ${block.sentence}\n`}  ${block.estimate ? 'Estimate. ' : ''}${block.rests}\n`;
    case 'list':
      return block.items.map((item, index) => `  ${block.ordered ? `${index + 1}.` : '-'} ${item}\n`).join('');
    case 'facts':
      return block.rows.map(([label, text]) => `  ${label}: ${text}\n`).join('');
    case 'table':
      return tableText(block);
    case 'caution':
      return `  Caution: ${block.text}\n`;
    // The sentences of a drawing stand beside it wherever one is used here.
    case 'figure':
    case 'new-page':
      return '';
    case 'photograph':
      return `  Photograph: ${block.caption}\n`;
  }
}

function tableText({ columns, rows }: Extract<Block, { kind: 'table' }>): string {
  if (rows.length === 0) return '';
  const marked = rows.map(({ cells, condition }) => (condition === undefined ? cells : [...cells.slice(0, -1), `${cells.at(-1) ?? ''}${cells.at(-1) === '' ? '' : ' '}[${CONDITION_WORDS[condition]}]`]));
  const set = table([columns, ...marked]);
  if (Math.max(...set.split('\n').map((line) => line.length)) <= WIDEST) return `${set.replace(/^/gm, '  ')}\n`;
  return rows.map(({ cells, condition }) => recordText(columns, cells, condition === undefined ? '' : ` [${CONDITION_WORDS[condition]}]`)).join('');
}

/** One row as a record: the number and the name first, then every other cell under its column's word. */
function recordText(columns: readonly string[], cells: readonly string[], mark: string): string {
  const numbered = columns[0] === 'No.' || columns[0] === 'For job';
  const head = numbered ? `${cells[0] ?? ''}${/\.$/.test(cells[0] ?? '') ? '' : '.'} ${cells[1] ?? ''}` : (cells[0] ?? '');
  const rest = cells.flatMap((cell, index) => (index < (numbered ? 2 : 1) || cell === '' ? [] : [`    ${(columns[index] ?? '').toLowerCase()}: ${cell}\n`]));
  return `  ${numbered ? '' : '- '}${head}${mark}\n${rest.join('')}`;
}
