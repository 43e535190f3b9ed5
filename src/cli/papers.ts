import type { Command } from 'commander';
import { knowledge } from '../knowledge/index.ts';
import { outlook } from '../derived/index.ts';
import { cardHtml, fontFace, reportHtml } from '../print/index.ts';
import { elevation, limitsCard, reportTree, type ElevationView, type LimitsCard } from '../views/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { listUnder } from './words.ts';
import { writeText } from './write-text.ts';

interface PaperOptions extends SurveyOptions {
  readonly output?: string;
  readonly view?: string;
  readonly balloons?: boolean;
}

/** `report FILE`: everything, as one page that prints. */
export const reportCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('report <file>'))
    .description('write the report as one HTML page: verdict, limits, findings, work, what was not checked, and how to compute it again')
    .option('-o, --output <file>', 'file to write; standard output where it is left out')
    .action(async (file: string, options: PaperOptions) => {
      ended(await withSurvey(file, options, door, ({ picture }) => {
        const tree = reportTree(picture, knowledge, { elevation: elevation(picture), outlook: outlook(picture, picture.provenance.seed) });
        return { text: async () => written(options, reportHtml(tree, { fontFace: await fontFace() }), door), json: () => ({ report: tree }), exit: EXIT.fine };
      }));
    });
};

/** `card FILE`: the limits card, as text, or as a page to hang up. */
export const cardCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('card <file>'))
    .description('print the limits card as text, or write it as an HTML page to hang beside the hammer')
    .option('-o, --output <file>', 'HTML file to write')
    .action(async (file: string, options: PaperOptions) => {
      ended(await withSurvey(file, options, door, ({ picture }) => {
        const card = limitsCard(picture);
        return {
          text: async () => (options.output === undefined ? cardText(card) : written(options, cardHtml(card, { fontFace: await fontFace() }), door)),
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
