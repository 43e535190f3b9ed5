import { instantMs, isCalendarDay, readSurveyFile, type Entry, type SurveyProblem } from '../entries/index.ts';
import { pictureToday, type Picture, type PrintSystem } from '../derived/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { BadInput, type Door } from './door.ts';
import { readText } from './read-text.ts';

/** Options that every command with a survey has. */
export interface SurveyOptions {
  readonly asOf?: string;
  readonly seed?: string;
  readonly metric?: boolean;
  readonly json?: boolean;
  readonly despiteProblems?: boolean;
}

export interface SurveyInput {
  readonly file: string;
  readonly entries: readonly Entry[];
  readonly problems: readonly SurveyProblem[];
  readonly asOf: string;
}

/** Reads the survey and all its problems; judges nothing. */
export async function readSurvey(file: string, options: SurveyOptions, door: Door): Promise<SurveyInput> {
  const asOf = asOfInstant(options.asOf, door);
  const { entries, problems } = readSurveyFile(await readText(file, door), { asOf });
  return { file, entries, problems, asOf };
}

/** True where something must be put right; warnings alone do not stop a paper. */
export const hasProblems = (problems: readonly SurveyProblem[]): boolean => problems.some((problem) => problem.severity === 'problem');

/**
 * The picture of the hammer in a survey.
 * @throws BadInput where the survey holds no hammer, or none up to the day asked for
 */
export function pictureOf(input: SurveyInput, options: SurveyOptions): Picture {
  const system: PrintSystem = options.metric === true ? 'metric' : 'inch';
  const made = pictureToday(input.entries, knowledge, input.asOf, seedOf(options.seed), system);
  if (made !== undefined) return made;
  if (input.entries.length === 0) throw new BadInput(`no hammer could be read; a survey with tag, family and class of the hammer: ${input.file}`);
  throw new BadInput(`nothing is known of the hammer by that day; a day from ${input.entries[0]?.at.slice(0, 10) ?? ''} on: ${input.asOf.slice(0, 10)}`);
}

function asOfInstant(text: string | undefined, door: Door): string {
  // A visit without an hour counts as noon, so today counts to its end.
  if (text === undefined) return `${door.now().slice(0, 10)}T23:59:59Z`;
  const [year, month, day] = text.split('-').map(Number);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text) && isCalendarDay(year ?? 0, month ?? 0, day ?? 0)) return `${text}T23:59:59Z`;
  if (instantMs(text) !== undefined) return text;
  throw new BadInput(`the day cannot be used; a day that exists, written 2026-04-11: ${text}`);
}

function seedOf(text: string | undefined): number {
  if (text === undefined) return 1;
  if (/^\d{1,9}$/.test(text)) return Number(text);
  throw new BadInput(`the seed cannot be used; a whole number from 0 to 999999999: ${text}`);
}

/** Problems as lines that an editor can follow: file, line, column. */
export const problemLines = (file: string, problems: readonly SurveyProblem[]): string =>
  problems.map((problem) => `${file}:${problem.line}:${problem.column}: ${problem.severity === 'warning' ? 'warning: ' : ''}${problem.path === '' ? '' : `${problem.path}: `}${problem.message}\n`).join('');
