import type { Command } from 'commander';
import { inspectionRecord, looksOverTime, wearOf, type Picture } from '../derived/index.ts';
import type { Entry } from '../entries/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { acceptanceBlocks, acceptanceOf, blowToExpect, calendarOf, dueBlocks, inspectionBlocks, looksBlocks, planOfUpkeep, settingBlocks, settingLines, wearBlocks } from '../views/work/index.ts';
import { blocksText } from './blocks-text.ts';
import { EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine } from './words.ts';
import { writeText } from './write-text.ts';

interface UpkeepOptions extends SurveyOptions {
  readonly calendar?: string;
}

/** `upkeep FILE`: what is due, wear, acceptance of the last trial, the setting sheet, the inspection record. */
export const upkeepCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('upkeep <file>'))
    .description('say what is due and when, how it wears, whether the last trial accepts it, how it should be set; write the calendar with --calendar')
    .option('--calendar <file>', 'write what is due as a calendar file (iCalendar); - for standard output')
    .action(async (file: string, options: UpkeepOptions) => {
      ended(await withSurvey(file, options, door, async ({ picture, input: { entries } }) => {
        if (options.calendar !== undefined) await writeText(options.calendar, calendarOf(picture, entries), door);
        return { text: () => (options.calendar === '-' ? '' : upkeepText(picture, entries)), json: () => ({ upkeep: upkeepJson(picture, entries) }), exit: EXIT.fine };
      }));
    });
};

function upkeepText(picture: Picture, entries: readonly Entry[]): string {
  const { identity } = picture.known;
  return [
    `${identity.tag}: upkeep\n`, inventedLine(identity.invented),
    blocksText([...dueBlocks(picture, entries), ...acceptanceBlocks(picture, blowToExpect(picture)), ...wearBlocks(picture, entries, knowledge), ...looksBlocks(picture, entries), { kind: 'heading', level: 2, text: 'Setting sheet' }, ...settingBlocks(picture, knowledge), ...inspectionBlocks(picture, knowledge)]),
  ].join('');
}

const upkeepJson = (picture: Picture, entries: readonly Entry[]): unknown => ({
  plan: planOfUpkeep(picture, entries), acceptance: acceptanceOf(picture, blowToExpect(picture)), looks: looksOverTime(entries, picture.provenance.asOf),
  wear: wearOf(picture.known, entries, knowledge, picture.provenance.asOf).map(({ forecast, ...wear }) => ({ ...wear, forecast: forecast.state === 'fitted' ? { state: forecast.state, rate: forecast.rate, rateInterval: forecast.rateInterval, wearShown: forecast.wearShown } : forecast })),
  settings: settingLines(picture), inspection: inspectionRecord(picture.known, picture.findings, picture.duty) ?? null,
});
