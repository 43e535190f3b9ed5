import { join } from 'node:path';
import type { Command } from 'commander';
import type { Picture } from '../derived/index.ts';
import { partsToMake, type PartToMake } from '../derived/making/index.ts';
import { partFiles } from '../print/hand-over/index.ts';
import { sizeWords } from '../views/making/index.ts';
import { drawnParts, makingBlocks } from '../views/work/index.ts';
import { blocksText } from './blocks-text.ts';
import { EXIT, type Door } from './door.ts';
import { paperOf, PAPER_OPTION } from './paper-asked.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine, listUnder } from './words.ts';
import { writeFolder } from './write-folder.ts';

interface MakeOptions extends SurveyOptions {
  readonly output?: string;
  readonly paper?: string;
  readonly replace?: boolean;
}

/** `make FILE`: which parts are to be made, with their drawings, and which cannot be drawn and why. */
export const makeCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('make <file>'))
    .description('say which parts are to be made and with which sizes, and what cannot be drawn and why; write the drawings as PDF, SVG and DXF with -o')
    .option('-o, --output <folder>', 'folder to write the drawings into')
    .option(...PAPER_OPTION)
    .option('--replace', 'write over a folder that is there')
    .action(async (file: string, options: MakeOptions) => {
      const paper = paperOf(options.paper, options.metric === true);
      ended(await withSurvey(file, options, door, async ({ picture }) => {
        const makings = partsToMake(picture);
        const parts = drawnParts(makings);
        if (options.output !== undefined && parts.length > 0) {
          const { output } = options;
          await writeFolder(output, options.replace === true, async (put) => {
            for (const part of parts) for (const one of await partFiles(picture, part, paper)) await put(one.name, one.content);
          });
          door.err(`written: ${parts.map((part) => join(output, `${part.id}.pdf`)).join(', ')} and beside them SVG and DXF\n`);
        }
        if (options.output !== undefined && parts.length === 0) door.err('nothing written: no part has a drawing\n');
        return { text: () => makeText(picture, parts), json: () => ({ parts: makings }), exit: EXIT.fine };
      }));
    });
};

function makeText(picture: Picture, parts: readonly PartToMake[]): string {
  const { identity } = picture.known;
  return [`${identity.tag}: parts to make\n`, inventedLine(identity.invented), blocksText(makingBlocks(picture)), ...parts.map((part) => listUnder(`${part.title}, sizes in ${picture.system === 'inch' ? 'inches' : 'millimetres'}`, [...part.dimensions.map((one) => `${one.title}: ${sizeWords(one, picture.system)}`), ...part.notes]))].join('');
}
