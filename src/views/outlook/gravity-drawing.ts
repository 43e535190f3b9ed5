import type { MovingInput, Standing } from '../../derived/moving/index.ts';
import type { Picture } from '../../derived/index.ts';
import { brokenLines, figureText } from '../drawing/figure-text.ts';
import { DRAWING_STYLE, hatchPatterns } from '../drawing/hatch.ts';
import { box, circle, coordinate, escapeText, line, outline, pathOf, type Point, type Svg } from '../drawing/svg.ts';
import { elevation } from '../elevation/elevation.ts';
import { HELVE_LIFT_WORDS, helveSide, helveSlings, hookHeight } from './helve-lift.ts';
import { shownPlain, shownRange } from './shown.ts';

/** One view of the machine with where it stands: mm on the machine, heights upwards as negative y. */
interface View {
  readonly shapes: Svg;
  readonly name: string;
  /** Edges of the base left and right, and where the weight stands over it. */
  readonly edges: readonly [left: number, right: number];
  readonly top: number;
  /** Greatest half of what is drawn, about nothing. */
  readonly half: number;
  /** Leftmost of what is drawn, where it is not the half. */
  readonly from?: number;
  /** Drawn over it: slings of its own. */
  readonly over?: Svg;
  /** Lean over each edge; the left is left out where both are the same. */
  readonly leans: readonly (readonly [edge: 0 | 1, words: string])[];
}

const STYLE = `${DRAWING_STYLE}svg .tip{stroke:var(--chalk,#b3261e);fill:none;stroke-width:1.8px;vector-effect:non-scaling-stroke}svg .tip-words{fill:var(--chalk,#b3261e)}svg .solid{fill:var(--ink,#16181d)}`;

/** The machine with its centre of gravity, the lean at which it goes over, and where it is slung; to scale where it was read. */
export function gravityDrawing(picture: Picture, input: MovingInput, standing: Standing, width: 'sheet' | 'phone'): { readonly svg: Svg; readonly words: string } {
  const { system } = picture;
  const { gravityHeight, sideways, forwards, backwards } = standing;
  if (gravityHeight.state !== 'known' || sideways.state !== 'known' || forwards.state !== 'known' || backwards.state !== 'known') throw new Error('a drawing of the centre of gravity wants one that is known');
  const whole = (radians: number): string => `${Math.round((radians * 180) / Math.PI)}°`;
  const angle = (one: Standing['sideways']): string => (one.state === 'known' ? `${whole(one.value)} (${whole(one.low)} to ${whole(one.high)})` : '');
  const helve = input.family === 'helve';
  const tall = input.overallHeight * 1000;
  const unit = tall * (helve ? 0.06 : width === 'phone' ? 0.045 : 0.043);
  const front = helve ? endView(input) : machineView(picture, 'front', 'from the front');
  const half = input.baseWidth * 500;
  const views: readonly View[] = [
    { ...front, edges: [-half, half], leans: [[1, angle(sideways)]] },
    ...(!helve || width === 'phone' ? [] : [sideOfHelve(picture, input, gravityHeight.value * 1000, unit, [angle(forwards), angle(backwards)])]),
    ...(helve || width === 'phone' ? [] : [{ ...machineView(picture, 'side', 'from the side'), edges: [-input.baseLength * 240, input.baseLength * 760] as const, leans: [[0, angle(forwards)], [1, angle(backwards)]] as const }]),
  ];
  let x = 0;
  const placed = views.map((view, index) => {
    const left = Math.min(view.from ?? -view.half, view.edges[0]) - unit * (view.leans.length > 1 ? 3 : 1.5);
    const right = Math.max(view.half, view.edges[1] + unit * (helve ? (width === 'phone' ? 20 : 9.5) : 8));
    const at = x - left;
    x += right - left;
    return `<g transform="translate(${coordinate(at)} 0)">${view.shapes}${overlay(view, { height: gravityHeight, unit, ties: tiesOf(input, index) }, system)}${view.over ?? ''}</g>`;
  });
  const top = Math.max(...views.map((view) => view.top)) + unit * (helve ? 2 : 9.5);
  const lift = !helve ? [] : width === 'phone' ? ['End view, shape only. Helve, cushions and head come off first; then the frame is slung at both ends of the bed.'] : HELVE_LIFT_WORDS;
  const notes = [...lift, `${input.weighed ? '' : 'Not weighed. '}${helve && width !== 'phone' ? 'End view, shape only. ' : ''}${input.assumedLengths.length === 0 ? 'Lengths as read.' : `Not read, from the class: ${input.assumedLengths.join(', ')}.`}`].flatMap((text) => brokenLines(text, unit * 0.85, x - unit));
  const words = `Centre of gravity ${shownRange(gravityHeight, 'length', system)} above the floor. It goes over sideways at a lean of ${angle(sideways)}, forwards at ${angle(forwards)}, backwards at ${angle(backwards)}.`;
  return { words, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 ${coordinate(-top)} ${coordinate(x)} ${coordinate(top + unit * (5.4 + notes.length * 1.1))}" role="img" aria-label="${escapeText(words)}"><style>${STYLE}</style>${hatchPatterns(unit)}${placed.join('')}${notes.map((text, index) => figureText([unit * 0.4, unit * (4.6 + index * 1.1)], text, unit * 0.85, 'start', 'note')).join('')}</svg>` };
}

/** The hammer's own elevation without marks, to draw on. */
function machineView(picture: Picture, view: 'front' | 'side', name: string): Omit<View, 'edges' | 'leans'> {
  const svg = elevation(picture, { view, plain: true, lettering: 'none' });
  const [x = 0, y = 0, wide = 0] = /viewBox="([^"]*)"/u.exec(svg)?.[1]?.split(' ').map(Number) ?? [];
  return { shapes: svg.replace(/^<svg[^>]*><style>.*?<\/style><defs>.*?<\/defs>/su, '').replace(/<\/svg>$/u, ''), name, top: -y, half: Math.max(-x, x + wide) };
}

