import { describe, expect, test } from 'vitest';
import { cheaperHere, isOpen, jobWords, type Picture, type WorksheetJob } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { workPlan } from '../../src/views/work/index.ts';
import { orderOfWorkBlocks } from '../../src/views/work/order-of-work-blocks.ts';
import { LogOf } from '../cases/log-of.ts';
import { FIVE } from '../print/every-paper.ts';
import { pictureOf as onPaper } from '../print/paper-cases.ts';
import { pictureOf } from './worn-hammer.ts';

const named = (start: string): Picture => onPaper(FIVE.find(({ name }) => name.startsWith(start))?.entries ?? [], 'inch');
const job = ({ worksheet }: Picture, id: string): WorksheetJob => {
  const one = worksheet.jobs.find((held) => held.job === id);
  if (one === undefined) throw new Error(`no such job on the worksheet: ${id}`);
  return one;
};
const numbers = (picture: Picture, ids: readonly string[]): readonly number[] => ids.map((id) => job(picture, id).number);
const rising = (some: readonly number[]): boolean => some.every((one, index) => index === 0 || some[index - 1]! < one);
const said = (picture: Picture, title: string): string => orderOfWorkBlocks(picture, knowledge).flatMap((block) => (block.kind === 'table' ? block.rows.filter((row) => row.cells[1]?.startsWith(title) === true).map((row) => row.cells[2] ?? '') : [])).join(' ');

describe('order at the bench', () => {
  test('eyes and clip pivot are bushed before the pack is clipped, and the straps are bored to the new pins', () => {
    expect(rising(numbers(named('dunmarrow'), ['bow.replace-leaf', 'bow.bush-eyes', 'bow.tighten-clip', 'bow.renew-straps']))).toBe(true);
  });

  test('height screws turn before the pivot is set level and before new rubber goes in', () => {
    const beam = named('tannerwick');
    expect(rising(numbers(beam, ['helve.free-screws', 'helve.bush-pivot', 'helve.renew-cushions']))).toBe(true);
    expect(job(beam, 'helve.bush-pivot').after).toContain('helve.free-screws');
  });

  test('a new key that may be needed comes before the keys are driven', () => {
    const beam = named('tannerwick');
    expect(beam.worksheet.mayBe?.find((one) => one.job === 'keys.renew')?.number).toBe(job(beam, 'keys.drive').number);
  });

  test('the larger motor stands before its belt is cut, and the idler is set on that belt', () => {
    expect(rising(numbers(named('tannerwick'), ['motor.renew', 'belt.renew', 'idler.set']))).toBe(true);
  });

  test('a new die buys its grinding with it at every sum, and is keyed once', () => {
    let bought = 0;
    for (const { name, entries } of FIVE) {
      const picture = onPaper(entries, 'inch');
      if (!picture.worksheet.jobs.some((one) => one.job === 'dies.grind-pair' && isOpen(one))) continue;
      for (const { jobs } of workPlan(picture, knowledge).steps) {
        if (!jobs.includes('dies.new-lower') && !jobs.includes('dies.new-upper')) continue;
        bought += 1;
        expect(jobs, name).toContain('dies.grind-pair');
        expect(jobs.indexOf('dies.grind-pair'), name).toBeLessThan(jobs.indexOf('keys.renew'));
      }
    }
    expect(bought).toBeGreaterThan(1);
  });
});

