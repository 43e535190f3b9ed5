import { expect, test } from 'vitest';
import { moneyAndTime } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { lengthBlocks, moneyBlocks } from '../../src/views/work/money-blocks.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';

test.each(EXAMPLE_PICTURES.filter(({ found }) => found.worksheet.jobs.some((job) => job.leadDays !== undefined)))('days of $tag have the doubt of what was promised, and waits that nobody asked about are named beside them', ({ found }) => {
  const money = moneyAndTime(found.worksheet, knowledge, 1, { draws: 2_000 });
  // A single promise of so many days comes at nine tenths of them to half as long again: the 10 and 90 of that spread are more than a tenth of it apart.
  const longest = Math.max(...found.worksheet.jobs.map((job) => job.leadDays?.likely ?? 0));
  expect(money.days.p90 - money.days.p10).toBeGreaterThan(0.1 * longest);
  const asked = new Set(money.unasked.map((line) => line.job));
  for (const job of found.worksheet.jobs.filter((one) => one.state === 'open' && one.outside !== undefined && one.heard.length === 0)) expect([...asked]).toContain(job.job);
  const said = JSON.stringify(moneyBlocks(found, money));
  expect(said.includes('And waits that nobody has asked about, which these days leave out: ')).toBe(asked.size > 0);
  for (const line of money.unasked) expect(said).toContain(`for job ${line.number}, `);
});

test('a job in the chain that somebody else does is not said to take half a day where nobody asked how long it waits', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'SF-40')!;
  const length = JSON.stringify(lengthBlocks(found, moneyAndTime(found.worksheet, knowledge, 1, { draws: 500 })));
  expect(length).toMatch(/Surface-grind the dies as a pair: [^"]* of work, and a wait that nobody has asked about/);
  expect(length).toContain('without what nobody has asked about');
});
