import type { ReportTree, TitleBlock } from '../../views/index.ts';
import { PAPER_FAMILIES } from './paper-fonts.ts';
import { PAPER_SIZES, type Paper } from './paper-size.ts';
import { firstSaid, shortened } from './printable-text.ts';

const MOST = { tag: 48, hammerClass: 24, sheet: 48, date: 24, made: 24, by: 60, verdict: 40, log: 24 } as const;

/** What every layout reads: paper, title, and the title block cut to what its cells hold. */
export function sheetData(title: ReportTree['title'], block: TitleBlock, paper: Paper, landscape = false): Readonly<Record<string, unknown>> {
  const cut = (name: keyof typeof MOST): string => shortened(block[name], MOST[name]);
  return {
    title: shortened(firstSaid(title, block.sheet), 300), authors: block.by === '' ? [] : [shortened(block.by, 200)],
    description: `${block.sheet}; verdict: ${block.verdict}; log ${block.log}`, keywords: block.invented ? ['invented hammer'] : [],
    families: PAPER_FAMILIES, paper: PAPER_SIZES[paper].name, landscape,
    block: { tag: cut('tag'), hammerClass: cut('hammerClass'), sheet: cut('sheet'), date: cut('date'), made: cut('made'), by: cut('by'), verdict: cut('verdict'), log: cut('log'), invented: block.invented },
  };
}
