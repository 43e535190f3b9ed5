import type { MovingAsked } from '../views/index.ts';

const DOOR = /^(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)$/;

/**
 * Door and floor as a paper on moving is asked with them. What cannot be read counts as not said, and the paper then asks for it.
 * @param door width and height in the clear, m, such as `0.914x2.032`
 * @param floor what the floor carries, Pa
 */
export function wayAsked(door: string | undefined, floor: string | undefined): MovingAsked | undefined {
  const sides = DOOR.exec(door ?? '');
  const rating = floor === undefined || floor === '' ? Number.NaN : Number(floor);
  const asked: MovingAsked = {
    ...(sides === null ? {} : { door: { width: Number(sides[1]), height: Number(sides[2]) } }),
    ...(Number.isFinite(rating) && rating > 0 ? { floor: { rating } } : {}),
  };
  return Object.keys(asked).length === 0 ? undefined : asked;
}
