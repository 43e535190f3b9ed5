import type { MovingInput } from '../../derived/moving/index.ts';
import type { Picture } from '../../derived/index.ts';
import { figureText } from '../drawing/figure-text.ts';
import { coordinate, line, type Svg } from '../drawing/svg.ts';
import { elevation } from '../elevation/elevation.ts';
import { lengthsOf } from '../elevation/lengths.ts';

/** A helve from its side, as it is lifted. Drawing millimetres. */
export interface HelveSide {
  readonly shapes: Svg;
  /** Ends of the base, front first. */
  readonly edges: readonly [front: number, back: number];
  /** What is slung: the frame alone where the anvil stands by itself, else the whole bed. */
  readonly bed: readonly [front: number, back: number];
  readonly bedTop: number;
  /** Extents of what is drawn. */
  readonly from: number;
  readonly to: number;
}

/** Parts that come off before the frame is lifted. */
const OFF_FIRST = ['helve', 'ram', 'connecting-rod', 'upper-die'] as const;
/** How far in from its ends the bed is taken hold of, as a share of its length. */
const IN_FROM_END = 0.1;
/** Each leg stands no flatter than 60° from level. */
const STEEP = Math.tan(Math.PI / 3);
/** Share of the base length on either side of its middle within which the weight lies; the same judgement as the sum's. */
const BALANCE_WITHIN = 0.1;

/** The side of a helve with what comes off first in dashes. The rear of the base stands where the drawing has it; its length is as read. */
export function helveSide(picture: Picture, { baseLength, anvilKind }: MovingInput): HelveSide {
  const svg = elevation(picture, { view: 'side', plain: true, lettering: 'none' });
  const [x = 0, , wide = 0] = /viewBox="([^"]*)"/u.exec(svg)?.[1]?.split(' ').map(Number) ?? [];
  const lengths = lengthsOf(picture);
  const back = (lengths.of('helve-front') + lengths.of('helve-rear') + 0.1) * 1000;
  const front = back - baseLength * 1000;
  const frameFront = Math.max(front, lengths.of('seat-length') * 1600);
  const inner = svg.replace(/^<svg[^>]*><style>.*?<\/style><defs>.*?<\/defs>/su, '').replace(/<\/svg>$/u, '');
  return {
    shapes: OFF_FIRST.reduce(dashed, inner), edges: [front, back], bed: [anvilKind === 'in-frame' ? front : frameFront, back],
    bedTop: lengths.of('base-thickness') * 1000, from: Math.min(x, front), to: Math.max(x + wide, back),
  };
}

/** One part in hidden lines without a fill. */
const dashed = (svg: Svg, part: string): Svg =>
  svg.replace(new RegExp(String.raw`<g [^>]*data-part="${part}".*?</g>`, 'gsu'), (group) => group.replaceAll(/class="(?:edge|thin)"/gu, 'class="hidden"').replaceAll(/fill="[^"]*"/gu, 'fill="none"'));

/** Height of the hook above the floor, mm. */
export const hookHeight = ({ bed: [front, back], bedTop }: HelveSide): number => bedTop + (0.5 - IN_FROM_END) * (back - front) * STEEP;

/** Slings at both ends of the bed up to one hook over its middle, and where the balance lies. @param gravity height of the centre of gravity, mm */
export function helveSlings(side: HelveSide, gravity: number, unit: number): Svg {
  const [front, back] = side.bed;
  const length = back - front;
  const middle = (front + back) / 2;
  const ends = [front + IN_FROM_END * length, back - IN_FROM_END * length] as const;
  const hook = -hookHeight(side);
  const red = (path: string): Svg => `<path class="tip" d="${path}"/>`;
  const [left, right] = side.edges;
  const balance = BALANCE_WITHIN * (right - left);
  const centre = (left + right) / 2;
  return [
    ...ends.map((x) => red(`M${coordinate(middle)} ${coordinate(hook)}L${coordinate(x)} ${coordinate(-side.bedTop)}V0`)),
    `<circle class="tip" cx="${coordinate(middle)}" cy="${coordinate(hook - unit * 0.5)}" r="${coordinate(unit * 0.5)}"/>`,
    ...ends.map((x, index) => figureText([x + (index === 0 ? -1 : 1) * unit * 0.5, -side.bedTop - unit * 0.5], '1', unit, index === 0 ? 'end' : 'start', 'limit-note')),
    line([centre - balance, -gravity], [centre + balance, -gravity], 'edge'),
    ...[-1, 1].map((way) => line([centre + way * balance, -gravity - unit * 0.5], [centre + way * balance, -gravity + unit * 0.5], 'edge')),
    figureText([middle + unit * 1.4, hook], '2', unit, 'start', 'limit-note'),
  ].join('');
}

/** What the numbers on the drawing say. */
export const HELVE_LIFT_WORDS: readonly string[] = [
  '1. Sling round both ends of the bed, a tenth in, edges padded; legs 60° from level or steeper.',
  '2. Hook over the middle of the bed, then to one side until it hangs level: lift a finger’s breadth, look which end stays down, set down, shift. The bar through the circle is where its balance may lie.',
  'Dashed: helve, cushions, head and rod come off first. An anvil that stands by itself travels on its own.',
];
