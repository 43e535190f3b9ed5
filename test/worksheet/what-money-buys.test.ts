import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { bestUse, isOpen } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { workPlan } from '../../src/views/work/index.ts';
import { budgetStepBlocks } from '../../src/views/work/budget-blocks.ts';
import { pictureOf, surveyed } from '../print/paper-cases.ts';
import { wornHammer } from './worn-hammer.ts';

const examples = readdirSync(fileURLToPath(new URL('../../examples/', import.meta.url))).filter((name) => name.endsWith('.yaml')).map((name) => name.replace('.yaml', ''));
const HAMMERS = [...examples.map((name) => ({ name, entries: surveyed(name) })), { name: 'a worn hammer', entries: wornHammer().entries }];

describe.each(HAMMERS)('$name', ({ entries }) => {
  const found = pictureOf(entries, 'inch');
  const { steps } = workPlan(found, knowledge);
  const replaces = (by: string, job: string): boolean => knowledge.jobs.find((one) => one.id === by)?.replaces?.some((other) => other.job === job) === true;

  test('more money never leaves out what less money bought, but for what another job then makes pointless', () => {
    // A hammer with no open job wants no money.
    expect(steps.length > 1).toBe(found.worksheet.jobs.some(isOpen));
    steps.slice(1).forEach((step, index) => {
      const before = steps[index]!;
      expect(step.cost).toBeGreaterThan(before.cost - 1e-9);
      const lost = before.jobs.filter((job) => !step.jobs.includes(job) && !step.jobs.some((other) => replaces(other, job)));
      expect(lost, `${before.cost} to ${step.cost}`).toEqual([]);
    });
  });

  test('more money never brings a worse verdict, and the last of it the best there is', () => {
    const rank = { 'stand-down': 0, 'not-known-yet': 1, 'fit-within-limits': 2, fit: 3 } as const;
    const verdicts = steps.map((step) => rank[step.duty.after.verdict]);
    expect(verdicts).toEqual([...verdicts].sort((a, b) => a - b));
  });

  test('the table says it in plain words', () => {
    const table = budgetStepBlocks(found, steps).find((block) => block.kind === 'table');
    const done = table?.kind === 'table' ? table.rows.map((row) => row.cells[3] ?? '') : [];
    expect(done.length).toBe(steps.length);
    for (const words of done.slice(1)) expect(words).toMatch(/^All of the above, and: [a-z]/);
    expect(done.join(' ')).not.toMatch(/\balso\b|\bwithout\b/);
  });
});

test('what only comes first is not bought for what it comes before: keys hold without dies that are dressed', () => {
  const found = pictureOf(surveyed('sallowfield-40-sunken-seat'), 'inch');
  const keys = found.worksheet.jobs.find((job) => job.job === 'keys.renew');
  expect(keys?.after).toContain('dies.grind-pair');
  const { toRun = 0 } = bestUse(found.known, found.findings, found.worksheet, knowledge, { money: 0 });
  const least = bestUse(found.known, found.findings, found.worksheet, knowledge, { money: Math.ceil(toRun) });
  expect(least.duty.after.verdict).not.toBe('stand-down');
  expect(least.jobs).toContain('keys.renew');
  // The key is filed to the die that stays, so the new die comes with it. Its blank carries a sixteenth for the grinder, so that it
  // brings its grinding: keyed at 3 1/16 in it would be keyed twice. What is only dressed before it is keyed is not bought for the key.
  expect(least.jobs).toContain('dies.new-lower');
  expect(least.jobs).toContain('dies.grind-pair');
  expect(keys?.after).toContain('dies.dress');
  expect(least.jobs).not.toContain('dies.dress');
  // The least that makes it run is one of the sums, and what is bought before is part of it.
  const { steps } = workPlan(found, knowledge);
  const runs = steps.findIndex((step) => step.duty.after.verdict !== 'stand-down');
  expect(steps[runs]?.jobs).toEqual(least.jobs);
});
