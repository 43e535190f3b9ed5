import type { PrintSystem } from '../../derived/index.ts';
import { figureText } from '../drawing/figure-text.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { box, coordinate, escapeText, line, outline, type Svg } from '../drawing/svg.ts';
import { shownPlain } from './shown.ts';

export interface Section {
  /** m, along the base */
  readonly length: number;
  readonly thickness: number;
  readonly foot: number;
  readonly gap: number | undefined;
  readonly bolt: number | undefined;
  /** Nobody read it: dashed. */
  readonly estimate: boolean;
  /** A floor that goes on to both sides. */
  readonly slab: boolean;
  readonly system: PrintSystem;
  readonly width: 'sheet' | 'phone';
  readonly words: string;
}

/** Block, foot, joint and bolts in section along the base, to scale, with their sizes. */
export function foundationSection(section: Section): { readonly svg: Svg; readonly words: string } {
  const { length, thickness, foot, gap, bolt, estimate, slab, system } = section;
  const phone = section.width === 'phone';
  const W = phone ? 350 : 640;
  const size = phone ? 14 : 13;
  const side = phone ? 62 : 118;
  const scale = (W - 2 * side) / Math.max(length, foot);
  const middle = W / 2;
  const floor = size * 6.2;
  const deep = thickness * scale;
  const [left, right] = [middle - (length * scale) / 2, middle + (length * scale) / 2];
  const [footLeft, footRight] = [middle - (foot * scale) / 2, middle + (foot * scale) / 2];
  const bottom = floor + deep;
  const say = (metres: number): string => shownPlain(metres, 'length', system, { resolution: system === 'inch' ? 0.0254 / (metres < 0.1 ? 16 : 2) : metres < 0.1 ? 0.001 : 0.005 });
  const pen = estimate ? 'ghost' : 'edge';
  const joint = Math.max(3, (gap ?? 0.0127) * scale);
  const H = bottom + size * 6;
  const dots = Array.from({ length: Math.min(160, Math.round((length * thickness * scale * scale) / 420)) }, (_, index) => {
    // Spread by the golden ratio, so that the drawing is the same each time and shows no rows.
    const [u, v] = [(index * 0.6180339887) % 1, (index * 0.7548776662 + 0.31) % 1];
    return `<circle cx="${coordinate(left + 5 + u * (right - left - 10))}" cy="${coordinate(floor + 5 + v * Math.max(1, deep - 10))}" r="${index % 3 === 0 ? 1.3 : 0.8}" style="fill:var(--ink,#16181d)"/>`;
  });
  const soil = (from: number, to: number): Svg => Array.from({ length: Math.max(0, Math.floor((to - from) / 26)) }, (_, index) => [0, 6, 12].map((step) => line([from + index * 26 + step, bottom + 4], [from + index * 26 + step - 7, bottom + 13], 'thin')).join('')).join('');
  const shapes: readonly Svg[] = [
    outline([[left, floor], [left, bottom], [right, bottom], [right, floor]], pen, { fill: 'none' }), ...(estimate ? [] : dots),
    line([slab ? 4 : left - joint, floor], [slab ? W - 4 : right + joint, floor], 'edge'),
    ...(slab ? [line([4, bottom], [left, bottom], 'thin'), line([right, bottom], [W - 4, bottom], 'thin')] : [...[[4, left - joint], [right + joint, W - 4]].map(([from, to]) => line([from!, floor], [to!, floor], 'edge')), line([left - joint, floor], [left - joint, bottom], 'hidden'), line([right + joint, floor], [right + joint, bottom], 'hidden')]),
    soil(8, W - 8), box(footLeft, floor - size * 1.3, footRight - footLeft, size * 1.3, 'edge', 'var(--paper,#f6f3ea)'), figureText([middle, floor - size * 0.35], 'foot of the machine', size * 0.92, 'middle', 'note'),
    ...[footLeft + size, footRight - size].map((x) => line([x, floor - size * 1.9], [x, Math.min(bottom - 4, floor + Math.max(size * 2, deep * 0.6))], 'centre')),
    dimension([footLeft, floor - size * 2.6], [footRight, floor - size * 2.6], say(foot), size), dimension([left, floor - size * 4.5], [right, floor - size * 4.5], `${say(length)}${estimate ? ', estimate' : ''}`, size),
    line([left, floor - size * 4.9], [left, floor], 'thin'), line([right, floor - size * 4.9], [right, floor], 'thin'), line([footLeft, floor - size * 3], [footLeft, floor - size * 1.3], 'thin'), line([footRight, floor - size * 3], [footRight, floor - size * 1.3], 'thin'),
    line([right + size * 0.4, bottom], [right + size * 2.4, bottom], 'thin'), line([right + size * 1.9, floor], [right + size * 1.9, bottom], 'thin'), tick([right + size * 1.9, floor]), tick([right + size * 1.9, bottom]),
    figureText([right + size * 2.3, (floor + bottom) / 2 + size * 0.3], say(thickness), size, 'start'),
    figureText([middle, bottom + size * 2.7], estimate ? `${section.words}; nobody read it` : section.words, size, 'middle', 'note'),
    figureText([middle, bottom + size * 4.2], [gap === undefined ? 'joint not measured' : `joint ${say(gap)}`, bolt === undefined ? 'bolts not measured' : `bolts ${say(bolt)}`].join(', '), size, 'middle', 'note'),
  ];
  const words = `${estimate ? 'A block by rules alone' : section.words}: ${say(length)} along the base and ${say(thickness)} deep, the foot on it ${say(foot)}${gap === undefined ? '' : `, with a joint of ${say(gap)}`}.`;
  return { words, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${W} ${coordinate(H)}" role="img" aria-label="${escapeText(words)}"><style>${DRAWING_STYLE}</style>${shapes.join('')}</svg>` };
}

/** A level dimension line with oblique strokes, its figure above. */
const dimension = (from: readonly [number, number], to: readonly [number, number], text: string, size: number): Svg => line(from, to, 'thin') + tick(from) + tick(to) + figureText([(from[0] + to[0]) / 2, from[1] - size * 0.35], text, size, 'middle');
const tick = ([x, y]: readonly [number, number]): Svg => line([x - 4, y + 4], [x + 4, y - 4], 'thin');
