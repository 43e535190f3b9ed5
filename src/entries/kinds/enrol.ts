import { flag, optional, recordOf, text, type Check } from '../codec/check.ts';
import type { EnrolBody } from '../entry.ts';
import { family, writtenQuantity } from './common.ts';

/** A hammer comes under somebody's eye: tag, class, family and what is known of its origin. */
export const enrol: Check<EnrolBody> = recordOf<EnrolBody>({
  tag: text('the owner\'s tag'),
  name: optional(text()),
  maker: optional(text()),
  serial: optional(text()),
  place: optional(text()),
  year: optional(text()),
  ramClass: writtenQuantity,
  family,
  invented: optional(flag),
  words: optional(text()),
});
