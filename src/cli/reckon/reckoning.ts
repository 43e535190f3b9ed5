import type { Dimension, UnitName } from '../../methods/quantity/index.ts';

/** One thing that a calculation must be told. */
export interface ReckonInput {
  /** Option on the command line, kebab-case. */
  readonly name: string;
  /** What it measures; a `choice` is one of some words. */
  readonly kind: Dimension | 'choice';
  readonly words: string;
  /** Taken where nothing is given, in shop notation; absent where it must be given. */
  readonly usual?: string;
  readonly choices?: readonly string[];
}

/** One line of the answer: a figure, or words. */
export type ReckonLine =
  | { readonly words: string; readonly dimension: Dimension; readonly value: number; readonly unit?: UnitName }
  | { readonly words: string; readonly says: string };

/** The answer, or why there is none. A warning belongs beside the figures. */
export type ReckonOutcome =
  | { readonly state: 'known'; readonly lines: readonly ReckonLine[]; readonly warnings: readonly string[] }
  | { readonly state: 'outside-validity'; readonly because: string };

/** What was given, SI. */
export interface Given {
  readonly of: (name: string) => number;
  readonly choice: (name: string) => string;
}

/** One handbook calculation by itself. */
export interface Reckoning {
  readonly name: string;
  readonly title: string;
  readonly formula: string;
  readonly source: string;
  /** Where it holds, in a sentence. */
  readonly validity: string;
  readonly inputs: readonly ReckonInput[];
  readonly run: (given: Given) => ReckonOutcome;
}

/** A line with a figure; `unit` where the usual one of its size would mislead. */
export const figure = (words: string, dimension: Dimension, value: number, unit?: UnitName): ReckonLine => ({ words, dimension, value, ...(unit === undefined ? {} : { unit }) });

/** A line in words. */
export const saying = (words: string, says: string): ReckonLine => ({ words, says });

/** An answer; warnings that are undefined are left out. */
export const answer = (lines: readonly ReckonLine[], ...warnings: readonly (string | undefined)[]): ReckonOutcome => ({ state: 'known', lines, warnings: warnings.filter((warning) => warning !== undefined) });

/** No answer, and why. */
export const outside = (because: string): ReckonOutcome => ({ state: 'outside-validity', because });

/** A warning where a condition holds. */
export const warnIf = (holds: boolean, words: string): string | undefined => (holds ? words : undefined);
