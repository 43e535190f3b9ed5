import type { Ranged } from '../../derived/capacity/index.ts';
import type { PrintSystem } from '../../derived/index.ts';
import { figureText } from '../drawing/figure-text.ts';
import { coordinate, escapeText, type Svg } from '../drawing/svg.ts';
import { shownPlain } from './shown.ts';

export interface GraphPoint {
  /** Side of the bar, m. */
  readonly size: number;
  readonly hot: Ranged;
  readonly last: Ranged;
}

export interface GraphMarks {
  /** Share of the thickness that steady work wants. */
  readonly least: number;
  /** Where the curve falls to that share, in words: `2 in (1 1/2 to 3)`. */
  readonly largestWords?: string;
  /** The bar that the sheet's own answer names, m: the only one that is marked, so that nobody takes a larger one off the graph. */
  readonly bar?: number;
  /** Width of the narrower die, m. */
  readonly die?: number;
  readonly system: PrintSystem;
  readonly width: 'sheet' | 'phone';
}

const INK = 'var(--ink,#16181d)';
const STYLE = `svg.graph .axis{stroke:${INK};stroke-width:2;fill:none}svg.graph .grid{stroke:${INK};stroke-width:.5;fill:none;opacity:.45}svg.graph .line{stroke:${INK};stroke-width:2.2;fill:none}svg.graph .last{stroke:${INK};stroke-width:1.4;fill:none;stroke-dasharray:8 5}svg.graph .band{fill:url(#graph-hatch);stroke:${INK};stroke-width:.6}svg.graph .hatch{stroke:${INK};stroke-width:.7}svg.graph .limit{stroke:var(--chalk,#b3261e);stroke-width:1.8;fill:none}svg.graph .centre{stroke:${INK};stroke-width:1;stroke-dasharray:12 3 2 3;fill:none}svg.graph text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif;fill:${INK};font-variant-numeric:tabular-nums}svg.graph .red{fill:var(--chalk,#b3261e);paint-order:stroke;stroke:var(--paper,#f6f3ea);stroke-width:4px;stroke-linejoin:round}`;
const SHARES = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5] as const;

/**
 * Share of the thickness that a full blow takes against the side of a square bar, both by powers, with the interval hatched, the share
 * that steady work wants, and the bar of the answer on the lower edge.
 * @param points from the thinnest bar up, two at least
 */
export function reductionGraph(points: readonly GraphPoint[], { least, largestWords, bar, die, system, width }: GraphMarks): { readonly svg: Svg; readonly words: string } {
  const phone = width === 'phone';
  const [W, H, size] = phone ? [350, 330, 14] : [640, 285, 12.5];
  const room = { left: phone ? 46 : 58, right: W - 26, top: phone ? 26 : 22, bottom: H - 52 };
  const known = points.flatMap(({ size: side, hot, last }) => (hot.state === 'known' ? [{ side, hot, last }] : []));
  const sides = known.map((one) => one.side);
  const span = { from: Math.min(...sides), to: Math.max(...sides) };
  const shares = known.flatMap(({ hot, last }) => [hot.low, hot.high, ...(last.state === 'known' ? [last.value] : []), least]);
  const low = SHARES.findLast((one) => one <= Math.min(...shares)) ?? SHARES[0];
  const high = SHARES.find((one) => one >= Math.max(...shares)) ?? SHARES[8];
  const x = (side: number): number => room.left + ((room.right - room.left) * Math.log(side / span.from)) / Math.log(span.to / span.from);
  const y = (share: number): number => room.bottom - ((room.bottom - room.top) * Math.log(Math.max(share, low) / low)) / Math.log(high / low);
  const at = (side: number, share: number): string => `${coordinate(x(side))} ${coordinate(y(share))}`;
  const path = (of: readonly (readonly [number, number])[]): string => of.map(([side, share], index) => `${index === 0 ? 'M' : 'L'}${at(side, share)}`).join('');
  const band = `${path(known.map(({ side, hot }) => [side, hot.high]))}L${[...known].reverse().map(({ side, hot }) => at(side, hot.low)).join('L')}Z`;
  const dashed = known.flatMap(({ side, last }) => (last.state === 'known' ? [[side, last.value] as const] : []));
  const within = (side: number): boolean => side >= span.from * 0.999 && side <= span.to * 1.001;
  const labels = phone ? sides.filter((_, index) => index % 2 === 0) : sides;
  const side = (value: number): string => shownPlain(value, 'length', system, { resolution: system === 'inch' ? 0.0254 / 16 : 0.001 });
  const parts: Svg[] = [
    ...SHARES.filter((one) => one >= low && one <= high).map((one) => `<path class="grid" d="M${room.left} ${coordinate(y(one))}H${room.right}"/>${figureText([room.left - 6, y(one) + size * 0.35], `${one * 100 < 1 ? (one * 100).toFixed(1) : Math.round(one * 100)} %`, size * 0.92, 'end', 'scale')}`),
    ...labels.map((one) => `<path class="grid" d="M${coordinate(x(one))} ${room.top}V${room.bottom}"/>${figureText([x(one), room.bottom + size * 1.3], side(one), size * 0.92, 'middle', 'scale')}`),
    `<path class="band" d="${band}"/><path class="line" d="${path(known.map(({ side: one, hot }) => [one, hot.value]))}"/>`,
    dashed.length < 2 ? '' : `<path class="last" d="${path(dashed)}"/>`,
    `<path class="limit" d="M${room.left} ${coordinate(y(least))}H${room.right}"/>${figureText([room.left + 6, y(least) - 5], `${shownPlain(least, 'ratio', 'metric', { unit: 'percent' })}: least for steady work`, size, 'start', 'red')}`,
    die === undefined || !within(die) ? '' : `<path class="centre" d="M${coordinate(x(die))} ${room.top}V${room.bottom}"/>${figureText([x(die) - 4, room.top - 6], `narrower die ${side(die)}`, size * 0.92, x(die) > W * 0.6 ? 'end' : 'start', 'scale')}`,
    bar !== undefined && within(bar) ? `<path class="limit" data-bar="${coordinate(bar * 1000)}" d="M${coordinate(x(bar))} ${coordinate(y(least))}V${room.bottom}"/>${figureText([x(bar) - 5, room.bottom - 14], side(bar), size * 1.05, 'end', 'red')}` : '',
    `<path class="axis" d="M${room.left} ${room.top}V${room.bottom}H${room.right}"/>`,
    figureText([(room.left + room.right) / 2, H - 8], 'side of a square bar', size, 'middle', 'scale'),
  ];
  const first = known[0]!;
  const last = known.at(-1)!;
  const words = `A full blow takes ${percent(first.hot)} off a bar of ${side(first.side)} and ${percent(last.hot)} off one of ${side(last.side)}.${largestWords === undefined ? '' : ` It falls to the least for steady work at ${largestWords}, in brackets 95 of a hundred.`}${bar === undefined ? '' : ` The answer is marked: ${side(bar)}.`}`;
  return { words, svg: `<svg xmlns="http://www.w3.org/2000/svg" class="graph" viewBox="0 0 ${W} ${H}" role="img" aria-label="${escapeText(words)}"><style>${STYLE}</style><defs><pattern id="graph-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V6"/></pattern></defs>${parts.join('')}</svg>` };
}

const percent = (ranged: Extract<Ranged, { state: 'known' }>): string => `${(100 * ranged.value).toFixed(1)} %`;
