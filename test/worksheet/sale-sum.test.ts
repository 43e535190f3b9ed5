import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { picture, pictureToday, type Picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import type { Block } from '../../src/views/report/index.ts';
import { saleOf, saleSheetBlocks } from '../../src/views/work/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf, wornHammer } from './worn-hammer.ts';

const folder = fileURLToPath(new URL('../../examples/', import.meta.url));
const examples = readdirSync(folder).filter((name) => name.endsWith('.yaml')).map((name) => {
  const found = picture(readSurveyFile(readFileSync(`${folder}${name}`, 'utf8')).entries, knowledge, '2026-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error(`${name} enrols no hammer`);
  return found;
});
const HAMMERS = [...examples, pictureOf(wornHammer()), pictureOf(new LogOf('50 lb', 'coil-and-toggle'))].map((found) => ({ tag: found.known.identity.tag, found }));

type Table = Extract<Block, { kind: 'table' }>;
const money = (text: string): number => Number(text.replace(/[^\d.−]/g, '').replace('−', '-'));
const table = (blocks: readonly Block[], start: string): Table | undefined => blocks.find((block): block is Table => block.kind === 'table' && block.caption.startsWith(start));

test.each(HAMMERS)('a buyer can add up the sale sheet of $tag', ({ found }: { found: Picture }) => {
  const sale = saleOf(found, knowledge);
  const blocks = saleSheetBlocks(found, sale);
  const rows = table(blocks, 'How it adds up')?.rows.map((row) => row.cells) ?? [];
  const lines = rows.slice(0, -1).map((cells) => money(cells[1] ?? ''));
  const total = money(rows.at(-1)?.[2] ?? '');
  // What is printed adds up to what is printed, to the unit, and each line to what it leaves.
  expect(lines.reduce((sum, line) => sum + line, 0)).toBe(total);
  rows.slice(0, -1).forEach((cells, index) => expect(money(cells[2] ?? '')).toBe(lines.slice(0, index + 1).reduce((sum, line) => sum + line, 0)));
  // The end is the figure of the headline.
  const headline = blocks.flatMap((block) => (block.kind === 'paragraph' && block.text.startsWith('As it stands: as likely') ? [block.text] : []))[0] ?? '';
  expect(money(/less than ([\d ]+)/.exec(headline)?.[1] ?? '')).toBe(total);
  // The lines between are those of the two tables above, in their order.
  const above = ['What a buyer takes off or adds', 'What a buyer takes off because'].flatMap((start) => table(blocks, start)?.rows.map((row) => money(row.cells[2] ?? '')) ?? []);
  expect(lines.slice(1, 1 + above.length)).toEqual(above);
  const cures = table(blocks, 'What a buyer takes off because')?.rows.map((row) => money(row.cells[2] ?? '')) ?? [];
  expect(cures).toEqual([...cures].sort((a, b) => a - b));
  // Nothing but what nobody checked comes after them, and it takes off: no line brings money that nothing stands for.
  const rounded = rows.filter((cells) => cells[0] === 'Rounded');
  // Half of the step that money of this size is printed to, and half a unit a line.
  for (const cells of rounded) expect(Math.abs(money(cells[1] ?? ''))).toBeLessThanOrEqual(25 + rows.length / 2);
  const after = rows.slice(1 + above.length, -1).filter((cells) => cells[0] !== 'Rounded');
  expect(after.map((cells) => cells[0])).toEqual(sale.notChecked.length === 0 ? [] : ['What nobody checked']);
  for (const cells of after) expect(cells[1]).toMatch(/^−/);
  // The base stays within its own range.
  expect(lines[0]).toBeGreaterThan(sale.base.value.least);
  expect(lines[0]).toBeLessThan(sale.base.value.most);
  // About the middle of the value the base is about its own mean, that of a triangle: a third of its three figures.
  const { least, likely, most } = sale.base.value;
  expect(Math.abs(lines[0]! / ((least + likely + most) / 3) - 1)).toBeLessThan(0.05);
  // Without rounding the same: the lines give the middle of the range.
  expect(sale.sum.reduce((sum, line) => sum + line.amount, 0)).toBeCloseTo(sale.value.p50, 6);
  // Whatever comes right with a share names a share that stands above.
  const named = sale.nothingOff.flatMap((one) => [...one.because.matchAll(/"([^"]+)"/g)].map(([, words]) => words));
  for (const words of named) expect(sale.changes.map((change) => change.words)).toContain(words);
});

test('limits of a hammer that stands down are said to hold once that is cured, those of one that runs to hold now', () => {
  const said = (found: Picture): string => saleSheetBlocks(found, saleOf(found, knowledge)).map((block) => ('text' in block ? block.text : '')).join('\n');
  const down = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('keys.secure', 'loose'));
  expect(down.duty.verdict).toBe('stand-down');
  expect(said(down)).toContain('Once what stops it is cured, these limits hold:');
  const runs = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('upper-die.rest-gap', '3/4 in'));
  expect(runs.duty.verdict).toBe('fit-within-limits');
  expect(said(runs)).toContain('It may run only like this:');
});

test('papers that are overdue earn nothing for being documented, and say so', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('running.test-bar-thickness@before', '1 in');
  const at = (asOf: string) => {
    const found = pictureToday(log.entries, knowledge, asOf, 1);
    if (found === undefined) throw new Error('the case enrols no hammer');
    return saleOf(found, knowledge);
  };
  const fresh = at('2026-05-13T00:00:00Z');
  expect(fresh.changes.map((change) => change.id)).toContain('shown-on-hot-steel');
  const old = at('2028-06-01T00:00:00Z');
  expect(old.changes.map((change) => change.id)).not.toContain('shown-on-hot-steel');
  expect(old.notes.join(' ')).toMatch(/adds 15 % where the papers are up to date, adds nothing here: \d+ dated checks are overdue/);
  expect(old.value.p50).toBeLessThan(fresh.value.p50);
});

test('a spent spring takes its share off, not only the price of a spring', () => {
  const worth = (clash: string) => saleOf(pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('coil-spring.clash', clash)), knowledge);
  expect(worth('clear').changes).toEqual([]);
  expect(worth('touch').changes.map((change) => change.id)).toEqual(['spring-spent']);
});
