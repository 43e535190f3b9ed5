import type { Command } from 'commander';
import { isOpen, jobWords, toBuy, type Picture, type WorksheetJob } from '../derived/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { countWords, hoursWords, lineCostWords, moneySpan, sumsSentence, waitWords } from '../views/index.ts';
import { checkWords, doneBlocks, insteadWords, mayBeBlocks, needWords, nextBlocks } from '../views/work/index.ts';
import { blocksText } from './blocks-text.ts';
import { EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { listUnder } from './words.ts';

/** `work FILE`: the jobs in an order that the machine allows. */
export const workCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('work <file>'))
    .description('list the jobs in an order that the machine allows, each with its reason, parts, hours and rough cost')
    .action(async (file: string, options: SurveyOptions) => {
      ended(await withSurvey(file, options, door, ({ picture }) => ({ text: () => workText(picture), json: () => ({ worksheet: picture.worksheet }), exit: EXIT.fine })));
    });
};

function workText(picture: Picture): string {
  const { worksheet, known } = picture;
  const currency = currencyOf(picture);
  const open = picture.findings.filter((finding) => finding.grade === 'not-known').length;
  const unchecked = open === 0 ? '' : `${open} matters are not checked; what they would ask for is not on this list.\n`;
  if (worksheet.jobs.length === 0) return open === 0 ? `${known.identity.tag}: no work is wanted.\n` : `${known.identity.tag}: no work can be named yet. ${unchecked}`;
  return `${known.identity.tag}: ${worksheet.jobs.length} jobs, ${worksheet.jobs.filter(isOpen).length} of them open; an estimate where nothing was heard${currency === 'unit' ? ' (a unit is about one US dollar)' : ''}\n${sumsSentence(worksheet)}\n${unchecked}${blocksText(nextBlocks(picture))}${worksheet.jobs.map((job) => jobText(picture, job)).join('')}${blocksText([...mayBeBlocks(picture, knowledge), ...doneBlocks(picture, knowledge)])}${listUnder('Worth knowing', worksheet.problems)}`;
}

const currencyOf = (picture: Picture): string => picture.worksheet.currency ?? 'unit';

const checkLine = (words: string): string => (words === '' ? '' : `   ${words}\n`);

const jobText = (picture: Picture, job: WorksheetJob): string => `
${job.number}. ${job.title} [${job.job}]${job.state === 'open' ? '' : `, ${job.state}`}${job.need === undefined ? '' : `; ${needWords(job.need)}`}
   ${jobWords(picture.known, knowledge, picture.worksheet, job)}
   why here: ${job.whyHere}
   cures: ${job.cures.join(', ') || 'nothing that is open'}; ${hoursWords(job.hours)}; skill ${job.skill} of 4${job.helpers === 0 ? '' : `; helpers ${job.helpers}`}; outlay ${moneySpan(job.cost, currencyOf(picture))}
${checkLine(checkWords(picture, knowledge, job))}${insteadWords(picture, knowledge, job).map((words) => `   ${words}\n`).join('')}${toBuy(picture.worksheet).filter((line) => line.job === job.job).map((line) => `   ${line.kind}: ${line.kind === 'part' ? `${countWords(line, picture.system)} × ` : ''}${line.words}, ${lineCostWords(line, currencyOf(picture))}; ${waitWords(line)}\n`).join('')}${job.cautions.map((caution) => `   caution: ${knowledge.cautions.find((one) => one.id === caution)?.words ?? caution}\n`).join('')}`;
