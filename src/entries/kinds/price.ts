import { numberFrom, oneOf, optional, recordOf, shaped, text, type Check } from '../codec/check.ts';
import type { Money, PriceBody } from '../entry.ts';
import { dottedName } from './common.ts';

const money: Check<Money> = recordOf<Money>({
  amount: numberFrom(0, 1e9, 'an amount of money, zero or more'),
  currency: shaped(/^([A-Z]{3}|unit)$/, 'three letters such as USD, or unit'),
});

/** A price paid, quoted, heard or listed for a job or a part. */
export const price: Check<PriceBody> = recordOf<PriceBody>({
  of: dottedName,
  price: money,
  sourceKind: oneOf(['paid', 'quoted', 'heard', 'listed']),
  quantity: numberFrom(0.001, 1e6, 'how many the price is for, more than zero'),
  saidBy: optional(text()),
  leadDays: optional(numberFrom(0, 3650, 'days until it is there, zero or more')),
  words: optional(text()),
});
