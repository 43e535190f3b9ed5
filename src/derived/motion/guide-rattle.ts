import type { MotionTrace } from './motion-result.ts';

/** What the ram does sideways in a loose guide. */
export interface GuideRattle {
  /** times the ram crosses from one side of its guide to the other and strikes it, a second */
  readonly strikesPerSecond: number;
  /** m/s, hardest strike */
  readonly hardest: number;
  /** dB of the hardest against a blow of the given speed; `undefined` where the ram never crosses */
  readonly level: number | undefined;
}

/** Share of the sideways speed that an oiled guide gives back; common practice, no source. */
const GIVEN_BACK = 0.3;

/**
 * The ram thrown from side to side in its guide by the rod's lean: x'' = side force/mass between two walls.
 *
 * A second pass over a finished trace: it does not act back on the motion. Within a sample the force is taken as constant, so the crossing is
 * a parabola and its strike is found exactly.
 * @param trace two turns or more, evenly sampled
 * @param mass kg, moving
 * @param slop m, half the whole play; 0 gives no strikes
 * @param impactSpeed m/s of the main blow, positive
 */
export function guideRattle(trace: MotionTrace, mass: number, slop: number, impactSpeed: number): GuideRattle {
  const { time, side } = trace;
  const span = time.length < 2 ? 0 : time[time.length - 1]! - time[0]!;
  if (!(slop > 0) || span === 0) return { strikesPerSecond: 0, hardest: 0, level: undefined };
  let x = -slop;
  let v = 0;
  let hardest = 0;
  let strikes = 0;
  for (let i = 1; i < time.length; i++) {
    const a = side[i - 1]! / mass;
    let left = time[i]! - time[i - 1]!;
    // At most a few crossings fit into a sample; what is left after them is rest against the wall.
    for (let n = 0; n < 6 && left > 0; n++) {
      // Pressed against a wall without speed: it stays there while the push lasts.
      if (v === 0 && Math.abs(x) >= slop && a * x >= 0) break;
      const wall = reach(x, v, a, left, slop);
      if (wall === undefined) {
        x += v * left + 0.5 * a * left * left;
        v += a * left;
        left = 0;
        break;
      }
      left -= wall.after;
      const arriving = v + a * wall.after;
      x = wall.at;
      if (Math.abs(arriving) > 1e-3) {
        strikes++;
        hardest = Math.max(hardest, Math.abs(arriving));
      }
      v = -GIVEN_BACK * arriving;
      if (Math.abs(v) < 1e-3) v = 0;
    }
    if (x > slop) x = slop;
    if (x < -slop) x = -slop;
  }
  return { strikesPerSecond: strikes / span, hardest, level: hardest === 0 || !(impactSpeed > 0) ? undefined : 20 * Math.log10(hardest / impactSpeed) };
}

/** The first wall reached within a time, and when. */
function reach(x: number, v: number, a: number, within: number, slop: number): { readonly at: number; readonly after: number } | undefined {
  let best: { at: number; after: number } | undefined;
  for (const at of [-slop, slop]) {
    const gap = at - x;
    const roots = a === 0 ? (v === 0 ? [] : [gap / v]) : quadratic(0.5 * a, v, -gap);
    for (const t of roots) {
      // It must be moving towards the wall when it gets there, and not merely be standing at it.
      if (!(t >= 0 && t <= within) || (v + a * t) * at <= 0 || (t === 0 && v * at <= 0)) continue;
      if (best === undefined || t < best.after) best = { at, after: t };
    }
  }
  return best;
}

function quadratic(a: number, b: number, c: number): number[] {
  const disc = b * b - 4 * a * c;
  if (disc < 0) return [];
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(disc));
  return q === 0 ? [0] : [q / a, c / q];
}
