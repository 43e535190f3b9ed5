import { expect, test } from 'vitest';
import fc from 'fast-check';
import { foldEntries, priceBook, progressOf, worksheetOf, type Finding } from '../../src/derived/index.ts';
import { knowledge, type Job, type Knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf, wornHammer } from './worn-hammer.ts';

const worn = pictureOf(wornHammer());
const known = (log: LogOf) => {
  const folded = foldEntries(log.entries);
  if (folded === undefined) throw new Error('the case enrols no hammer');
  return folded;
};
const priced = () => new LogOf('50 lb', 'coil-and-toggle');
const price = (of: string, amount: number, currency: string, sourceKind: 'paid' | 'quoted' | 'heard' | 'listed' = 'quoted', quantity = 1) => ({ of, price: { amount, currency }, sourceKind, quantity });

test('a trial ends every worksheet with open work, waits for all of it and cures nothing', () => {
  const last = worn.worksheet.jobs.at(-1);
  expect(last).toMatchObject({ job: 'trial.run', cures: [], state: 'open' });
  expect([...(last?.after ?? [])].sort()).toEqual(worn.worksheet.jobs.filter((job) => job.job !== 'trial.run').map((job) => job.job).sort());
  expect(worksheetOf(worn.known, [], knowledge).jobs).toEqual([]);
});

test('a finished job that nobody looked at since is off the worksheet with its finding; the trial before it does not count', () => {
  const log = wornHammer();
  // Tried while its keys held; a trial of a hammer that stands down would not be counted at all.
  log.put('sighting', { look: 'keys.secure', answer: 'tight', standing: 'seen' }, 190);
  log.put('job-progress', { job: 'trial.run', state: 'done' }, 200);
  log.put('sighting', { look: 'keys.secure', answer: 'loose', standing: 'seen' }, 250);
  log.put('job-progress', { job: 'keys.renew', state: 'done', hours: 2, words: 'both keys' }, 300);
  const after = pictureOf(log);
  expect(after.worksheet.jobs.find((job) => job.job === 'keys.renew')).toMatchObject({ state: 'done', hoursSpent: 2 });
  expect(after.worksheet.jobs.at(-1)).toMatchObject({ job: 'trial.run', state: 'open', again: expect.stringContaining('the work now open has to be shown too') });
  const [, done] = progressOf(after.known, after.findings, knowledge);
  expect(done).toMatchObject({ job: 'keys.renew', hours: 2, words: 'both keys', by: 'A. Quill', toProve: expect.arrayContaining(['keys.secure']), stillThere: [] });
  expect(done?.values).toContainEqual({ key: 'keys.secure', found: { shown: 'one stays loose, or the key is home with nothing left to drive', when: expect.any(String) } });
});

test('as found and as left are both kept once somebody measures again', () => {
  const log = wornHammer();
  log.put('job-progress', { job: 'guide.shim', state: 'done' }, 300);
  const body = log.read('ram-guide.play-fore-aft@top', '0.008 in').entries.at(-1);
  if (body !== undefined) Object.assign(body, { at: '2026-05-13T09:00:00.000Z' });
  const after = pictureOf(log);
  const done = progressOf(after.known, after.findings, knowledge).find((one) => one.job === 'guide.shim');
  expect(done?.values).toContainEqual({ key: 'ram-guide.play-fore-aft@top', found: { shown: '0.045 in', when: expect.any(String) }, left: { shown: '0.008 in', when: '2026-05-13T09:00:00.000Z' } });
  expect(done?.toProve).toContain('guide.play-fore-aft@bottom');
});

test('a job whose finding came back is open again, and says so', () => {
  const log = wornHammer();
  log.put('job-progress', { job: 'keys.renew', state: 'done' }, 300);
  log.put('sighting', { look: 'keys.secure', answer: 'loose', standing: 'seen' }, 400);
  expect(pictureOf(log).worksheet.jobs.find((job) => job.job === 'keys.renew')).toMatchObject({ state: 'open', again: 'Done on 2026-05-12, and found again since.' });
});

test('the latest price counts, by the piece, and the earlier ones are kept', () => {
  const log = priced();
  log.put('price', price('flat-belt', 200, 'USD', 'heard', 10), 1);
  log.put('price', price('flat-belt', 90, 'USD', 'quoted', 2), 2);
  const book = priceBook(known(log), knowledge);
  expect(book).toMatchObject({ currency: 'USD', problems: [], notes: [] });
  expect(book.lines).toMatchObject([{ of: 'flat-belt', kind: 'part', each: 45, latest: { sourceKind: 'quoted' }, earlier: [{ sourceKind: 'heard' }] }]);
  const belt = worksheetOf(known(log), worn.findings, knowledge).jobs.find((job) => job.job === 'belt.renew');
  expect(belt?.cost).toEqual({ least: 180, likely: 180, most: 180 });
  expect(belt?.parts).toMatchObject([{ id: 'flat-belt', heard: true, source: 'quoted' }]);
});

test('a price for the whole job replaces its parts and outside work, and brings its own lead time', () => {
  const log = priced();
  log.put('price', { ...price('dies.new-lower', 260, 'USD'), leadDays: 10 });
  expect(worksheetOf(known(log), worn.findings, knowledge).jobs.find((job) => job.job === 'dies.new-lower'))
    .toMatchObject({ cost: { least: 260, likely: 260, most: 260 }, wholePrice: 'quoted', leadDays: { least: 10, likely: 10, most: 10 } });
});

