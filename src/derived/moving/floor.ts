import { GRAVITY } from './gravity.ts';

/** What a floor is said to carry. */
export interface FloorRating {
  /** Pa, evenly spread */
  readonly rating: number;
  readonly saidBy?: string;
}

/** One way in which the machine bears on a floor. */
export interface Bearing {
  readonly id: 'base' | 'skids' | 'rollers' | 'jack-wheels';
  readonly words: string;
  /** m² that touch */
  readonly area: number;
  /** Pa under them */
  readonly pressure: number;
  /** N on the most loaded point or line */
  readonly pointLoad: number;
}

/** Two skids of a 4 by 4 in timber, and the wheels of a pallet jack: sizes of use, common practice, no source. */
const SKID_WIDTH = 0.089;
/** m², four load wheels; the steering pair takes the rest */
const WHEEL_PATCH = 0.0015;
/** width of the line on which a loaded pipe bears */
const ROLLER_LINE = 0.01;
/** three pipes, but a machine of cast iron rides on two of them at a time */
const ROLLERS_LOADED = 2;

/**
 * How the machine bears on a floor in each state of its move, standing still: a jolt or one corner in the air doubles it.
 * @param mass kg @param baseLength m @param baseWidth m
 */
export function bearings(mass: number, baseLength: number, baseWidth: number): readonly Bearing[] {
  const weight = mass * GRAVITY;
  const row = (id: Bearing['id'], words: string, area: number, points: number): Bearing => ({ id, words, area, pressure: weight / area, pointLoad: weight / points });
  return [
    row('base', 'on its whole base', baseLength * baseWidth, 1),
    row('skids', 'on two skids of 4 by 4 in timber', 2 * SKID_WIDTH * baseLength, 2),
    row('rollers', 'on pipe rollers, two of them loaded', ROLLERS_LOADED * ROLLER_LINE * baseWidth, ROLLERS_LOADED),
    row('jack-wheels', 'on the wheels of a pallet jack', 4 * WHEEL_PATCH, 4),
  ];
}

export type FloorAnswer =
  | { readonly state: 'known'; readonly rating: number; readonly spread: number; readonly share: number; readonly holds: boolean; readonly sentence: string }
  | { readonly state: 'not-known'; readonly missing: readonly string[]; readonly sentence: string };

/** How much wider than its base the load may be taken to spread over a joisted or slab floor, each way, m (common practice, no source). */
const SPREAD = 0.3;

/**
 * The machine against a stated floor rating: its weight over base and a foot round it. A screen, not a design: concentrated loads are
 * for somebody who knows the floor.
 * @param mass kg, the upper end of its doubt
 */
export function floorAnswer(mass: number, baseLength: number, baseWidth: number, floor?: FloorRating): FloorAnswer {
  if (floor === undefined) {
    return { state: 'not-known', missing: ['floor rating'], sentence: 'Nobody stated what the floor carries: ask before it comes in, and keep it off any floor with a cellar or a void below.' };
  }
  const spread = (mass * GRAVITY) / ((baseLength + 2 * SPREAD) * (baseWidth + 2 * SPREAD));
  const share = spread / floor.rating;
  const holds = share <= 1;
  return {
    state: 'known', rating: floor.rating, spread, share, holds,
    sentence: holds
      ? `Spread over its base and a foot round it the machine uses ${Math.round(100 * share)} % of the rating stated, standing still. Wheels and rollers press far harder on small places: boards or plate under them. No hammer runs on a suspended floor.`
      : `Spread over its base and a foot round it the machine asks for ${Math.round(100 * share)} % of the rating stated: not on this floor without an engineer.`,
  };
}
