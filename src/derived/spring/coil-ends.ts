import type { CoilEnds } from '../../methods/elements/index.ts';
import type { AnswersOf } from '../../hammer/index.ts';

/** Answers of the look at the ends, as the handbooks call them. */
const ENDS: Readonly<Record<string, CoilEnds>> = { 'closed-and-ground': 'cold-ground', closed: 'cold-unground', open: 'plain', 'open-and-ground': 'plain-ground' };

/** How the ends of the coil spring are made, as somebody saw them: closed and ground where nobody did, and `answer` is empty then. */
export function coilEndsOf(looks: AnswersOf): { readonly ends: CoilEnds; readonly answer: string } {
  const answer = looks['coil-spring.ends']?.answer ?? '';
  const ends = ENDS[answer];
  return ends === undefined ? { ends: 'cold-ground', answer: '' } : { ends, answer };
}
