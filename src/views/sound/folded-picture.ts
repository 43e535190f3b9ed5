import type { BeatHeard, FoldedTurn, SecondSound } from '../../derived/sound/index.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { plainDelay, shownDelay } from './shown.ts';

export interface FoldedOptions {
  /** units that the letters are 13 high of; 300 to 1200 */
  readonly width: number;
  /** an earlier recording, laid dashed over it */
  readonly before?: BeatHeard | undefined;
}

const LEFT = 44;
const RIGHT = 12;
const HIGH = 190;
const TOP = 46;
const RISE_HIGH = 46;
/** dB that the paper holds at least and at most. */
const [LEAST_DEEP, MOST_DEEP] = [24, 48];

export const FOLDED_STYLE = 'svg .turn-curve{fill:none;stroke:var(--ink,#16181d);stroke-width:2px;stroke-linejoin:round}svg .under{fill:url(#folded-hatch);stroke:none}svg .was{fill:none;stroke:var(--pencil,#2b62a0);stroke-width:1.6px;stroke-dasharray:8 4;stroke-linejoin:round}svg text.was{fill:var(--pencil,#2b62a0)}svg .noticed{fill:none;stroke:var(--ink,#16181d);stroke-width:1px;stroke-dasharray:2 4}svg .second{fill:none;stroke:var(--chalk,#b3261e);stroke-width:2px}svg text.second{fill:var(--chalk,#b3261e);font-weight:700}svg text.second,svg text.was{paint-order:stroke;stroke:var(--paper,#f6f3ea);stroke-width:4px;stroke-dasharray:none}svg .tip{fill:var(--chalk,#b3261e)}svg .grid{stroke:var(--ink,#16181d);stroke-width:.6px;opacity:.35}';

/**
 * One turn of the hammer out of all turns laid over one another: how loud it is at each moment about the blow, what would
 * have been noticed, and where the second sound stands, dimensioned from the blow.
 * @returns a complete SVG document
 */
export function foldedPicture(result: BeatHeard, { width, before }: FoldedOptions): Svg {
  const now = drawn(result.folded);
  const was = before === undefined ? undefined : drawn(before.folded);
  const turns = [now, ...(was === undefined ? [] : [was])];
  const from = Math.min(...turns.map((turn) => turn.delays[0] ?? 0));
  const to = Math.max(...turns.map((turn) => turn.delays.at(-1) ?? 0), from + 0.01);
  const deep = Math.min(MOST_DEEP, Math.max(LEAST_DEEP, Math.ceil(-Math.min(...turns.flatMap((turn) => turn.heard)) / 6) * 6));
  const x = (delay: number): number => LEFT + ((width - LEFT - RIGHT) * (delay - from)) / (to - from);
  const y = (decibels: number): number => TOP + HIGH * Math.min(1, Math.max(0, -decibels / deep));
  const base = TOP + HIGH;
  let body = `<defs><pattern id="folded-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7" stroke="var(--ink,#16181d)" stroke-width=".7"/></pattern></defs>`;
  for (let decibels = 0; decibels <= deep; decibels += 6) {
    body += `<path class="grid" d="M${LEFT} ${coordinate(y(-decibels))}H${coordinate(width - RIGHT)}"/>`;
    if (decibels % 12 === 0) body += textAt([LEFT - 5, y(-decibels) + 4], decibels === 0 ? '0 dB' : `−${decibels}`, { size: 12, anchor: 'end', className: 'figure' });
  }
  const heard = path(now, x, y);
  body += `<path class="under" d="${heard}L${coordinate(x(result.folded.delays.at(-1) ?? 0))} ${coordinate(base)}L${coordinate(x(result.folded.delays[0] ?? 0))} ${coordinate(base)}Z"/>`;
  if (was !== undefined) body += `<path class="was" d="${path(was, x, y)}"/>`;
  body += `<path class="turn-curve" d="${heard}"/>${limitPath(result.second, x, y)}`;
  body += `<path class="thin" d="M${LEFT} ${TOP}V${base}H${coordinate(width - RIGHT)}"/><path class="centre" d="M${coordinate(x(0))} 16V${base + RISE_HIGH + 20}"/>${textAt([x(0) + ((result.second.delay?.value ?? -1) < 0 ? 4 : -4), 14], 'blow', { size: 13, anchor: (result.second.delay?.value ?? -1) < 0 ? 'start' : 'end' })}`;
  if (before !== undefined && marked(before.second)) body += mark(before.second, x, y, 'was', TOP - 24, width);
  if (marked(result.second)) body += mark(result.second, x, y, 'second', TOP - 8, width);
  body += riseStrip(result.folded, x, base + 16);
  const foot = base + 16 + RISE_HIGH;
  for (const delay of marksOf(from, to, width)) body += `<path class="thin" d="M${coordinate(x(delay))} ${coordinate(foot)}v5"/>${textAt([x(delay), foot + 17], delay === 0 ? '0' : `${delay < 0 ? '−' : ''}${plainDelay(delay)}`, { size: 12, anchor: 'middle', className: 'figure' })}`;
  const label = `The turn folded: loudness about the blow${marked(result.second) ? `, second sound ${plainDelay(result.second.delay!.value)} ${result.second.delay!.value < 0 ? 'before' : 'after'} it` : ''}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="folded" viewBox="0 0 ${coordinate(width)} ${coordinate(foot + 26)}" role="img" aria-label="${escapeText(label)}"><style>${DRAWING_STYLE}${FOLDED_STYLE}</style>${body}</svg>`;
}

