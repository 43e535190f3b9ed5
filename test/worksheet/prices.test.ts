import { expect, test } from 'vitest';
import { foldEntries, moneyAndTime, priceBook, worksheetOf, type MoneyOptions } from '../../src/derived/index.ts';
import type { PriceBody } from '../../src/entries/index.ts';
import { unitsIn } from '../../src/derived/worksheet/bought-in.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf, wornHammer } from './worn-hammer.ts';

const worn = pictureOf(wornHammer());
const price = (of: string, amount: number, currency: string, more: Partial<PriceBody> = {}): PriceBody => ({ of, price: { amount, currency }, sourceKind: 'quoted', quantity: 1, ...more });
const knownOf = (...prices: readonly PriceBody[]) => {
  const log = new LogOf('50 lb', 'coil-and-toggle');
  prices.forEach((body, minute) => log.put('price', body, minute));
  const known = foldEntries(log.entries);
  if (known === undefined) throw new Error('the case enrols no hammer');
  return known;
};
const book = (prices: readonly PriceBody[], options: MoneyOptions = {}) => priceBook(knownOf(...prices), knowledge, options);
const eachOf = (found: ReturnType<typeof book>, of: string): number | undefined => found.lines.find((line) => line.of === of)?.each;

test('a rate of the log turns one money into another, with its day; the latest counts, either way round', () => {
  const belt = price('flat-belt', 20, 'EUR');
  const key = price('key-steel', 11, 'GBP');
  const found = book([belt, key, price('coil-spring', 80, 'EUR'), price('money.gbp', 1.15, 'EUR', { on: '2026-01-10', sourceKind: 'listed' }), price('money.gbp', 1.2, 'EUR', { on: '2026-03-02', sourceKind: 'listed' })]);
  expect(found).toMatchObject({ currency: 'EUR', problems: [] });
  expect(eachOf(found, 'flat-belt')).toBe(20);
  expect(eachOf(found, 'key-steel')).toBeCloseTo(13.2, 12);
  expect(found.notes[0]).toBe('One GBP is reckoned at 1.2 EUR, listed on 2026-03-02.');
  const asked = book([belt, key, price('money.gbp', 1.2, 'EUR', { on: '2026-03-02' })], { currency: 'GBP' });
  expect(eachOf(asked, 'flat-belt')).toBeCloseTo(20 / 1.2, 12);
  expect(eachOf(asked, 'key-steel')).toBe(11);
});

test('a rate leads over a third money where no direct one was heard; without any it is said', () => {
  const prices = [price('flat-belt', 300, 'SEK'), price('key-steel', 9, 'USD'), price('key-steel', 9, 'USD', { on: '2026-01-01' })];
  const rates = [price('money.eur', 11.5, 'SEK'), price('money.eur', 1.1, 'USD')];
  expect(eachOf(book([...prices, ...rates]), 'flat-belt')).toBeCloseTo((300 * 1.1) / 11.5, 12);
  const without = book([...prices, price('money.eur', 11.5, 'SEK')]);
  expect(eachOf(without, 'flat-belt')).toBeUndefined();
  expect(without.problems).toEqual(['Left out of the sums, which are in USD: flat belt at 300 SEK. No rate joins the two; enter one as a price of money.sek, or ask for the sums in SEK. Until then the range stands instead']);
  // The same log without a price: it holds no readings, so that nothing is known of its gap, unlike the worn hammer's.
  expect(worksheetOf(knownOf(...prices), worn.findings, knowledge).jobs.length).toBe(worksheetOf(knownOf(), worn.findings, knowledge).jobs.length);
});

test('the estimates too are turned by a rate, and a rate of nought or below is passed over', () => {
  const found = book([price('flat-belt', 20, 'EUR'), price('money.unit', 0.9, 'EUR')]);
  expect(found.unitWorth).toBeCloseTo(0.9, 12);
  expect(found.notes).toEqual(['One unit is reckoned at 0.9 EUR, quoted on 2026-05-12.']);
  expect(book([price('money.eur', 0, 'USD')]).problems).toEqual(['The rate of 2026-05-12 for money.eur is passed over; a rate is above zero: 0 USD']);
});

test('a price by weight or length fits a part that is counted so, and no other', () => {
  expect(unitsIn('lb', 'kg')).toBeCloseTo(0.45359237, 12);
  expect(unitsIn('ft', 'm')).toBeCloseTo(0.3048, 12);
  expect(unitsIn('kg', 'm')).toBeUndefined();
  expect(eachOf(book([price('babbitt', 24, 'USD', { unit: 'kg' })]), 'babbitt')).toBeCloseTo(24 * 0.45359237, 9);
  expect(eachOf(book([price('flat-belt', 60, 'USD', { unit: 'ft', quantity: 10 })]), 'flat-belt')).toBeCloseTo(6 / 0.3048, 9);
  expect(eachOf(book([price('pin-set', 310, 'USD', { unit: 'each' })]), 'pin-set')).toBe(310);
  expect(book([price('pin-set', 310, 'USD', { unit: 'kg' })])).toMatchObject({ lines: [], problems: ['The price of 2026-05-12 for pin-set is passed over; it is counted by the set: kg'] });
});

