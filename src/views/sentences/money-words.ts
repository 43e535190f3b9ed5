import type { Range } from '../../derived/index.ts';
import type { Span } from '../../knowledge/index.ts';
import { timeWords } from './words.ts';

/** Sums of money are estimates: three digits of them mean something, and a range of 13 to 2 000 is not printed as 13.27. */
export const rounded = (amount: number): number => {
  const size = Math.abs(amount);
  const step = size < 20 ? 1 : size < 100 ? 5 : size < 1_000 ? 10 : size < 10_000 ? 50 : 100;
  return Math.round(amount / step) * step;
};

const grouped = (whole: number): string => String(whole).replace(/\B(?=(\d{3})+$)/g, ' ');

/** Money in words: `1 650 units`, `420 USD`. @param currency ISO 4217 letters, or `unit` for generic units of about one US dollar */
export const moneyWords = (amount: number, currency: string): string => `${grouped(rounded(amount))} ${currency === 'unit' ? 'units' : currency}`;

/** Money as it was given, to the last digit that was said. */
export const exactMoney = (amount: number, currency: string): string => `${Number.isInteger(amount) ? grouped(amount) : amount.toFixed(2)} ${currency === 'unit' ? 'units' : currency}`;

/** A range of money: `90 units to 210 units, likely 140 units`; one figure where it is certain. */
export function moneySpan(span: Span, currency: string): string {
  if (span.most === 0) return 'no outlay';
  if (span.least === span.most) return exactMoney(span.likely, currency);
  return `${grouped(rounded(span.least))} to ${moneyWords(span.most, currency)}, likely ${grouped(rounded(span.likely))}`;
}

/** Hours of work: `35 min`, `5.5 h`, `64 h`. */
export const workHours = (hours: number): string => (hours <= 0 ? '0 min' : timeWords(hours));

/** Days, to half a day below ten. */
export const dayWords = (days: number): string => {
  const shown = days < 10 ? Math.round(days * 2) / 2 : Math.round(days);
  return days > 0 && shown === 0 ? 'less than half a day' : `${shown} ${shown === 1 ? 'day' : 'days'}`;
};

/** The middle and the two ends of a doubtful figure in one sentence. */
export const rangeSentence = (what: string, range: Range, print: (value: number) => string): string =>
  range.p90 === 0 ? `${what}: none.` : `${what}: as likely more as less than ${print(range.p50)}; nine chances in ten that it is no more than ${print(range.p90)}, one in ten that it stays under ${print(range.p10)}.`;

/** A share as a whole per cent. */
export const shareWords = (share: number): string => (share > 0 && share < 0.005 ? 'under 1 %' : `${Math.round(share * 100)} %`);
