import { CORNERS, placeOf } from '../../hammer/index.ts';
import type { Value } from '../value.ts';

/**
 * Places on the part at which a value must be known before the criterion is answered. A consequence is expected where it
 * was worked out; a reading at every place that the vocabulary lists, unless one reading stands for the whole part.
 * @returns `at` names; undefined stands for the part as a whole
 */
export function expectedPlaces(values: ReadonlyMap<string, Value>, id: string): readonly (string | undefined)[] {
  if (values.has(id)) return [undefined];
  const found = [...values.keys()].filter((key) => key.startsWith(`${id}@`) && !key.includes('#')).map((key) => key.slice(id.length + 1));
  const listed = (placeOf(id)?.place.at ?? []).filter((at) => !CORNERS.includes(at));
  const all = [...new Set([...listed, ...found])];
  return all.length === 0 || found.length === 0 ? [undefined] : all;
}
