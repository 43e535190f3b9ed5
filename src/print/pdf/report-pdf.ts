import { CONDITION_WORDS, type Block, type ReportTree } from '../../views/index.ts';
import { withPhotographs } from './carry-photographs.ts';
import { gatherPhotographs, type Gathered, type Photographs } from './gather-photographs.ts';
import { columnWidths } from './column-widths.ts';
import type { Paper } from './paper-size.ts';
import { firstSaid } from './printable-text.ts';
import { printSvg } from './print-svg.ts';
import { REPORT_LAYOUT } from './report-layout.ts';
import { sheetData } from './sheet-data.ts';
import { typeset } from './typeset.ts';

export interface ReportPdfOptions {
  readonly paper: Paper;
  readonly photographs?: Photographs;
}

/**
 * A report, or any other sheet that is a tree, as tagged PDF (PDF/UA-1), without a browser.
 * The bytes depend on the tree, the paper and the photographs alone.
 * @returns the file
 */
export async function reportPdf(tree: ReportTree, options: ReportPdfOptions): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of reportPdfParts(tree, options)) parts.push(part);
  return parts.length === 1 && parts[0] !== undefined ? parts[0] : Buffer.concat(parts);
}

/**
 * The same file piece by piece, for a disk or a socket: a report with thirty photographs is a hundred megabytes, and no more
 * than one of them is held.
 */
export async function* reportPdfParts(tree: ReportTree, options: ReportPdfOptions): AsyncGenerator<Uint8Array, void, undefined> {
  const gathered = await gatherPhotographs(tree.blocks, options.photographs);
  const files = new Map(gathered.files);
  const blocks = grouped(tree.blocks).map((block, index) => laidOut(block, index, gathered, files));
  const pdf = await typeset({ layout: REPORT_LAYOUT, data: { ...sheetData(tree.title, tree.titleBlock, options.paper), close: 0, blocks }, files, settings: CLOSER_OR_WIDER });
  yield* withPhotographs(pdf, gathered.carried);
}

/** Steps closer, then wider: a step takes a fortieth off the letters and a sixth off the room between them. */
const CLOSER_OR_WIDER = [1, 2, -1, 3, -2, -3].map((close) => ({ close }));

type Photo = Extract<Block, { kind: 'photograph' }>;
type Grouped = Exclude<Block, Photo> | { readonly kind: 'photographs'; readonly items: readonly Photo[] };

/** Photographs that follow each other stand side by side; tables without rows go. */
function grouped(blocks: readonly Block[]): readonly Grouped[] {
  const out: Grouped[] = [];
  for (const block of blocks) {
    const last = out.at(-1);
    if (block.kind !== 'photograph') {
      if (block.kind !== 'table' || block.rows.length > 0) out.push(block);
    } else if (last?.kind === 'photographs') {
      out[out.length - 1] = { kind: 'photographs', items: [...last.items, block] };
    } else {
      out.push({ kind: 'photographs', items: [block] });
    }
  }
  return out;
}

/** A block as the layout reads it. */
function laidOut(block: Grouped, index: number, gathered: Gathered, files: Map<string, Buffer>): unknown {
  switch (block.kind) {
    case 'heading':
      return { ...block, text: firstSaid(block.text) };
    case 'table':
      return { ...block, dense: block.dense === true, widths: columnWidths(block.columns, block.rows.map((row) => row.cells)), rows: block.rows.map((row) => ({ cells: row.cells, condition: row.condition ?? null, word: row.condition === undefined ? '' : CONDITION_WORDS[row.condition] })) };
    case 'figure': {
      const { svg, aspect } = printSvg(block.svg, 180);
      files.set(`drawing-${index}.svg`, Buffer.from(svg));
      return { kind: 'figure', file: `drawing-${index}.svg`, aspect, words: firstSaid(block.words, block.caption, 'drawing'), caption: block.caption, tallest: block.tallest ?? null };
    }
    case 'photographs':
      return { kind: 'photographs', items: block.items.map((item) => {
        const place = gathered.placed.get(item.sha256) ?? { missing: 'the photograph is not at hand' };
        return 'missing' in place ? { file: null, words: item.words, caption: `${item.caption}: ${place.missing}` } : { ...place, words: firstSaid(item.words, item.caption, 'photograph'), caption: item.caption };
      }) };
    default:
      return block;
  }
}
