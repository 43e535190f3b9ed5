import type { NotMade } from '../../derived/making/index.ts';

/** Why a part has no drawing, in sentences. */
export function notMadeWords(part: NotMade): readonly string[] {
  switch (part.state) {
    case 'not-known':
      return [`${part.title}: not known yet. To be measured:`, ...part.missing.map((one) => `${one.what.charAt(0).toUpperCase()}${one.what.slice(1)}. ${one.how}`)];
    case 'cannot-be':
      return [`${part.title}: cannot be made as the readings stand. ${part.problem}. ${part.because}`];
    case 'by-pattern':
      return [`${part.title}: no drawing. ${part.because}`];
    case 'not-needed':
      return [`${part.title}: not needed. ${part.because}`];
  }
}
