import type { Command } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { knowledge } from '../knowledge/index.ts';
import { cardHtml, cardPdf, fontFace, wholeReport } from '../print/index.ts';
import { elevation, limitsCard, type ElevationView, type LimitsCard } from '../views/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import { paperOf, PAPER_OPTION } from './paper-asked.ts';
import { photographsIn } from './photographs-in.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { listUnder } from './words.ts';
import { writeBytes, writePaper } from './write-paper.ts';
import { writeText } from './write-text.ts';

interface PaperOptions extends SurveyOptions {
  readonly output?: string;
  readonly view?: string;
  readonly balloons?: boolean;
  readonly paper?: string;
  readonly photographs?: string;
  readonly address?: string;
}

/** `report FILE`: everything, as one page that prints. */
export const reportCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('report <file>'))
    .description('write the report: verdict, limits, findings, work, what was not checked, and how to compute it again')
    .option('-o, --output <file>', 'file to write, as PDF where its name ends so, else as one HTML page; the page to standard output where it is left out')
    .option(...PAPER_OPTION)
    .option('--photographs <folder>', 'folder with the photographs of the survey, for the PDF; they are known by what is in them')
    .action(async (file: string, options: PaperOptions) => {
      const paper = paperOf(options.paper, options.metric === true);
      const photographs = options.photographs === undefined ? undefined : await photographsIn(options.photographs);
      ended(await withSurvey(file, options, door, ({ picture }) => {
        const tree = wholeReport(picture, knowledge, { program: about.version });
        return { text: async () => { await writePaper(options.output, tree, paper, door, photographs); return ''; }, json: () => ({ report: tree }), exit: EXIT.fine };
      }));
    });
};

/** `card FILE`: the limits card, as text, or as a page to hang up. */
export const cardCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('card <file>'))
    .description('print the limits card as text, or write it as one sheet to hang beside the hammer')
    .option('-o, --output <file>', 'file to write, as PDF where its name ends so, else as an HTML page')
    .option(...PAPER_OPTION)
    .option('--address <address>', 'address of the hammer\'s page, for the code on the PDF')
    .action(async (file: string, options: PaperOptions) => {
      const paper = paperOf(options.paper, options.metric === true);
      ended(await withSurvey(file, options, door, ({ picture }) => {
        const card = limitsCard(picture);
        return {
          text: async () => {
            if (options.output === undefined) return cardText(card);
            if (!/\.pdf$/iu.test(options.output)) return written(options, cardHtml(card, { fontFace: await fontFace() }), door);
            await writeBytes(options.output, await cardPdf(card, { paper, ...(options.address === undefined ? {} : { address: options.address }) }), door);
            return '';
          },
          json: () => ({ card }),
          exit: EXIT.fine,
        };
      }));
    });
};

const VIEWS: readonly string[] = ['front', 'side', 'both'];

/** `draw FILE`: the hammer's own elevation. */
export const drawCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('draw <file>'))
    .description('draw the elevation of the hammer to scale from its own readings, as SVG')
    .option('-o, --output <file>', 'file to write; standard output where it is left out')
    .option('--view <view>', `one of ${VIEWS.join(', ')}`, 'both')
    .option('--no-balloons', 'leave the numbers of the parts out')
    .action(async (file: string, options: PaperOptions) => {
      const view = options.view ?? 'both';
      if (!VIEWS.includes(view)) throw new BadInput(`no such view is drawn; one of ${VIEWS.join(', ')}: ${view}`);
      ended(await withSurvey(file, options, door, ({ picture }) => {
        const svg = elevation(picture, { view: view as ElevationView, balloons: options.balloons !== false });
        return { text: async () => written(options, svg, door), json: () => ({ svg }), exit: EXIT.fine };
      }));
    });
};

async function written(options: PaperOptions, text: string, door: Door): Promise<string> {
  await writeText(options.output, text, door);
  return '';
}

const cardText = (card: LimitsCard): string => `${card.tag}: ${card.verdict.toUpperCase()}\n${card.titleBlock.invented ? 'An invented hammer.\n' : ''}${listUnder('Limits', card.limits)}${listUnder('Always', card.always)}\n${card.titleBlock.date}, ${card.titleBlock.by}; log ${card.titleBlock.log}\n`;
