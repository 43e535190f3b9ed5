import { problemOf, type Problem } from '../problem.ts';

/** Looks at one value and lists what is wrong with it; never throws and never changes it. */
export interface Check<T> {
  readonly run: (value: unknown, field: string, problems: Problem[]) => void;
  readonly mayBeAbsent?: true;
  /** Only for the type-checker: what a value without problems is. */
  readonly gives?: T;
}

/** One check for each field of a record; the type-checker notices a field forgotten or wrongly left optional. */
export type FieldChecks<T> = { readonly [K in keyof T]-?: object extends Pick<T, K> ? Check<T[K]> & { readonly mayBeAbsent: true } : Check<T[K]> };

const LONGEST_TEXT = 10_000;

/** Field name as a sentence begins with it. */
const named = (field: string): string => field.replace(/^body\./, '');

const one = <T>(holds: (value: unknown) => boolean, expected: string): Check<T> => ({
  run: (value, field, problems) => {
    if (value === undefined) problems.push(problemOf(field, value, `${named(field)} is missing`, expected));
    else if (!holds(value)) problems.push(problemOf(field, value, `${named(field)} cannot be used`, expected));
  },
});

/** Text that is not blank. */
export const text = (expected = 'some text'): Check<string> =>
  one((value) => typeof value === 'string' && value.trim() !== '' && value.length <= LONGEST_TEXT, `${expected}, at most ${LONGEST_TEXT} letters`);

/** Text of a given shape. */
export const shaped = (shape: RegExp, expected: string): Check<string> => one((value) => typeof value === 'string' && value.length <= LONGEST_TEXT && shape.test(value), expected);

/** Text that a predicate accepts. */
export const textWhere = (holds: (value: string) => boolean, expected: string): Check<string> => one((value) => typeof value === 'string' && value.length <= LONGEST_TEXT && holds(value), expected);

/** One of some words. */
export const oneOf = <T extends string>(words: readonly T[]): Check<T> => one((value) => (words as readonly unknown[]).includes(value), `one of ${words.join(', ')}`);

/** A finite number within bounds. */
export const numberFrom = (least: number, most: number, expected: string): Check<number> =>
  one((value) => typeof value === 'number' && Number.isFinite(value) && value >= least && value <= most, expected);

export const flag: Check<boolean> = one((value) => typeof value === 'boolean', 'true or false');

/** A list whose every member passes. */
export const listOf = <T>(member: Check<T>, most: number): Check<readonly T[]> => ({
  run: (value, field, problems) => {
    if (!Array.isArray(value) || value.length > most) problems.push(problemOf(field, value, `${named(field)} cannot be used`, `a list of at most ${most}`));
    else value.forEach((each, index) => member.run(each, `${field}[${index}]`, problems));
  },
});

/** The same check for a field that may be left out. */
export const optional = <T>(check: Check<T>): Check<T> & { readonly mayBeAbsent: true } => ({
  mayBeAbsent: true,
  run: (value, field, problems) => {
    if (value !== undefined) check.run(value, field, problems);
  },
});

/** A record whose known fields all pass; fields from a newer version are kept and passed on. */
export const recordOf = <T>(fields: FieldChecks<T>): Check<T> => ({
  run: (value, field, problems) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      problems.push(problemOf(field, value, `${named(field)} cannot be used`, `a record with ${Object.keys(fields).join(', ')}`));
      return;
    }
    const record = value as Readonly<Record<string, unknown>>;
    for (const [name, check] of Object.entries(fields) as [string, Check<unknown>][]) {
      check.run(Object.hasOwn(record, name) ? record[name] : undefined, field === '' ? name : `${field}.${name}`, problems);
    }
  },
});

/** A record that passes one check, and then a second look at how its fields agree. */
export const alsoWhere = <T>(check: Check<T>, look: (value: T, field: string, problems: Problem[]) => void): Check<T> => ({
  run: (value, field, problems) => {
    const before = problems.length;
    check.run(value, field, problems);
    if (problems.length === before) look(value as T, field, problems);
  },
});