test('mixed currencies without a rate are said, the range stands for the lesser, and a rate mends it', () => {
  const log = priced();
  log.put('price', price('flat-belt', 40, 'EUR'), 1);
  log.put('price', price('brake-kit', 90, 'EUR'), 2);
  log.put('price', price('key-steel', 9, 'EUR'), 3);
  log.put('price', price('lower-die-blank', 180, 'GBP'), 4);
  const sheet = worksheetOf(known(log), worn.findings, knowledge);
  expect(sheet.currency).toBe('EUR');
  expect(sheet.problems.join('\n')).toContain('Left out of the sums, which are in EUR: die, half of a pair at 180 GBP. No rate joins the two');
  expect(sheet.prices?.notes).toEqual(['Estimates are in generic units of about one US dollar and are added to EUR one for one, since no rate is given']);
  expect(sheet.jobs.find((job) => job.job === 'dies.new-lower')?.cost).toEqual({ least: 125, likely: 200, most: 300 });
  const rated = worksheetOf(known(log), worn.findings, knowledge, { rates: { GBP: 1.2, unit: 0.9 } });
  expect(rated.jobs.find((job) => job.job === 'dies.new-lower')?.cost.likely).toBeCloseTo(216, 9);
  expect(rated.jobs.find((job) => job.job === 'guide.shim')?.cost.likely).toBeCloseTo(27, 9);
  expect(rated.problems.join('\n')).not.toContain('GBP');
  expect(worksheetOf(known(log), worn.findings, knowledge, { rates: { GBP: -1 } }).problems).toContain('A rate must be above zero: GBP has -1');
});

test('negative prices, counts of nothing and unknown things are said, and the rest goes on', () => {
  const log = priced();
  log.put('price', price('flat-belt', -4, 'USD'), 1);
  log.put('price', price('key-steel', 9, 'USD', 'paid', 0), 2);
  log.put('price', price('moon-dust', 9, 'USD'), 3);
  log.put('price', price('guard-material', 70, 'USD'), 4);
  log.put('job-progress', { job: 'moon.walk', state: 'planned' }, 5);
  const sheet = worksheetOf(known(log), worn.findings, knowledge);
  expect(sheet.problems).toEqual([
    'A job is named that this version does not know: moon.walk',
    'The price of 2026-05-12 for flat-belt is passed over; a price is a number not below zero: -4 USD',
    'The price of 2026-05-12 for key-steel is passed over; what it is for must count more than zero: 0',
    'The price of 2026-05-12 is for a job or part that this version does not know: moon-dust',
  ]);
  expect(sheet.prices?.lines.map((line) => line.of)).toEqual(['guard-material']);
  // The same findings on a log without readings and prices: nothing is known of its gap, unlike the worn hammer's.
  expect(sheet.jobs.length).toBe(worksheetOf(known(priced()), worn.findings, knowledge).jobs.length);
});

/** Knowledge in which some jobs wait for each other; nothing else of it is changed. */
function withWaits(waits: Readonly<Record<string, readonly string[]>>): Knowledge {
  return { ...knowledge, jobs: knowledge.jobs.map((job): Job => ({ ...job, after: [...job.after, ...(waits[job.id] ?? []).map((other) => ({ job: other, because: 'somebody said so' }))] })) };
}

test('jobs that wait for each other are named, and all others keep their order', () => {
  const sheet = worksheetOf(worn.known, worn.findings, withWaits({ 'guide.shim': ['belt.renew'], 'belt.renew': ['guide.retain-shims'] }));
  expect(sheet.problems).toHaveLength(1);
  expect(sheet.problems[0]).toMatch(/^These jobs each wait for the other, and no order keeps all their reasons: /);
  for (const job of ['guide.shim', 'guide.retain-shims', 'belt.renew']) expect(sheet.problems[0]).toContain(job);
  const order = sheet.jobs.map((job) => job.job);
  expect(order.indexOf('seat.fit-filler-plate')).toBeLessThan(order.indexOf('keys.renew'));
  expect(order.at(-1)).toBe('trial.run');
  expect(order).toHaveLength(worn.worksheet.jobs.length);
});

test('whatever is found and whatever waits for what, every job comes after those it waits for', () => {
  const ids = knowledge.jobs.map((job) => job.id);
  fc.assert(fc.property(fc.uniqueArray(fc.constantFrom(...ids), { maxLength: 25 }), fc.array(fc.tuple(fc.constantFrom(...ids), fc.constantFrom(...ids)), { maxLength: 12 }), (cures, rows) => {
    const template = worn.findings.find((finding) => finding.grade === 'limited');
    if (template === undefined) throw new Error('the worn hammer has no limit');
    const findings = cures.map((job): Finding => ({ ...template, cures: [job] }));
    const waits: Record<string, string[]> = {};
    for (const [job, other] of rows) if (job !== other) (waits[job] ??= []).push(other);
    const { jobs } = worksheetOf(worn.known, findings, withWaits(waits));
    const order = jobs.map((job) => job.job);
    for (const job of jobs) for (const before of job.after) expect(order.indexOf(before)).toBeLessThan(order.indexOf(job.job));
    for (const job of jobs) expect(job.number).toBe(order.indexOf(job.job) + 1);
  }), { numRuns: 60 });
});
