import type { PrintSystem } from '../../derived/index.ts';
import type { MotionRan, MotionSpec } from '../../derived/motion/index.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { linkageAt, type LinkagePose, type Place } from './linkage-at.ts';
import { beatMark, FAINT, loopBeats, motionLoop, type MotionLoop } from './motion-loop.ts';
import { motionWarnings, type SeenOnHammer } from './motion-warnings.ts';
import type { MovingLengths } from './moving-lengths.ts';
import { movingShapes, ramOutline } from './moving-shapes.ts';
import { stillParts } from './still-parts.ts';

export interface FigureOptions {
  readonly system: PrintSystem;
  /** width over height of the whole figure; 0.62 suits a phone, 1.2 a desk */
  readonly aspect: number;
  /** the hammer as found, to stand as a ghost behind a proposal */
  readonly ghost?: boolean;
  /** on paper nothing runs: time goes from left to right, as on the traces */
  readonly still?: boolean;
  readonly seen?: SeenOnHammer;
}

/** A figure and what a page needs to keep it moving. */
export interface MovingFigure {
  readonly svg: Svg;
  readonly loop: MotionLoop;
  /** how fast the paper runs off to the right, mm of the drawing a second of the hammer's time */
  readonly paperSpeed: number;
}

const STYLE = 'svg .run-off{fill:none;stroke:var(--ink,#16181d);stroke-width:1.5px;vector-effect:non-scaling-stroke;stroke-linejoin:round}svg .run-off.carrier{stroke-width:.9px;stroke-dasharray:5 3}svg .beat{stroke:var(--ink,#16181d);stroke-width:1.4px;vector-effect:non-scaling-stroke}svg .beat.second,svg .warn-line{stroke:var(--chalk,#b3261e);stroke-width:1.6px;vector-effect:non-scaling-stroke;fill:none}svg text.warn,svg text.second{fill:var(--chalk,#b3261e);font-weight:700}svg text.warn,svg text.letter{paint-order:stroke;stroke:var(--paper,#f6f3ea);stroke-width:4px;stroke-linejoin:round;vector-effect:non-scaling-stroke}svg .work{fill:none;stroke:var(--pencil,#2b62a0);stroke-width:2px;vector-effect:non-scaling-stroke}svg .crank-path{fill:none;stroke:var(--ink,#16181d);stroke-width:.9px;stroke-dasharray:14 3 2 3;vector-effect:non-scaling-stroke}';

/**
 * The moving parts of one hammer to scale, with what stands still round them, the paths of die and carrier running off to the right as on an
 * indicator diagram, and warnings where they happen. Everything that moves is a path with `data-moving`; the paper is the group `data-paper`.
 */
export function movingFigure(spec: MotionSpec, lengths: MovingLengths, run: MotionRan, options: FigureOptions): MovingFigure {
  const loop = motionLoop(run);
  const pose = linkageAt(spec, lengths, run.trace, loop.first);
  const poses = Array.from({ length: 48 }, (_, n) => linkageAt(spec, lengths, run.trace, loop.first + ((loop.end - 1 - loop.first) * n) / 47));
  const still = stillParts(spec, lengths, poses);
  const [left, bottom, right, top] = still.extent;
  const tall = (top - bottom) * 1.04;
  const wide = Math.max((right - left) * 1.02, tall * options.aspect);
  // Letters stay readable where a long hammer fills a narrow page.
  const size = Math.max(tall * 26, wide * (options.aspect < 1 ? 33 : 17));
  const paperLeft = right + tall * 0.012;
  const paperWide = Math.max(0, left + wide - paperLeft);
  const paperSpeed = (paperWide * 1000) / Math.max(loop.seconds, 1e-3) / (options.aspect < 0.9 ? 0.6 : 1);
  const shapes = movingShapes(spec, lengths, pose);
  const moving = (behind: boolean): Svg => shapes.filter((shape) => (shape.behind === true) === behind).map((shape) => `<path class="${shape.pen}" data-moving="${shape.id}" d="${shape.d}"/>`).join('');
  const ghost = options.ghost === true ? `<path class="ghost" data-ghost="ram" d="${ramOutline(lengths, pose.gap)}"/>` : '';
  const paper = paperWide > 0.12 ? runOff(run, lengths, spec, loop, { left: paperLeft, wide: paperWide, top, bottom, speed: paperSpeed, size, still: options.still === true }) : '';
  const label = `The linkage of this hammer as it runs, to scale`;
  const view = `${coordinate(left * 1000)} ${coordinate(-top * 1000 - tall * 20)} ${coordinate(wide * 1000)} ${coordinate(tall * 1000)}`;
  return {
    loop, paperSpeed,
    svg: `<svg xmlns="http://www.w3.org/2000/svg" class="moving-figure" viewBox="${view}" role="img" aria-label="${escapeText(label)}"><style>${DRAWING_STYLE}${STYLE}</style>${paper}${moving(true)}${ghost}${still.svg}${moving(false)}${warningMarks(run, spec, lengths, pose, options.system, size, [right, paperWide], options.seen)}</svg>`,
  };
}

