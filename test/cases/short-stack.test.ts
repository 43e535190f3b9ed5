import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { picture } from '../../src/derived/index.ts';
import { LogOf } from './log-of.ts';

const INCH = 0.0254;

/** Common practice, no source: dies made 3 in each have lost height, the linkage just touches the guide with the dies closed. */
const log = new LogOf('40 lb', 'coil-and-toggle')
  .made('upper-die.height', '3 in').made('lower-die.height', '3 in')
  .read('upper-die.height', '2 3/4 in').read('lower-die.height', '1 7/8 in', 'above-seat-base')
  .read('ram-guide.linkage-clearance', '0 in').read('seat.sunk', '1/4 in').read('clutch-pulley.play', '12 thou');

const found = picture(log.entries, knowledge, '2026-05-13T00:00:00Z', 1);

const inches = (key: string): number => {
  const outcome = found?.values[key]?.outcome;
  if (outcome?.state !== 'known') throw new Error(`${key} is not known`);
  return outcome.quantity.value / INCH;
};

test('the stack is 1 3/8 in short, the lower die alone 1 1/8', () => {
  expect(inches('stack.loss')).toBeCloseTo(1.375, 9);
  expect(inches('stack.loss-lower')).toBeCloseTo(1.125, 9);
  expect(inches('stack.loss-upper')).toBeCloseTo(0.25, 9);
});

test('nothing thinner than 3/8 in may be worked where the linkage just touches the guide', () => {
  expect(inches('stack.least-work-thickness')).toBeCloseTo(0.375, 9);
  const limit = found?.duty.limits.find((one) => one.kind === 'least-work-thickness');
  expect(limit?.sentence).toContain('3/8 in');
});

test('a seat that sank 1/4 in wants a 1/4 in plate before a new lower die', () => {
  expect(inches('stack.filler-plate')).toBeCloseTo(0.25, 9);
  const order = found?.worksheet.jobs.map((job) => job.job) ?? [];
  expect(order).toContain('seat.fit-filler-plate');
  expect(order).toContain('dies.new-lower');
  expect(order.indexOf('seat.fit-filler-plate')).toBeLessThan(order.indexOf('dies.new-lower'));
});

test.each([['9 thou', false], ['10 thou', true], ['12 thou', true], ['15 thou', true], ['16 thou', false]])('clutch play of %s is good: %s', (play, good) => {
  const one = picture(new LogOf('40 lb', 'coil-and-toggle').read('clutch-pulley.play', play).entries, knowledge, '2026-05-13T00:00:00Z', 1);
  const grades = one?.findings.filter((finding) => finding.from.some((key) => key === 'clutch.play' || key === 'clutch-pulley.play')).map((finding) => finding.grade) ?? [];
  expect(grades.length).toBeGreaterThan(0);
  expect(grades.every((grade) => grade === 'sound')).toBe(good);
});

test('a lower die measured on the bench counts less what it has sunk', () => {
  const bench = picture(new LogOf('40 lb', 'coil-and-toggle').made('lower-die.height', '3 in').read('lower-die.height', '2 1/8 in', 'whole-die').read('seat.sunk', '1/4 in').entries, knowledge, '2026-05-13T00:00:00Z', 1);
  const outcome = bench?.values['stack.lower-net']?.outcome;
  expect(outcome?.state === 'known' ? outcome.quantity.value / INCH : Number.NaN).toBeCloseTo(1.875, 9);
});

test('what nobody measured stays not known, and names what is missing', () => {
  const outcome = picture(new LogOf('40 lb', 'coil-and-toggle').read('upper-die.height', '2 3/4 in').entries, knowledge, '2026-05-13T00:00:00Z', 1)?.values['stack.loss']?.outcome;
  expect(outcome).toEqual({ state: 'not-known', missing: ['upper-die.height#as-made', 'lower-die.height#as-made', 'lower-die.height'] });
});
