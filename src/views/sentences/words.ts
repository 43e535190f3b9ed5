import { neverBelow, inOtherUnits, type Finding, type Picture, type Verdict } from '../../derived/index.ts';
import { atName, partOf } from '../../hammer/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Span } from '../../knowledge/index.ts';

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  fit: 'Fit', 'fit-within-limits': 'Fit within limits', 'stand-down': 'Stand down', 'not-known-yet': 'Not known yet',
};

/** A part by its trade name, the other side's word in brackets where it differs. */
export function partName(id: string): string {
  const name = partOf(id)?.name;
  if (name === undefined) return id;
  if (name.us.startsWith(name.uk)) return name.us;
  return name.uk.startsWith(name.us) ? name.uk : `${name.us} (${name.uk})`;
}

/** A place on a part, in words. */
export const atWords = (at: string | undefined): string => (at === undefined ? '' : `, ${atName(at)}`);

/** A range of hours: `6 h to 12 h, likely 8 h`; below an hour and a half in steps of five minutes. */
export const hoursWords = (span: Span): string => spanWords(span, timeWords);

/** One time of work: `35 min`, `5.5 h`. */
export const timeWords = (hours: number): string => (hours < SHORT ? `${printedMinutes(hours)} min` : `${printedMinutes(hours) / 60} h`);

/** Below this many hours a time is printed in minutes. */
const SHORT = 1.25;

/** A time of work as it is printed, in minutes. */
const printedMinutes = (hours: number): number => (hours < SHORT ? Math.max(5, Math.round(hours * 12) * 5) : round2(hours) * 60);

/** Times of work added up as each of them is printed, so that whoever adds up a column finds the same: `44 h 45 min to 120 h, likely 75 h 45 min`. */
export function addedHours(spans: readonly Span[]): string {
  const sum = (end: keyof Span): number => spans.reduce((total, span) => total + printedMinutes(span[end]), 0);
  const print = (minutes: number): string => {
    const hours = Math.floor(minutes / 60);
    return hours === 0 || minutes % 60 === 0 ? (hours === 0 ? `${minutes} min` : `${hours} h`) : `${hours} h ${minutes % 60} min`;
  };
  return sum('least') === sum('most') ? print(sum('likely')) : `${print(sum('least'))} to ${print(sum('most'))}, likely ${print(sum('likely'))}`;
}

function spanWords(span: Span, print: (value: number) => string): string {
  if (span.least === span.most) return print(span.likely);
  return `${print(span.least)} to ${print(span.most)}, likely ${print(span.likely)}`;
}

const round2 = (value: number): number => (value < 10 ? Math.round(value * 2) / 2 : Math.round(value));

/** How many of a part, with the unit that it is counted in: `4 m`, `2`. */
export const quantityWords = ({ quantity, unit }: { readonly quantity: number; readonly unit?: string }): string => (unit === undefined || unit === 'each' || unit === 'set' ? String(quantity) : `${quantity} ${unit}`);

/** The value behind a key as a person reads it. */
export function shownValue(picture: Picture, key: string): string {
  const value = picture.values[key];
  if (value === undefined) return 'not checked';
  switch (value.outcome.state) {
    case 'known': {
      const printed = formatQuantity(value.outcome.quantity, { system: picture.system, doubt: true, neverBelow: neverBelow(value.key) });
      const estimate = value.rests === 'assumed' ? ', estimate' : value.rests === 'told' ? ', told' : '';
      return `${value.asWritten === undefined || inOtherUnits(value.asWritten, picture.system) ? printed : value.asWritten}${estimate}`;
    }
    case 'not-known':
      return 'not known yet';
    case 'does-not-apply':
      return 'does not apply';
    case 'outside-validity':
      return `no figure: ${value.outcome.because}`;
  }
}

const ORDER: Readonly<Record<Finding['grade'], number>> = { 'stand-down': 0, limited: 1, watch: 2, 'not-known': 3, sound: 4, 'does-not-apply': 5 };

/** Findings with the weightiest first; gates before others of the same grade. */
export const byWeight = (findings: readonly Finding[]): readonly Finding[] =>
  [...findings].sort((a, b) => ORDER[a.grade] - ORDER[b.grade] || Number(b.gate) - Number(a.gate));
