import { expect, test } from 'vitest';
import { inspectionRecord, upkeepEvents, upkeepPlan } from '../../src/derived/upkeep/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf, wornHammer } from '../worksheet/worn-hammer.ts';

const HOUR = 3_600;

/** Runs the hammer some hours on a later day. */
function run(log: LogOf, day: string, hours: number): void {
  Object.assign(log.put('hours', { quantity: { dimension: 'time', value: hours * HOUR, uncertainty: 0 }, asWritten: `${hours} h` }), { at: `${day}T12:00:00.000Z` });
}

function later(log: LogOf, day: string): void {
  const entry = log.entries.at(-1);
  if (entry !== undefined) Object.assign(entry, { at: `${day}T12:00:00.000Z` });
}

const planAt = (log: LogOf, asOf: string) => upkeepPlan(pictureOf(log, asOf).known, log.entries, asOf);
const item = (log: LogOf, asOf: string, task: string) => planAt(log, asOf).items.find((one) => one.task === task);

function lookedOver(log: LogOf, day: string): void {
  for (const [look, answer] of [['keys.secure', 'tight'], ['hold-down-bolts.state', 'tight'], ['oil-ways.open', 'open'], ['spring-bolt.lock', 'locked']] as const) {
    log.look(look, answer);
    later(log, day);
  }
}

test('fifty hours or half a year, whichever comes first', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  lookedOver(log, '2026-05-20');
  expect(item(log, '2026-06-01T00:00:00Z', 'look-over')).toMatchObject({ state: 'ahead', dueOn: '2026-11-20', timeLeft: 50 * HOUR, last: '2026-05-20T12:00:00.000Z' });
  expect(item(log, '2026-11-10T00:00:00Z', 'look-over')?.state).toBe('due');
  expect(item(log, '2026-11-21T00:00:00Z', 'look-over')?.state).toBe('overdue');
  run(log, '2026-06-11', 30);
  // Thirty hours in 30 days since enrolment: the twenty that are left take 20 days more.
  expect(item(log, '2026-06-11T13:00:00Z', 'look-over')).toMatchObject({ state: 'ahead', dueOn: '2026-07-01', timeLeft: 20 * HOUR });
  run(log, '2026-06-20', 25);
  expect(item(log, '2026-06-21T00:00:00Z', 'look-over')).toMatchObject({ state: 'overdue', timeLeft: -5 * HOUR });
});

test('after a repair keys and bolts are tried at one, ten and fifty hours, and a look in time settles each', () => {
  const log = wornHammer();
  log.put('job-progress', { job: 'keys.renew', state: 'done' });
  later(log, '2026-06-01');
  expect(item(log, '2026-06-02T00:00:00Z', 'after-repair')).toMatchObject({ title: 'Keys and bolts 1 h after repair', state: 'ahead', timeLeft: HOUR });
  run(log, '2026-06-03', 2);
  expect(item(log, '2026-06-04T00:00:00Z', 'after-repair')).toMatchObject({ state: 'overdue', timeLeft: -HOUR });
  log.look('keys.secure', 'tight');
  later(log, '2026-06-05');
  expect(item(log, '2026-06-06T00:00:00Z', 'after-repair')).toMatchObject({ title: 'Keys and bolts 10 h after repair', timeLeft: 8 * HOUR });
});

test('a correction of hours counts, and hours after the day asked do not', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  run(log, '2026-06-01', 500);
  const wrong = log.entries.at(-1)?.id ?? '';
  expect(item(log, '2026-06-02T00:00:00Z', 'look-over')?.state).toBe('overdue');
  expect(item(log, '2026-05-31T00:00:00Z', 'look-over')?.timeLeft).toBe(50 * HOUR);
  log.put('correction', { entry: wrong, why: 'five, not five hundred' });
  later(log, '2026-06-01');
  expect(item(log, '2026-06-02T00:00:00Z', 'look-over')?.timeLeft).toBe(50 * HOUR);
});

