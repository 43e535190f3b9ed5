/** Stands for a code point without a meaning; the usual sign for it, U+FFFD, may not stand in a tagged paper. */
const UNREADABLE = '□';
const BREAK = '\u200b';
const LONGEST_WORD = 20;
const STEP = 10;

/**
 * Text as it may go on paper: line ends become spaces, and signs that nobody sees (controls, marks that turn the direction
 * of writing, halves of a pair, code points without a meaning) are left out or shown as a replacement sign.
 * A word too long for a line gets places where it may break.
 */
export function printableText(text: string): string {
  const seen = text
    .replace(/[\s\u0085\u2028\u2029]+/gu, ' ')
    .replace(/(?![\u200c\u200d])[\p{Cf}\p{Cc}]/gu, '')
    .replace(/ {2,}/gu, ' ')
    .replace(/[\p{Cs}\p{Co}\p{Cn}\ufffd]/gu, UNREADABLE);
  return seen.replace(/[^\s\u200b]{21,}/gu, breakable);
}

function breakable(word: string): string {
  const signs = [...word];
  if (signs.length <= LONGEST_WORD) return word;
  const parts: string[] = [];
  for (let at = 0; at < signs.length; at += STEP) parts.push(signs.slice(at, at + STEP).join(''));
  return parts.join(BREAK);
}

/** The first of the texts of which something is left when it is cleaned. */
export const firstSaid = (...texts: readonly string[]): string => texts.find((text) => printableText(text).trim() !== '') ?? 'untitled';

/** Shortens a text for a cell that cannot grow; the whole text stands elsewhere. */
export function shortened(text: string, most: number): string {
  const signs = [...text];
  return signs.length <= most ? text : `${signs.slice(0, most - 1).join('')}…`;
}

/** Cleans every text inside plain data. */
export function printableData<T>(data: T, replace: (text: string) => string = (text) => text): T {
  const clean = (value: unknown): unknown => {
    if (typeof value === 'string') return replace(printableText(value));
    if (Array.isArray(value)) return value.map(clean);
    if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, clean(one)]));
    return value;
  };
  return clean(data) as T;
}
