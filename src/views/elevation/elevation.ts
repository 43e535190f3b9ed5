import { GEOMETRY_NOTE, partsFor } from '../../hammer/index.ts';
import type { Picture } from '../../derived/index.ts';
import { printQuantity } from '../../derived/index.ts';
import { formatQuantity, readQuantity, type Quantity } from '../../methods/quantity/index.ts';
import { brokenLines } from '../drawing/figure-text.ts';
import { DRAWING_STYLE, hatchPatterns } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import { balloons, standDownPlates } from './balloons.ts';
import { drawFrontView, type FrontFigures } from './front-view.ts';
import { drawHelve } from './helve-view.ts';
import { lengthsOf, type Lengths } from './lengths.ts';
import { partConditions, type PartCondition } from './part-condition.ts';
import { SheetPainter } from './sheet-painter.ts';
import { drawSideView } from './side-view.ts';
import { stackHeights } from './stack-heights.ts';

export type ElevationView = 'front' | 'side' | 'both';

export interface ElevationOptions {
  /**
   * `both` sets the front and the side view beside each other. A helve shows its side alone: the whole of it, or with
   * `front` its working end, larger.
   */
  readonly view?: ElevationView;
  readonly balloons?: boolean;
  /** Size of the letters: for a sheet, larger for a phone's width or for a drawing that is set small, so that nothing is too small to read across a printed page, or none at all. */
  readonly lettering?: 'sheet' | 'phone' | 'small' | 'paper' | 'none';
  /** Balloons with these words by part, in place of the numbers of the parts list; a part that is left out has none. */
  readonly numbers?: ReadonlyMap<string, string>;
  /** Balloons point at where the oil goes in. */
  readonly oil?: boolean;
  /** Plain outlines without conditions and without dimensions, to draw something else on. */
  readonly plain?: boolean;
  /** Parts can be touched and reached by keys; for the page, not for paper. */
  readonly touch?: boolean;
}

/**
 * The hammer's own elevation, to scale from its readings; what was not read is assumed from the class, and the sheet says so.
 * Each part is a group with `data-part`, its name and its condition in words.
 * @returns a complete SVG document, millimetres of the machine as user units
 */
export function elevation(picture: Picture, options: ElevationOptions = {}): Svg {
  if (options.lettering !== 'paper') return drawn(picture, options).svg;
  // Letters widen the drawing, which is then set smaller: a few rounds settle it.
  let last = drawn(picture, { ...options, lettering: 'sheet' });
  for (let round = 0; round < 5; round += 1) last = drawn(picture, { ...options, lettering: 'sheet' }, (last.width / PAPER_WIDTH) * PAPER_LETTER);
  return last.svg;
}

/** mm, of the drawing across a page of A4, the narrower one. */
const PAPER_WIDTH = 178;
/** mm, letters of 8.2 pt; and the least of them, 7.3 pt. */
const PAPER_LETTER = 2.88;
const PAPER_LEAST = 2.58;

/** @param letter height of the letters, mm on the machine, in place of what the lettering asks for */
function drawn(picture: Picture, options: ElevationOptions, letter?: number): { readonly svg: Svg; readonly width: number } {
  const lengths = lengthsOf(picture);
  const { identity } = picture.known;
  const view = options.view ?? 'both';
  const sheet = new SheetPainter(options.plain === true ? new Map(partsFor(identity.family).map((part) => [part.id, PLAIN])) : partConditions(picture), letter ?? letterHeight(lengths, view, identity.family === 'helve', options.lettering ?? 'sheet'), options.touch === true, letter === undefined ? 0 : (letter * PAPER_LEAST) / PAPER_LETTER);
  const stack = stackHeights(picture, lengths);
  const figures = options.plain === true ? NO_FIGURES : figuresOf(picture);
  if (identity.family === 'helve') {
    drawHelve(sheet, lengths, stack, 0, figures);
    if (view === 'front') sheet.keepWithin([-lengths.of('seat-length') * 2200, -(stack.ramTop + lengths.of('ram-height') * 0.4) * 1000], [lengths.of('helve-front') * 620, 95]);
  } else {
    if (view !== 'side') drawFrontView(sheet, lengths, stack, identity.family, 0, figures);
    if (view !== 'front') drawSideView(sheet, lengths, stack, identity.family, view === 'side' ? 0 : besideFront(sheet, lengths));
  }
  const unit = sheet.size === 0 ? (sheet.extent().most[1] - sheet.extent().least[1]) * 0.021 : sheet.size;
  const numbers = options.numbers ?? new Map(partsFor(identity.family).map((part, index) => [part.id, String(index + 1)]));
  const marks = sheet.size === 0 ? '' : options.balloons === false ? standDownPlates(sheet) : balloons(sheet, numbers, unit * 0.9, options.oil === true ? sheet.oilAnchors() : sheet.anchors());
  const { least, most } = sheet.extent();
  const x = least[0] - unit * 0.6;
  const width = most[0] - least[0] + unit * 1.2;
  const foot = sheet.size === 0 ? [] : brokenLines(footWords(lengths), Math.max(unit * 0.85, sheet.least), width - unit);
  const height = most[1] - least[1] + unit * 1.6 + foot.length * unit * 1.1;
  const title = `${identity.tag}, ${identity.ramClass.asWritten}: elevation, ${VERDICT_WORDS[picture.duty.verdict]}`;
  const notes = foot.map((words, index) => textAt([x + unit * 0.5, most[1] + unit * (1.5 + index * 1.1)], words, { size: Math.max(unit * 0.85, sheet.least) })).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" class="elevation" viewBox="${coordinate(x)} ${coordinate(least[1] - unit * 0.8)} ${coordinate(width)} ${coordinate(height)}" role="group" aria-label="${escapeText(title)}"><style>${DRAWING_STYLE}</style>${hatchPatterns(unit * 0.8)}${sheet.parts()}${marks}${sheet.notes()}${notes}</svg>`;
  return { svg, width };
}

