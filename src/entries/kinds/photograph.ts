import { optional, recordOf, text, type Check } from '../codec/check.ts';
import type { PhotographBody } from '../entry.ts';
import { mediaType, placeOnPart, sha256Text } from './common.ts';

/** A photograph, kept as a blob by its SHA-256, with words for a reader who cannot see it. */
export const photograph: Check<PhotographBody> = recordOf<PhotographBody>({
  sha256: sha256Text,
  mediaType,
  words: text('what the photograph shows'),
  part: optional(placeOnPart),
});
