import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moneyAndTime, worksheetOf, type Worksheet, type WorksheetJob } from '../../src/derived/index.ts';
import { planDays } from '../../src/derived/worksheet/crew-plan.ts';
import { SpanTables } from '../../src/derived/worksheet/quantile-table.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { normalCdf, quantile } from '../../src/methods/chance/index.ts';
import { pictureOf, wornHammer } from './worn-hammer.ts';

const worn = pictureOf(wornHammer());
const SEED = 20_260_512;

const job = (id: string, more: Partial<WorksheetJob> = {}): WorksheetJob => ({
  job: id, number: 1, title: id, part: 'base', cures: [], urgency: 'watch', whyHere: '', after: [], stage: 1, hours: { least: 2, likely: 4, most: 12 },
  skill: 1, helpers: 0, parts: [], cost: { least: 0, likely: 0, most: 0 }, heard: [], cautions: [], state: 'open', ...more,
});
const sheet = (jobs: readonly WorksheetJob[]): Worksheet => ({ jobs, hours: { least: 0, likely: 0, most: 0 }, cost: { least: 0, likely: 0, most: 0 }, problems: [] });

test('tables of the three-point estimate keep to the exact quantile', () => {
  const tables = new SpanTables();
  let worst = 0;
  for (const likely of [0, 0.1, 0.25, 1 / 3, 0.5, 0.8, 1]) {
    for (let score = -4; score <= 4; score += 0.037) {
      const exact = quantile({ kind: 'pert', least: 0, likely, most: 1 }, normalCdf(score));
      worst = Math.max(worst, Math.abs(tables.at({ least: 0, likely, most: 1 }, score) - exact));
    }
  }
  console.log(`worst error of the tables: ${worst.toExponential(1)} of the range`);
  expect(worst).toBeLessThan(5e-4);
});

test('one job alone has the percentiles of its own estimate, and its mean', () => {
  const { hours } = moneyAndTime(sheet([job('a')]), knowledge, SEED, { draws: 40_000 });
  const exact = (chance: number): number => quantile({ kind: 'pert', least: 2, likely: 4, most: 12 }, chance);
  for (const [got, wanted] of [[hours.p10, exact(0.1)], [hours.p50, exact(0.5)], [hours.p90, exact(0.9)], [hours.mean, (2 + 4 * 4 + 12) / 6]] as const) expect(Math.abs(got - wanted)).toBeLessThan(0.05);
});

test('overruns that go together widen the sum: the spread of ten like jobs follows the correlation', () => {
  const one = moneyAndTime(sheet([job('a')]), knowledge, SEED, { draws: 20_000 }).hours;
  const ten = moneyAndTime(sheet(Array.from({ length: 10 }, (_, index) => job(`j${index}`))), knowledge, SEED, { draws: 20_000 }).hours;
  const width = (ten.p90 - ten.p10) / (one.p90 - one.p10);
  // Standard deviation of a sum of ten with correlation r is sqrt(10 + 90 r) of one: 3.16 with none, 6.1 with 0.3, 10 with all.
  console.log(`ten jobs are ${width.toFixed(2)} times as wide as one; sqrt(10 + 90 x 0.3) = ${Math.sqrt(37).toFixed(2)}`);
  expect(Math.abs(width / Math.sqrt(37) - 1)).toBeLessThan(0.06);
});

test('the worn hammer: same seed same figures, shares that add up to one, and percentiles within the ranges', () => {
  const first = moneyAndTime(worn.worksheet, knowledge, SEED);
  expect(moneyAndTime(worn.worksheet, knowledge, SEED)).toEqual(first);
  expect(moneyAndTime(worn.worksheet, knowledge, SEED + 1).cost.p50).not.toBe(first.cost.p50);
  for (const drivers of [first.costDrivers, first.boughtDrivers, first.hourDrivers]) expect(drivers.reduce((sum, driver) => sum + driver.share, 0)).toBeCloseTo(1, 9);
  for (const [range, span] of [[first.cost, worn.worksheet.cost], [first.hours, worn.worksheet.hours]] as const) {
    expect(span.least).toBeLessThan(range.p10);
    expect(range.p10).toBeLessThan(range.p50);
    expect(range.p50).toBeLessThan(range.p90);
    expect(range.p90).toBeLessThan(span.most);
  }
  expect(first.notes.join(' ')).toMatch(/No price was heard for \d+ of the parts/);
});

test('the critical path waits for the die that takes longest to come, and more hands never shorten it below that', () => {
  const alone = moneyAndTime(worn.worksheet, knowledge, SEED, { draws: 2_000 });
  const many = moneyAndTime(worn.worksheet, knowledge, SEED, { draws: 2_000, crew: { hands: 9 } });
  expect(alone.critical.steps[0]).toMatchObject({ kind: 'waiting for parts', job: 'dies.new-lower' });
  expect(alone.critical.steps.at(-1)).toMatchObject({ kind: 'work', job: 'trial.run' });
  for (const end of ['p10', 'p50', 'p90'] as const) expect(many.days[end]).toBeLessThanOrEqual(alone.days[end] + 1e-9);
  expect(Math.abs(many.days.mean - many.critical.days)).toBeLessThan(3 * many.critical.deviation);
});

test('a plan keeps every wait and never beats the longest chain or the hands', () => {
  fc.assert(fc.property(
    fc.array(fc.record({ days: fc.integer({ min: 0, max: 9 }), lead: fc.integer({ min: 0, max: 20 }), outside: fc.boolean(), waits: fc.array(fc.nat({ max: 30 }), { maxLength: 3 }) }), { minLength: 1, maxLength: 15 }),
    fc.integer({ min: 1, max: 3 }),
    (rows, hands) => {
      const jobs = rows.map(({ waits, ...row }, index) => ({ ...row, after: index === 0 ? [] : waits.map((wait) => wait % index) }));
      const days = planDays(jobs, hands);
      const finish: number[] = [];
      for (const one of jobs) finish.push(one.days + Math.max(one.lead, 0, ...one.after.map((before) => finish[before]!)));
      const inside = jobs.filter((one) => !one.outside).reduce((sum, one) => sum + one.days, 0);
      const whole = jobs.reduce((sum, one) => sum + one.days, 0) + Math.max(...jobs.map((one) => one.lead));
      expect(days).toBeGreaterThanOrEqual(Math.max(...finish, inside / hands));
      expect(days).toBeLessThanOrEqual(whole);
    },
  ));
});

test('hours already spent and a crew that cannot be are dealt with plainly', () => {
  const spent = moneyAndTime(sheet([job('a', { state: 'started', hoursSpent: 20 })]), knowledge, SEED, { draws: 500, crew: { hands: 0, hoursPerDay: 40 } });
  expect(spent.hours.p90).toBe(0);
  expect(spent.notes.join(' ')).toContain('Took longer than their range already');
  expect(spent.problems).toEqual(['Hands are a whole number from 1; reckoned with 1: 0', 'A working day has more than 0 and at most 24 hours; reckoned with 6: 40']);
  const empty = moneyAndTime(worksheetOf(worn.known, [], knowledge), knowledge, SEED, { draws: 500 });
  expect(empty.cost).toEqual({ p10: 0, p50: 0, p90: 0, mean: 0 });
  expect(empty.critical.steps).toEqual([]);
});
