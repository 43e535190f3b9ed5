import type { Problem } from '../methods/quantity/index.ts';

export type { Problem };

const LONGEST_SHOWN = 60;

/**
 * Shows any value on one short line, so that a problem can be printed anywhere.
 * @param value whatever was handed in; cycles and depth are no trouble
 * @returns at most about sixty characters
 */
export function shownValue(value: unknown): string {
  const text = typeof value === 'string' ? JSON.stringify(value) : shownThing(value);
  const cut = [...text.slice(0, 4 * LONGEST_SHOWN)];
  return cut.length > LONGEST_SHOWN ? `${cut.slice(0, LONGEST_SHOWN - 1).join('')}…` : cut.join('');
}

function shownThing(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null || typeof value === 'number' || typeof value === 'boolean' || typeof value === 'bigint') return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return `a record of ${Object.keys(value).slice(0, 4).map((key) => key.slice(0, 20)).join(', ') || 'nothing'}`;
  return `a ${typeof value}`;
}

/**
 * Makes a problem with its sentence.
 * @param field path of the field
 * @param value what stood there
 * @param wrong what is wrong, without full stop, for example `the tag is missing`
 * @param expected what would be right, without full stop
 */
export function problemOf(field: string, value: unknown, wrong: string, expected: string): Problem {
  const shown = shownValue(value);
  return { field, value: shown, expected, message: `${wrong}; ${expected}: ${shown}` };
}
