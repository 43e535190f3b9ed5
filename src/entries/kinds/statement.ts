import { optional, recordOf, text, type Check } from '../codec/check.ts';
import type { StatementBody } from '../entry.ts';
import { placeOnPart } from './common.ts';

/** Something said by somebody: told, not seen. */
export const statement: Check<StatementBody> = recordOf<StatementBody>({
  words: text('what was said'),
  saidBy: optional(text()),
  part: optional(placeOnPart),
});
