import type { PrintSystem } from '../../derived/index.ts';
import type { MotionRan, MotionSpec, MotionTrace } from '../../derived/motion/index.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { beatMark, FAINT, loopBeats, motionLoop } from './motion-loop.ts';
import { motionWarnings, type SeenOnHammer } from './motion-warnings.ts';
import { shownForce, shownLength } from './shown.ts';

export interface TraceOptions {
  readonly system: PrintSystem;
  /** Width, in the units that the letters are 13 high of; 360 to 1200. */
  readonly width: number;
  /** The hammer as found, drawn dashed behind. */
  readonly behind?: MotionRan;
  readonly seen?: SeenOnHammer;
}

/** Where the paper of the traces begins and ends across, so that a page can lay its line of now on it. */
export const TRACE_LEFT = 76;
export const TRACE_RIGHT = 10;

interface Strip {
  readonly title: string;
  readonly pick: (trace: MotionTrace, i: number) => number;
  readonly second?: (trace: MotionTrace, i: number) => number;
  /** How the ends of the scale are written; left out where a peak would say nothing to a reader. */
  readonly show?: (value: number, system: PrintSystem) => string;
  readonly high: number;
  readonly zero: boolean;
}

const STRIPS: readonly Strip[] = [
  { title: 'height: upper die, carrier dashed', pick: (t, i) => t.gap[i] ?? 0, second: (t, i) => (t.gap[i] ?? 0) + (t.hang[i] ?? 0), show: shownLength, high: 118, zero: true },
  { title: 'pull of the suspension on the ram, up positive', pick: (t, i) => t.force[i] ?? 0, show: shownForce, high: 84, zero: true },
  // In mid-stroke the ram holds far more than a blow and gives it back to what springs: the peak's figure beside the blow's would mislead.
  { title: 'energy of the ram; the blow: as the dies meet', pick: (t, i) => t.energy[i] ?? 0, high: 84, zero: true },
];
const BEATS_HIGH = 62;
const GAP = 26;
const STYLE = 'svg .trace{fill:none;stroke:var(--ink,#16181d);stroke-width:1.7px;stroke-linejoin:round}svg .trace.second{stroke-width:1px;stroke-dasharray:5 3}svg .trace.found{stroke:var(--pencil,#2b62a0);stroke-width:1.2px;stroke-dasharray:8 4}svg .tick{stroke:var(--ink,#16181d);stroke-width:2px}svg .tick.knock{stroke:var(--chalk,#b3261e)}svg text.knock{fill:var(--chalk,#b3261e);font-weight:700}svg .bottom{stroke:var(--ink,#16181d);stroke-width:.8px;stroke-dasharray:14 3 2 3}';

/**
 * Height, force and energy over the crank angle for the last turns, beats as ticks on a strip below, warnings in words on the figure.
 * @returns a complete SVG document
 */
