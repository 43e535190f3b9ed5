import type { Command } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { instantMs, type Entry } from '../entries/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { handOverFiles } from '../print/hand-over/index.ts';
import { VERDICT_WORDS } from '../views/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import { paperOf, PAPER_OPTION } from './paper-asked.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { writeFolder } from './write-folder.ts';

interface HandoverOptions extends SurveyOptions {
  readonly output?: string;
  readonly paper?: string;
  readonly replace?: boolean;
  readonly address?: string;
}

/** `handover FILE -o FOLDER`: every paper that goes with the hammer, in one folder. */
export const handoverCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('handover <file>'))
    .description('make the whole hand-over folder: report, limits card, plan, settings, parts to make, orders, upkeep, sale, drawings, log, and a page that leads to all of them')
    .requiredOption('-o, --output <folder>', 'folder to make')
    .option(...PAPER_OPTION)
    .option('--address <address>', 'address of the hammer\'s page, for the code on the limits card')
    .option('--replace', 'write over a folder that is there')
    .action(async (file: string, options: HandoverOptions) => {
      const output = options.output ?? '';
      if (output.trim() === '') throw new BadInput(`the folder has no name; a name such as papers: ${output}`);
      const paper = paperOf(options.paper, options.metric === true);
      ended(await withSurvey(file, options, door, async ({ picture, input }) => {
        const names: string[] = [];
        const entries = untilThen(input.entries, input.asOf);
        await writeFolder(output, options.replace === true, (put) =>
          handOverFiles({ picture, entries, knowledge }, { paper, version: about.version, ...(options.address === undefined ? {} : { address: options.address }) }, async (name, content) => {
            names.push(name);
            await put(name, content);
          }));
        const { provenance, known, duty } = picture;
        return {
          text: () => `${known.identity.tag}: ${VERDICT_WORDS[duty.verdict].toLowerCase()}. ${names.length} files in ${output}; open index.html first.\nLog of ${provenance.entries} entries, SHA-256 ${provenance.logHash}\n`,
          json: () => ({ handOver: { folder: output, files: names, paper, provenance } }),
          exit: EXIT.fine,
        };
      }));
    });
};

/** The entries that count for the papers: those that a picture as of then counts, so that the log in the folder has their fingerprint. */
function untilThen(entries: readonly Entry[], asOf: string): readonly Entry[] {
  const until = instantMs(asOf) ?? Number.POSITIVE_INFINITY;
  return entries.filter((entry) => (instantMs(entry.at) ?? Number.POSITIVE_INFINITY) <= until);
}
