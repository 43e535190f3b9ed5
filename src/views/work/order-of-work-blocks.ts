import { cheaperHere, jobWords, nextJob, type Picture, type WorksheetJob } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Block } from '../report/block.ts';
import { hoursWords } from '../sentences/words.ts';
import { moneySpan } from '../sentences/money-words.ts';
import { findingNames } from './budget-blocks.ts';
import { checkWords, insteadWords, needWords } from './need-blocks.ts';

export const SKILL_WORDS = { 1: 'owner', 2: 'careful amateur', 3: 'machinist or rebuilder', 4: 'specialist' } as const;

/** What comes next and why, in a line or two. */
export function nextBlocks(picture: Picture): readonly Block[] {
  const next = nextJob(picture.worksheet);
  if (next === undefined) return [];
  return [{ kind: 'paragraph', tone: 'next', text: `Next: ${next.number}. ${next.title}. ${nextBecause(picture, next)}` }];
}

function nextBecause({ worksheet }: Picture, next: WorksheetJob): string {
  if (next.stage === 0) return 'It makes the hammer safe to work on, which comes before everything else.';
  if (next.state === 'started') return 'It was begun, and what stops or limits the hammer waits for it.';
  const first = worksheet.jobs.find((job) => job.state !== 'done' && job.state !== 'dropped');
  return first?.job === next.job ? 'It is the first in the order of work.' : 'The order of work has others before it that do not hold it up: this is the first that the worst finding waits for.';
}

/** The jobs step by step, each step with why it comes when it comes, each job with what it waits for. */
export function orderOfWorkBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const { jobs, problems } = picture.worksheet;
  if (jobs.length === 0) return [];
  const steps: WorksheetJob[][] = [];
  for (const job of jobs) {
    const last = steps.at(-1);
    if (last?.[0]?.stage === job.stage) last.push(job);
    else steps.push([job]);
  }
  return [
    { kind: 'heading', level: 2, text: jobs.every((job) => job.state === 'done' || job.state === 'dropped') ? 'Work done' : 'Order of work' },
    ...problems.map((text) => ({ kind: 'paragraph', tone: 'next', text }) as const),
    ...steps.flatMap((held): readonly Block[] => {
      const stage = knowledge.stages.find((one) => one.number === held[0]?.stage);
      return [
        { kind: 'heading', level: 3, text: stage === undefined ? 'Anywhere' : `Step ${stage.number}: ${stage.title.toLowerCase()}` },
        { kind: 'table', caption: stage?.because ?? 'Jobs of no step', columns: ['No.', 'Job', 'What to do', 'Hours, who, cost'], rows: held.map((job) => ({ ...(job.state === 'done' || job.state === 'dropped' ? {} : { condition: job.urgency }), cells: cellsOf(picture, knowledge, job) })) },
      ];
    }),
  ];
}

function cellsOf(picture: Picture, knowledge: Knowledge, job: WorksheetJob): readonly string[] {
  const { worksheet } = picture;
  const titles = new Map(worksheet.jobs.map((one) => [one.job, `${one.number}`]));
  const { after: reasons = [] } = knowledge.jobs.find((one) => one.id === job.job) ?? {};
  const cheaper = cheaperHere(picture, knowledge, job);
  const waiting = reasons.filter((one) => job.after.includes(one.job));
  // What it waits for by the same reason stands before it together.
  const waits = [...new Set(waiting.map((one) => one.because))].map((because) => `${waiting.filter((one) => one.because === because).map((one) => titles.get(one.job) ?? one.job).join(' and ')}: ${because}`);
  const rest = job.after.filter((id) => !reasons.some((one) => one.job === id));
  const waitWords = rest.length > 3 ? 'all others' : [...waits, ...rest.map((id) => titles.get(id) ?? id)].join('; ');
  return [
    String(job.number), `${job.title}${job.state === 'open' ? '' : ` (${job.state})`}${job.need === undefined ? '' : `; ${needWords(job.need)}`}`,
    [jobWords(picture.known, knowledge, worksheet, job), whatFor(picture, knowledge, job), job.again ?? '', job.need === undefined ? '' : checkWords(picture, knowledge, job), ifFoundWords(picture, job), waitWords === '' ? '' : `Not before ${waitWords}.`, cheaper === undefined ? '' : `Cheaper: ${cheaper}`, ...insteadWords(picture, knowledge, job)].filter((words) => words !== '').join(' '),
    `${hoursWords(job.hours)}; ${SKILL_WORDS[job.skill]}${job.helpers > 0 ? `, ${job.helpers} to help` : ''}; ${moneySpan(job.cost, worksheet.currency ?? 'unit')}${job.heard.length > 0 ? ` (${heardOf(job)})` : ''}`,
  ];
}

/** What it is done for, where its words leave that to the findings. */
function whatFor(picture: Picture, knowledge: Knowledge, job: WorksheetJob): string {
  if (knowledge.jobs.find((one) => one.id === job.job)?.namesWhatFor !== true) return '';
  const names = findingNames(picture);
  const named = job.cures.flatMap((key) => names.get(key) ?? []);
  return named.length === 0 ? '' : `Here: ${named.map((name) => `${name.charAt(0).toLowerCase()}${name.slice(1)}`).join('; ')}.`;
}

/** What a look leads to where it finds the fault, with its money: no sum holds it before that. */
function ifFoundWords({ worksheet }: Picture, job: WorksheetJob): string {
  const next = worksheet.ifFound?.find((one) => one.after.includes(job.job));
  return next === undefined ? '' : `If it is found: ${next.title.charAt(0).toLowerCase()}${next.title.slice(1)}, ${moneySpan(next.cost, worksheet.currency ?? 'unit')}; ${hoursWords(next.hours)}; in no sum here.`;
}

/** A price that was heard, with what was said of it; and, of a whole job that a specialist is paid for, that his hours are in it. */
function heardOf({ heard, wholePrice, skill }: WorksheetJob): string {
  const said = heard.flatMap((one) => (one.words === undefined ? [] : [`"${one.words}"`]));
  return `price heard${said.length === 0 ? '' : `: ${said.join('; ')}`}${wholePrice !== undefined && skill === 4 ? '; the hours of whoever is paid for it are in it, and ask which are not' : ''}`;
}
