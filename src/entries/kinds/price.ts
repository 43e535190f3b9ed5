import { numberFrom, oneOf, optional, recordOf, shaped, text, textWhere, type Check } from '../codec/check.ts';
import { PRICE_UNITS, type Money, type PriceBody } from '../entry.ts';
import { instantMs } from '../instant.ts';
import { dottedName } from './common.ts';

const money: Check<Money> = recordOf<Money>({
  amount: numberFrom(0, 1e9, 'an amount of money, zero or more'),
  currency: shaped(/^([A-Z]{3}|unit)$/, 'three letters such as USD, or unit'),
});

const day: Check<string> = textWhere((text) => instantMs(`${text}T00:00:00Z`) !== undefined, 'a day of the calendar such as 2026-05-12');

/** A price paid, quoted, heard or listed for a job or a part. */
export const price: Check<PriceBody> = recordOf<PriceBody>({
  of: dottedName,
  price: money,
  sourceKind: oneOf(['paid', 'quoted', 'heard', 'listed']),
  quantity: numberFrom(0.001, 1e6, 'how many the price is for, more than zero'),
  unit: optional(oneOf(PRICE_UNITS)),
  on: optional(day),
  saidBy: optional(text()),
  leadDays: optional(numberFrom(0, 3650, 'days until it is there, zero or more')),
  words: optional(text()),
});
