import type { BeatHeard } from '../../derived/sound/index.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { plainRate, shownTime } from './shown.ts';

const LEFT = 58;
const RIGHT = 10;
const TICKS = 54;
const RATES = 78;

export const STRIP_STYLE = 'svg .stroke{stroke:var(--ink,#16181d);stroke-width:1.4px}svg .down{stroke:var(--ink,#16181d);stroke-width:1.4px;stroke-dasharray:3 2}svg .miss{fill:var(--paper,#f6f3ea);stroke:var(--chalk,#b3261e);stroke-width:1.6px}svg text.miss{stroke:none;fill:var(--chalk,#b3261e)}svg .turn{fill:var(--ink,#16181d)}';

/**
 * The whole recording blow by blow: a tick for each with its level, a ring where one is missing, dashes after the release;
 * below, the rate from each blow to the next.
 * @param width units that the letters are 13 high of; 300 to 1200
 */
export function strokeStrip(result: BeatHeard, width: number): Svg {
  const { strokes, runs, rate } = result;
  const end = Math.max(result.recording.secondsRead, strokes.at(-1)?.time ?? 0, 0.1);
  const x = (time: number): number => LEFT + ((width - LEFT - RIGHT) * time) / end;
  const base = 20 + TICKS;
  const loudest = Math.max(...strokes.map((one) => one.levelDecibels));
  let body = textAt([LEFT, 13], 'blows', { size: 12.5 });
  for (const one of strokes) body += `<path class="${one.runningDown ? 'down' : 'stroke'}" d="M${coordinate(x(one.time))} ${base}V${coordinate(base - TICKS * Math.max(0.12, 1 + (one.levelDecibels - loudest) / 24))}"/>`;
  for (const time of runs.flatMap((run) => run.missedAt)) body += `<circle class="miss" cx="${coordinate(x(time))}" cy="${base - 6}" r="4"/>`;
  if (result.missed > 0) body += textAt([width - RIGHT, 13], `ring: missed, ${result.missed}`, { size: 12.5, anchor: 'end', className: 'miss' });
  body += `<path class="thin" d="M${LEFT} ${base}H${coordinate(width - RIGHT)}"/>`;

  const top = base + 30;
  const turns = strokes.flatMap((one) => (one.sinceLast === undefined || one.sinceLast > 1.6 / rate.value ? [] : [{ time: one.time, rate: 1 / one.sinceLast }]));
  const off = [...turns.map((one) => Math.abs(one.rate / rate.value - 1))].sort((a, b) => a - b);
  const reach = Math.min(0.6, Math.max(0.02, 1.4 * (off[Math.floor(off.length * 0.95)] ?? 0)));
  const y = (value: number): number => top + (RATES / 2) * (1 - Math.min(1, Math.max(-1, (value / rate.value - 1) / reach)));
  body += textAt([LEFT, top - 6], 'rate from each blow to the next', { size: 12.5 });
  body += `<path class="thin" d="M${LEFT} ${top}V${top + RATES}H${coordinate(width - RIGHT)}"/><path class="centre" d="M${LEFT} ${coordinate(y(rate.value))}H${coordinate(width - RIGHT)}"/>`;
  for (const share of [reach, 0, -reach]) body += textAt([LEFT - 4, y(rate.value * (1 + share)) + (share > 0 ? 9 : share < 0 ? 0 : 4)], (rate.value * 60 * (1 + share)).toFixed(reach < 0.03 ? 1 : 0), { size: 12, anchor: 'end', className: 'figure' });
  for (const one of turns) body += `<circle class="turn" cx="${coordinate(x(one.time))}" cy="${coordinate(y(one.rate))}" r="1.8"/>`;
  const foot = top + RATES;
  const step = [1, 2, 5, 10, 20, 30, 60, 120, 300].find((one) => ((width - LEFT - RIGHT) * one) / end > 46) ?? 600;
  for (let time = 0; time <= end; time += step) body += textAt([x(time), foot + 16], time === 0 ? '0' : shownTime(time), { size: 12, anchor: time === 0 ? 'start' : x(time) > width - 24 ? 'end' : 'middle', className: 'figure' });
  return `<svg xmlns="http://www.w3.org/2000/svg" class="strokes" viewBox="0 0 ${coordinate(width)} ${coordinate(foot + 24)}" role="img" aria-label="${escapeText(`${strokes.length} blows over ${shownTime(end)}, ${plainRate(rate.value)}, ${result.missed} missed`)}"><style>${DRAWING_STYLE}${STRIP_STYLE}</style>${body}</svg>`;
}
