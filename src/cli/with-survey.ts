import type { Command } from 'commander';
import type { Picture } from '../derived/index.ts';
import { EXIT, type Door } from './door.ts';
import { hasProblems, pictureOf, problemLines, readSurvey, type SurveyInput, type SurveyOptions } from './survey-input.ts';

/** Gives a command the options that every command with a survey has. */
export const surveyCommand = (command: Command): Command =>
  command
    .option('--as-of <day>', 'judge as of this day, such as 2026-04-11; today where it is left out')
    .option('--metric', 'print millimetres; inches where it is left out')
    .option('--seed <number>', 'seed for what is drawn by chance', '1')
    .option('--despite-problems', 'go on with what could be read; the exit code stays 2')
    .option('--json', 'write for machines');

/** What a command makes of a picture. */
export interface Made {
  /** For people. */
  readonly text: () => string | Promise<string>;
  /** For machines. */
  readonly json: () => unknown;
  readonly exit: number;
}

/**
 * Reads the survey, lists its problems, and goes on only where there are none, so that no paper is made of half a survey
 * unless somebody asks for it.
 * @returns the exit code
 */
export async function withSurvey(file: string, options: SurveyOptions, door: Door, make: (made: { readonly input: SurveyInput; readonly picture: Picture }) => Made | Promise<Made>): Promise<number> {
  const input = await readSurvey(file, options, door);
  const bad = hasProblems(input.problems);
  if (options.json !== true) door.err(problemLines(file, input.problems));
  if (bad && options.despiteProblems !== true) {
    const stopped = `${input.entries.length} entries could be read; put the problems right, or go on without them: --despite-problems`;
    if (options.json === true) door.out(`${JSON.stringify({ problems: input.problems, entriesRead: input.entries.length }, null, 2)}\n`);
    else door.err(`${stopped}\n`);
    return EXIT.badInput;
  }
  const made = await make({ input, picture: pictureOf(input, options) });
  if (options.json === true) door.out(`${JSON.stringify({ problems: input.problems, ...(made.json() as object) }, null, 2)}\n`);
  else {
    const text = await made.text();
    if (text !== '') door.out(text.endsWith('\n') ? text : `${text}\n`);
  }
  return bad ? EXIT.badInput : made.exit;
}
