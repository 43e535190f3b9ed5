import { listOf, oneOf, optional, recordOf, text, type Check } from '../codec/check.ts';
import type { SightingBody } from '../entry.ts';
import { dottedName, placeOnPart, sha256Text } from './common.ts';

const MOST_PHOTOGRAPHS = 50;

/** A graded look at a part. */
export const sighting: Check<SightingBody> = recordOf<SightingBody>({
  look: dottedName,
  at: optional(placeOnPart),
  answer: placeOnPart,
  standing: oneOf(['told', 'seen']),
  saidBy: optional(text()),
  words: optional(text()),
  photographs: optional(listOf(sha256Text, MOST_PHOTOGRAPHS)),
});
