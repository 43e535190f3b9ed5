import type { Picture } from '../../derived/index.ts';
import { costWords, hoursWords, quantityWords } from '../sentences/words.ts';
import type { Block } from './block.ts';

const SKILL_WORDS = { 1: 'owner', 2: 'careful amateur', 3: 'machinist or rebuilder', 4: 'specialist' } as const;

/** The worksheet: jobs in an order that the machine allows, each with why it stands where it stands. */
export function worksheetBlocks(picture: Picture): readonly Block[] {
  const { worksheet } = picture;
  if (worksheet.jobs.length === 0) return [];
  const currency = worksheet.currency ?? 'unit';
  return [
    { kind: 'heading', level: 2, text: 'Worksheet' },
    { kind: 'paragraph', text: `In this order: ${hoursWords(worksheet.hours)} in all, parts and outside work ${costWords(worksheet.cost, currency)}. Least and most are sums; everything rarely goes wrong at once.` },
    { kind: 'table', caption: 'Jobs in order', columns: ['No.', 'Job', 'Why here', 'Hours', 'Skill', 'Cost'], rows: worksheet.jobs.map((job) => ({
      cells: [String(job.number), `${job.title}${job.state === 'open' ? '' : ` (${job.state})`}`, job.whyHere, hoursWords(job.hours), `${SKILL_WORDS[job.skill]}${job.helpers > 0 ? `, ${job.helpers} to help` : ''}`, `${costWords(job.cost, currency)}${job.heard.length > 0 ? ' (price heard)' : ''}`],
      condition: job.urgency,
    })) },
    { kind: 'table', caption: 'Parts and materials', columns: ['For job', 'Part', 'How many', 'Cost'], rows: worksheet.jobs.flatMap((job) => job.parts.map((part) => ({ cells: [String(job.number), part.words, quantityWords(part), `${costWords(part.cost, currency)}${part.heard ? ` (${part.source})` : ' (estimate)'}`] }))) },
    ...worksheet.problems.map((problem) => ({ kind: 'paragraph', text: problem, tone: 'next' }) as const),
  ];
}