export function traces(run: MotionRan, spec: MotionSpec, options: TraceOptions): Svg {
  const loop = motionLoop(run);
  const { trace } = run;
  const { width, system } = options;
  const across = width - TRACE_LEFT - TRACE_RIGHT;
  const turns = loop.turns;
  const x = (share: number): number => TRACE_LEFT + across * share;
  let y = 20;
  let body = '';
  const found = options.behind === undefined ? undefined : { trace: options.behind.trace, loop: motionLoop(options.behind, turns) };
  for (const strip of STRIPS) {
    const series = [strip.pick, ...(strip.second === undefined ? [] : [strip.second])];
    const values = series.flatMap((pick) => samples(trace, loop, pick)).concat(found === undefined ? [] : samples(found.trace, found.loop, strip.pick));
    const low = Math.min(0, ...values);
    const most = Math.max(...values, low + 1e-9);
    const to = (value: number): number => y + strip.high * (1 - (value - low) / (most - low));
    body += textAt([TRACE_LEFT, y - 6], strip.title, { size: 12.5 });
    body += `<path class="thin" d="M${TRACE_LEFT} ${coordinate(y)}V${coordinate(y + strip.high)}M${TRACE_LEFT} ${coordinate(to(0))}H${coordinate(x(1))}"/>`;
    if (strip.show !== undefined) body += textAt([TRACE_LEFT - 4, y + 9], strip.show(Math.max(0, most), system), { size: 12, anchor: 'end', className: 'figure' });
    if (strip.show !== undefined && low < -0.05 * (most - low)) body += textAt([TRACE_LEFT - 4, y + strip.high], strip.show(low, system), { size: 12, anchor: 'end', className: 'figure' });
    const zero = to(0);
    if (zero > y + 20 && (low >= -0.05 * most || zero < y + strip.high - 12)) body += textAt([TRACE_LEFT - 4, zero + 4], '0', { size: 12, anchor: 'end', className: 'figure' });
    if (found !== undefined) body += lineOf(found.trace, found.loop, strip.pick, x, to, 'trace found');
    if (strip.second !== undefined) body += lineOf(trace, loop, strip.second, x, to, 'trace second');
    body += lineOf(trace, loop, strip.pick, x, to, 'trace');
    y += strip.high + GAP;
  }
  body += textAt([TRACE_LEFT, y - 6], 'beats', { size: 12.5 });
  const base = y + BEATS_HIGH - 16;
  body += `<path class="thin" d="M${TRACE_LEFT} ${coordinate(base)}H${coordinate(x(1))}"/>`;
  let lastLabel = -100;
  for (const { after, beat } of loopBeats(run, loop)) {
    if (beat.level < FAINT) continue;
    const mark = beatMark(beat);
    const knock = mark.letter !== 'B';
    const at = x(angleShare(run, loop, after));
    const tall = (BEATS_HIGH - 22) * Math.max(0.15, 1 + beat.level / -FAINT);
    body += `<path class="tick${knock ? ' knock' : ''}" d="M${coordinate(at)} ${coordinate(base)}V${coordinate(base - tall)}"/>`;
    if (at - lastLabel > 12) body += textAt([at + 3, base - tall + 10], knock ? `${mark.letter} ${Math.round(beat.level)} dB` : mark.letter, { size: 12, className: knock ? 'knock' : 'figure' });
    lastLabel = at;
  }
  for (let turn = 0; turn <= turns; turn += 1) {
    body += textAt([x(turn / turns), base + 14], 'top', { size: 11.5, anchor: turn === 0 ? 'start' : turn === turns ? 'end' : 'middle' });
    if (turn < turns) body += `<path class="bottom" d="M${coordinate(x((turn + 0.5) / turns))} 20V${coordinate(base)}"/>${textAt([x((turn + 0.5) / turns), base + 14], 'bottom', { size: 11.5, anchor: 'middle' })}`;
  }
  y = base + 30;
  for (const warning of motionWarnings(run, spec, system, options.seen)) {
    for (const words of wrapped(warning.words, Math.floor(width / 6.6))) {
      body += textAt([6, y], words, { size: 12.5, className: 'limit-note' });
      y += 16;
    }
  }
  const label = 'Height, force and energy of the ram over the crank angle, with the beats';
  return `<svg xmlns="http://www.w3.org/2000/svg" class="traces" viewBox="0 0 ${coordinate(width)} ${coordinate(y)}" role="img" aria-label="${escapeText(label)}"><style>${DRAWING_STYLE}${STYLE}</style>${body}</svg>`;
}

type Loop = ReturnType<typeof motionLoop>;

function samples(trace: MotionTrace, loop: Loop, pick: (trace: MotionTrace, i: number) => number): number[] {
  const values: number[] = [];
  for (let i = loop.first; i < loop.end; i += 1) values.push(pick(trace, i));
  return values;
}

/** Turns since the loop's start by the crank, as a share of the loop. */
function shareAt(trace: MotionTrace, loop: Loop, i: number): number {
  let turn = 0;
  for (let k = loop.first + 1; k <= i; k += 1) if ((trace.angle[k] ?? 0) < (trace.angle[k - 1] ?? 0) - Math.PI) turn += 1;
  return Math.min(1, (turn + (trace.angle[i] ?? 0) / (2 * Math.PI)) / loop.turns);
}

function lineOf(trace: MotionTrace, loop: Loop, pick: (trace: MotionTrace, i: number) => number, x: (share: number) => number, y: (value: number) => number, className: string): Svg {
  const step = Math.max(1, Math.floor((loop.end - loop.first) / 360));
  let turn = 0;
  let path = '';
  for (let i = loop.first; i < loop.end; i += 1) {
    if (i > loop.first && (trace.angle[i] ?? 0) < (trace.angle[i - 1] ?? 0) - Math.PI) turn += 1;
    if ((i - loop.first) % step !== 0) continue;
    const share = Math.min(1, (turn + (trace.angle[i] ?? 0) / (2 * Math.PI)) / loop.turns);
    path += `${path === '' ? 'M' : 'L'}${coordinate(x(share))} ${coordinate(y(pick(trace, i)))}`;
  }
  return path === '' ? '' : `<path class="${className}" d="${path}"/>`;
}

function angleShare(run: MotionRan, loop: Loop, after: number): number {
  const from = run.trace.time[loop.first] ?? 0;
  let i = loop.first;
  while (i < loop.end - 1 && (run.trace.time[i + 1] ?? Infinity) - from <= after) i += 1;
  return shareAt(run.trace, loop, i);
}

/** Words set in lines of at most so many letters. */
function wrapped(words: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length + 1 <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
