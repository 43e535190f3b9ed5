import { optional, recordOf, text, type Check } from '../codec/check.ts';
import type { AsMadeBody } from '../entry.ts';
import { dottedName, placeOnPart, quantity } from './common.ts';

/** What a place measured when it was made, and how that is known. */
export const asMade: Check<AsMadeBody> = recordOf<AsMadeBody>({
  quantity,
  asWritten: text('the text as the person wrote it'),
  place: dottedName,
  at: optional(placeOnPart),
  from: optional(text()),
});
