import { recordOf, text, textWhere, type Check } from '../codec/check.ts';
import type { CorrectionBody } from '../entry.ts';
import { isEntryId } from '../entry-id.ts';

/** Strikes an earlier entry out and says why; the entry stays in the log. */
export const correction: Check<CorrectionBody> = recordOf<CorrectionBody>({
  entry: textWhere(isEntryId, 'the id of the entry that was wrong'),
  why: text('why it was wrong'),
});
