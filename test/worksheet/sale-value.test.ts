import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { findingsAfter, picture, priceBook, saleValue, worksheetOf, type Picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { HOUR_WORTH, PRICE_CHANGES, SALE_CLASSES, knowledge, type Span } from '../../src/knowledge/index.ts';
import { quantile } from '../../src/methods/chance/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf, wornHammer } from './worn-hammer.ts';

const SEED = 5;
const folder = fileURLToPath(new URL('../../examples/', import.meta.url));
const INVENTED = readdirSync(folder).filter((name) => name.endsWith('.yaml')).map((name) => {
  const found = picture(readSurveyFile(readFileSync(`${folder}${name}`, 'utf8')).entries, knowledge, '2027-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error(`${name} enrols no hammer`);
  return found;
});
const sold = (found: Picture) => ({ jobs: found.worksheet.jobs, prices: priceBook(found.known, knowledge) });
const value = (found: Picture, options = {}) => saleValue(found.known, found.findings, sold(found), SEED, options);

test('a sound hammer is worth its class, with the doubt of the class', () => {
  const gates = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')));
  const sound = value(gates, { draws: 40_000 });
  expect(sound.changes).toEqual([]);
  expect(sound.base).toMatchObject({ estimate: true, value: { least: 5_000, likely: 6_500, most: 9_000 } });
  // The missing brake aside, which is the one fault of this case.
  const bare = saleValue(gates.known, gates.findings.filter((finding) => finding.criterion !== 'brake.fitted'), { ...sold(gates), jobs: [] }, SEED, { draws: 40_000 }).ifNoneThere;
  const exact = (chance: number): number => quantile({ kind: 'triangular', least: 5_000, likely: 6_500, most: 9_000 }, chance);
  for (const [got, wanted] of [[bare.p10, exact(0.1)], [bare.p50, exact(0.5)], [bare.p90, exact(0.9)]] as const) expect(Math.abs(got / wanted - 1)).toBeLessThan(0.01);
});

test('each fault is named with its share and its money, taken from what is left', () => {
  const worn = value(pictureOf(wornHammer()));
  // Its coils have touched, so its spring is spent too.
  expect(worn.changes.map((change) => change.id)).toEqual(['bearing-loose', 'dies-worn-out', 'spring-spent']);
  expect(worn.changes[0]).toMatchObject({ because: ['journals.clearance@front'], source: 'common-practice' });
  // Each at its middle, from what the one before left: the triangles' means are (5 000 + 6 500 + 9 000) / 3, (8 + 10 + 12) / 3 % and so on.
  let left = (5_000 + 6_500 + 9_000) / 3;
  for (const { amount, share } of worn.changes) {
    const off = left * (share.least + share.likely + share.most) / 3;
    expect(Math.abs(amount / off - 1)).toBeLessThan(0.03);
    left -= off;
  }
  expect(worn.value.p10).toBeLessThan(worn.value.p50);
});

test('a crack in the load path takes a third to more than half; one only suspected is not counted twice', () => {
  const with_ = (answer: string) => value(pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('frame.crack', answer)));
  expect(with_('present').changes.map((change) => change.id)).toEqual(['crack-in-load-path']);
  expect(with_('suspected').changes.map((change) => change.id)).toEqual(['crack-suspected']);
  expect(with_('present').value.p50).toBeLessThan(with_('repaired').value.p50);
});

test('what nobody looked at is said, and widens the range downwards', () => {
  const blank = value(pictureOf(new LogOf('50 lb', 'coil-and-toggle')));
  expect(blank.changes).toEqual([]);
  expect(blank.notChecked.find((one) => one.words === 'crack in the load path')?.criteria).toContain('frame.crack');
  expect(blank.value.p10).toBeLessThan(blank.ifNoneThere.p10 * 0.9);
  expect(blank.value.p90).toBeLessThan(blank.ifNoneThere.p90);
  const checked = value(pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle'))));
  expect(blank.value.p90 - blank.value.p10).toBeGreaterThan(0);
  expect(checked.notChecked.length).toBeLessThan(blank.notChecked.length);
});

test('shown on hot steel adds, far away takes off, and work done on it adds what its faults took', () => {
  const found = pictureOf(wornHammer());
  const plain = value(found).value.p50;
  expect(value(found, { shownOnHotSteel: true }).value.p50).toBeGreaterThan(plain * 1.1);
  expect(value(found, { farOrHeavy: true }).value.p50).toBeLessThan(plain * 0.95);
  const after = findingsAfter(found.known, found.findings, new Set(found.worksheet.jobs.map((job) => job.job)), knowledge);
  expect(saleValue(found.known, after, { jobs: worksheetOf(found.known, after, knowledge).jobs, prices: priceBook(found.known, knowledge) }, SEED)).toMatchObject({ changes: [], toCure: [], nothingOff: [] });
});

test('a price heard for such a hammer is the base; what was paid for this one stands beside it', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle'));
  log.put('price', { of: 'whole-machine', price: { amount: 7_000, currency: 'USD' }, sourceKind: 'heard', quantity: 1 });
  log.put('price', { of: 'whole-machine', price: { amount: 1_500, currency: 'USD' }, sourceKind: 'paid', quantity: 1 });
  const sold = value(pictureOf(log));
  expect(sold.base).toMatchObject({ estimate: false, value: { least: 5_250, likely: 7_000, most: 8_750 } });
  expect(sold.paidForIt).toBe(1_500);
});

test('every open finding takes something off with its reason, or nothing with its reason, and none both', () => {
  for (const found of [pictureOf(wornHammer()), ...INVENTED]) {
    const sale = value(found);
    const off = [...sale.changes.flatMap((change) => change.because), ...sale.toCure.flatMap((line) => line.because)];
    const nothing = sale.nothingOff.map((one) => one.finding);
    const open = found.findings.filter((finding) => ['watch', 'limited', 'stand-down'].includes(finding.grade)).map((finding) => (finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`));
    expect(open.filter((key) => !off.includes(key) && !nothing.includes(key)), found.known.identity.tag).toEqual([]);
    expect(sale.nothingOff.every((one) => one.because.length > 20)).toBe(true);
    expect(new Set(sale.toCure.map((line) => line.job)).size).toBe(sale.toCure.length);
  }
});

test('a cracked leaf and a wide pivot take something off', () => {
  const jobs = (tag: string): readonly string[] => value(INVENTED.find((found) => found.known.identity.tag === tag) as Picture).toCure.map((line) => line.job);
  expect(jobs('DT-90')).toContain('bow.replace-leaf');
  expect(jobs('TW-150')).toContain('helve.bush-pivot');
});

test('what it costs to cure is drawn about its likely amount', () => {
  const found = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('belt.state', 'cracked'));
  const cured = value(found, { draws: 40_000 });
  // Means of the beta distributions of money and hours, and of the triangle of what an hour is worth.
  const mean = ({ least, likely, most }: Span): number => (least + 4 * likely + most) / 6;
  const off = cured.toCure.reduce((sum, line) => sum + line.chance * (mean(line.cost) + (mean(line.hours) * (HOUR_WORTH.least + HOUR_WORTH.likely + HOUR_WORTH.most)) / 3), 0);
  const without = saleValue(found.known, found.findings.filter((finding) => finding.grade !== 'limited' && finding.grade !== 'watch' && finding.grade !== 'stand-down'), { ...sold(found), jobs: [] }, SEED, { draws: 40_000 });
  expect(cured.toCure.map((line) => line.job)).toEqual(expect.arrayContaining(['belt.renew']));
  expect(Math.abs(without.ifNoneThere.mean - cured.ifNoneThere.mean - off) / off).toBeLessThan(0.05);
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
