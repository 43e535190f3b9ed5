import type { Picture, PrintSystem } from '../../derived/index.ts';
import { formatQuantity, quantity } from '../../methods/quantity/index.ts';
import { costWords, hoursWords, quantityWords } from '../sentences/words.ts';
import { inSystem } from '../sentences/in-system.ts';
import type { Block } from './block.ts';

const SKILL_WORDS = { 1: 'owner', 2: 'careful amateur', 3: 'machinist or rebuilder', 4: 'specialist' } as const;

/** What is bought by the metre or the pound, in the reader's units. */
const lengthOf = (words: string, system: PrintSystem): string => (system === 'metric' ? inSystem(words, system) : words.replace(/^(\d+(?:\.\d+)?) m$/u, (_, metres: string) => formatQuantity(quantity(Number(metres), 'length'), { unit: 'ft', resolution: 0.3048, doubt: false })));

/** The worksheet: jobs in an order that the machine allows, each with why it stands where it stands. */
export function worksheetBlocks(picture: Picture): readonly Block[] {
  const { worksheet } = picture;
  if (worksheet.jobs.length === 0) return [];
  const currency = worksheet.currency ?? 'unit';
  return [
    { kind: 'heading', level: 2, text: 'Worksheet' },
    { kind: 'paragraph', text: `In this order: ${hoursWords(worksheet.hours)} in all, parts and outside work ${costWords(worksheet.cost, currency)}. Least and most are sums; everything rarely goes wrong at once.` },
    { kind: 'table', caption: 'Jobs in order', columns: ['No.', 'Job, and why here', 'Hours and skill', 'Cost'], rows: worksheet.jobs.map((job) => ({
      cells: [String(job.number), `${job.title}${job.state === 'open' ? '' : ` (${job.state})`}. ${job.whyHere}`, `${hoursWords(job.hours)}; ${SKILL_WORDS[job.skill]}${job.helpers > 0 ? `, ${job.helpers} to help` : ''}`, `${costWords(job.cost, currency)}${job.heard.length > 0 ? ' (price heard)' : ''}`],
      condition: job.urgency,
    })) },
    { kind: 'table', caption: 'Parts and materials', columns: ['For job', 'Part', 'How many', 'Cost'], rows: worksheet.jobs.flatMap((job) => job.parts.map((part) => ({ cells: [String(job.number), inSystem(part.words, picture.system), lengthOf(quantityWords(part), picture.system), `${costWords(part.cost, currency)}${part.heard ? ` (${part.source})` : ' (estimate)'}`] }))), dense: true },
    ...worksheet.problems.map((problem) => ({ kind: 'paragraph', text: problem, tone: 'next' }) as const),
  ];
}
