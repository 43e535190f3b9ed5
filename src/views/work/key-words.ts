import { lookOf, placeOf } from '../../hammer/index.ts';
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

/** Several of them, each named once. */
export const keysWords = (keys: readonly string[]): string => [...new Set(keys.map(keyWords))].join('; ');
