import { GEOMETRY_NOTE, partsFor } from '../../hammer/index.ts';
import type { Picture } from '../../derived/index.ts';
import { printQuantity } from '../../derived/index.ts';
import { DRAWING_STYLE, hatchPatterns } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import { drawFrontView, type FrontFigures } from './front-view.ts';
import { drawHelve } from './helve-view.ts';
import { lengthsOf, type Lengths } from './lengths.ts';
import { partConditions } from './part-condition.ts';
import { SheetPainter } from './sheet-painter.ts';
import { drawSideView } from './side-view.ts';
import { stackHeights } from './stack-heights.ts';

export type ElevationView = 'front' | 'side' | 'both';

export interface ElevationOptions {
  /** `both` sets the front and the side view beside each other; a helve has its side view only. */
  readonly view?: ElevationView;
  readonly balloons?: boolean;
}

/**
 * The hammer's own elevation, to scale from its readings; what was not read is assumed from the class, and the sheet says so.
 * Each part is a group with `data-part`, its name and its condition in words.
 * @returns a complete SVG document, millimetres of the machine as user units
 */
export function elevation(picture: Picture, options: ElevationOptions = {}): Svg {
  const lengths = lengthsOf(picture);
  const { identity } = picture.known;
  const sheet = new SheetPainter(partConditions(picture));
  const stack = stackHeights(picture, lengths);
  const figures = figuresOf(picture);
  const view = options.view ?? 'both';
  if (identity.family === 'helve') {
    drawHelve(sheet, lengths, stack, 0, figures);
  } else {
    if (view !== 'side') drawFrontView(sheet, lengths, stack, identity.family, 0, figures);
    if (view !== 'front') drawSideView(sheet, lengths, stack, identity.family, view === 'side' ? 0 : lengths.of('base-width') * 0.85 + lengths.of('base-length') * 0.35);
  }
  const numbers = new Map(partsFor(identity.family).map((part, index) => [part.id, index + 1]));
  const { least, most } = sheet.extent();
  const unit = (most[1] - least[1]) * 0.021;
  const balloons = options.balloons === false ? '' : sheet.balloons(numbers, unit * 0.88);
  const side = options.balloons === false ? unit * 3 : unit * 4.4;
  const foot = unit * 4.2;
  const x = least[0] - side - (figures.leastWork === '' ? 0 : unit * 3);
  const width = most[0] + side - x;
  const height = most[1] - least[1] + unit * 2 + foot;
  const title = `${identity.tag}, ${identity.ramClass.asWritten}: elevation, ${VERDICT_WORDS[picture.duty.verdict]}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="elevation" viewBox="${coordinate(x)} ${coordinate(least[1] - unit * 2)} ${coordinate(width)} ${coordinate(height)}" role="group" aria-label="${escapeText(title)}"><style>${DRAWING_STYLE}</style>${hatchPatterns(unit * 0.8)}${sheet.body()}${balloons}${footNote(lengths, x + unit, most[1] + foot * 0.62, unit)}</svg>`;
}

/** Says what of the drawing was read and what is assumed. */
function footNote(lengths: Lengths, x: number, y: number, size: number): Svg {
  const words = lengths.read.size === 0 ? `No length of this drawing was read: ${GEOMETRY_NOTE}.` : `${lengths.read.size} lengths as read; the rest ${GEOMETRY_NOTE}.`;
  return textAt([x, y], words, { size: size * 0.82 });
}

function figuresOf(picture: Picture): FrontFigures {
  const written = (key: string): string => {
    const value = picture.values[key];
    return value?.outcome.state === 'known' ? (value.asWritten ?? printQuantity(value.outcome.quantity, picture.system)) : '';
  };
  const least = picture.duty.limits.find((limit) => limit.kind === 'least-work-thickness');
  return {
    leastWork: least?.quantity === undefined || least.quantity.value <= 0 ? '' : printQuantity(least.quantity, picture.system, 'up'),
    restGap: written('upper-die.rest-gap'), upperDie: written('upper-die.height'), lowerDie: written('lower-die.height'), throwWords: written('crank.throw'), clearance: written('stack.linkage-clearance'),
  };
}
