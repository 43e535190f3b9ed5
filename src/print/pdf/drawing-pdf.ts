import type { TitleBlock } from '../../views/index.ts';
import { DRAWING_LAYOUT } from './drawing-layout.ts';
import { PAPER_SIZES, type Paper } from './paper-size.ts';
import { firstSaid } from './printable-text.ts';
import { printSvg } from './print-svg.ts';
import { sheetData } from './sheet-data.ts';
import { typeset } from './typeset.ts';

export interface DrawingPdfOptions {
  /** Heading of the sheet; the sheet's name where it is left out. */
  readonly title?: string;
  /** What the drawing shows, for somebody who cannot see it. */
  readonly words?: string;
  /** One line under the drawing. */
  readonly note?: string;
}

/** Margins and furniture of the sheet, mm. */
const SIDES = 32;
const HEAD = 24;
const FOOT = { plain: 29, invented: 34 } as const;
const NOTE = 10;

/**
 * Drawings, one on each sheet, all upright or all lying as fits the first one best.
 * A drawing that states its width in mm is printed at that size, so that its scale holds; where the sheet is too small it is
 * reduced and the sheet says by how much. Any other drawing fills the sheet.
 * @param drawings whole SVG documents with a viewBox, one at least
 */
export async function drawingPdf(drawings: string | readonly string[], block: TitleBlock, paper: Paper, options: DrawingPdfOptions = {}): Promise<Uint8Array> {
  const sheets = (typeof drawings === 'string' ? [drawings] : drawings).map((svg) => { const { aspect, statedWidth } = printSvg(svg); return { svg, aspect, statedWidth }; });
  const [first] = sheets;
  if (first === undefined) throw new Error('a paper of drawings must have one at least; it has 0');
  const landscape = first.aspect > 1;
  const size = PAPER_SIZES[paper];
  const page = landscape ? { width: size.height, height: size.width } : size;
  const foot = block.invented ? FOOT.invented : FOOT.plain;
  const room = { width: page.width - SIDES - 6, height: page.height - HEAD - foot - NOTE };
  const title = options.title ?? `${block.tag}: ${block.sheet.toLowerCase()}`;
  const files = new Map<string, Buffer>();
  const laid = sheets.map(({ svg, aspect, statedWidth }, index) => {
    const most = Math.min(room.width, room.height * aspect);
    const width = Math.min(statedWidth ?? most, most);
    const reduced = statedWidth !== undefined && width < statedWidth * 0.999;
    const note = [options.note ?? '', reduced ? `Reduced to ${Math.floor((width / statedWidth) * 100)} % of the stated scale to fit this sheet: do not measure from it.` : ''].filter((one) => one !== '').join(' ');
    const file = `drawing-${index}.svg`;
    files.set(file, Buffer.from(printSvg(svg, width).svg));
    const own = sheets.length === 1 ? title : `${title}, sheet ${index + 1} of ${sheets.length}`;
    return { title: own, file, width, note, words: firstSaid(options.words ?? '', /<svg[^>]*\saria-label="([^"]*)"/u.exec(svg)?.[1] ?? '', own) };
  });
  const data = { ...sheetData(title, block, paper, landscape), room, frame: { width: page.width - SIDES, height: page.height - 10 - foot + 3 }, drawings: laid };
  return typeset({ layout: DRAWING_LAYOUT, data, files });
}
