import { atName, lookOf, placeOf } from '../../hammer/index.ts';
import { atWords } from '../sentences/words.ts';

/** A reading or look by its trade words, for somebody who has to take it: `upper die height, as made`, `does the brake hold?`. */
export function keyWords(key: string): string {
  const [whole = key, made] = key.split('#');
  const [id = whole, at] = whole.split('@');
  const place = placeOf(id);
  const name = place === undefined ? quoted(lookOf(id)?.look.question ?? id) : place.place.name.toLowerCase().startsWith((place.part.name.us.split(',')[0] ?? place.part.name.us).toLowerCase()) ? place.place.name : `${place.part.name.us}, ${place.place.name}`;
  return `${name}${atWords(at)}${made === undefined ? '' : `, ${made.replaceAll('-', ' ')}`}`;
}

const quoted = (question: string): string => (question.endsWith('?') ? `"${question}"` : question);

/** Several of them, each named once; one that is wanted at several places is named with all of them. */
export const keysWords = (keys: readonly string[]): string => keysNamed(keys).map(({ words }) => words).join('; ');

/** The same one by one, each with its keys. */
export function keysNamed(keys: readonly string[]): readonly { readonly words: string; readonly keys: readonly string[] }[] {
  const byPlace = new Map<string, string[]>();
  for (const key of new Set(keys)) {
    const place = key.replace(/@[^#]*/u, '');
    byPlace.set(place, [...(byPlace.get(place) ?? []), key]);
  }
  return [...byPlace].map(([place, mine]) => ({ keys: mine, words: mine.length === 1 ? keyWords(mine[0] ?? place) : `${keyWords(place)} (${mine.map((key) => /@([^#]*)/u.exec(key)?.[1]).map((at) => (at === undefined ? 'in all' : atName(at))).join(', ')})` }));
}
