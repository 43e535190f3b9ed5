import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { isOnlyForTheTrial, isOpen, toBuy, type Duty } from '../../src/derived/index.ts';
import { TRIAL_JOB, knowledge } from '../../src/knowledge/index.ts';
import { workPlan } from '../../src/views/work/index.ts';
import { pictureOf, surveyed } from '../print/paper-cases.ts';

const examples = readdirSync(fileURLToPath(new URL('../../examples/', import.meta.url))).filter((name) => name.endsWith('.yaml')).map((name) => name.replace('.yaml', ''));
const planned = (name: string) => {
  const found = pictureOf(surveyed(name), 'inch');
  return { found, ...workPlan(found, knowledge) };
};
const jobOf = (id: string) => knowledge.jobs.find((one) => one.id === id);

describe.each(examples)('%s', (name) => {
  const { found, steps, ladder } = planned(name);
  const open = found.worksheet.jobs.filter(isOpen);

  test('what a job opens is closed in the same row of what money buys, and a shaft is turned only with the bearings', () => {
    const apart = steps.flatMap((step) => step.jobs.flatMap((id) => open
      .filter((other) => jobOf(id)?.closedBy?.includes(other.job) === true || jobOf(other.job)?.mendsFirst?.includes(id) === true)
      .filter((other) => !step.jobs.includes(other.job) && !step.jobs.some((by) => jobOf(by)?.replaces?.some((one) => one.job === other.job) === true))
      .map((other) => `${step.cost}: ${id} without ${other.job}`)));
    expect(apart).toEqual([]);
  });

  test('what is free and waits for nothing that is left out comes along', () => {
    const left = steps.flatMap((step) => open
      .filter((job) => job.job !== TRIAL_JOB && job.cost.likely === 0 && job.after.length > 0 && job.after.every((before) => step.jobs.includes(before)))
      .filter((job) => !step.jobs.includes(job.job) && !step.jobs.some((by) => jobOf(by)?.replaces?.some((one) => one.job === job.job) === true))
      .map((job) => `${step.cost}: ${job.job}`));
    expect(left).toEqual([]);
  });

  test('what may be run never grows less with more work, but once: at the first change to linkage or dies, until the trial', () => {
    const changed = open.findIndex((job) => [2, 9, 10, 12, 13].includes(job.stage));
    const rank = (duty: Duty): number => (isOnlyForTheTrial(duty) ? 2 : { 'stand-down': 0, 'not-known-yet': 1, 'fit-within-limits': 3, fit: 4 }[duty.verdict]);
    const ranks = ladder.map((step) => rank(step.duty));
    for (let index = 1; index < ranks.length; index++) if (index !== changed) expect(ranks[index], ladder[index]?.job).toBeGreaterThanOrEqual(ranks[index - 1]!);
    const trial = ladder.findIndex((step) => step.job === TRIAL_JOB);
    if (changed >= 0) for (const one of ranks.slice(changed, trial)) expect(one).toBeLessThanOrEqual(2);
  });
});

test('a leaf is not run before its pack is clipped and strapped', () => {
  const { ladder, steps } = planned('dunmarrow-90-cracked-leaf');
  const at = (job: string) => ladder.find((step) => step.job === job)?.duty;
  expect(at('bow.replace-leaf')?.verdict).toBe('stand-down');
  expect(at('bow.tighten-clip')?.verdict).toBe('stand-down');
  expect(isOnlyForTheTrial(ladder.find((step, index) => ladder.slice(0, index + 1).some((one) => one.job === 'bow.tighten-clip') && step.job === 'bow.renew-straps')!.duty)).toBe(true);
  const first = steps.find((step) => step.jobs.includes(TRIAL_JOB));
  expect(first?.jobs).toEqual(expect.arrayContaining(['bow.replace-leaf', 'bow.tighten-clip', 'bow.renew-straps']));
  for (const step of steps) if (step.jobs.includes('shaft.turn-true')) expect(step.jobs).toContain('bearings.pour');
});

test('a new die is tried with its key driven and its gap set', () => {
  const first = planned('sallowfield-40-sunken-seat').steps.find((step) => step.jobs.includes(TRIAL_JOB));
  expect(first?.jobs).toEqual(expect.arrayContaining(['dies.new-lower', 'keys.renew', 'rod.set-gap']));
});

test('the price of a motor is that of the motor: electrician and wire stand beside it and in the sum', () => {
  const { found } = planned('tannerwick-150-worn-pivot');
  const lines = toBuy(found.worksheet).filter((line) => line.job === 'motor.renew');
  expect(lines.map((line) => line.kind)).toEqual(['part', 'part', 'work of others']);
  expect(lines.map((line) => line.words)).toEqual([expect.stringMatching(/^motor/), expect.stringContaining('wire'), 'electrician']);
  // 420 as heard, 70 and 200 as estimates.
  expect(found.worksheet.jobs.find((job) => job.job === 'motor.renew')?.cost.likely).toBe(420 + 70 + 200);
});
