import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chanceOfAny, checkFirst, moneyAndTime, worksheetOf, type Cause, type Draw } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { nextUniform, seeded } from '../../src/methods/chance/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf } from './worn-hammer.ts';

const sound = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')));
const cause = (id: string, chance: number, jobs: readonly string[], more: Partial<Cause> = {}): Cause => ({ id, title: id, part: 'toggle-pins', chance, jobs, urgency: 'limited', because: `${id} is one of the things that make this sound`, basis: 'diagnosis', ...more });
const sheet = (...causes: readonly Cause[]) => worksheetOf(sound.known, [], knowledge, { causes });
const DRAWS = 20_000;

test('a cause of a diagnosis puts its job beside the worksheet with its chance; a certain one puts it on', () => {
  const some = sheet(cause('pins worn', 0.35, ['pins.renew']), cause('belt cracked', 1, ['belt.renew']));
  expect(some.jobs.map((job) => [job.job, job.need])).toEqual([['belt.renew', undefined], ['trial.run', undefined]]);
  expect(some.mayBe).toMatchObject([{ job: 'pins.renew', need: { chance: 0.35, causes: [{ id: 'pins worn', because: 'pins worn is one of the things that make this sound' }] } }]);
  expect(some.mayBe?.[0]?.number).toBe(1);
});

test('money and hours are those on average, and the draws agree', () => {
  const some = sheet(cause('pins worn', 0.35, ['pins.renew']), cause('bush worn', 0.2, ['rod.bush']));
  const all = moneyAndTime(some, knowledge, 3, { draws: DRAWS });
  expect(all.doubtful.map((one) => [one.job, one.chance, one.asked])).toEqual([['rod.bush', 0.2, false], ['pins.renew', 0.35, false]]);
  const worst = [Math.abs(all.cost.mean / (some.expected?.cost ?? 0) - 1), Math.abs(all.hours.mean / (some.expected?.hours ?? 0) - 1)];
  console.log(`expected money ${some.expected?.cost.toFixed(1)}, drawn ${all.cost.mean.toFixed(1)}; hours ${some.expected?.hours.toFixed(2)}, drawn ${all.hours.mean.toFixed(2)}`);
  // Four standard errors of a mean of 20 000 Bernoulli draws, on a sum that is mostly one job.
  for (const error of worst) expect(error).toBeLessThan(0.06);
  expect(all.cost.p10).toBe(0);
});

test('explanations of one symptom exclude each other, and findings on one reading hold together', () => {
  const beside = (from: number) => ({ draw: { by: 'knock', from } });
  const either = sheet(cause('a', 0.5, ['rod.bush'], beside(0)), cause('b', 0.5, ['pins.renew'], beside(0.5)));
  const both = sheet(cause('a', 0.5, ['rod.bush'], beside(0)), cause('b', 0.5, ['pins.renew'], beside(0)));
  const draws = { draws: DRAWS };
  // With exactly one of the two there is always something to pay; with both or none there is nothing to pay in half the draws.
  expect(moneyAndTime(either, knowledge, 5, draws).cost.p10).toBeGreaterThan(20);
  expect(moneyAndTime(both, knowledge, 5, draws).cost.p10).toBe(0);
  expect(moneyAndTime(both, knowledge, 5, draws).cost.p90).toBeGreaterThan(moneyAndTime(either, knowledge, 5, draws).cost.p90);
  expect(sheet(cause('a', 0.5, ['pins.renew'], beside(0)), cause('b', 0.5, ['pins.renew'], beside(0.5))).jobs.map((job) => [job.job, job.need])).toEqual([['pins.renew', undefined], ['trial.run', undefined]]);
});

