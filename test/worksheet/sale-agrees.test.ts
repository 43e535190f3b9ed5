import { expect, test } from 'vitest';
import { valueKey } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import type { Block } from '../../src/views/report/index.ts';
import { reportTree } from '../../src/views/index.ts';
import { saleOf, saleSheetBlocks, workPlan } from '../../src/views/work/index.ts';
import { moneyBlocks } from '../../src/views/work/money-blocks.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';

const wordsOf = (blocks: readonly Block[]): string => JSON.stringify(blocks);
const lowered = (words: string): string => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;

test.each(EXAMPLE_PICTURES)('the sale sheet of $tag counts what the worksheet counts by chance, and says what it takes nothing off for', ({ found }) => {
  const sale = saleOf(found, knowledge);
  const sheet = wordsOf(saleSheetBlocks(found, sale));
  for (const job of found.worksheet.mayBe ?? []) {
    const line = sale.toCure.find((one) => one.job === job.job);
    if (line === undefined) expect(sheet, job.job).toContain(`${job.title.toLowerCase()}, with nothing to buy`);
    else expect(line.chance).toBe(job.need.chance);
  }
  const open = found.findings.filter((finding) => finding.grade === 'not-known').map((finding) => valueKey(finding.criterion, finding.at));
  expect([...sale.unpriced, ...sale.notChecked.flatMap((one) => one.criteria)].sort()).toEqual([...new Set(open)].sort());
  if (sale.unpriced.length > 0) expect(sheet).toContain(`Nothing is taken off for ${sale.unpriced.length} matters that nobody checked.`);
  for (const finding of found.findings.filter((one) => sale.unpriced.includes(valueKey(one.criterion, one.at)))) expect(sheet).toContain(lowered(finding.title));
  // The report names the same jobs.
  const report = wordsOf(reportTree(found, knowledge).blocks);
  for (const job of found.worksheet.mayBe ?? []) expect(report).toContain(lowered(job.title));
});

test('a line by chance comes to its chance of what the job costs, about the middle', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'KB-50')!;
  const line = saleOf(found, knowledge).toCure.find((one) => one.job === 'crank.pin-bush')!;
  // Likely cost and hours, an hour at 20 units: what it comes to where it is needed; the middle of draws lies within a half of its chance of that.
  const whole = line.cost.likely + 20 * line.hours.likely;
  expect(line.amount / (line.chance * whole)).toBeGreaterThan(0.6);
  expect(line.amount / (line.chance * whole)).toBeLessThan(1.6);
});

test('where nothing is certain, report and worksheet say what may be needed and what it comes to on average', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'KB-50')!;
  expect(wordsOf(reportTree(found, knowledge).blocks)).toContain('Nothing that is certain beyond oil and the usual round. May be needed beside it:');
  const money = wordsOf(moneyBlocks(found, workPlan(found, knowledge).money));
  const { cost, hours } = found.worksheet.expected!;
  // By hand: the sum of chance times the mean of each three-point range.
  const mean = (span: { least: number; likely: number; most: number }): number => (span.least + 4 * span.likely + span.most) / 6;
  const by = (of: 'cost' | 'hours'): number => (found.worksheet.mayBe ?? []).reduce((sum, job) => sum + job.need.chance * mean(job[of]), 0);
  expect(cost).toBeCloseTo(by('cost'), 9);
  expect(hours).toBeCloseTo(by('hours'), 9);
  expect(money).toContain('No job is certain.');
  expect(money).toMatch(/renew or true the crank pin, about 1 in 6; if it is needed, 50 to 250 units/);
  expect(money).toMatch(/Over all chances that is \d+ units/);
});

test('a test for asbestos takes off what it costs, and what follows has its price', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'DT-90')!;
  const sale = saleOf(found, knowledge);
  expect(sale.toCure.find((one) => one.job === 'clutch.test-for-asbestos')?.amount).toBeGreaterThan(40);
  expect(sale.nothingOff.map((one) => one.finding)).not.toContain('clutch.asbestos');
  const sheet = wordsOf(saleSheetBlocks(found, sale));
  expect(sheet).toMatch(/Have the facing tested: only the test is taken off\. If it is found: have the asbestos facing taken off and a new one fitted, \d/);
});
