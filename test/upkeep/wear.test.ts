import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wearForecast, wearOf, type WearReading } from '../../src/derived/upkeep/index.ts';
import { draw, seeded } from '../../src/methods/chance/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf } from '../worksheet/worn-hammer.ts';

const fitted = (readings: readonly WearReading[]) => {
  const forecast = wearForecast(readings);
  if (forecast.state !== 'fitted') throw new Error(forecast.because);
  return forecast;
};

test('fewer than three readings, readings of one time and readings that are no numbers are refused with the reason', () => {
  expect(wearForecast([{ at: 0, value: 1, uncertainty: 0 }, { at: 1, value: 2, uncertainty: 0 }])).toEqual({ state: 'refused', because: 'a forecast wants at least 3 readings of the same place, taken the same way: there are 2' });
  expect(wearForecast([1, 2, 3].map((value) => ({ at: 5, value, uncertainty: 0 }))).state).toBe('refused');
  expect(wearForecast([1, 2, Number.NaN].map((value, at) => ({ at, value, uncertainty: 0 }))).state).toBe('refused');
});

test('by hand: five readings, interval from Student’s t with three degrees of freedom', () => {
  // y = 1, 3, 2, 5, 4 at x = 1..5: slope 0.8, intercept 0.6, residual sum 3.6, s = sqrt(1.2); t(0.975; 3) = 3.18245 (tables of Student's t).
  const forecast = fitted([1, 3, 2, 5, 4].map((value, index) => ({ at: index + 1, value, uncertainty: 0 })));
  expect(forecast.rate).toBeCloseTo(0.8, 12);
  expect(forecast.scatter).toBeCloseTo(Math.sqrt(1.2), 12);
  const half = 3.18245 * Math.sqrt(1.2) * Math.sqrt(1 + 1 / 5 + 9 / 10);
  expect(forecast.at(6).value).toBeCloseTo(5.4, 12);
  expect(forecast.at(6).high - 5.4).toBeCloseTo(half, 4);
  expect(forecast.rateInterval[1] - 0.8).toBeCloseTo((3.18245 * Math.sqrt(1.2)) / Math.sqrt(10), 4);
  expect(forecast.wearShown).toBe(false);
});

test('the interval holds the next reading as often as it says: 95 in 100', () => {
  const generator = seeded(11, 'wear');
  const noise = (): number => draw({ kind: 'normal', mean: 0, deviation: 0.3 }, generator);
  const rounds = 4_000;
  let held = 0;
  for (let round = 0; round < rounds; round++) {
    const forecast = fitted([0, 1, 2, 4, 7].map((at) => ({ at, value: 2 + 0.1 * at + noise(), uncertainty: 0 })));
    const next = 2 + 0.1 * 10 + noise();
    const { low, high } = forecast.at(10);
    if (low <= next && next <= high) held += 1;
  }
  console.log(`${((100 * held) / rounds).toFixed(1)} % of ${rounds} next readings lie in the 95 % interval`);
  expect(Math.abs(held / rounds - 0.95)).toBeLessThan(3 * Math.sqrt((0.95 * 0.05) / rounds));
});

test('readings that happen to lie on a line keep their own doubt', () => {
  const forecast = fitted([0, 1, 2].map((at) => ({ at, value: at, uncertainty: 0.1 })));
  expect(forecast.scatter).toBeCloseTo(0.1, 12);
  expect(forecast.freedom).toBe(Number.POSITIVE_INFINITY);
  // Known doubt, so the normal factor: 1.96 x 0.1 x sqrt(1 + 1/3 + 4/2) at 3, two beyond the middle of 0, 1, 2.
  expect(forecast.at(3).high - 3).toBeCloseTo(1.959964 * 0.1 * Math.sqrt(1 + 1 / 3 + 2), 6);
  // Scatter that the doubt does not explain takes Student's t with one degree of freedom instead.
  const wild = fitted([[0, 0], [1, 1.9], [2, 2]].map(([at = 0, value = 0]) => ({ at, value, uncertainty: 0.1 })));
  expect(wild.freedom).toBe(1);
});