test('chance of any: overlaps are not counted twice, and drawing agrees', () => {
  const one = fc.record({ by: fc.constantFrom('a', 'b', 'c'), from: fc.double({ min: 0, max: 0.6, noNaN: true }), length: fc.double({ min: 0.01, max: 0.4, noNaN: true }) }).map(({ by, from, length }): Draw => ({ by, from, to: from + length }));
  let worst = 0;
  fc.assert(fc.property(fc.array(one, { minLength: 1, maxLength: 6 }), fc.integer({ min: 0, max: 1e6 }), (draws, seed) => {
    const generator = seeded(seed, 'test');
    let hit = 0;
    const count = 4_000;
    for (let index = 0; index < count; index++) {
      const at = { a: nextUniform(generator), b: nextUniform(generator), c: nextUniform(generator) } as const;
      if (draws.some(({ by, from, to }) => at[by as 'a'] >= from && at[by as 'a'] < to)) hit += 1;
    }
    worst = Math.max(worst, Math.abs(chanceOfAny(draws) - hit / count));
  }), { numRuns: 100, seed: 7 });
  console.log(`chance of any against 4 000 draws, 100 cases: worst difference ${worst.toFixed(4)}`);
  // Five standard errors at a chance of one half.
  expect(worst).toBeLessThan(5 * Math.sqrt(0.25 / 4_000));
});

test('a reading whose doubt lies across a limit makes its job doubtful, and a finer tool settles it', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('main-shaft.diameter', '2.000 in');
  log.put('reading', { place: 'main-bearings.clearance', at: 'front', quantity: { dimension: 'length', value: 0.0052 * 0.0254, uncertainty: 0.0008 * 0.0254 }, asWritten: '0.0052 in', standing: 'measured' });
  const coarse = pictureOf(log);
  const finding = coarse.findings.find((one) => one.criterion === 'journals.clearance' && one.at === 'front');
  const [maybe] = coarse.worksheet.mayBe?.filter((job) => job.job === 'bearings.take-out-shims') ?? [];
  const asked = coarse.worksheet.jobs.find((job) => job.job === 'bearings.take-out-shims');
  const need = (maybe ?? asked)?.need;
  // A grade of less than one in two hundred is not spoken of.
  expect(Math.abs((need?.chance ?? 0) - (finding?.chances.watch ?? 1))).toBeLessThan(0.005);
  const job = maybe ?? asked;
  if (job === undefined) throw new Error('the shims are not on the sheet');
  const dear = { ...job, cost: { least: 200, likely: 300, most: 400 } };
  const check = checkFirst(coarse.known, coarse.findings, knowledge, dear);
  expect(check?.settles).toContain('main-bearings.clearance@front');
  expect(check?.clears).toBeLessThanOrEqual(1 - (need?.chance ?? 1));
  expect(check?.spares.cost).toBeCloseTo((check?.clears ?? Number.NaN) * 300, 9);
  // A check that takes longer than the job it might spare is not offered.
  expect(checkFirst(coarse.known, coarse.findings, knowledge, { ...job, cost: { least: 0, likely: 0, most: 0 }, hours: { least: 0.1, likely: 0.1, most: 0.1 } })).toBeUndefined();
  // One of a diagnosis is used as it was given.
  const given = sheet(cause('pins worn', 0.35, ['pins.renew'], { check: { words: 'lift the arms with a bar', minutes: 10, settles: ['toggle-pins.play'], clears: 0.6 } })).mayBe?.[0];
  expect(given === undefined ? undefined : checkFirst(sound.known, [], knowledge, given)).toMatchObject({ minutes: 10, clears: 0.6 });
});

test('a cause that cannot be is said and passed over', () => {
  const some = sheet(cause('none', 0, ['pins.renew']), cause('more', 1.2, ['pins.renew']), cause('no number', Number.NaN, ['pins.renew']), cause('outside', 0.5, ['pins.renew'], { draw: { by: 'x', from: 0.8 } }), cause('no job', 0.5, ['no.such-job']));
  expect(some.mayBe).toEqual([]);
  expect(some.problems.map((problem) => problem.split(';')[0])).toEqual(['The cause "none" is passed over', 'The cause "more" is passed over', 'The cause "no number" is passed over', 'The cause "outside" is passed over', 'The cause "no job" is passed over']);
});

test('nothing is doubted that was only looked at: no chance is made up', () => {
  const seen = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('belt.state', 'cracked').look('frame.crack', 'suspected'));
  expect(seen.worksheet.jobs.every((job) => job.need === undefined)).toBe(true);
  expect(seen.worksheet.mayBe).toEqual([]);
});
