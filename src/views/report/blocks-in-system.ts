import type { PrintSystem } from '../../derived/index.ts';
import { inSystem } from '../sentences/in-system.ts';
import type { Block, TableRow } from './block.ts';

/** Under these labels and columns stands what somebody wrote or found, or a name: it stays as it is. */
const AS_IT_STANDS: readonly string[] = [
  'As written', 'How known, and when', 'Ram class and linkage', 'Ram class', 'Machine', 'Hammer', 'Maker, serial, year', 'Stands at', 'Source', 'Where', 'Found', 'At odds', 'What, and what was found', 'Shown', 'Answers',
  'Both answers, and which is used', 'Owner\'s own limit', 'Computed from',
];
/** Under these headings every line is what somebody said. */
const SAID_BY_PEOPLE: readonly string[] = ['Told, not seen', 'Photographs'];

/** Blocks with the knowledge's words in the reader's units: the last look at a paper, so that no sheet forgets one of them. */
export function blocksInSystem(blocks: readonly Block[], system: PrintSystem): readonly Block[] {
  let under = '';
  return blocks.map((block) => {
    if (block.kind === 'heading') under = block.text;
    return SAID_BY_PEOPLE.includes(under) ? block : blockInSystem(block, (text) => inSystem(text, system));
  });
}

function blockInSystem(block: Block, say: (text: string) => string): Block {
  const cell = (label: string, text: string): string => (AS_IT_STANDS.includes(label) ? text : say(text));
  switch (block.kind) {
    case 'paragraph':
    case 'caution':
    case 'heading':
      return { ...block, text: say(block.text) };
    case 'verdict':
      return { ...block, sentence: say(block.sentence) };
    case 'answer':
      return { ...block, words: say(block.words), sentence: say(block.sentence), rests: say(block.rests) };
    case 'list':
      return { ...block, items: block.items.map(say) };
    case 'facts':
      return { ...block, rows: block.rows.map(([label, text]) => [label, cell(label, text)] as const) };
    case 'table':
      return { ...block, caption: say(block.caption), rows: block.rows.map((row): TableRow => ({ ...row, cells: row.cells.map((text, index) => cell(block.columns[index] ?? '', text)) })) };
    case 'figure':
      return { ...block, caption: say(block.caption), words: say(block.words) };
    case 'photograph':
    case 'new-page':
      return block;
  }
}
