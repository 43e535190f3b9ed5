import { describe, expect, it, test } from 'vitest';
import { dutyLadder, picture } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { EXAMPLE_PICTURES } from './example-pictures.ts';
import { LogOf } from './log-of.ts';

const pictureOf = (log: LogOf) => {
  const found = picture(log.entries, knowledge, '2027-01-01T00:00:00Z', 1);
  if (found === undefined) throw new Error('no hammer');
  return found;
};
/** A bearing of 2 in with 12 thou of clearance: good practice sets 1.5 thou for each inch, 3 thou, so 9 have to come out. */
const loose = (shims: string) => new LogOf('50 lb', 'coil-and-toggle').read('main-shaft.diameter@front', '2 in').read('main-bearings.clearance@front', '12 thou').read('bearing-caps.shims@front', shims);

describe('shims in a cap', () => {
  test('6 thou there and 9 to take out: 3 too few, 6 left, and the bearing is poured', () => {
    const found = pictureOf(loose('6 thou'));
    const finding = found.findings.find((one) => one.criterion === 'journals.shims-left' && one.at === 'front');
    expect(finding?.shown).toMatch(/^6(?:\.0)? thou there, 9(?:\.0)? thou to take out: 3(?:\.0)? ± \S+ thou too few, reckoned; all of them out would leave about 6(?:\.0)? thou of clearance$/u);
    expect(found.worksheet.jobs.map((job) => job.job)).toContain('bearings.pour');
    expect(found.findings.find((one) => one.criterion === 'journals.clearance' && one.at === 'front')?.cures).not.toContain('bearings.take-out-shims');
  });

  test('20 thou there and 9 to take out: they come out', () => {
    const found = pictureOf(loose('20 thou'));
    expect(found.findings.find((one) => one.criterion === 'journals.clearance' && one.at === 'front')?.cures).toContain('bearings.take-out-shims');
  });
});

describe('a journal that is only watched', () => {
  const round = (log: LogOf) => pictureOf(log.read('main-shaft.out-of-round@front', '2.5 thou')).worksheet.jobs.map((job) => job.job);

  test('is turned before a bearing is poured to it, and left alone where none is', () => {
    const poured = round(loose('6 thou'));
    expect(poured).toContain('shaft.turn-true');
    expect(poured.indexOf('shaft.turn-true')).toBeLessThan(poured.indexOf('bearings.pour'));
    expect(round(new LogOf('50 lb', 'coil-and-toggle'))).not.toContain('shaft.turn-true');
  });
});

describe.each(EXAMPLE_PICTURES)('$tag', ({ found }) => {
  it('has no bearing poured to a journal that is out of round, tapered or scored', () => {
    const jobs = found.worksheet.jobs.map((job) => job.job);
    const out = found.findings.some((one) => ['shaft.out-of-round', 'shaft.taper', 'shaft.score', 'shaft.run-out'].includes(one.criterion) && ['watch', 'limited', 'stand-down'].includes(one.grade));
    if (jobs.includes('bearings.pour') && out) expect(jobs.slice(0, jobs.indexOf('bearings.pour')).some((job) => job === 'shaft.turn-true' || job === 'shaft.renew')).toBe(true);
  });

  it('is not promised fit before its trial, unless it is fit today', () => {
    const ladder = dutyLadder(found.known, found.findings, found.worksheet, knowledge);
    const trial = ladder.findIndex((step) => step.job === 'trial.run');
    if (found.duty.verdict === 'fit' || trial < 0) return;
    expect(ladder.slice(0, trial).filter((step) => step.duty.verdict === 'fit').map((step) => step.job)).toEqual([]);
  });
});
