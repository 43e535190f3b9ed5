import { isOpen, placeWords, checkFirst, insteadJobs, type MayBeJob, type Need, type Picture, type WorksheetJob } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Block } from '../report/block.ts';
import { chanceWords } from '../sentences/chance-words.ts';
import { moneySpan, moneyWords, workHours } from '../sentences/money-words.ts';

/** Whether a job is needed, said: `may be needed, about 1 in 3`; `probably needed, about 9 in 10`. */
export const needWords = ({ chance }: Need): string => `${chance > 0.5 ? 'probably needed' : 'may be needed'}, ${chanceWords(chance)}`;

/** Why a job may be needed, every reason once. */
export const becauseWords = ({ causes }: Need): string => [...new Set(causes.map((cause) => cause.because))].join(' ');

/** What to look at first, and what that spares on average. */
export function checkWords(picture: Picture, knowledge: Knowledge, job: WorksheetJob): string {
  const check = checkFirst(picture.known, picture.findings, knowledge, job);
  if (check === undefined) return '';
  const currency = picture.worksheet.currency ?? 'unit';
  const spared = [...(check.spares.cost >= 1 ? [moneyWords(check.spares.cost, currency)] : []), ...(check.spares.hours > 0.05 ? [`${workHours(check.spares.hours)} of work`] : [])].join(' and ');
  return `Check first, ${check.minutes} min: ${check.words}.${spared === '' ? '' : ` On average it spares ${spared}.`}`;
}

/** Where a job that may be needed would come. */
export const wouldCome = (picture: Picture, job: MayBeJob): string => {
  const open = picture.worksheet.jobs.filter(isOpen);
  const before = open.find((one) => one.number >= job.number);
  return open.length === 0 ? 'by itself' : before === undefined ? 'at the end' : `before job ${before.number}`;
};

/** What nothing asks for yet and may be needed, with its chance, what a check spares, and what it would cost. */
export function mayBeBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const { mayBe = [], currency = 'unit' } = picture.worksheet;
  if (mayBe.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'What may be needed' },
    { kind: 'table', caption: 'Where the doubt of a reading lies across a limit, the job beyond it may be needed; it is in the money and the hours by its chance', columns: ['Job', 'Chance', 'Why, and what to check first', 'If needed'], rows: mayBe.map((job) => ({
      cells: [`${job.title} (${wouldCome(picture, job)})`, chanceWords(job.need.chance), [becauseWords(job.need), checkWords(picture, knowledge, job)].filter((words) => words !== '').join(' '), ifNeeded(job, currency)],
    })) },
  ];
}

const ifNeeded = (job: WorksheetJob, currency: string): string => `${moneySpan(job.cost, currency)}; about ${workHours(job.hours.likely)}`;

/** The jobs that would do in the place of a job: what each costs instead. */
export const insteadWords = (picture: Picture, knowledge: Knowledge, job: WorksheetJob): readonly string[] =>
  insteadJobs(picture.known, picture.findings, knowledge, picture.worksheet).filter((other) => other.takesPlaceOf.includes(job.job)).map((other) => `Or instead: ${other.title.toLowerCase()}, about ${workHours(other.hours.likely)}, ${moneySpan(other.cost, picture.worksheet.currency ?? 'unit')}. ${insteadLeaves(picture, job, other)}`.trim());

/** What the other way leaves as it is. */
function insteadLeaves(picture: Picture, job: WorksheetJob, other: WorksheetJob): string {
  const left = job.cures.filter((key) => !other.cures.includes(key));
  if (left.length === 0 || other.cures.length === 0) return '';
  const titles = new Map(picture.findings.map((finding) => [finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`, `${finding.title}${placeWords(finding)}`]));
  return `It does not mend: ${left.map((key) => titles.get(key) ?? key).join('; ')}.`;
}