/** What the lines of the picture are, for a caption beside it. */
export const foldedLegend = (before: boolean): readonly string[] => [
  'Thick line over hatching: how loud it is about the blow, all turns laid over one another.',
  'Dots: the faintest second sound that would have been noticed there.',
  'Strip below: what rises by itself after the blow’s own ringing is taken out.',
  ...(before ? ['Blue dashes: the earlier recording.'] : []),
];

/** The curve with the ripple of low tones taken off, its loudest at 0 dB; onsets stay where they are to within 2 ms. */
function drawn(turn: FoldedTurn): FoldedTurn {
  const heard = turn.heard.map((_, i) => {
    const near = turn.heard.slice(Math.max(0, i - 2), i + 3);
    return near.reduce((sum, one) => sum + one, 0) / near.length;
  });
  const top = Math.max(...heard, -200);
  return { ...turn, heard: heard.map((one) => one - top) };
}

type Scale = (value: number) => number;

const marked = (second: SecondSound): boolean => second.delay !== undefined && (second.verdict === 'double' || second.verdict === 'possible');

const path = (turn: FoldedTurn, x: Scale, y: Scale): string => turn.delays.map((delay, i) => `${i === 0 ? 'M' : 'L'}${coordinate(x(delay))} ${coordinate(y(turn.heard[i] ?? 0))}`).join('');

function limitPath(second: SecondSound, x: Scale, y: Scale): Svg {
  const sides = [second.limit.filter((row) => row.delay < 0), second.limit.filter((row) => row.delay >= 0)];
  return sides.map((rows) => (rows.length < 2 ? '' : `<path class="noticed" d="${rows.map((row, i) => `${i === 0 ? 'M' : 'L'}${coordinate(x(row.delay))} ${coordinate(y(row.levelDecibels))}`).join('')}"/>`)).join('');
}

/** The second sound with a dimension line from the blow. */
function mark(second: SecondSound, x: Scale, y: Scale, className: 'second' | 'was', line: number, width: number): Svg {
  const delay = second.delay!;
  const at = x(delay.value);
  const level = y(second.levelDecibels?.value ?? 0);
  const way = delay.value < 0 ? -1 : 1;
  const arrow = (tip: number, side: number): Svg => `M${coordinate(tip - side * 7)} ${coordinate(line - 3)}L${coordinate(tip)} ${coordinate(line)}L${coordinate(tip - side * 7)} ${coordinate(line + 3)}`;
  const words = `${second.verdict === 'possible' ? 'perhaps ' : ''}${shownDelay(delay)} ${way < 0 ? 'before' : 'after'}`;
  // Beyond the second sound where there is room for the words, else on its other side.
  const room = way > 0 ? width - RIGHT - at > words.length * 7 : at - LEFT > words.length * 7;
  const text = textAt([at + way * (room ? 8 : 0), line + (room ? 4 : -6)], words, { size: 13, anchor: way > 0 === room ? 'start' : 'end', className });
  return `<path class="${className}" d="M${coordinate(at)} ${coordinate(level)}V${coordinate(line)}H${coordinate(x(0))}${arrow(at, way)}${arrow(x(0), -way)}"/>${className === 'second' ? `<circle class="tip" cx="${coordinate(at)}" cy="${coordinate(level)}" r="4"/>` : ''}${text}`;
}

function riseStrip(turn: FoldedTurn, x: Scale, top: number): Svg {
  const most = Math.max(6, ...turn.rise);
  const y = (rise: number): number => top + RISE_HIGH * (1 - Math.max(0, rise) / most);
  const points = turn.delays.map((delay, i) => `${i === 0 ? 'M' : 'L'}${coordinate(x(delay))} ${coordinate(y(turn.rise[i] ?? 0))}`).join('');
  return `<path class="thin" d="M${LEFT} ${coordinate(top + RISE_HIGH)}H${coordinate(x(turn.delays.at(-1) ?? 0))}"/><path class="thin" d="${points}"/>`;
}

/** Even places for figures along the foot, 20 to 100 ms apart. */
function marksOf(from: number, to: number, width: number): readonly number[] {
  const step = [0.02, 0.05, 0.1, 0.2].find((one) => ((width - LEFT - RIGHT) * one) / (to - from) > 58) ?? 0.5;
  const marks: number[] = [];
  for (let k = Math.ceil((from + 0.005) / step); k * step <= to - 0.005; k++) marks.push(k * step);
  return marks;
}
