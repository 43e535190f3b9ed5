import { answerWords } from '../../hammer/index.ts';
import type { Picture } from '../../derived/index.ts';
import { partName } from '../sentences/words.ts';
import type { Block } from './block.ts';

/** A photograph of the log with its number in the report. */
export interface NumberedPhotograph {
  readonly number: number;
  readonly sha256: string;
  readonly mediaType: string;
  readonly words: string;
  readonly when: string;
  readonly part?: string;
  /** Key of the look that it was taken for. */
  readonly look?: string;
}

/** All photographs of the log, each once, in the order in which they were taken; those of a look after those with words of their own. */
export function photographsOf(picture: Picture): readonly NumberedPhotograph[] {
  const { photographs, looks } = picture.known;
  const lookOf = new Map(Object.values(looks).flatMap((look) => look.photographs.map((sha256) => [sha256, look.key] as const)));
  const found = new Map<string, Omit<NumberedPhotograph, 'number'>>();
  for (const one of photographs) {
    const look = lookOf.get(one.sha256);
    found.set(one.sha256, { sha256: one.sha256, mediaType: one.mediaType, words: one.words, when: one.when, ...(one.part === undefined ? {} : { part: one.part }), ...(look === undefined ? {} : { look }) });
  }
  for (const look of Object.values(looks)) {
    for (const sha256 of look.photographs) {
      if (found.has(sha256)) continue;
      const words = `${look.key.replaceAll(/[.@-]/g, ' ')}: ${answerWords(look.key, look.answer)}${look.words === undefined ? '' : `, ${look.words}`}`;
      found.set(sha256, { sha256, mediaType: '', words, when: look.when, part: look.key.split('.')[0] ?? look.key, look: look.key });
    }
  }
  return [...found.values()].map((one, index) => ({ ...one, number: index + 1 }));
}

/** The photographs with their captions; nothing where none was taken. */
export function photographBlocks(picture: Picture): readonly Block[] {
  const photographs = photographsOf(picture);
  if (photographs.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Photographs' },
    ...photographs.map((one) => ({ kind: 'photograph', sha256: one.sha256, mediaType: one.mediaType, words: one.words, caption: `${one.number}. ${one.words}${one.part === undefined ? '' : ` (${partName(one.part)})`}, ${one.when.slice(0, 10)}` }) as const),
  ];
}
