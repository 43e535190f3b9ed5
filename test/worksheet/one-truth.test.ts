import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { isOpen, picture, toBuy, type Picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { reportTree, type Block } from '../../src/views/report/index.ts';
import { handOverSheet, type SheetId } from '../../src/views/work/index.ts';

const folder = fileURLToPath(new URL('../../examples/', import.meta.url));
const HAMMERS = readdirSync(folder).filter((name) => name.endsWith('.yaml')).map((name) => {
  const { entries } = readSurveyFile(readFileSync(`${folder}${name}`, 'utf8'));
  const found = picture(entries, knowledge, '2026-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error(`${name} enrols no hammer`);
  return { tag: found.known.identity.tag, found, entries };
});

type Table = Extract<Block, { kind: 'table' }>;
const tables = (blocks: readonly Block[], columns: readonly string[]): readonly (readonly string[])[] =>
  blocks.filter((block): block is Table => block.kind === 'table' && block.columns.join() === columns.join()).flatMap((table) => table.rows.map((row) => row.cells));
const text = (blocks: readonly Block[]): string => blocks.map((block) => ('text' in block ? block.text : '')).join('\n');

test.each(HAMMERS)('what one paper says of $tag in money, hours and days, every other says too', ({ found, entries }: { found: Picture; entries: Parameters<typeof handOverSheet>[1]['entries'] }) => {
  const sheet = (id: SheetId): readonly Block[] => handOverSheet(id, { picture: found, entries, knowledge }).blocks;
  const report = reportTree(found, knowledge).blocks;
  const [worksheet, order] = [sheet('worksheet'), sheet('order')];
  const open = found.worksheet.jobs.filter(isOpen);

  // Each open job, by its number: hours and cost of the report against those of the worksheet.
  const inReport = tables(report, ['No.', 'Job, and why here', 'Hours and skill', 'Cost']);
  const inSheet = new Map(tables(worksheet, ['No.', 'Job', 'What to do', 'Hours, who, cost']).map((cells) => [cells[0], cells[3]]));
  expect(inReport.map((cells) => Number(cells[0]))).toEqual(open.map((job) => job.number));
  // The worksheet adds what was said with a price; the figures are the same.
  const figures = (words: string | undefined): string | undefined => words?.replace(/\(price heard: .*\)$/u, '(price heard)');
  for (const [number = '', , hours, cost] of inReport) expect(figures(inSheet.get(number))).toBe(`${hours}; ${cost}`);

  // Each thing to buy: how many, wait and cost, on report, worksheet and order sheet.
  const bought = [['What', 'How many', 'For job', 'Wait', 'Cost']] as const;
  const asReport = tables(report, ['For job', 'What', 'How many', 'Wait', 'Cost']).map(([job, what, count, wait, cost]) => `${job}|${what}|${count}|${wait}|${cost}`).sort();
  const lines = (blocks: readonly Block[]) => bought.flatMap((columns) => tables(blocks, columns));
  // Worksheet and order sheet say behind each thing the size that its drawing asks for, both the same; the report names the thing.
  expect(lines(worksheet)).toEqual(lines(order));
  for (const blocks of [worksheet, order]) expect(lines(blocks).map(([what, count, job, wait, cost]) => `${job?.split('.')[0]}|${what?.replace(/: .*$/u, '')}|${count}|${wait}|${cost}`).sort()).toEqual(asReport);
  expect(asReport.length).toBe(toBuy(found.worksheet).length);

  // The sums: one sentence, and the lines add up to it.
  const sums = /The open jobs added up: [^\n]*\./.exec(text(report))?.[0];
  for (const blocks of [worksheet, order]) expect(/The open jobs added up: [^\n]*?goes wrong at once\./.exec(text(blocks))?.[0]).toBe(/The open jobs added up: [^\n]*?goes wrong at once\./.exec(sums ?? '')?.[0]);
  for (const end of ['least', 'likely', 'most'] as const) expect(toBuy(found.worksheet).reduce((sum, line) => sum + line.cost[end], 0)).toBeCloseTo(found.worksheet.cost[end], 6);

  // No job that is done stands among the open ones.
  for (const job of found.worksheet.jobs.filter((one) => !isOpen(one))) expect(inReport.some((cells) => cells[1]?.startsWith(job.title))).toBe(false);
});

test('what was heard stands on the order sheet with its kind, its day, who said it and how long it takes', () => {
  const hammer = HAMMERS.find((one) => one.tag === 'SF-40');
  if (hammer === undefined) throw new Error('SF-40 is not among the examples');
  const rows = tables(handOverSheet('order', { picture: hammer.found, entries: hammer.entries, knowledge }).blocks, ['What', 'How many', 'For job', 'Wait', 'Cost']);
  const of = (title: string): readonly string[] | undefined => rows.find((cells) => cells[2]?.endsWith(title))?.slice(3);
  // From the survey file: 180 quoted with 35 days, 60 heard, 25 listed.
  expect(of('Make or buy a new lower die')).toEqual(['35 days, as said', '180 units (quoted on 2025-06-21 by a machine shop in the next valley)']);
  expect(of('Make and fit a filler plate')).toEqual(['to be asked', '60 units (heard on 2025-06-21 by Ada Quill)']);
  expect(of('Fit a new key')).toEqual(['to be asked', '25 units (listed on 2025-06-21)']);
  expect(of('Dress the die faces')?.[1]).toBe('6 to 16 units, likely 10 (estimate, nothing heard)');
});
