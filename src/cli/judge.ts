import type { Command } from 'commander';
import { placeWords, type Picture, type Verdict } from '../derived/index.ts';
import { onceItMayRun } from '../views/index.ts';
import { EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine, listUnder } from './words.ts';

/** Exit code of each verdict. */
export const VERDICT_EXIT: Readonly<Record<Verdict, number>> = {
  fit: EXIT.fit, 'fit-within-limits': EXIT.fitWithinLimits, 'not-known-yet': EXIT.notKnownYet, 'stand-down': EXIT.standDown,
};

/** `judge FILE`: what the hammer may do today, and why. */
export const judgeCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('judge <file>'))
    .description('say what the hammer of a survey may do today, within which limits, and what is missing; the exit code tells the verdict')
    .action(async (file: string, options: SurveyOptions) => {
      ended(await withSurvey(file, options, door, ({ picture }) => ({ text: () => judgementText(picture), json: () => judgementJson(picture), exit: VERDICT_EXIT[picture.duty.verdict] })));
    });
};

/** The judgement as a person reads it at the machine. */
export function judgementText(picture: Picture): string {
  const { duty, known, findings, worksheet } = picture;
  const { tag, ramClass, family, maker } = known.identity;
  const of = (grade: string): readonly string[] => findings.filter((finding) => finding.grade === grade).map((finding) => `${finding.title}${placeWords(finding)}: ${finding.shown}`);
  const counted = (['sound', 'watch', 'limited', 'stand-down', 'not-known'] as const).map((grade) => `${of(grade).length} ${grade.replace('-', ' ')}`).join(', ');
  return [
    `${tag}, ${ramClass.asWritten} ${family.replaceAll('-', ' ')} hammer${maker === undefined ? '' : `, ${maker}`}\n`, inventedLine(known.identity.invented),
    `\n${duty.sentence}\n${duty.sureWords === '' ? '' : `How sure: ${duty.sureWords}.\n`}`,
    listUnder('Why', duty.reasons.map((reason) => `${reason.sentence} [${reason.finding}]`)),
    listUnder(duty.verdict === 'stand-down' ? 'Limits that hold once what stops it is cured' : 'Limits', duty.limits.map((limit) => `${limit.sentence} [${limit.because.join(', ')}]`)),
    listUnder(duty.verdict === 'stand-down' ? 'Not known either, and settled before it may run' : 'What would settle the verdict', duty.missing.map((missing) => `${missing.title}: ${onceItMayRun(picture, missing.missing, missing.how)} (${missing.minutes} min; ${missing.missing.join(', ')})`)),
    listUnder('Limited', of('limited')),
    listUnder('To watch', of('watch')),
    notCheckedText(picture),
    listUnder('Work, in order', worksheet.jobs.filter((job) => job.state !== 'done' && job.state !== 'dropped').map((job) => `${job.number}. ${job.title} [${job.job}]`)),
    listUnder('Worth knowing', picture.problems),
    `\nFindings: ${counted}. Log ${picture.provenance.logHash.slice(0, 12)}, ${picture.provenance.entries} entries, as of ${picture.provenance.asOf.slice(0, 10)}.\n`,
  ].join('');
}

/** What was not checked is said by name, as far as a screen holds it, and by number beyond. */
function notCheckedText(picture: Picture): string {
  const open = picture.findings.filter((finding) => finding.grade === 'not-known');
  if (open.length === 0) return '';
  const named = open.slice(0, MOST_NAMED).map((finding) => `${finding.title}${placeWords(finding)}`).join('; ');
  const more = open.length - MOST_NAMED;
  return `\nNot checked, and none of it taken as good (${open.length})\n  ${named}${more > 0 ? `; and ${more} more, which the report lists` : ''}.\n`;
}

const MOST_NAMED = 12;

/** The same for machines. */
export const judgementJson = (picture: Picture): unknown => ({
  tag: picture.known.identity.tag, identity: picture.known.identity, duty: picture.duty, findings: picture.findings, worksheet: picture.worksheet,
  notChecked: picture.notChecked, remarks: picture.problems, provenance: picture.provenance,
});