test('the next survey is a year after the oldest reading that still counts', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').read('upper-die.height', '2 3/4 in').read('clutch-pulley.play', '12 thou');
  log.read('upper-die.height', '2 11/16 in');
  later(log, '2026-09-01');
  expect(planAt(log, '2026-10-01T00:00:00Z').nextSurvey).toMatchObject({ on: '2027-05-12', oldest: ['clutch-pulley.play'] });
  expect(planAt(new LogOf('50 lb', 'coil-and-toggle'), '2026-10-01T00:00:00Z').nextSurvey.because).toBe('Nothing was measured yet.');
});

test('what is dated goes into the calendar, the overdue on the day of asking, and each thing keeps its name', () => {
  const log = wornHammer();
  const hammer = { id: 'H', tag: 'CASE' };
  const plan = planAt(log, '2026-12-01T00:00:00Z');
  const events = upkeepEvents(plan, hammer, '2026-12-01T00:00:00Z');
  expect(events.map((event) => [event.uid, event.date])).toEqual([
    ['H-look-over@tupwise.invalid', '2026-12-01'], ['H-dress-dies@tupwise.invalid', '2026-12-01'], ['H-full-measuring@tupwise.invalid', '2027-05-12'],
  ]);
});

test('an inspection record holds all that still counts with its days, and that of a day only what was done then', () => {
  const log = wornHammer();
  log.look('keys.secure', 'tight');
  later(log, '2026-07-01');
  const found = pictureOf(log);
  const record = inspectionRecord(found.known, found.findings, found.duty);
  expect(record).toMatchObject({ machine: { tag: 'CASE', id: found.known.hammer }, date: '2026-07-01', by: ['A. Quill'], source: 'osha-1910-218' });
  // The short visit does not push the full one out: each matter with its own days, those of safety first.
  expect(record?.lines.find((line) => line.what === 'Hold of dies and keys')).toEqual({ what: 'Hold of dies and keys', shown: 'both dies tight', grade: 'sound', gate: true, days: ['2026-07-01'] });
  expect(record?.lines.find((line) => line.what === 'Crack in the frame')?.days).toEqual(['2026-05-12']);
  expect(record?.lines.map((line) => line.gate)).toEqual([...(record?.lines ?? [])].map((line) => line.gate).sort((a, b) => Number(b) - Number(a)));
  expect(record?.visits.map((visit) => visit.date)).toEqual(['2026-05-12', '2026-07-01']);
  expect(record?.gatesNotChecked).not.toContain('frame.crack');
  const unsettled = found.findings.filter((finding) => finding.gate && finding.grade === 'not-known').map((finding) => finding.criterion);
  expect(record?.gatesNotChecked.map((key) => key.split('@')[0])).toEqual(unsettled);
  const ofDay = inspectionRecord(found.known, found.findings, found.duty, '2026-07-01');
  expect(ofDay?.lines).toEqual([{ what: 'Hold of dies and keys', shown: 'both dies tight', grade: 'sound', gate: true, days: ['2026-07-01'] }]);
  expect(ofDay?.gatesNotChecked).toContain('frame.crack');
  expect(inspectionRecord(found.known, found.findings, found.duty, '2026-05-12')?.lines.length).toBeGreaterThan(20);
  expect(inspectionRecord(found.known, found.findings, found.duty, '2020-01-01')).toBeUndefined();
});

test('what is overdue stands in the calendar on the day of asking, with the day it was due', () => {
  const asOf = '2028-06-01T00:00:00Z';
  const found = pictureOf(wornHammer());
  const plan = upkeepPlan(found.known, wornHammer().entries, asOf);
  const events = upkeepEvents(plan, { id: found.known.hammer, tag: 'CASE' }, asOf);
  const late = plan.items.filter((item) => item.state === 'overdue' && item.dueOn !== undefined && item.dueOn < '2028-06-01');
  expect(late.length).toBeGreaterThan(1);
  for (const item of late) {
    const event = events.find((one) => one.uid.includes(`-${item.task}@`));
    expect(event).toMatchObject({ date: '2028-06-01', summary: `CASE: ${item.title}, overdue since ${item.dueOn}` });
    expect(event?.description).toContain(`Overdue since ${item.dueOn}.`);
  }
  for (const item of plan.items.filter((one) => one.state === 'ahead')) expect(events.find((one) => one.uid.includes(`-${item.task}@`))?.summary ?? '').not.toContain('overdue');
});
