import { optional, recordOf, text, type Check } from '../codec/check.ts';
import type { SettingBody } from '../entry.ts';
import { dottedName, placeOnPart, quantity, writtenQuantity } from './common.ts';

/** An adjustment made: the value set, and the value before where it was written down. */
export const setting: Check<SettingBody> = recordOf<SettingBody>({
  quantity,
  asWritten: text('the text as the person wrote it'),
  place: dottedName,
  at: optional(placeOnPart),
  before: optional(writtenQuantity),
  words: optional(text()),
});
