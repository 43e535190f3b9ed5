import { alsoWhere, recordOf, text, type Check } from '../codec/check.ts';
import type { HoursBody } from '../entry.ts';
import { problemOf } from '../problem.ts';
import { quantity } from './common.ts';

/** Running time since the last such entry. */
export const hours: Check<HoursBody> = alsoWhere(
  recordOf<HoursBody>({ quantity, asWritten: text('the text as the person wrote it') }),
  (body, field, problems) => {
    if (body.quantity.dimension !== 'time' || body.quantity.value < 0) problems.push(problemOf(`${field}.quantity`, body.asWritten, 'the running time cannot be used', 'a time, zero or more'));
  },
);
