import type { Block } from '../report/block.ts';
import { partsOfSheet } from './sheet-by-id.ts';
import { OUTLOOK_IDS, OUTLOOK_TITLES } from './titles.ts';
import type { OutlookGround } from './sheet-parts.ts';

/** The outlook inside a report: the answer of each of its sheets, and what to measure first for a better one. The sheets have the rest. */
export function outlookBlocks(ground: OutlookGround): readonly Block[] {
  const rows = OUTLOOK_IDS.map((id) => {
    const { answer, measureFirst } = partsOfSheet(id, ground);
    const first = measureFirst.slice(0, MOST_NAMED).map((one) => one.replace(/^(when it may run again: )?([^.:]*).*$/isu, '$1$2'));
    return { cells: [OUTLOOK_TITLES[id].title, `${answer.words}${answer.estimate ? ' (estimate)' : ''}. ${answer.sentence}`, first.length === 0 ? 'nothing more' : `${first.join('; ')}${measureFirst.length > MOST_NAMED ? `; and ${measureFirst.length - MOST_NAMED} more` : ''}`] };
  });
  return [
    { kind: 'heading', level: 2, text: 'What it forges, drinks, draws, stands on and weighs' },
    { kind: 'table', caption: 'In short; each has a sheet of its own with drawing, figures, assumptions and sources. Limits come before all of it.', columns: ['Sheet', 'Answer', 'Would sharpen it'], rows },
  ];
}

const MOST_NAMED = 3;
