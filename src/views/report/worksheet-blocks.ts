import { isOpen, toBuy, type Picture, type WorksheetJob } from '../../derived/index.ts';
import { countWords, lineCostWords, sumsSentence, waitWords } from '../sentences/buy-rows.ts';
import { inSystem } from '../sentences/in-system.ts';
import { moneySpan } from '../sentences/money-words.ts';
import { hoursWords } from '../sentences/words.ts';
import type { Block } from './block.ts';

const SKILL_WORDS = { 1: 'owner', 2: 'careful amateur', 3: 'machinist or rebuilder', 4: 'specialist' } as const;

/** The worksheet: open jobs in an order that the machine allows, each with why it stands where it stands; what is done stands apart. */
export function worksheetBlocks(picture: Picture): readonly Block[] {
  const { worksheet, system } = picture;
  if (worksheet.jobs.length === 0) return [];
  const currency = worksheet.currency ?? 'unit';
  const open = worksheet.jobs.filter(isOpen);
  const lines = toBuy(worksheet);
  const closed = (state: WorksheetJob['state']): readonly string[] => worksheet.jobs.filter((job) => job.state === state).map((job) => job.title);
  return [
    { kind: 'heading', level: 2, text: 'Worksheet' },
    ...(open.length === 0 ? [{ kind: 'paragraph', text: 'No job is open.' } as const] : [
      { kind: 'paragraph', text: `In this order. ${sumsSentence(worksheet)}` } as const,
      { kind: 'table', caption: 'Open jobs in order', columns: ['No.', 'Job, and why here', 'Hours and skill', 'Cost'], rows: open.map((job) => ({
        cells: [String(job.number), `${job.title}${job.state === 'open' ? '' : ` (${job.state})`}. ${job.whyHere}`, `${hoursWords(job.hours)}; ${SKILL_WORDS[job.skill]}${job.helpers > 0 ? `, ${job.helpers} to help` : ''}`, `${moneySpan(job.cost, currency)}${job.heard.some((one) => one.counted) ? ' (price heard)' : ''}`],
        condition: job.urgency,
      })) } as const,
    ]),
    ...(lines.length === 0 ? [] : [{ kind: 'table', caption: 'Parts, materials and work of others', columns: ['For job', 'What', 'How many', 'Wait', 'Cost'], rows: lines.map((line) => ({ cells: [String(line.number), inSystem(line.words, system), countWords(line, system), waitWords(line), lineCostWords(line, currency)] })), dense: true } as const]),
    ...(['done', 'dropped'] as const).flatMap((state) => (closed(state).length === 0 ? [] : [{ kind: 'paragraph', text: `${state === 'done' ? 'Done' : 'Dropped'}, and not among the open jobs: ${closed(state).join('; ')}.` } as const])),
    ...worksheet.problems.map((problem) => ({ kind: 'paragraph', text: problem, tone: 'next' }) as const),
  ];
}
