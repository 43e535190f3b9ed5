import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { isOpen, moneyAndTime } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import type { Block } from '../../src/views/report/index.ts';
import { reportTree } from '../../src/views/report/index.ts';
import { moneyBlocks, spreadBlocks } from '../../src/views/work/money-blocks.ts';
import { orderOfWorkBlocks } from '../../src/views/work/order-of-work-blocks.ts';
import { pictureOf, surveyed } from '../print/paper-cases.ts';
import { wornHammer } from './worn-hammer.ts';

const examples = readdirSync(fileURLToPath(new URL('../../examples/', import.meta.url))).filter((name) => name.endsWith('.yaml')).map((name) => name.replace('.yaml', ''));
const HAMMERS = [...examples.map((name) => ({ name, entries: surveyed(name) })), { name: 'a worn hammer', entries: wornHammer().entries }];

/** `44 h 45 min`, `5.5 h`, `35 min` in minutes. */
const minutes = (words: string): number => Number(/([\d.]+) h/.exec(words)?.[1] ?? 0) * 60 + Number(/(\d+) min/.exec(words)?.[1] ?? 0);
const ends = (words: string): readonly number[] => { const [, least, most, likely] = /^(.+?) to (.+?), likely (.+)$/.exec(words) ?? [words, words, words, words]; return [least, likely, most].map((one) => minutes(one ?? '')); };
const text = (blocks: readonly Block[]): string => blocks.flatMap((block) => ('text' in block ? [block.text] : [])).join('\n');

describe.each(HAMMERS)('$name', ({ entries }) => {
  const found = pictureOf(entries, 'inch');
  const money = moneyAndTime(found.worksheet, knowledge, 1);
  const open = found.worksheet.jobs.some(isOpen);

  test('the hours printed for the jobs add up to the hours printed as their sum, on worksheet and first page', () => {
    if (!open) return;
    const rows = orderOfWorkBlocks(found, knowledge).flatMap((block) => (block.kind === 'table' ? block.rows.filter((row) => row.condition !== undefined).map((row) => ends((row.cells[3] ?? '').split(';')[0] ?? '')) : []));
    const added = [0, 1, 2].map((end) => rows.reduce((sum, row) => sum + (row[end] ?? Number.NaN), 0));
    const said = /The open jobs added up: (.+?) of work;/.exec(text(moneyBlocks(found, money)))?.[1] ?? '';
    expect(ends(said)).toEqual(added);
    expect(JSON.stringify(reportTree(found, knowledge))).toContain(`${said}; parts and outside work`);
  });

  test('where nine in ten lies above the most of the sum, the paper says why and names what may be needed', () => {
    const said = text(moneyBlocks(found, money));
    const { worksheet } = found;
    const above = open && (money.cost.p90 > worksheet.cost.most || money.hours.p90 > worksheet.hours.most);
    expect(said.includes('That is why nine in ten lies above the most')).toBe(above);
    const onlyMayBe = open ? (worksheet.mayBe ?? []) : [];
    for (const job of onlyMayBe) expect(said.toLowerCase()).toContain(job.title.toLowerCase());
    // A driver of the spread that only such a job brings says so.
    const drivers = JSON.stringify(spreadBlocks(found, money));
    for (const { words } of money.hourDrivers.slice(0, 5)) if (onlyMayBe.some((job) => words.startsWith(`${job.title},`))) expect(drivers).toContain(words);
  });
});
