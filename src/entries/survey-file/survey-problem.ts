import { problemOf, type Problem } from '../problem.ts';

/** A span of the text that something was read from, in code units from its beginning. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A problem of a survey file with its place. A warning is suspicious but legal, and what it is about is kept. */
export interface SurveyProblem extends Problem {
  /** Line, from 1. */
  readonly line: number;
  /** Column, from 1. */
  readonly column: number;
  /** Where in the survey, for example `visits[0].readings.upper-die.height`. */
  readonly path: string;
  readonly severity: 'problem' | 'warning';
}

const MOST_LISTED = 400;

/** Gathers the problems of one file, each with its line and column; past a bound it only counts, so that noise stays quick. */
export class SurveyProblems {
  readonly #lineStarts: readonly number[];
  readonly #end: number;
  readonly #listed: SurveyProblem[] = [];
  #unlisted = 0;

  constructor(text: string) {
    const starts = [0];
    for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
    this.#lineStarts = starts;
    this.#end = text.length;
  }

  /** Whether so many problems are listed that finer advice is no longer worth its time. */
  get full(): boolean {
    return this.#listed.length >= MOST_LISTED;
  }

  /**
   * Adds a problem.
   * @param path where in the survey
   * @param span where in the text
   * @param value what stood there
   * @param wrong what is wrong, without full stop
   * @param expected what would be right, without full stop
   */
  add(path: string, span: Span, value: unknown, wrong: string, expected: string, severity: SurveyProblem['severity'] = 'problem'): void {
    this.put(path, span, problemOf(path, value, wrong, expected), severity);
  }

  /** Adds a problem that was found elsewhere, with its place here. */
  put(path: string, span: Span, problem: Problem, severity: SurveyProblem['severity'] = 'problem'): void {
    if (this.full) {
      this.#unlisted += 1;
      return;
    }
    const { field, value, expected, message } = problem;
    this.#listed.push({ field, value, expected, message, path, severity, ...this.#placeOf(span.start) });
  }

  /** All problems in the order of the text; where some were only counted, the last one says how many. */
  sorted(): readonly SurveyProblem[] {
    const sorted = [...this.#listed].sort((one, other) => one.line - other.line || one.column - other.column);
    if (this.#unlisted > 0) sorted.push({ ...problemOf('', this.#unlisted, 'more problems than are worth listing', `the first ${MOST_LISTED} are listed, this many more are not`), path: '', severity: 'problem', ...this.#placeOf(this.#end) });
    return sorted;
  }

  #placeOf(offset: number): { readonly line: number; readonly column: number } {
    let low = 0;
    let high = this.#lineStarts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#lineStarts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - this.#lineStarts[low]! + 1 };
  }
}
