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
 * One drawing on one sheet, upright or lying as fits it best.
 * A drawing that states its width in mm is printed at that size, so that its scale holds; where the sheet is too small it is
 * reduced and the sheet says by how much. Any other drawing fills the sheet.
 * @param svg a whole SVG document with a viewBox
 */
export async function drawingPdf(svg: string, block: TitleBlock, paper: Paper, options: DrawingPdfOptions = {}): Promise<Uint8Array> {
  const first = printSvg(svg);
  const landscape = first.aspect > 1;
  const size = PAPER_SIZES[paper];
  const page = landscape ? { width: size.height, height: size.width } : size;
  const foot = block.invented ? FOOT.invented : FOOT.plain;
  const room = { width: page.width - SIDES - 6, height: page.height - HEAD - foot - NOTE };
  const most = Math.min(room.width, room.height * first.aspect);
  const width = Math.min(first.statedWidth ?? most, most);
  const reduced = first.statedWidth !== undefined && width < first.statedWidth * 0.999;
  const note = [options.note ?? '', reduced ? `Reduced to ${Math.floor((width / first.statedWidth) * 100)} % of the stated scale to fit this sheet: do not measure from it.` : ''].filter((one) => one !== '').join(' ');
  const title = options.title ?? `${block.tag}: ${block.sheet.toLowerCase()}`;
  const data = {
    ...sheetData(title, block, paper, landscape), width, room, note,
    frame: { width: page.width - SIDES, height: page.height - 10 - foot + 3 },
    words: firstSaid(options.words ?? '', /<svg[^>]*\saria-label="([^"]*)"/u.exec(svg)?.[1] ?? '', title),
  };
  return typeset({ layout: DRAWING_LAYOUT, data, files: new Map([['drawing.svg', Buffer.from(printSvg(svg, width).svg)]]) });
}
