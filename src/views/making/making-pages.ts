import type { Picture, PrintSystem } from '../../derived/index.ts';
import { isLoose, LOUD, looseWords, type PartToMake } from '../../derived/making/index.ts';
import type { Svg } from '../drawing/svg.ts';
import { accountParagraphs } from './account.ts';
import { dimensionTable } from './dimension-table.ts';
import { bareSize, layViews, type LaidOut, type ViewAngle } from './lay-views.ts';
import { paintInk } from './paint-ink.ts';
import { isReference } from './size-words.ts';
import { SCALES } from './sheet-paper.ts';
import { paragraphHeight, textColumn, type Paragraph } from './text-column.ts';

/** Where on a page there is room, mm from its upper left corner. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** Lower edge. */
  readonly foot: number;
}

/** What stands on the pages: the drawing first, then what its figures rest on. */
export interface Pages {
  readonly bodies: readonly Svg[];
  /** Scale of the drawing in words, for its title block. */
  readonly scale: string;
}

/** Height of figures on paper, mm (ISO 3098). */
const FIGURE = 2.5;
const COLUMN_GAP = 5;
/** Share of the width that figures and warnings take; the rest is for notes. */
const LEFT_SHARE = 0.58;

/** The drawing with its figures and notes on the first page, the account of every figure on as many more as it takes. */
export function pagesFor(picture: Picture, part: PartToMake, angle: ViewAngle, area: Area): Pages {
  const first = drawingPage(picture, part, angle, area);
  return { bodies: [first.body, ...pagesOf(accountParagraphs(picture, part), area)], scale: first.scale };
}

function drawingPage(picture: Picture, part: PartToMake, angle: ViewAngle, { left, width, foot, top: edge }: Area): { readonly body: Svg; readonly scale: string } {
  const notes = (tall: number) => textColumn(notesOf(part, picture.system), left + width * LEFT_SHARE + COLUMN_GAP, tall, width * (1 - LEFT_SHARE) - COLUMN_GAP);
  const table = (tall: number) => {
    const figures = dimensionTable(part, picture, left, tall, width * LEFT_SHARE);
    const warnings = textColumn(part.warnings.filter((words) => !words.startsWith(LOUD)).map((words) => ({ words, className: 'limit-note' })), left, tall + figures.height + 2, width * LEFT_SHARE);
    return { svg: figures.svg + warnings.svg, height: figures.height + 2 + warnings.height };
  };
  const lower = Math.max(notes(0).height, table(0).height) + 4;
  const top = edge + 3;
  const room = { width: width - 4, height: foot - lower - top - 3 };
  const { laid, scale, words } = fitted(part, picture, angle, room);
  const size = { width: laid.extent.most[0] - laid.extent.least[0], height: laid.extent.most[1] - laid.extent.least[1] };
  const origin = [left + 2 + (room.width - size.width) / 2 - laid.extent.least[0], top + (room.height - size.height) / 2 + laid.extent.most[1]] as const;
  const start = foot - lower;
  return { body: paintInk(laid.inks, origin) + table(start).svg + notes(start).svg, scale: scale === undefined ? words : `${words}${part.shape.broken === undefined ? '' : ', cut short'}` };
}

/** More than the last digits of a sum. */
const SURELY = 1 + 1e-9;

/** The largest scale of ISO 5455 at which all views fit; where none does, not to scale. */
function fitted(part: PartToMake, picture: Picture, angle: ViewAngle, room: { readonly width: number; readonly height: number }): { readonly laid: LaidOut; readonly scale: number | undefined; readonly words: string } {
  const lay = (scale: number): LaidOut => layViews(part, { scale, height: FIGURE, system: picture.system, angle });
  const bare = bareSize(part);
  const isTooLarge = (scale: number): boolean => bare.width * scale > room.width * SURELY || bare.height * scale > room.height * SURELY;
  for (const [drawing, real] of SCALES) {
    const scale = (1000 * drawing) / real;
    if (isTooLarge(scale)) continue;
    const laid = lay(scale);
    if (laid.extent.most[0] - laid.extent.least[0] <= room.width && laid.extent.most[1] - laid.extent.least[1] <= room.height) return { laid, scale: drawing / real, words: `${drawing} : ${real}` };
  }
  return { laid: lay(10), scale: undefined, words: 'not to scale' };
}

function notesOf(part: PartToMake, system: PrintSystem): readonly Paragraph[] {
  const loose = part.dimensions.filter(isLoose);
  return [
    ...(part.unknowns.length === 0 ? [] : [{ words: 'NOT KNOWN, measure first:', className: 'limit-note' }, ...part.unknowns.map((one) => ({ words: `· ${one.what}`, className: 'strong' }))]),
    ...(loose.length === 0 ? [] : [{ words: `Known less well than it is cut, measure finer first: ${loose.map((one) => looseWords(one, system)).join('; ')}.`, className: 'limit-note' }]),
    ...part.notes.map((words, index) => ({ words: `${index + 1}. ${words}` })),
    ...(part.shape.broken === undefined ? [] : [{ words: part.shape.broken, className: 'strong' }]),
    { words: `${part.dimensions.some(isReference) ? 'Sizes in brackets follow from the others. ' : ''}Sheet 2 says what every size rests on.` },
  ];
}

/** Height of letters where that spares a page, mm. */
const CLOSER = 2.2;

/** Lays paragraphs out over as many pages as they need; set closer where that spares a page, which else would hold only a few lines. */
function pagesOf(paragraphs: readonly Paragraph[], area: Area): readonly Svg[] {
  const usual = broken(paragraphs, area);
  if (usual.length < 2) return usual;
  const closer = broken(paragraphs.map((one) => (one.size === undefined ? { ...one, size: CLOSER } : one)), area);
  return closer.length < usual.length ? closer : usual;
}

function broken(paragraphs: readonly Paragraph[], { left, width, foot, top: edge }: Area): readonly Svg[] {
  const pages: Svg[] = [];
  let held: Paragraph[] = [];
  const top = edge + 5;
  let y = top;
  for (const paragraph of paragraphs) {
    const height = paragraphHeight(paragraph, width);
    if (held.length > 0 && y + height - top > foot - top - 3) {
      pages.push(textColumn(held, left, top, width).svg);
      held = [];
      y = top;
    }
    held.push(paragraph);
    y += height;
  }
  return held.length === 0 ? pages : [...pages, textColumn(held, left, top, width).svg];
}
