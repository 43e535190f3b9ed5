import { expect, test } from 'vitest';
import { findingsAfter, priceBook, saleValue, type Picture } from '../../src/derived/index.ts';
import { PRICE_CHANGES, SALE_CLASSES, knowledge } from '../../src/knowledge/index.ts';
import { quantile } from '../../src/methods/chance/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf, wornHammer } from './worn-hammer.ts';

const SEED = 5;
const value = (found: Picture, options = {}) => saleValue(found.known, found.findings, priceBook(found.known, knowledge), SEED, options);

test('a sound hammer is worth its class, with the doubt of the class', () => {
  const sound = value(pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle'))), { draws: 40_000 });
  expect(sound.changes).toEqual([]);
  expect(sound.base).toMatchObject({ estimate: true, value: { least: 5_000, likely: 6_500, most: 9_000 } });
  const exact = (chance: number): number => quantile({ kind: 'triangular', least: 5_000, likely: 6_500, most: 9_000 }, chance);
  for (const [got, wanted] of [[sound.value.p10, exact(0.1)], [sound.value.p50, exact(0.5)], [sound.value.p90, exact(0.9)]] as const) expect(Math.abs(got / wanted - 1)).toBeLessThan(0.01);
});

test('each fault is named with its share and its money, taken from what is left', () => {
  const worn = value(pictureOf(wornHammer()));
  expect(worn.changes.map((change) => change.id)).toEqual(['bearing-loose', 'dies-worn-out']);
  expect(worn.changes[0]).toMatchObject({ amount: 650, because: ['journals.clearance@front'], source: 'common-practice' });
  expect(worn.changes[1]?.amount).toBeCloseTo(0.07 * 5_850, 9);
  expect(worn.value.p10).toBeLessThan(worn.value.p50);
});

test('a crack in the load path takes a third to more than half; one only suspected is not counted twice', () => {
  const with_ = (answer: string) => value(pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('frame.crack', answer)));
  expect(with_('present').changes.map((change) => change.id)).toEqual(['crack-in-load-path']);
  expect(with_('suspected').changes.map((change) => change.id)).toEqual(['crack-suspected']);
  expect(with_('present').value.p50).toBeLessThan(with_('repaired').value.p50);
});

test('what nobody looked at is said and not reckoned in', () => {
  const blank = value(pictureOf(new LogOf('50 lb', 'coil-and-toggle')));
  expect(blank.changes).toEqual([]);
  expect(blank.notChecked.find((one) => one.words === 'crack in the load path')?.criteria).toContain('frame.crack');
});

test('shown on hot steel adds, far away takes off, and work done on it adds what its faults took', () => {
  const found = pictureOf(wornHammer());
  const plain = value(found).value.p50;
  expect(value(found, { shownOnHotSteel: true }).value.p50).toBeGreaterThan(plain * 1.1);
  expect(value(found, { farOrHeavy: true }).value.p50).toBeLessThan(plain * 0.95);
  const after = findingsAfter(found.known, found.findings, new Set(found.worksheet.jobs.map((job) => job.job)), knowledge);
  expect(saleValue(found.known, after, priceBook(found.known, knowledge), SEED).changes).toEqual([]);
});

test('a price heard for such a hammer is the base; what was paid for this one stands beside it', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle'));
  log.put('price', { of: 'whole-machine', price: { amount: 7_000, currency: 'USD' }, sourceKind: 'heard', quantity: 1 });
  log.put('price', { of: 'whole-machine', price: { amount: 1_500, currency: 'USD' }, sourceKind: 'paid', quantity: 1 });
  const sold = value(pictureOf(log));
  expect(sold.base).toMatchObject({ estimate: false, value: { least: 5_250, likely: 7_000, most: 8_750 } });
  expect(sold.paidForIt).toBe(1_500);
});

test('the tables name criteria, grades, answers and sources that exist, and shares in order', () => {
  const sources = new Set(knowledge.sources.map((source) => source.id));
  for (const row of SALE_CLASSES) expect(sources.has(row.source) && row.inGoodOrder.least < row.inGoodOrder.likely && row.inGoodOrder.likely < row.inGoodOrder.most, `${row.ramPounds}`).toBe(true);
  for (const change of PRICE_CHANGES) {
    expect(sources.has(change.source) && change.share.least > 0 && change.share.least <= change.share.likely && change.share.likely <= change.share.most && change.share.most < 1, change.id).toBe(true);
    for (const one of change.when) {
      const rule = knowledge.criteria.find((criterion) => criterion.id === one.criterion)?.rule;
      expect(rule, one.criterion).toBeDefined();
      for (const answer of one.answers ?? []) expect(rule?.kind === 'seen' && answer in rule.answers, `${one.criterion}: ${answer}`).toBe(true);
    }
  }
});
