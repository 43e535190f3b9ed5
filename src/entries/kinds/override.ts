import { oneOf, optional, recordOf, text, type Check } from '../codec/check.ts';
import type { OverrideBody } from '../entry.ts';
import { dottedName, placeOnPart, quantity } from './common.ts';

/** An owner's own limit, with author and reason. */
export const override: Check<OverrideBody> = recordOf<OverrideBody>({
  criterion: dottedName,
  at: optional(placeOnPart),
  step: optional(recordOf<NonNullable<OverrideBody['step']>>({
    quantity,
    asWritten: text('the text as the person wrote it'),
    grade: oneOf(['watch', 'limited', 'stand-down']),
  })),
  author: text('who takes it on himself'),
  reason: text('the reason'),
});