test('work by the hour is paid for the hours of the job, with their doubt', () => {
  const sheet = worksheetOf(knownOf(price('guide.shim', 90, 'USD', { unit: 'hour' })), worn.findings, knowledge);
  const job = sheet.jobs.find((one) => one.job === 'guide.shim');
  const parts = job?.parts.reduce((sum, part) => sum + part.cost.likely, 0) ?? Number.NaN;
  expect(job?.cost.likely).toBeCloseTo(parts + 90 * (job?.hours.likely ?? Number.NaN), 9);
  expect(job?.outside?.source).toBe('quoted');
  expect(moneyAndTime(sheet, knowledge, 1, { draws: 500 }).boughtDrivers.some((driver) => driver.id === 'guide.shim:outside')).toBe(true);
});

test('an old price stays as it was heard and is said to be old; it is brought up only by a stated rise', () => {
  const old = price('coil-spring', 100, 'USD', { on: '2016-05-12' });
  const asOf = '2026-05-12T12:00:00Z';
  expect(eachOf(book([old], { asOf }), 'coil-spring')).toBe(100);
  expect(book([old], { asOf }).notes).toEqual(['Old, and reckoned as they were heard: coil spring to order (2016).']);
  const raised = book([old], { asOf, risePerYear: 0.03 });
  expect(eachOf(raised, 'coil-spring')).toBeCloseTo(100 * 1.03 ** 10, 1);
  expect(raised.notes).toEqual(['Prices heard are brought up by 3 % for each year of their age: an assumption of whoever asked, not a price that was heard.']);
  expect(book([old], { asOf, risePerYear: 4 }).problems).toEqual(['Prices are not brought up; a rise in a year lies between -50 and 100 %: 400 %']);
});

test('the price of the later day counts, whenever it was entered', () => {
  const found = book([price('coil-spring', 120, 'USD', { on: '2026-02-01' }), price('coil-spring', 80, 'USD', { on: '2019-02-01' })]);
  expect(eachOf(found, 'coil-spring')).toBe(120);
  expect(found.lines[0]?.earlier.map((one) => [one.price.amount, one.when])).toEqual([[80, '2019-02-01']]);
});

test('a foreign price without a rate never takes the sums over; it is left out by name and the rest goes on', () => {
  const alone = book([price('flat-belt', 2_400, 'SEK')]);
  expect(alone).toMatchObject({ currency: 'unit', unitWorth: 1 });
  expect(eachOf(alone, 'flat-belt')).toBeUndefined();
  expect(alone.problems).toEqual([expect.stringContaining('flat belt at 2400 SEK')]);
  const amongUnits = book([price('flat-belt', 2_400, 'SEK'), price('key-steel', 9, 'unit'), price('coil-spring', 80, 'unit')]);
  expect(amongUnits.currency).toBe('unit');
  expect(eachOf(amongUnits, 'coil-spring')).toBe(80);
  // As many in units as in another money: the units are at home.
  expect(book([price('key-steel', 9, 'unit'), price('flat-belt', 20, 'EUR')]).currency).toBe('unit');
  // Asked for, it is reckoned in, and one for one is said.
  const asked = book([price('flat-belt', 2_400, 'SEK')], { currency: 'SEK' });
  expect(eachOf(asked, 'flat-belt')).toBe(2_400);
  expect(asked.notes.join()).toContain('added to SEK one for one');
  const sheet = worksheetOf(knownOf(price('flat-belt', 2_400, 'SEK')), worn.findings, knowledge);
  expect(sheet.jobs.length).toBe(worksheetOf(knownOf(), worn.findings, knowledge).jobs.length);
  expect(sheet.cost).toEqual(worn.worksheet.cost);
});

test('a rate to the dollar joins the generic units, either way round', () => {
  const euros = book([price('flat-belt', 20, 'EUR'), price('money.eur', 1.25, 'USD', { on: '2026-03-02' })]);
  expect(euros.currency).toBe('EUR');
  // One unit is one dollar, which is 1 / 1.25 euros.
  expect(euros.unitWorth).toBeCloseTo(0.8, 12);
  expect(euros.notes.join()).not.toContain('one for one');
  const units = book([price('flat-belt', 20, 'EUR'), price('key-steel', 9, 'unit'), price('coil-spring', 80, 'unit'), price('money.usd', 0.8, 'EUR', { on: '2026-03-02' })]);
  expect(units.currency).toBe('unit');
  expect(eachOf(units, 'flat-belt')).toBeCloseTo(25, 12);
  // What is said of the unit itself goes before the dollar.
  expect(book([price('flat-belt', 20, 'EUR'), price('money.eur', 1.25, 'USD'), price('money.unit', 0.9, 'EUR')]).unitWorth).toBeCloseTo(0.9, 12);
  expect(book([price('flat-belt', 20, 'EUR')], { currency: 'EUR', rates: { USD: 0.8 } }).unitWorth).toBeCloseTo(0.8, 12);
});
