import type { PrintSystem } from '../../derived/index.ts';
import type { DimensionMark, LineKind, Mark, PartToMake, Point, View, ViewName } from '../../derived/making/index.ts';
import { extentOf } from './extent-of.ts';
import { moved, type Extent, type Ink, type Layer } from './ink.ts';
import { clearFigures } from './clear-figures.ts';
import { layDimension } from './lay-dimension.ts';
import { laySymbol } from './lay-symbol.ts';
import { sizeWords } from './size-words.ts';

/** How the views stand to one another (ISO 5456-2). */
export type ViewAngle = 'first-angle' | 'third-angle';

export interface LaidOut {
  readonly inks: readonly Ink[];
  readonly extent: Extent;
}

export interface LayOptions {
  /** Drawing millimetres for one metre of the part: 1000 at full size. */
  readonly scale: number;
  /** Height of figures, mm on the drawing. */
  readonly height: number;
  readonly system: PrintSystem;
  readonly angle: ViewAngle;
}

type SizeMark = Extract<DimensionMark, { kind: 'straight' | 'leader' }>;

const BETWEEN_VIEWS = 2;
const VIEW_NAMES: ReadonlySet<string> = new Set(['front', 'top', 'from the right']);

/**
 * All views of a part with their dimensions, each in line with the front view: in third angle the top view above and the view from the
 * right on the right; in first angle below and on the left.
 * @throws where a dimension is drawn that the part does not have: a mistake of the maker
 */
export function layViews(part: PartToMake, options: LayOptions): LaidOut {
  const laid = new Map(part.shape.views.map((view) => [view.name, layView(view, part, options)]));
  const gap = BETWEEN_VIEWS * options.height;
  const front = laid.get('front') ?? { inks: [], extent: { least: [0, 0], most: [0, 0] } as Extent };
  const placed: Ink[] = [...front.inks];
  const put = (name: ViewName, at: (extent: Extent) => Point): void => {
    const view = laid.get(name);
    if (view !== undefined) placed.push(...view.inks.map((ink) => moved(ink, at(view.extent))));
  };
  const third = options.angle === 'third-angle';
  put('top', ({ least, most }) => [0, third ? front.extent.most[1] + gap - least[1] : front.extent.least[1] - gap - most[1]]);
  put('right', ({ least, most }) => [third ? front.extent.most[0] + gap - least[0] : front.extent.least[0] - gap - most[0], 0]);
  const extent = extentOf(placed);
  if (extent === undefined) throw new Error(`the part has no view: ${part.id}`);
  return { inks: placed, extent };
}

/**
 * What the bare outlines take, each view in its place, in metres of the part: the drawing with its dimensions is never smaller.
 * Much quicker than laying the views.
 */
export function bareSize(part: PartToMake): { readonly width: number; readonly height: number } {
  const [front, top, right] = (['front', 'top', 'right'] as const).map((name) => {
    const frame = extentOf(part.shape.views.findLast((view) => view.name === name)?.marks.map((mark) => inkOf(mark, 1)) ?? []);
    return frame === undefined ? [0, 0] as const : [frame.most[0] - frame.least[0], frame.most[1] - frame.least[1]] as const;
  });
  return { width: Math.max(front![0] + right![0], top![0]), height: Math.max(front![1] + top![1], right![1]) };
}

function layView(view: View, part: PartToMake, options: LayOptions): LaidOut {
  const { scale, height, system } = options;
  const shape = view.marks.map((mark) => inkOf(mark, scale));
  // Centre lines run past the outline; the dimensions keep clear of them too.
  const frame = extentOf(shape);
  if (frame === undefined) throw new Error(`the ${view.name} view of ${part.id} is empty`);
  const choices = view.dimensions.map((mark) => scaled(mark, scale)).map((mark) => (mark.kind === 'straight' || mark.kind === 'leader' ? layDimension(mark, wordsOf(mark, part, system), frame, height, isAlone(mark, view)) : laySymbol(mark, system, height)));
  const dimensions = clearFigures(shape, choices);
  const inks = [...shape, ...dimensions];
  const extent = extentOf(inks) ?? frame;
  if (VIEW_NAMES.has(view.title)) return { inks, extent };
  const title: Ink = { kind: 'text', layer: 'text', at: [(frame.least[0] + frame.most[0]) / 2, extent.least[1] - 1.7 * height], height: height * 0.9, words: view.title, anchor: 'middle', turn: 0 };
  return { inks: [...inks, title], extent: extentOf([...inks, title]) ?? extent };
}

/** True where no other dimension stands on that side of the view. */
const isAlone = (mark: SizeMark, view: View): boolean => mark.kind === 'leader' || (mark.turned !== true && view.dimensions.filter((one) => one.kind === 'straight' && one.side === mark.side).length < 2);

function wordsOf(mark: SizeMark, part: PartToMake, system: PrintSystem): string {
  if (mark.of === undefined || (mark.kind === 'straight' && mark.words !== undefined)) return withSizes(mark.words ?? '', part, system);
  const dimension = part.dimensions.find((one) => one.name === mark.of);
  if (dimension === undefined) throw new Error(`${part.id} is drawn with a dimension that it does not have: ${mark.of}`);
  const words = sizeWords(dimension, system, mark.sign ?? '');
  const quantity = dimension.quantity.dimension;
  if (mark.note !== undefined) return `${words} ${mark.note}`;
  if (mark.kind === 'straight') return words;
  const name = quantity === 'count' ? `${words} coils` : quantity === 'angle' ? `${words} from upright` : words;
  return mark.sign === undefined && quantity === 'length' ? `${dimension.title}: ${name}` : name;
}

/** Names of dimensions in braces stand for their figures; their tolerances stand in the table. */
const withSizes = (words: string, part: PartToMake, system: PrintSystem): string => words.replace(/\{([a-z-]+)\}/g, (_, name: string) => {
  const dimension = part.dimensions.find((one) => one.name === name);
  if (dimension === undefined) throw new Error(`${part.id} is drawn with a dimension that it does not have: ${name}`);
  return sizeWords({ ...dimension, tolerance: { plus: 0, minus: 0 }, estimate: false }, system).replace(/^\(|\)$/g, '');
});

const LAYERS: Readonly<Record<LineKind, Layer>> = { visible: 'visible', hidden: 'hidden', centre: 'centre', break: 'dimension', thin: 'dimension', hatch: 'hatch' };

function inkOf(mark: Mark, scale: number): Ink {
  const at = ([x, y]: Point): Point => [x * scale, y * scale];
  switch (mark.kind) {
    case 'line':
      return { kind: 'line', layer: LAYERS[mark.line], from: at(mark.from), to: at(mark.to) };
    case 'circle':
      return { kind: 'circle', layer: LAYERS[mark.line], centre: at(mark.centre), radius: mark.radius * scale };
    case 'arc':
      return { kind: 'arc', layer: LAYERS[mark.line], centre: at(mark.centre), radius: mark.radius * scale, from: mark.from, to: mark.to };
  }
}

function scaled(mark: DimensionMark, scale: number): DimensionMark {
  const at = ([x, y]: Point): Point => [x * scale, y * scale];
  return mark.kind === 'straight' ? { ...mark, from: at(mark.from), to: at(mark.to) } : { ...mark, at: at(mark.at) };
}