/** A helve from its side, slung by its bed. */
function sideOfHelve(picture: Picture, input: MovingInput, gravity: number, unit: number, [forwards, backwards]: readonly [string, string]): View {
  const side = helveSide(picture, input);
  return {
    shapes: side.shapes, name: 'from the side', edges: side.edges, top: Math.max(input.overallHeight * 1000, hookHeight(side)), half: side.to, from: side.from,
    leans: [[0, forwards], [1, backwards]], over: helveSlings(side, gravity, unit),
  };
}

/** The elevation draws a helve from its side alone; its end is shown by its outline. */
function endView({ overallHeight, seatHeight, baseWidth }: MovingInput): Omit<View, 'edges' | 'leans'> {
  const [half, tall, seat] = [baseWidth * 500, overallHeight * 1000, seatHeight * 1000];
  const column = half * 0.5;
  return {
    name: 'from the end', top: tall, half,
    shapes: [box(-half, -tall * 0.1, half * 2, tall * 0.1, 'edge', 'var(--paper,#f6f3ea)'), outline([[-column * 1.5, -tall * 0.1], [-column, -tall], [column, -tall], [column * 1.5, -tall * 0.1]], 'edge', { fill: 'var(--paper,#f6f3ea)' }), circle([0, -Math.max(seat, tall * 0.72)], tall * 0.075, 'edge', 'var(--paper,#f6f3ea)'), line([-half * 1.4, 0], [half * 1.4, 0], 'edge')].join(''),
  };
}

interface Marks {
  readonly height: { readonly value: number; readonly low: number; readonly high: number };
  readonly unit: number;
  readonly ties: readonly { readonly height: number; readonly words: string }[];
}

function overlay(view: View, { height, unit, ties }: Marks, system: Picture['system']): Svg {
  const [left, right] = view.edges;
  const middle = (left + right) / 2;
  const z = -height.value * 1000;
  const radius = unit * 0.9;
  const quarter = (from: Point, to: Point): Svg => pathOf(`M${coordinate(middle)} ${coordinate(z)}L${coordinate(from[0])} ${coordinate(from[1])}A${coordinate(radius)} ${coordinate(radius)} 0 0 1 ${coordinate(to[0])} ${coordinate(to[1])}Z`, 'thin', 'var(--ink,#16181d)');
  const beside = right + unit * 4;
  const name = shownPlain(height.value, 'length', system, { resolution: system === 'inch' ? 0.0254 / 2 : 0.005 });
  return [
    figureText([middle, unit * 3.2], view.name, unit, 'middle', 'note'),
    ...view.leans.map(([edge, words]) => lean(view.edges[edge], [middle, z], words, unit)),
    line([middle, -view.top - unit], [middle, unit * 0.6], 'centre'),
    line([middle, -height.low * 1000], [middle, -height.high * 1000], 'edge'),
    ...[height.low, height.high].map((one) => line([middle - unit * 0.5, -one * 1000], [middle + unit * 0.5, -one * 1000], 'edge')),
    circle([middle, z], radius, 'edge', 'var(--paper,#f6f3ea)'), quarter([middle, z - radius], [middle + radius, z]), quarter([middle, z + radius], [middle - radius, z]),
    line([middle + radius * 1.2, z], [beside + unit * 0.4, z], 'thin'), line([right + unit * 0.4, 0], [beside + unit * 0.4, 0], 'thin'), line([beside, z], [beside, 0], 'thin'),
    ...[z, 0].map((end) => line([beside - unit * 0.3, end + unit * 0.3], [beside + unit * 0.3, end - unit * 0.3], 'thin')),
    figureText([beside + unit * 0.4, z / 2 + unit * 0.35], name, unit, 'start'),
    line([left, unit * 0.5], [left, unit * 2], 'thin'), line([right, unit * 0.5], [right, unit * 2], 'thin'), line([left, unit * 1.6], [right, unit * 1.6], 'thin'),
    figureText([middle, unit * 1.9], shownPlain((right - left) / 1000, 'length', system, { resolution: system === 'inch' ? 0.0254 / 2 : 0.005 }), unit, 'middle'),
    ...tied(view, ties, unit),
  ].join('');
}

