import { nearestName } from './nearest-name.ts';

const MOST_NAMED = 16;

/**
 * What would be right where a name is not known: the nearest one, or the whole list where it is short.
 * @param name as typed
 * @param known names that exist
 * @param brief true where no time is to be spent on a suggestion
 */
export function namesAllowed(name: string, known: readonly string[], brief = false): string {
  const near = brief ? undefined : nearestName(name, known);
  if (near !== undefined) return `did you mean ${near}`;
  return known.length <= MOST_NAMED ? `one of ${known.join(', ')}` : `one of the ${known.length} names of the vocabulary`;
}