test('the band of the line holds the place at which a true line reaches a limit, 95 in 100', () => {
  const generator = seeded(12, 'wear');
  const rounds = 4_000;
  let held = 0;
  let student = 0;
  for (let round = 0; round < rounds; round++) {
    const forecast = fitted([0, 1, 2, 3].map((at) => ({ at, value: 1 + at + draw({ kind: 'normal', mean: 0, deviation: 0.05 }, generator), uncertainty: 0.05 })));
    if (Number.isFinite(forecast.freedom)) student += 1;
    // The true line is at 6 at 5.
    const { earliest, latest } = forecast.reaches(6, 'more');
    if ((earliest ?? 0) <= 5 && (latest ?? Number.POSITIVE_INFINITY) >= 5) held += 1;
  }
  console.log(`${((100 * held) / rounds).toFixed(1)} % of ${rounds} bands hold the true place; in ${((100 * student) / rounds).toFixed(1)} % the readings scattered more than their doubt and Student's t was taken`);
  expect(held / rounds).toBeGreaterThan(0.94);
  expect(held / rounds).toBeLessThan(0.98);
});

test('the earliest day is never after the likely one, and nothing is claimed far beyond the readings', () => {
  fc.assert(fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 100 }), fc.double({ min: -5, max: 5, noNaN: true })), { minLength: 3, maxLength: 8 }), fc.double({ min: -20, max: 20, noNaN: true }), fc.constantFrom('more' as const, 'less' as const), (rows, limit, worse) => {
    const readings = rows.map(([at, value]) => ({ at, value, uncertainty: 0.1 }));
    const forecast = wearForecast(readings);
    if (forecast.state !== 'fitted') return;
    const { already, likely, earliest, latest } = forecast.reaches(limit, worse);
    const last = Math.max(...readings.map((one) => one.at));
    const span = last - Math.min(...readings.map((one) => one.at));
    if (likely !== undefined) expect(earliest).toBeLessThanOrEqual(likely + 1e-9);
    if (latest !== undefined && likely !== undefined) expect(latest).toBeGreaterThanOrEqual(likely - 1e-9);
    for (const place of [likely, earliest, latest]) if (place !== undefined) expect(place).toBeLessThanOrEqual(last + 3 * span + 1e-9);
    if (!already && likely !== undefined) expect(forecast.at(likely).value).toBeCloseTo(limit, 6);
  }));
});

test('on a log: dies that lose a sixteenth in a hundred hours, forecast in hours run; a repair starts the count anew', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  const heights = ['10 thou', '16 thou', '22 thou', '28 thou'];
  heights.forEach((text, index) => {
    const day = `2026-0${index + 6}-01`;
    if (index > 0) Object.assign(log.put('hours', { quantity: { dimension: 'time', value: 100 * 3_600, uncertainty: 0 }, asWritten: '100 h' }), { at: `${day}T08:00:00.000Z` });
    log.read('clutch-pulley.play', text);
    Object.assign(log.entries.at(-1) ?? {}, { at: `${day}T12:00:00.000Z` });
  });
  const wear = () => wearOf(pictureOf(log).known, log.entries, knowledge, '2027-01-01T00:00:00Z').find((one) => one.key === 'clutch-pulley.play');
  const first = wear();
  expect(first).toMatchObject({ over: 'running time', readings: 4 });
  // 6 thou in 100 h from 28 thou at 300 h: 31 thou at 350 h.
  expect(first?.steps.find((step) => step.from === '31 thou')).toMatchObject({ grade: 'limited', already: false, likely: '350 h run' });
  expect(first?.steps.find((step) => step.from === '16 thou')?.already).toBe(true);
  log.put('job-progress', { job: 'clutch-pulley.bush', state: 'done' });
  Object.assign(log.entries.at(-1) ?? {}, { at: '2026-08-15T12:00:00.000Z' });
  expect(wear()).toBeUndefined();
});
