import type { Picture } from '../../derived/index.ts';
import type { PartToMake } from '../../derived/making/index.ts';
import { box, coordinate, escapeText, type Svg } from '../drawing/svg.ts';
import { accountParagraphs } from './account.ts';
import { dimensionTable } from './dimension-table.ts';
import { layViews, type LaidOut, type ViewAngle } from './lay-views.ts';
import { paintInk } from './paint-ink.ts';
import { EDGE, PAPERS, SCALES, SHEET_STYLE, type Paper, type PaperName } from './sheet-paper.ts';
import { textColumn, type Paragraph } from './text-column.ts';
import { BLOCK_HEIGHT, titleBlock } from './title-block.ts';

export interface SheetOptions {
  readonly paper?: PaperName;
  /** Third angle where left out and the units are inches, first angle for metric. */
  readonly angle?: ViewAngle;
}

/** Height of figures on paper, mm (ISO 3098). */
const FIGURE = 2.5;
const COLUMN_GAP = 5;
/** Share of the width that figures and warnings take; the rest is for notes. */
const LEFT_SHARE = 0.58;

/**
 * The drawing of one part on paper: sheet 1 with views, sizes and notes for the machinist, sheet 2 and on with what every figure rests on.
 * Line weights after ISO 128, dimensions after ISO 129, paper after ISO 5457.
 * @param part from `partsToMake` of this very picture
 * @returns complete SVG documents, one for each sheet, user units in millimetres
 */
export function makingSheets(picture: Picture, part: PartToMake, options: SheetOptions = {}): readonly Svg[] {
  const paper = PAPERS[options.paper ?? (picture.system === 'inch' ? 'letter' : 'A4')];
  const angle = options.angle ?? (picture.system === 'inch' ? 'third-angle' : 'first-angle');
  const left = EDGE.left + 2;
  const width = paper.width - EDGE.left - EDGE.right - 4;
  const foot = paper.height - EDGE.bottom - BLOCK_HEIGHT;
  const account = pagesOf(accountParagraphs(picture, part), left, width, foot);
  const sheets = 1 + account.length;
  const first = drawingSheet(picture, part, angle, foot, left, width);
  const block = (sheet: number): Svg => titleBlock(picture, part, paper, { scale: first.scale, angle, sheet, sheets });
  return [first.body, ...account].map((body, index) => document(paper, `${picture.known.identity.tag}: ${part.title}, sheet ${index + 1} of ${sheets}`, body + block(index + 1)));
}

function drawingSheet(picture: Picture, part: PartToMake, angle: ViewAngle, foot: number, left: number, width: number): { readonly body: Svg; readonly scale: string } {
  const notes = (tall: number) => textColumn(notesOf(part), left + width * LEFT_SHARE + COLUMN_GAP, tall, width * (1 - LEFT_SHARE) - COLUMN_GAP);
  const table = (tall: number) => {
    const figures = dimensionTable(part, picture, left, tall, width * LEFT_SHARE);
    const warnings = textColumn(part.warnings.map((words) => ({ words, className: 'limit-note' })), left, tall + figures.height + 2, width * LEFT_SHARE);
    return { svg: figures.svg + warnings.svg, height: figures.height + 2 + warnings.height };
  };
  const lower = Math.max(notes(0).height, table(0).height) + 4;
  const top = EDGE.top + 3;
  const room = { width: width - 4, height: foot - lower - top - 3 };
  const { laid, scale, words } = fitted(part, picture, angle, room);
  const size = { width: laid.extent.most[0] - laid.extent.least[0], height: laid.extent.most[1] - laid.extent.least[1] };
  const origin = [left + 2 + (room.width - size.width) / 2 - laid.extent.least[0], top + (room.height - size.height) / 2 + laid.extent.most[1]] as const;
  const start = foot - lower;
  return { body: paintInk(laid.inks, origin) + table(start).svg + notes(start).svg, scale: scale === undefined ? words : `${words}${part.shape.broken === undefined ? '' : ', cut short'}` };
}

/** The largest scale of ISO 5455 at which all views fit; where none does, not to scale. */
function fitted(part: PartToMake, picture: Picture, angle: ViewAngle, room: { readonly width: number; readonly height: number }): { readonly laid: LaidOut; readonly scale: number | undefined; readonly words: string } {
  const lay = (scale: number): LaidOut => layViews(part, { scale, height: FIGURE, system: picture.system, angle });
  for (const [drawing, real] of SCALES) {
    const laid = lay((1000 * drawing) / real);
    if (laid.extent.most[0] - laid.extent.least[0] <= room.width && laid.extent.most[1] - laid.extent.least[1] <= room.height) return { laid, scale: drawing / real, words: `${drawing} : ${real}` };
  }
  return { laid: lay(10), scale: undefined, words: 'not to scale' };
}

function notesOf(part: PartToMake): readonly Paragraph[] {
  return [
    ...(part.unknowns.length === 0 ? [] : [{ words: 'NOT KNOWN, measure first:', className: 'limit-note' }, ...part.unknowns.map((one) => ({ words: `· ${one.what}`, className: 'strong' }))]),
    ...part.notes.map((words, index) => ({ words: `${index + 1}. ${words}` })),
    ...(part.shape.broken === undefined ? [] : [{ words: part.shape.broken, className: 'strong' }]),
    { words: 'Sizes in brackets follow from the others. Sheet 2 says what every size rests on.' },
  ];
}

/** Lays paragraphs out over as many pages as they need. */
function pagesOf(paragraphs: readonly Paragraph[], left: number, width: number, foot: number): readonly Svg[] {
  const pages: Svg[] = [];
  let held: Paragraph[] = [];
  const top = EDGE.top + 5;
  const heightOf = (some: readonly Paragraph[]): number => textColumn(some, left, top, width).height;
  for (const paragraph of paragraphs) {
    if (held.length > 0 && heightOf([...held, paragraph]) > foot - top - 3) {
      pages.push(textColumn(held, left, top, width).svg);
      held = [];
    }
    held.push(paragraph);
  }
  return held.length === 0 ? pages : [...pages, textColumn(held, left, top, width).svg];
}

function document(paper: Paper, title: string, body: Svg): Svg {
  const frame = box(EDGE.left, EDGE.top, paper.width - EDGE.left - EDGE.right, paper.height - EDGE.top - EDGE.bottom, 'edge', 'none');
  return `<svg xmlns="http://www.w3.org/2000/svg" class="making" width="${paper.width}mm" height="${paper.height}mm" viewBox="0 0 ${coordinate(paper.width)} ${coordinate(paper.height)}" role="img" aria-label="${escapeText(title)}"><title>${escapeText(title)}</title><style>${SHEET_STYLE}</style><rect class="sheet" width="${coordinate(paper.width)}" height="${coordinate(paper.height)}"/>${frame}${body}</svg>`;
}
