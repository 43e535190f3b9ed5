import { quantile, sorted } from '../../methods/signal/index.ts';
import type { Fold } from './fold.ts';
import type { FoldRise } from './fold-rise.ts';
import { highest } from './highest.ts';

const AHEAD = 0.005;
const BEHIND = 0.008;
const NEAR = 0.003;
/** Share of turns that pass by chance. */
const BY_CHANCE = 0.1;

/**
 * With which strokes the second sound comes: single turns' rises at its place, against rises at places where there is
 * nothing.
 * @returns heard by blow of the fold, and the share of strokes, less what chance would give
 */
export function shareOfStrokes(fold: Fold, rise: FoldRise, place: number, nearest: { readonly after: number; readonly before: number }): { heard: boolean[]; share: number } {
  const weights = Array.from({ length: fold.bands }, (_, band) => Math.max(0, rise.rises[band * fold.places + place]!));
  const near = Math.round(NEAR / fold.step);
  const controls: number[] = [];
  for (let delay = fold.firstDelay + 0.012; delay < -fold.firstDelay - 0.012; delay += 0.011) {
    const at = Math.round((delay - fold.firstDelay) / fold.step);
    if ((delay > -nearest.before && delay < nearest.after) || Math.abs(at - place) * fold.step < 0.02) continue;
    controls.push(at);
  }
  const room = roomFor(fold, near);
  const own = Array.from({ length: fold.blows }, (_, blow) => strongestRise(fold, weights, room, blow, place));
  if (controls.length === 0) return { heard: own.map(() => true), share: 1 };
  const background: number[] = [];
  for (let blow = 0; blow < fold.blows; blow += Math.max(1, Math.floor(fold.blows / 60))) for (const at of controls) background.push(strongestRise(fold, weights, room, blow, at));
  const least = quantile(sorted(background), 1 - BY_CHANCE);
  const heard = own.map((value) => value > least);
  const passed = heard.filter(Boolean).length / Math.max(1, heard.length);
  return { heard, share: Math.min(1, Math.max(0, (passed - BY_CHANCE) / (1 - BY_CHANCE))) };
}

/** What every turn needs again. */
interface Room {
  readonly ahead: number;
  readonly behind: number;
  readonly near: number;
  readonly sums: Float64Array;
  readonly rises: Float64Array;
}

function roomFor(fold: Fold, near: number): Room {
  const [ahead, behind] = [Math.round(AHEAD / fold.step), Math.round(BEHIND / fold.step)];
  return { ahead, behind, near, sums: new Float64Array(2 * near + ahead + behind + 2), rises: new Float64Array(near + 1) };
}

/** Strongest rise of one turn near a place, bands weighted: means of the sums over what lies ahead and behind, which are kept as running sums. */
function strongestRise(fold: Fold, weights: readonly number[], { ahead, behind, near, sums, rises }: Room, blow: number, at: number): number {
  const first = at - near - 1 - behind;
  rises.fill(0);
  for (let band = 0; band < fold.bands; band++) {
    if (weights[band]! === 0) continue;
    const from = (blow * fold.bands + band) * fold.places;
    for (let i = 0; i + 1 < sums.length; i++) sums[i + 1] = sums[i]! + fold.logs[from + Math.max(0, Math.min(fold.places - 1, first + i))]!;
    for (let n = 0; n <= near; n++) {
      const here = 2 * n + behind + 1;
      rises[n] = rises[n]! + weights[band]! * ((sums[here + ahead]! - sums[here]!) / ahead - (sums[here - 1]! - sums[here - 1 - behind]!) / behind);
    }
  }
  return rises[highest(rises, 0, near)]!;
}