/** The edge that it goes over, the plumb line on it, and the angle to the centre of gravity. */
function lean(edge: number, [x, z]: Point, words: string, unit: number): Svg {
  const side = Math.sign(edge - x) || 1;
  const reach = Math.hypot(edge - x, z) * 0.62;
  const tilt = Math.atan2(Math.abs(edge - x), -z);
  const end: Point = [edge - side * reach * Math.sin(tilt), -reach * Math.cos(tilt)];
  return [
    `<line class="tip" x1="${coordinate(edge)}" y1="0" x2="${coordinate(edge)}" y2="${coordinate(-reach - unit * 0.2)}"/>`, line([edge, 0], [x, z], 'centre'),
    `<path class="tip" d="M${coordinate(edge)} ${coordinate(-reach)}A${coordinate(reach)} ${coordinate(reach)} 0 0 ${side > 0 ? 0 : 1} ${coordinate(end[0])} ${coordinate(end[1])}"/>`,
    `<path class="tip" d="M${coordinate(edge)} 0l${coordinate(-unit * 0.6)} ${coordinate(unit * 0.9)}h${coordinate(unit * 1.2)}z"/>`,
    ...words.split(' (').map((text, index) => figureText([edge, -reach - unit * (index === 0 ? 1.6 : 0.6)], index === 0 ? text : `(${text}`, unit * 0.95, 'middle', 'limit-note')),
  ].join('');
}

/** Where it is taken hold of, by family, on the view from the front. */
function tiesOf(input: MovingInput, index: number): Marks['ties'] {
  if (index > 0) return [];
  if (input.family === 'helve') return [];
  return [{ height: input.seatHeight * 1.12, words: 'sling low through the throat, round the column' }, { height: input.shaftHeight * 0.93, words: 'tie round the top, so that it cannot roll' }];
}

/** Straps as red bands across the column, their legs to the hook, and their words at the left. */
function tied(view: View, ties: Marks['ties'], unit: number): readonly Svg[] {
  const [first] = ties;
  if (first === undefined) return [];
  const reach = (view.edges[1] - view.edges[0]) * 0.3;
  const hook = -view.top - unit * 5;
  const band = (height: number): Svg => `<line class="tip" x1="${coordinate(-reach)}" y1="${coordinate(-height * 1000)}" x2="${coordinate(reach)}" y2="${coordinate(-height * 1000)}"/>`;
  return [
    ...ties.map((tie) => band(tie.height)),
    ...[-1, 1].map((side) => `<path class="tip" d="M${coordinate(side * reach)} ${coordinate(-first.height * 1000)}V${coordinate(Math.min(-first.height * 1000, -view.top - unit * 1.5))}L0 ${coordinate(hook)}"/>`),
    `<circle class="tip" cx="0" cy="${coordinate(hook - unit * 0.5)}" r="${coordinate(unit * 0.5)}"/>`,
    ...ties.map((tie, index) => {
      const y = hook - unit * (0.4 + (ties.length - 1 - index) * 1.25) - unit * 1.4;
      return figureText([-reach, y], `${index + 1}. ${tie.words}`, unit * 0.92, 'start', 'limit-note') + figureText([-reach - unit * 0.3, -tie.height * 1000 + unit * 0.3], `${index + 1}`, unit, 'end', 'limit-note');
    }),
  ];
}
