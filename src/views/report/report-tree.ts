import type { Outlook, Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import { outlookBlocks } from '../outlook/outlook-blocks.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import type { Block, ReportTree, TitleBlock } from './block.ts';
import { blocksInSystem } from './blocks-in-system.ts';
import { cautionBlocks } from './caution-blocks.ts';
import { contradictionBlocks } from './contradiction-blocks.ts';
import { elevationBlocks } from './elevation-blocks.ts';
import { findingBlocks } from './finding-blocks.ts';
import { firstPage } from './first-page.ts';
import { measurementBlocks, toldBlocks } from './measurement-blocks.ts';
import { photographBlocks } from './photograph-blocks.ts';
import { provenanceBlocks } from './provenance-blocks.ts';
import { worksheetBlocks } from './worksheet-blocks.ts';

export interface ReportOptions {
  /** Elevation as SVG, put behind the first page with the list of parts. */
  readonly elevation?: string;
  /** What lies further off than the verdict; left out where nobody worked it out. */
  readonly outlook?: Outlook;
  /** Version of the program, for whoever computes the report again. */
  readonly program?: string;
}

/** The whole report as a tree: first page for the reader in a hurry, then everything behind it. */
export function reportTree(picture: Picture, knowledge: Knowledge, options: ReportOptions = {}): ReportTree {
  const { identity } = picture.known;
  const blocks: readonly Block[] = [
    ...firstPage(picture),
    { kind: 'new-page' },
    ...elevationBlocks(picture, options.elevation),
    ...findingBlocks(picture, knowledge),
    ...contradictionBlocks(picture),
    ...worksheetBlocks(picture),
    ...(options.outlook === undefined ? [] : outlookBlocks({ picture, outlook: options.outlook, knowledge })),
    ...photographBlocks(picture),
    ...toldBlocks(picture),
    ...cautionBlocks(picture, knowledge),
    ...provenanceBlocks(picture, knowledge, options.program),
    ...measurementBlocks(picture, options.outlook?.values),
  ];
  return { title: `${identity.tag}: what it is like, what it may do, what it needs`, titleBlock: titleBlock(picture, 'Report'), blocks: blocksInSystem(blocks, picture.system) };
}

/** One sheet of a picture by itself, with its own title block: a worksheet for the bench, an order sheet. */
export function sheetTree(picture: Picture, sheet: string, blocks: readonly Block[]): ReportTree {
  const title = `${picture.known.identity.tag}: ${sheet.toLowerCase()}`;
  return { title, titleBlock: titleBlock(picture, sheet), blocks: blocksInSystem([{ kind: 'heading', level: 1, text: title }, ...blocks], picture.system) };
}

/** The worksheet as a sheet of its own, with the cautions of its jobs. */
export const worksheetTree = (picture: Picture, knowledge: Knowledge): ReportTree =>
  sheetTree(picture, 'Worksheet', picture.worksheet.jobs.length === 0 ? [{ kind: 'paragraph', text: 'Nothing beyond oil and the usual round.' }] : [...worksheetBlocks(picture), ...cautionBlocks(picture, knowledge)]);

/** The title block of one sheet. */
export function titleBlock(picture: Picture, sheet: string): TitleBlock {
  const { identity, visits } = picture.known;
  const last = visits.at(-1);
  return {
    tag: identity.tag, hammerClass: identity.ramClass.asWritten, sheet, date: last?.date ?? 'nobody yet', made: picture.provenance.asOf.slice(0, 10), by: last?.by.join(', ') ?? '',
    verdict: VERDICT_WORDS[picture.duty.verdict], log: picture.provenance.logHash.slice(0, 12), invented: identity.invented === true,
  };
}
