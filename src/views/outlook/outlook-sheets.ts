import type { Block, ReportTree } from '../report/block.ts';
import { FAMILY_WORDS } from '../report/first-page.ts';
import { standingBlocks } from '../report/standing-blocks.ts';
import { sheetTree } from '../report/report-tree.ts';
import { inSystem } from '../sentences/in-system.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import { partsOfSheet } from './sheet-by-id.ts';
import { OUTLOOK_TITLES, type OutlookId } from './titles.ts';
import type { OutlookGround } from './sheet-parts.ts';

/** One sheet of the outlook as a tree, for paper or screen: the answer first, and what it rests on behind it. */
export function outlookSheet(id: OutlookId, ground: OutlookGround): ReportTree {
  return sheetTree(ground.picture, OUTLOOK_TITLES[id].title, [...headBlocks(ground), ...outlookSheetBlocks(id, ground)]);
}

/** The same without head and foot, where the page around it says whose hammer it is. */
export function outlookSheetBlocks(id: OutlookId, ground: OutlookGround): readonly Block[] {
  const { answer, measureFirst, body, assumed, assumedTable, doubt, cautions, defers, sources } = partsOfSheet(id, ground);
  const { knowledge } = ground;
  const say = (text: string): string => inSystem(text, ground.picture.system);
  const told = knowledge.cautions.filter((one) => cautions.includes(one.id));
  const title = (source: string): string => {
    const known = knowledge.sources.find((one) => one.id === source);
    return known === undefined ? source : `${known.title}${known.standing === '' ? '' : ` (${known.standing})`}`;
  };
  const list = (text: string, items: readonly string[], ordered = false): readonly Block[] => (items.length === 0 ? [] : [{ kind: 'heading', level: 2, text }, { kind: 'list', ordered, items }]);
  return [
    ...standingBlocks(ground.picture),
    answer,
    ...list('Measure or look first', measureFirst.map((one) => capital(say(one)).replace(/\?"\.$/u, '?"')), true),
    ...body(),
    ...list('Taken and not read', assumed.map(say)), ...(assumedTable === undefined ? [] : [assumedTable]), ...list('How far to trust it', doubt.map(say)),
    { kind: 'heading', level: 2, text: 'Cautions' },
    { kind: 'paragraph', text: say(defers) },
    ...told.map((one) => ({ kind: 'caution', text: say(one.words), source: '' }) as const),
    { kind: 'paragraph', tone: 'small', text: `Sources: ${[...new Set([...sources, ...told.map((one) => one.source)])].map(title).join('; ')}.` },
  ];
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

function headBlocks({ picture, program }: OutlookGround): readonly Block[] {
  const { identity, visits } = picture.known;
  const { provenance } = picture;
  const last = visits.at(-1);
  return [
    { kind: 'facts', rows: [
      ['Hammer', [identity.tag, identity.name, identity.place].filter((one) => one !== undefined).join(', ')],
      ['Ram class and linkage', `${identity.ramClass.asWritten}, ${FAMILY_WORDS[identity.family]}`],
      ['Last seen', last === undefined ? 'by nobody' : `${last.date} by ${last.by.join(', ')}; ${VERDICT_WORDS[picture.duty.verdict].toLowerCase()}`],
      ['Computed from', `log of ${provenance.entries} entries, SHA-256 ${provenance.logHash}; knowledge ${provenance.knowledgeVersion}${program === undefined ? '' : `, program ${program}`}, as of ${provenance.asOf}, seed ${provenance.seed}`],
      ['On this sheet', 'the answer, what to measure first, the drawing and the figures, how far to trust them, cautions, sources'],
    ] },
  ];
}
