import { oneOf, optional, recordOf, text, type Check } from '../codec/check.ts';
import type { RecordingBody } from '../entry.ts';
import { mediaType, sha256Text } from './common.ts';

/** A sound recording of the running hammer, kept as a blob by its SHA-256. */
export const recording: Check<RecordingBody> = recordOf<RecordingBody>({
  sha256: sha256Text,
  mediaType,
  words: optional(text()),
  run: optional(oneOf(['idle', 'light', 'full', 'release', 'work'])),
});