interface Paper {
  readonly left: number;
  readonly wide: number;
  readonly top: number;
  readonly bottom: number;
  readonly speed: number;
  readonly size: number;
  readonly still: boolean;
}

/** Paths of die face and carrier on paper that runs to the right: what is further right was longer ago, but on a still drawing, where it comes later. */
function runOff(run: MotionRan, lengths: MovingLengths, spec: MotionSpec, loop: MotionLoop, paper: Paper): Svg {
  const { trace } = run;
  const from = trace.time[loop.first] ?? 0;
  const x0 = paper.left * 1000;
  const rounds = Math.ceil((paper.wide * 1000) / paper.speed / loop.seconds) + 1;
  const step = Math.max(1, Math.floor((loop.end - loop.first) / 220));
  const lines = { die: '', carrier: '' };
  let marks = '';
  for (let round = 0; round <= rounds; round += 1) {
    const at = (after: number): number => (paper.still ? x0 + (after + round * loop.seconds) * paper.speed : x0 - (after - round * loop.seconds) * paper.speed);
    const add = (i: number, after: number, start: boolean): void => {
      const pose = linkageAt(spec, lengths, trace, i);
      const x = `${start ? 'M' : 'L'}${coordinate(at(after))}`;
      lines.die += `${x} ${coordinate(-pose.gap * 1000)}`;
      lines.carrier += `${x} ${coordinate(-carrierOf(pose) * 1000)}`;
    };
    for (let i = loop.first; i < loop.end; i += step) add(i, (trace.time[i] ?? 0) - from, i === loop.first);
    // The end of one round is where the next began.
    add(loop.end, loop.seconds, false);
    for (const { after, beat } of loopBeats(run, loop)) {
      if (beat.level < FAINT) continue;
      const { letter } = beatMark(beat);
      const x = at(after);
      const second = letter !== 'B';
      const low = spec.workThickness * 1000;
      marks += `<path class="beat${second ? ' second' : ''}" d="M${coordinate(x)} ${coordinate(-low + paper.size * 0.35)}V${coordinate(-low + paper.size * (second ? 1.1 : 1.6))}"/>${textAt([x, -low + paper.size * 2.6], letter, { size: paper.size * 0.9, anchor: 'middle', className: second ? 'letter second' : 'letter' })}`;
    }
  }
  const clip = `<clipPath id="motion-paper"><rect x="${coordinate(x0)}" y="${coordinate(-paper.top * 1000 - 400)}" width="${coordinate(paper.wide * 1000)}" height="${coordinate((paper.top - paper.bottom) * 1000 + 800)}"/></clipPath>`;
  return `<defs>${clip}</defs><g clip-path="url(#motion-paper)"><g data-paper="moving"><path class="run-off" d="${lines.die}"/><path class="run-off carrier" d="${lines.carrier}"/>${marks}</g></g>${wayOfTime(paper)}`;
}

