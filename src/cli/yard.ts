import type { Command } from 'commander';
import { VERDICT_WORDS } from '../views/index.ts';
import { EXIT, type Door } from './door.ts';
import { VERDICT_EXIT } from './judge.ts';
import { hasProblems, pictureOf, problemLines, readSurvey, type SurveyOptions } from './survey-input.ts';
import { surveyCommand } from './with-survey.ts';
import { table } from './words.ts';

/** `yard FILE...`: all hammers with their verdicts, one line each. */
export const yardCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('yard <files...>'))
    .description('list the hammers of several surveys, one line each; the exit code is that of the worst verdict')
    .action(async (files: readonly string[], options: SurveyOptions) => {
      const rows: { readonly file: string; readonly tag: string; readonly hammerClass: string; readonly verdict: string; readonly exit: number; readonly sentence: string }[] = [];
      let bad = false;
      for (const file of files) {
        const input = await readSurvey(file, options, door);
        door.err(problemLines(file, input.problems));
        if (hasProblems(input.problems)) bad = true;
        if (hasProblems(input.problems) && options.despiteProblems !== true) continue;
        const { duty, known } = pictureOf(input, options);
        rows.push({ file, tag: known.identity.tag, hammerClass: known.identity.ramClass.asWritten, verdict: VERDICT_WORDS[duty.verdict], exit: VERDICT_EXIT[duty.verdict], sentence: duty.sentence });
      }
      if (options.json === true) door.out(`${JSON.stringify({ hammers: rows.map(({ exit: _exit, ...row }) => row) }, null, 2)}\n`);
      else if (rows.length > 0) door.out(`${table(rows.map((row) => [row.tag, row.hammerClass, row.verdict, row.sentence]))}\n`);
      ended(bad ? EXIT.badInput : Math.max(EXIT.fine, ...rows.map((row) => row.exit)));
    });
};