describe('what to do, in the words for this hammer', () => {
  test('flanks are filed to a straight gauge at the angle that was read, and to no key', () => {
    const words = said(named('sallowfield'), 'File the flanks');
    expect(words).toContain('Blue a straight gauge: a ground bar, one edge at the angle of the dovetail, 10° as read');
    expect(words).not.toMatch(/Blue the key/u);
    // Nobody read the angle: no figure, and no mark of one.
    const unread = pictureOf(new LogOf('50 lb', 'coil-and-toggle').look('dovetail.key-sits@lower', 'edge'));
    const other = knowledge.jobs.find((one) => one.id === 'dovetail.file-flanks');
    expect(other?.words).toContain('{dovetail.flank-angle}');
    for (const one of unread.worksheet.jobs) expect(jobWords(unread.known, knowledge, unread.worksheet, one)).not.toMatch(/[{}]/u);
  });

  test('no paper has a mark that should have been filled', () => {
    for (const { name, entries } of FIVE) {
      const { known, worksheet } = onPaper(entries, 'inch');
      for (const one of worksheet.jobs) expect(jobWords(known, knowledge, worksheet, one), name).toMatch(/^[^{}]+$/u);
    }
  });

  test('dies that are ground as a pair are dressed at their edges alone, and with no cheaper wheel over the face', () => {
    const pair = said(named('sallowfield'), 'Dress the die faces');
    expect(pair).toMatch(/^Edges only/u);
    expect(pair).not.toMatch(/Grind the faces|Cheaper/u);
    const alone = pictureOf(new LogOf('50 lb', 'coil-and-toggle').read('upper-die.edge-radius', '1/64 in').read('lower-die.edge-radius', '1/64 in'));
    expect(alone.worksheet.jobs.map((one) => one.job)).not.toContain('dies.grind-pair');
    expect(said(alone, 'Dress the die faces')).toMatch(/^Grind the faces flat.*Cheaper: A file and an angle grinder/u);
  });

  test('the second sound is looked for on the trial, which is the first running', () => {
    for (const start of ['wrenhollow', 'tannerwick']) expect(said(named(start), 'Find the second sound'), start).toMatch(/^It runs, so it is part of the trial/u);
  });

  test('a new spring is set to its length, and only one that stays is left where its arms do not droop', () => {
    expect(said(named('wrenhollow'), 'Set the spring')).toMatch(/to the length that the setting sheet gives/u);
    expect(said(named('wrenhollow'), 'Set the spring')).not.toMatch(/droop|once the gap is set/u);
    expect(said(named('sallowfield'), 'Set the spring')).toMatch(/only where they still droop/u);
  });

  test('what another way does not mend reads as that', () => {
    const bearings = said(named('dunmarrow'), 'Pour the main bearings anew');
    expect(bearings).toContain('It does not mend: ');
    expect(bearings).not.toMatch(/Shell ready|It leaves/u);
    // 750 was heard for the job: no other sum stands beside it as the cheaper one.
    expect(bearings).not.toMatch(/600 to 1,800/u);
  });
});

describe('a cheaper way', () => {
  test('is none where the readings forbid it: no washer behind a spring that has no travel for it', () => {
    const knocker = named('wrenhollow');
    // Ran down to 5 3/8 in; solid 11 x 0.466 in = 5.126; free 8.2. A washer of 1/8 in takes half of the 0.249 in that are left, and
    // 15 % of the travel, 0.461 in, are asked for.
    const left = 5.375 - 11 * 0.466;
    expect(left).toBeCloseTo(0.249, 3);
    expect(left - 1 / 8).toBeLessThan(0.15 * (8.2 - 11 * 0.466));
    expect(knocker.findings.find((one) => one.criterion === 'spring.travel-left')?.grade).toBe('limited');
    expect(said(knocker, 'Renew the coil spring')).not.toContain('Cheaper');
    // A spring that has lost 4 % of its length with half of its travel left has room for one.
    const sagged = pictureOf(new LogOf('50 lb', 'coil-and-toggle').made('coil-spring.free-length', '8 in').read('coil-spring.free-length', '7.68 in'));
    expect(said(sagged, 'Renew the coil spring')).toContain('Cheaper: A washer behind the old spring');
  });

  test('goes by what was seen: no frequency drive for a motor that is not three-phase', () => {
    const fast = (phase: string): Picture => pictureOf(new LogOf('50 lb', 'coil-and-toggle').read('running.rate', '400 rpm').look('motor.phase', phase));
    const at = (picture: Picture): string | undefined => cheaperHere(picture, knowledge, { job: 'drive.set-speed' });
    expect(job(fast('single'), 'drive.set-speed').job).toBe('drive.set-speed');
    expect([fast('single'), fast('direct-current'), fast('three')].map((one) => at(one) !== undefined)).toEqual([false, false, true]);
  });

  test('is forbidden by rules, looks and jobs that exist, and only where there is one', () => {
    const criteria = new Set(knowledge.criteria.map((one) => one.id));
    const ids = new Set(knowledge.jobs.map((one) => one.id));
    const barred = knowledge.jobs.filter((one) => one.cheaperNot !== undefined);
    expect(barred.length).toBeGreaterThan(3);
    for (const { id, cheaper, cheaperNot } of barred) {
      expect(cheaper, id).toBeDefined();
      expect(cheaperNot?.findings?.filter((one) => !criteria.has(one.criterion)) ?? [], id).toEqual([]);
      expect(cheaperNot?.jobs?.filter((one) => !ids.has(one)) ?? [], id).toEqual([]);
    }
  });

  test('is never what the drawing of the same part forbids', () => {
    // The sheet of the filler plate says: never a stack of shims.
    expect(knowledge.jobs.filter((one) => /stack of shims/u.test(one.cheaper ?? '')).map((one) => one.id)).toEqual([]);
  });
});
