import type { Picture } from '../../derived/index.ts';
import type { PartToMake } from '../../derived/making/index.ts';
import { box, coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import type { ViewAngle } from './lay-views.ts';
import { pagesFor } from './making-pages.ts';
import { projectionSymbol } from './projection-symbol.ts';
import { checkClass, finishWords, massWords } from './symbol-words.ts';
import { EDGE, PAPERS, SHEET_STYLE, type PaperName } from './sheet-paper.ts';
import { BLOCK_HEIGHT, titleBlock } from './title-block.ts';
import { wrapped } from './text-width.ts';

export interface SheetOptions {
  readonly paper?: PaperName;
  /** Third angle where left out and the units are inches, first angle for metric. */
  readonly angle?: ViewAngle;
}

const usualAngle = (picture: Picture): ViewAngle => (picture.system === 'inch' ? 'third-angle' : 'first-angle');

/**
 * The drawing of one part on paper: sheet 1 with views, sizes and notes for the machinist, sheet 2 and on with what every figure rests on.
 * Line weights after ISO 128, dimensions after ISO 129, paper after ISO 5457.
 * @param part from `partsToMake` of this very picture
 * @returns complete SVG documents, one for each sheet, user units in millimetres
 */
export function makingSheets(picture: Picture, part: PartToMake, options: SheetOptions = {}): readonly Svg[] {
  const paper = PAPERS[options.paper ?? (picture.system === 'inch' ? 'letter' : 'A4')];
  const angle = options.angle ?? usualAngle(picture);
  const { bodies, scale } = pagesFor(picture, part, angle, { left: EDGE.left + 2, top: EDGE.top, width: paper.width - EDGE.left - EDGE.right - 4, foot: paper.height - EDGE.bottom - BLOCK_HEIGHT });
  const frame = box(EDGE.left, EDGE.top, paper.width - EDGE.left - EDGE.right, paper.height - EDGE.top - EDGE.bottom, 'edge', 'none');
  return bodies.map((body, index) => {
    const sheet = index + 1;
    return svgDocument(paper.width, paper.height, titleOf(picture, part, sheet, bodies.length), frame + body + titleBlock(picture, part, paper, { scale, angle, sheet, sheets: bodies.length }));
  });
}

/**
 * The same pages without frame and title block, for a paper that brings its own: panels of a size that states itself in millimetres, so
 * that the scale holds. Material, number, scale and the rest stand at the foot.
 * @param size of a panel, mm; 170 by 225 fits A4 and letter with a frame round it
 */
export function makingPanels(picture: Picture, part: PartToMake, size: { readonly width: number; readonly height: number }, angle: ViewAngle = usualAngle(picture)): readonly Svg[] {
  const lines = stripLines(picture, part, size.width);
  const tall = Math.max(19, STRIP_STEP * (lines.length + 2) + 2);
  const { bodies, scale } = pagesFor(picture, part, angle, { left: 1, top: 0, width: size.width - 2, foot: size.height - tall });
  return bodies.map((body, index) => svgDocument(size.width, size.height, titleOf(picture, part, index + 1, bodies.length), body + strip(picture, part, angle, scale, lines, size.width, size.height - tall)));
}

const STRIP_STEP = 3.5;

/** Material, hardness, weight and surface under the title line of a panel, as many lines as they take. */
const stripLines = (picture: Picture, part: PartToMake, width: number): readonly string[] => [
  ...wrapped(`${part.material}.${part.hardness === 'Does not apply' ? '' : ` Hardness: ${part.hardness}.`}`, 2.4, width - 56),
  ...wrapped([...(part.mass === undefined ? [] : [`Each about ${massWords(part, picture.system)}.`]), ...(part.roughness === undefined ? [] : [`Faces without a sign ${finishWords(part, picture.system)}. ISO 286, ISO 1101, ISO 21920.`])].join(' '), 2.4, width - 56),
];

function strip(picture: Picture, part: PartToMake, angle: ViewAngle, scale: string, middle: readonly string[], width: number, top: number): Svg {
  const lines = [
    `${part.title}, ${part.quantity} off. Scale ${scale}; sizes in ${picture.system === 'inch' ? 'inches' : 'millimetres'}; ${angle.replace('-', ' ')}.`, ...middle, `Log ${picture.provenance.logHash}`,
  ];
  return [
    textAt([width - 2, top + 10], 'CHECK BEFORE CUTTING', { size: 4, className: checkClass(part), anchor: 'end' }), projectionSymbol(angle, width - 24, top + 15.5),
    ...lines.map((words, index) => textAt([2, top + 4 + index * STRIP_STEP], words, { size: index === 0 ? 3 : 2.4, className: index === 0 ? 'strong' : 'note' })),
  ].join('');
}

const titleOf = (picture: Picture, part: PartToMake, sheet: number, sheets: number): string => `${picture.known.identity.tag}: ${part.title}, sheet ${sheet} of ${sheets}`;

function svgDocument(width: number, height: number, title: string, body: Svg): Svg {
  return `<svg xmlns="http://www.w3.org/2000/svg" class="making" width="${coordinate(width)}mm" height="${coordinate(height)}mm" viewBox="0 0 ${coordinate(width)} ${coordinate(height)}" role="img" aria-label="${escapeText(title)}"><title>${escapeText(title)}</title><style>${SHEET_STYLE}</style><rect class="sheet" width="${coordinate(width)}" height="${coordinate(height)}"/>${body}</svg>`;
}