const PLAIN: PartCondition = { condition: 'sound', inPart: false, words: 'sound', findings: [] };
const NO_FIGURES: FrontFigures = { leastWork: '', restGap: '', upperDie: '', lowerDie: '', throwWords: '', clearance: '' };

/** Letters stand in proportion to the paper, so to the greater of the drawing's sides; mm on the machine. */
function letterHeight(lengths: Lengths, view: ElevationView, helve: boolean, lettering: 'sheet' | 'phone' | 'small' | 'paper' | 'none'): number {
  if (lettering === 'none') return 0;
  const height = lengths.of('overall-height') * 1000;
  if (helve) {
    const length = (view === 'front' ? lengths.of('helve-front') * 0.5 : lengths.of('helve-front') + lengths.of('helve-rear')) * 1000;
    return lettering === 'phone' ? length * (view === 'front' ? 0.066 : 0.046) : lettering === 'small' ? length * 0.03 : Math.max(height * 0.022, length * 0.0185);
  }
  return height * (lettering === 'phone' ? 0.028 : lettering === 'small' ? 0.039 : 0.0235);
}

/** Where the dies of the side view stand, m, so that it clears the front view and its figures. */
const besideFront = (sheet: SheetPainter, lengths: Lengths): number =>
  (sheet.extent().most[0] + sheet.size * 1.5) / 1000 + lengths.of('base-length') * 0.34 + 0.1;

/** Says what of the drawing was read and what is assumed. */
const footWords = (lengths: Lengths): string => (lengths.read.size === 0 ? `No length of this drawing was read: ${GEOMETRY_NOTE}.` : `${lengths.read.size} lengths as read; the rest ${GEOMETRY_NOTE}.`);

/** The figures of the drawing; what was measured carries its doubt (95 %), what was told or worked out from what was told does not. */
function figuresOf(picture: Picture): FrontFigures {
  const written = (key: string): string => {
    const value = picture.values[key];
    if (value?.outcome.state !== 'known') return '';
    return value.rests === 'measured' ? withDoubtBehind(value.outcome.quantity, picture.system) : printQuantity(value.outcome.quantity, picture.system);
  };
  const least = picture.duty.limits.find((limit) => limit.kind === 'least-work-thickness');
  return {
    leastWork: least?.quantity === undefined || least.quantity.value <= 0 ? '' : printQuantity(least.quantity, picture.system, 'up'),
    restGap: written('upper-die.rest-gap'), upperDie: written('upper-die.height'), lowerDie: written('lower-die.height'), throwWords: written('crank.throw'), clearance: written('stack.linkage-clearance'),
  };
}

/** SI sizes of the last place that is worth drawing. */
const HUNDREDTH_MM = 1e-5;
const THOU = ((): number => {
  const reading = readQuantity('1 thou', { dimension: 'length' });
  return reading.ok ? reading.quantity.value : Number.NaN;
})();

/** `2 15/16 in ± 1/32`: the unit with the figure, the doubt last and to no more than a thou or a hundredth of a millimetre. */
function withDoubtBehind(quantity: Quantity, system: Picture['system']): string {
  const exact = formatQuantity(quantity, { system });
  const fine = system === 'inch' ? /\.\d{4}/ : /\.\d{3}/;
  const printed = fine.test(exact) ? formatQuantity(quantity, { system, resolution: system === 'inch' ? THOU : HUNDREDTH_MM }) : exact;
  return printed.replace(/^(.*?) ± (.*?) (\S+)$/, '$1 $3 ± $2');
}
