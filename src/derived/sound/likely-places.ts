import type { Guard } from './fold-rise.ts';
import { featuresAt, type Evidence } from './second-evidence.ts';

/** A place of the turn that may hold a second sound. */
export interface LikelyPlace {
  readonly place: number;
  readonly features: readonly number[];
}

const MOST = 5;
/** s; peaks nearer to one another are one */
const APART = 0.006;
/** s from the ends of the turn within which nothing can be compared */
const MARGIN = 0.009;
/** s around a place, and around the same place a turn on, that are not the rest of the turn */
const OWN = 0.014;

/** The highest few peaks of the turn outside the guard, with what each is judged by. @param period s */
export function likelyPlaces(e: Evidence, nearest: Guard, period: number): LikelyPlace[] {
  const { shape } = e.means;
  const blow = { rises: e.usual.rises, places: shape.places, origin: e.origin };
  const chosen: number[] = [];
  for (const row of [e.usual.combined, e.drawn])
    for (const place of peaks(row, e, nearest).slice(0, MOST)) if (chosen.every((one) => Math.abs(one - place) * shape.step > APART)) chosen.push(place);
  return chosen.map((place) => ({ place, features: featuresAt(e, place, restOf(e, nearest, period, place), blow) }));
}

/** Highest drawn rise of the turn away from a place and from the same place a period before and after. */
export function restOf(e: Evidence, nearest: Guard, period: number, place: number): number {
  const { step } = e.means.shape;
  const margin = Math.round(MARGIN / step);
  let rest = -Infinity;
  for (let i = margin; i < e.drawn.length - margin; i++) {
    const delay = (i - e.origin) * step;
    const away = Math.abs(i - place) * step;
    if ((delay > -nearest.before && delay < nearest.after) || away < OWN || Math.abs(away - period) < OWN) continue;
    rest = Math.max(rest, e.drawn[i]!);
  }
  return rest === -Infinity ? 0 : rest;
}

function peaks(row: Float64Array, e: Evidence, nearest: Guard): number[] {
  const { step } = e.means.shape;
  const margin = Math.round(MARGIN / step);
  const out: number[] = [];
  for (let i = margin; i < row.length - margin; i++) {
    const delay = (i - e.origin) * step;
    if (delay > -nearest.before && delay < nearest.after) continue;
    if (row[i]! >= row[i - 1]! && row[i]! >= row[i + 1]!) out.push(i);
  }
  return out.sort((a, b) => row[b]! - row[a]!);
}