/** Which way time runs, so that before and after can be told. */
function wayOfTime({ left, wide, bottom, size, still }: Paper): Svg {
  const words = still ? 'time' : 'longer ago';
  const [x, y] = [left * 1000 + size * 0.6, -bottom * 1000 - size * 0.5];
  const from = x + size * (words.length * 0.5 + 0.5);
  const to = Math.min(from + size * 3, (left + wide) * 1000 - size * 0.4);
  return `${textAt([x, y], words, { size, className: 'way-of-time' })}<path class="beat" d="M${coordinate(from)} ${coordinate(y - size * 0.3)}H${coordinate(to)}m${coordinate(-size * 0.5)} ${coordinate(-size * 0.3)}l${coordinate(size * 0.5)} ${coordinate(size * 0.3)}l${coordinate(-size * 0.5)} ${coordinate(size * 0.3)}"/>`;
}

const carrierOf = (pose: LinkagePose): number => (pose.kind === 'helve' ? pose.gap + pose.hang : pose.rodEnd[1]);

/** Warnings at the places where they happen. */
function warningMarks(run: MotionRan, spec: MotionSpec, lengths: MovingLengths, pose: LinkagePose, system: PrintSystem, size: number, [right, room]: readonly [number, number], seen: SeenOnHammer | undefined): Svg {
  const drawn = new Set<string>();
  let taken: number[] = [];
  return motionWarnings(run, spec, system, seen).map((warning) => {
    if (drawn.has(warning.id)) return '';
    drawn.add(warning.id);
    const from = warningPlace(warning.id, pose, lengths);
    let z = -from[1] * 1000;
    while (taken.some((other) => Math.abs(other - z) < size * 1.3)) z -= size * 1.3;
    taken = [...taken, z];
    // Without paper beside the hammer the words stand on the drawing, over the place.
    const tight = room * 1000 < size * 9;
    if (tight) z = -from[1] * 1000 - size * 3;
    const x = tight ? Math.min(from[0] * 1000 + size * 4, right * 1000 - size * 0.3) : right * 1000 + size * 0.3;
    return `<path class="warn-line" d="M${coordinate(from[0] * 1000)} ${coordinate(-from[1] * 1000)}L${coordinate(x)} ${coordinate(z)}"/>${textAt([tight ? x : x + size * 0.2, z + (tight ? -size * 0.2 : size * 0.35)], warning.mark, { size, anchor: tight ? 'end' : 'start', className: 'warn' })}`;
  }).join('');
}

function warningPlace(id: string, pose: LinkagePose, lengths: MovingLengths): Place {
  const ramTop = pose.gap + lengths.upperDie + lengths.ramHeight;
  if (id === 'slip') return [pose.crankCentre[0] + lengths.shaftDiameter * 0.5, pose.crankCentre[1]];
  if (pose.kind === 'helve') return id === 'spring' ? [pose.pivot[0] + lengths.beamDepth, pose.pivot[1] + lengths.beamDepth * 0.8] : [pose.pivot[0] + lengths.beamDepth, pose.pivot[1] + (id === 'upper' ? 1 : -1) * lengths.beamDepth * 0.5];
  if (id === 'upper') return [lengths.ramWidth * 0.2, ramTop + lengths.ramWidth * 0.16];
  if (id === 'spring') return pose.kind === 'coil-toggle' ? [pose.springLength * 0.35, pose.armUpper[1] + lengths.springRadius] : [pose.tip[0] * 0.8, pose.tip[1]];
  if (id === 'joint') return pose.kind === 'coil-toggle' ? pose.armLower : pose.ramPin;
  return [lengths.ramWidth * 0.55, ramTop - lengths.ramHeight * 0.4];
}
