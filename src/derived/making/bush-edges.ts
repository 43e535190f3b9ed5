import type { MakingContext } from './making-context.ts';
import { reamerOver } from './reamer.ts';
import { shopNumber } from './shop-figures.ts';

/** Chamfers of a bush, and the fillet that a pin's collar may have over them, m. */
export interface BushEdges {
  readonly outside: number;
  /** At the bore; clears the greatest fillet by a sixty-fourth. */
  readonly bore: number;
  /** Greatest fillet of the pin. */
  readonly fillet: number;
  /** True where the wall leaves less than a fillet of 1/32 in. */
  readonly thin: boolean;
}

const STEP = shopNumber('plate-room');

/**
 * What the wall of a bush leaves for its edges, in sixty-fourths of an inch: outside 1/32 in and a third of the wall at most; at the bore as much as
 * clears the fillet of practice, or as much as leaves a land of a sixty-fourth with both chamfers at their largest.
 * @param wall of the bush, m
 */
export function bushEdges(wall: number, overFillet: boolean): BushEdges {
  const steps = (length: number): number => Math.floor(length / STEP + 1e-6);
  const outside = Math.max(1, Math.min(steps(shopNumber('bush-chamfer')), steps(wall / 3)));
  if (!overFillet) return { outside: outside * STEP, bore: 0, fillet: 0, thin: false };
  const wanted = steps(shopNumber('fillet')) + 1;
  // Land and both tolerances take three.
  const left = steps(wall) - outside - 3;
  const bore = Math.max(2, Math.min(wanted, left));
  return { outside: (left < 2 ? 1 : outside) * STEP, bore: bore * STEP, fillet: (bore - 1) * STEP, thin: bore < 3 };
}

const HALF_MILLIMETRE = 0.5e-3;

/**
 * Outside of a bush that its eye is bored to: the wall wanted, or as much as leaves the eye at least as thick, down to a size that there is a reamer for; no smaller than cleans up
 * the hole that is there.
 * @param eye outside of the eye, m; undefined where it was not read
 * @param hole bore of the eye with the old bush out, m; undefined where it was not read
 */
export function bushOutside(bore: number, eye: number | undefined, wall: number, context: MakingContext, hole?: number): number {
  const most = eye === undefined ? wall : Math.min(wall, (eye - bore) / 4);
  const step = context.system === 'inch' ? STEP : HALF_MILLIMETRE;
  const down = Math.floor((bore + 2 * most) / step + 1e-6) * step;
  const thin = bore + 2 * shopNumber('bush-wall-least');
  return Math.max(down >= thin ? down : Math.max(thin, bore + 2 * most), hole === undefined ? 0 : reamerOver(hole, context));
}
