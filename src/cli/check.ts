import type { Command } from 'commander';
import { EXIT, type Door } from './door.ts';
import { hasProblems, problemLines, readSurvey, type SurveyOptions } from './survey-input.ts';

/** `check FILE`: problems only. */
export const checkCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  program.command('check <file>')
    .description('list what is wrong in a survey file, each with line and column, and judge nothing')
    .option('--as-of <day>', 'a later visit is a warning; today where it is left out')
    .option('--json', 'write for machines')
    .action(async (file: string, options: SurveyOptions) => {
      const { entries, problems } = await readSurvey(file, options, door);
      const count = (severity: string): number => problems.filter((problem) => problem.severity === severity).length;
      if (options.json === true) door.out(`${JSON.stringify({ entries: entries.length, problems }, null, 2)}\n`);
      else door.out(`${problemLines(file, problems)}${file}: ${entries.length} entries, ${count('problem')} problems, ${count('warning')} warnings\n`);
      ended(hasProblems(problems) ? EXIT.badInput : EXIT.fine);
    });
};
