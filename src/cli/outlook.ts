import type { Command } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { outlook } from '../derived/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { readQuantity } from '../methods/quantity/index.ts';
import { OUTLOOK_TITLES, outlookSheet, outlookSheetBlocks, partsOfSheet, type MovingAsked, type OutlookGround, type OutlookId } from '../views/index.ts';
import { blocksText } from './blocks-text.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import { paperOf, PAPER_OPTION } from './paper-asked.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine } from './words.ts';
import { writePaper } from './write-paper.ts';

interface OutlookOptions extends SurveyOptions {
  readonly output?: string;
  readonly paper?: string;
  readonly door?: string;
  readonly floor?: string;
}

/** What is typed for each sheet, and what it says. */
const COMMANDS: readonly (readonly [name: string, id: OutlookId, says: string])[] = [
  ['forge', 'capacity', 'say what it forges: the largest bar, what a full blow takes off, blows in a heat'],
  ['oil', 'oiling', 'give the oiling round: where, how much, how often, and what to open first'],
  ['power', 'power', 'say what its motor draws and what to beware of, for the electrician'],
  ['ground', 'ground', 'say what it stands on, how far that moves and who may feel it, with a block to talk about'],
  ['move', 'moving', 'say what it weighs, at which lean it goes over, and what slings, floor and door ask for'],
];

/** `forge`, `oil`, `power`, `ground` and `move`: one sheet each, as text, or as PDF or HTML with -o. */
export const outlookCommands = (program: Command, door: Door, ended: (exit: number) => void): void => {
  for (const [name, id, says] of COMMANDS) {
    const command = surveyCommand(program.command(`${name} <file>`))
      .description(`${says}; write the sheet with -o`)
      .option('-o, --output <file>', 'file to write, as PDF where its name ends so, else as an HTML page')
      .option(...PAPER_OPTION);
    if (id === 'moving') command.option('--door <size>', 'width and height of the door in the clear, such as "36 in x 80 in"').option('--floor <load>', 'what the floor carries, such as "150 psf" or "7 kPa"');
    command.action(async (file: string, options: OutlookOptions) => {
      const paper = paperOf(options.paper, options.metric === true);
      const moving = movingAsked(options);
      ended(await withSurvey(file, options, door, async ({ picture }) => {
        const ground: OutlookGround = { picture, outlook: outlook(picture, picture.provenance.seed), knowledge, program: about.version, ...(moving === undefined ? {} : { moving }) };
        if (options.output !== undefined) await writePaper(options.output, outlookSheet(id, ground), paper, door);
        const { identity } = picture.known;
        return {
          text: () => (options.output === undefined ? `${identity.tag}: ${OUTLOOK_TITLES[id].title.toLowerCase()}\n${inventedLine(identity.invented)}${blocksText(outlookSheetBlocks(id, ground))}` : ''),
          json: () => {
            const { answer, measureFirst, assumed, doubt, sources } = partsOfSheet(id, ground);
            return { sheet: { id, title: OUTLOOK_TITLES[id].title, answer, measureFirst, assumed, doubt, sources, values: Object.values(ground.outlook.values).filter((value) => value.key.startsWith(`${id}.`)), blocks: outlookSheetBlocks(id, ground) }, provenance: picture.provenance };
          },
          exit: EXIT.fine,
        };
      }));
    });
  }
};

/** @throws BadInput where door or floor cannot be read */
function movingAsked({ door, floor }: OutlookOptions): MovingAsked | undefined {
  if (door === undefined && floor === undefined) return undefined;
  const read = (text: string, dimension: 'length' | 'pressure', field: string): number => {
    const reading = readQuantity(text.trim(), { dimension, field });
    if (!reading.ok) throw new BadInput(`${field}: ${reading.problem.message}; ${reading.problem.expected}: ${text}`);
    return reading.quantity.value;
  };
  const sides = door?.split(/\s*[x×]\s*/u);
  if (sides !== undefined && sides.length !== 2) throw new BadInput(`the door cannot be read; width and height, such as 36 in x 80 in: ${door ?? ''}`);
  return {
    ...(sides === undefined ? {} : { door: { width: read(sides[0] ?? '', 'length', 'door width'), height: read(sides[1] ?? '', 'length', 'door height') } }),
    ...(floor === undefined ? {} : { floor: { rating: read(floor, 'pressure', 'floor') } }),
  };
}
