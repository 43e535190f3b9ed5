import { numberFrom, oneOf, optional, recordOf, text, type Check } from '../codec/check.ts';
import type { JobProgressBody } from '../entry.ts';
import { dottedName } from './common.ts';

/** How far a job has come. */
export const jobProgress: Check<JobProgressBody> = recordOf<JobProgressBody>({
  job: dottedName,
  state: oneOf(['planned', 'started', 'done', 'dropped']),
  hours: optional(numberFrom(0, 10_000, 'hours of work, zero or more')),
  words: optional(text()),
});
