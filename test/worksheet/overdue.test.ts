import { expect, test } from 'vitest';
import { pictureToday, upkeepPlan } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound } from './worn-hammer.ts';

const today = (log: LogOf, asOf: string) => {
  const found = pictureToday(log.entries, knowledge, asOf, 1);
  if (found === undefined) throw new Error('the case enrols no hammer');
  return found;
};
const fit = (): LogOf => gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('upper-die.rest-gap', '3/4 in').look('brake.fitted', 'fitted');

test('a hammer that is fit by old readings says which dated checks are overdue, and is as fit as before', () => {
  expect(today(fit(), '2026-05-13T00:00:00Z').duty).toMatchObject({ verdict: 'fit', sentence: expect.stringMatching(/^Fit: it may run/) as string });
  const old = today(fit(), '2027-06-01T00:00:00Z');
  const overdue = upkeepPlan(old.known, fit().entries, '2027-06-01T00:00:00Z').items.filter((item) => item.state === 'overdue').map((item) => item.title);
  expect(overdue.length).toBeGreaterThan(1);
  expect(old.duty.verdict).toBe('fit');
  expect(old.duty.overdue).toEqual(overdue);
  expect(old.duty.sentence).toMatch(/^Fit by what was read: it may run/);
  expect(old.duty.sentence).toContain(`${overdue.length} dated checks are overdue:`);
  for (const title of overdue.slice(0, 3)) expect(old.duty.sentence.toLowerCase()).toContain(title.toLowerCase());
});

test('limits hold by what was read too; what may not run has worse to say', () => {
  expect(today(fit().look('guards.belt', 'open'), '2027-06-01T00:00:00Z').duty.sentence).toMatch(/^Fit within limits by what was read: .* dated checks are overdue: /);
  const down = today(fit().look('keys.secure', 'loose'), '2027-06-01T00:00:00Z').duty;
  expect(down.sentence).not.toContain('overdue');
  expect(down.overdue?.length).toBeGreaterThan(0);
});
