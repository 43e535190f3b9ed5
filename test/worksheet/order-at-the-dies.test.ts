import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { worksheetOf, type Worksheet } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf as exampleOf, surveyed } from '../print/paper-cases.ts';
import { orderOfWorkBlocks } from '../../src/views/work/order-of-work-blocks.ts';
import { pictureOf } from './worn-hammer.ts';

const EXAMPLES = readdirSync(fileURLToPath(new URL('../../examples/', import.meta.url))).filter((name) => name.endsWith('.yaml')).map((name) => name.replace('.yaml', ''));

/** What a fitter does first, by common practice: each pair wherever both are on one worksheet. */
const FIRST_THEN: readonly (readonly [first: string, then: string])[] = [
  // A key is filed to its own die: a new die, and grinding, move the flank and the height that it was filed to.
  ...['dies.new-lower', 'dies.new-upper', 'dies.grind-pair', 'dies.dress', 'seat.fit-filler-plate', 'dovetail.file-flanks'].flatMap((first) => [[first, 'keys.renew'], [first, 'keys.drive']] as const),
  // Dies are drawn once: ground or dressed while they are out, washed after that, driven last.
  ['keys.draw', 'dies.grind-pair'], ['dies.grind-pair', 'keys.dry'], ['dies.dress', 'keys.dry'], ['keys.dry', 'keys.drive'], ['keys.dry', 'keys.renew'],
  ['dies.new-lower', 'dies.grind-pair'], ['dies.new-upper', 'dies.grind-pair'], ['dies.grind-pair', 'dies.dress'],
  // Scraping takes metal: shims are set after it.
  ['bearings.scrape', 'bearings.take-out-shims'], ['bearings.scrape', 'bearings.even-shims'], ['bearings.clean', 'bearings.scrape'],
];

const wrongIn = (worksheet: Worksheet): readonly string[] => {
  const place = new Map(worksheet.jobs.map((job) => [job.job, job.number]));
  return FIRST_THEN.filter(([first, then]) => (place.get(first) ?? 0) > (place.get(then) ?? Number.POSITIVE_INFINITY)).map(([first, then]) => `${then} before ${first}`);
};

describe.each(EXAMPLES)('%s', (name) => {
  const found = exampleOf(surveyed(name), 'inch');

  test('new dies and grinding come before the keys, scraping before the shims', () => {
    expect(found.worksheet.problems).toEqual([]);
    expect(wrongIn(found.worksheet)).toEqual([]);
  });

  test('work on the seat below waits for no key that is stuck above only', () => {
    const draw = found.worksheet.jobs.find((job) => job.job === 'keys.draw');
    const below = found.worksheet.jobs.filter((job) => knowledge.jobs.find((one) => one.id === job.job)?.end === 'lower');
    if (draw?.cures.every((key) => key.endsWith('@upper')) === true) for (const job of below) expect(job.after, job.job).not.toContain('keys.draw');
  });
});

const sheetOf = (log: LogOf) => pictureOf(log).worksheet;
const stuck = (at: string) => new LogOf('50 lb', 'coil-and-toggle').look(`key-removal.state@${at}`, 'stuck').look('dovetail.flank@lower', 'part').read('seat.sunk', '1/4 in').read('seat.dish', '0.030 in');

test('the seat waits for a key that is stuck in it, and not for one in the ram', () => {
  const waiting = (at: string) => sheetOf(stuck(at)).jobs.filter((job) => job.job !== 'trial.run' && job.after.includes('keys.draw')).map((job) => job.job);
  expect(waiting('lower')).toEqual(expect.arrayContaining(['seat.grind-with-plate-jig', 'dovetail.file-flanks']));
  expect(waiting('upper').filter((id) => id.startsWith('seat.') || id.startsWith('dovetail.'))).toEqual([]);
  expect(sheetOf(stuck('upper').look('dovetail.flank@upper', 'part')).jobs.find((job) => job.job === 'dovetail.file-flanks')?.after).toContain('keys.draw');
});

test('a worksheet with every job about dies and keys keeps the order of the trade', () => {
  const log = stuck('lower').look('keys.secure', 'loose').look('keys.dovetail-oil', 'oily').look('lower-die.face', 'cracked').look('upper-die.face', 'mushroomed')
    .read('upper-die.parallel', '0.040 in').look('keys.state@lower', 'bent');
  const { known, findings } = pictureOf(log);
  const sheet = worksheetOf(known, findings, knowledge);
  expect(sheet.jobs.map((job) => job.job)).toEqual(expect.arrayContaining(['keys.draw', 'keys.dry', 'keys.renew', 'dies.new-lower', 'dies.grind-pair', 'dies.dress']));
  expect(sheet.problems).toEqual([]);
  expect(wrongIn(sheet)).toEqual([]);
});

test('paint is scraped off what it hides, and the sheet names that and nothing else', () => {
  const rows = (log: LogOf) => JSON.stringify(orderOfWorkBlocks(pictureOf(log), knowledge));
  const marks = rows(new LogOf('50 lb', 'coil-and-toggle').look('nameplate.marks', 'part').look('nameplate.paint', 'clear'));
  expect(marks).toContain('Here: casting marks.');
  expect(marks).not.toMatch(/oil hole/i);
});
