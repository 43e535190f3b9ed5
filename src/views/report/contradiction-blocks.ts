import { contradictionWords, type Picture } from '../../derived/index.ts';
import { lookOf, placeOf } from '../../hammer/index.ts';
import { partName } from '../sentences/words.ts';
import { keyWords } from '../work/key-words.ts';
import type { Block } from './block.ts';

/** Where telling and seeing part, or one place was measured twice with two answers: both, and which one the findings use. */
export function contradictionBlocks(picture: Picture): readonly Block[] {
  const { contradictions } = picture.known;
  if (contradictions.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Told one way, found another' },
    { kind: 'table', caption: 'One of the two cannot be right; ask again, or measure again', columns: ['Part', 'What', 'Both answers, and which is used'], rows: contradictions.map((one) => {
      const id = one.key.split('@')[0] ?? one.key;
      const part = (placeOf(id) ?? lookOf(id))?.part.id;
      return { cells: [part === undefined ? id : partName(part), keyWords(one.key), `${capital(contradictionWords(one, picture.system))}.`] };
    }) },
  ];
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
