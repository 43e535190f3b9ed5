import type { Command } from 'commander';
import { BadInput, EXIT, type Door } from './door.ts';
import { hasProblems, pictureOf, problemLines, readSurvey, type SurveyInput, type SurveyOptions } from './survey-input.ts';

/** `check FILE...`: problems only. */
export const checkCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  program.command('check <files...>')
    .description('list what is wrong in survey files, each with line and column, and which readings are at odds; judge nothing')
    .option('--as-of <day>', 'a later visit is a warning; today where it is left out')
    .option('--json', 'write for machines')
    .action(async (files: readonly string[], options: SurveyOptions) => {
      const checked: { readonly file: string; readonly entries: number; readonly problems: readonly object[]; readonly remarks: readonly string[] }[] = [];
      let bad = false;
      for (const file of files) {
        const input = await readSurvey(file, options, door);
        const { entries, problems } = input;
        bad ||= hasProblems(problems);
        const remarks = remarksOf(input, options);
        checked.push({ file, entries: entries.length, problems, remarks });
        if (options.json === true) continue;
        const of = (severity: string): number => problems.filter((problem) => problem.severity === severity).length;
        door.out(`${problemLines(file, problems)}${remarks.map((remark) => `${file}: ${remark}\n`).join('')}${file}: ${counted(entries.length, 'entry', 'entries')}, ${counted(of('problem'), 'problem', 'problems')}, ${counted(of('warning') + remarks.length, 'warning', 'warnings')}\n`);
      }
      if (options.json === true) {
        const [only] = checked;
        door.out(`${JSON.stringify(checked.length === 1 && only !== undefined ? only : { files: checked }, null, 2)}\n`);
      }
      ended(bad ? EXIT.badInput : EXIT.fine);
    });
};

/** What the whole picture remarks on: readings at odds, names that nobody knows. Nothing where there is no hammer yet. */
function remarksOf(input: SurveyInput, options: SurveyOptions): readonly string[] {
  try {
    return pictureOf(input, options).problems;
  } catch (failure) {
    if (failure instanceof BadInput) return [];
    throw failure;
  }
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
