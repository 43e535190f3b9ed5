import { expect, test } from 'vitest';
import { nextJob } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { nextBlocks, planBlocks, workPlan } from '../../src/views/work/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf } from './worn-hammer.ts';

const log = (): LogOf => gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('base.bearing', 'corners').look('keys.secure', 'loose').look('dovetail.flank@lower', 'part');

test('what makes it safe to work on comes next, before what the worst finding waits for', () => {
  const found = pictureOf(log());
  expect(found.worksheet.jobs[0]?.job).toBe('base.grout');
  // The key stops the hammer and waits for the flank; the grout only has to be watched.
  expect(nextJob(found.worksheet)?.job).toBe('dovetail.file-flanks');
  expect(nextJob(pictureOf(log().look('starter.no-volt', 'restarts')).worksheet)?.job).toBe('starter.isolator');
});

test('what was begun goes on, unless something must come before it; what is done is not next', () => {
  const begun = log();
  begun.put('job-progress', { job: 'keys.renew', state: 'started' });
  expect(nextJob(pictureOf(begun).worksheet)?.job).toBe('dovetail.file-flanks');
  begun.put('job-progress', { job: 'dovetail.file-flanks', state: 'done' });
  expect(nextJob(pictureOf(begun).worksheet)?.job).toBe('keys.renew');
  expect(nextJob({ jobs: [] })).toBeUndefined();
});

test('the plan names the same job, with its number', () => {
  const found = pictureOf(log());
  const [said] = nextBlocks(found);
  expect(said).toMatchObject({ text: expect.stringMatching(/^Next: \d+\. File the flanks straight\. /) as string });
  expect(planBlocks(found, knowledge, workPlan(found, knowledge))[0]).toEqual(said);
});
