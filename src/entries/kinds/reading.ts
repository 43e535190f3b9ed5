import { oneOf, optional, recordOf, text, type Check } from '../codec/check.ts';
import type { ReadingBody } from '../entry.ts';
import { dottedName, placeOnPart, quantity } from './common.ts';

/** A measured quantity at a measuring place. */
export const reading: Check<ReadingBody> = recordOf<ReadingBody>({
  quantity,
  asWritten: text('the text as the person wrote it'),
  place: dottedName,
  at: optional(placeOnPart),
  tool: optional(placeOnPart),
  way: optional(placeOnPart),
  standing: oneOf(['told', 'measured']),
  saidBy: optional(text()),
  words: optional(text()),
});
