import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bestUse, picture, type Picture } from '../../src/derived/index.ts';
import { partsToMake } from '../../src/derived/making/index.ts';
import { settingSheet, type SettingLine } from '../../src/derived/upkeep/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { cautionBlocks } from '../../src/views/report/caution-blocks.ts';
import { settingBlocks, settingLines } from '../../src/views/work/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf } from './worn-hammer.ts';

const INCH = 0.0254;
const example = (name: string): Picture => {
  const found = picture(readSurveyFile(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')).entries, knowledge, '2026-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error('the example enrols no hammer');
  return found;
};
const gapOf = (found: Picture): SettingLine => settingLines(found).find((one) => one.id === 'gap')!;
const job = (found: Picture, id: string) => found.worksheet.jobs.find((one) => one.job === id);
const loose = example('sallowfield-40-sunken-seat');

/** Dies made 3 in each and worn down; `family` has a lower die that is cracked, so that a new one comes. */
const short = (family: 'coil-and-toggle' | 'bow-spring' | 'helve', lower: string, gap: string): LogOf =>
  new LogOf('50 lb', family).made('upper-die.height', '3 in').made('lower-die.height', '3 in').read('upper-die.height', '3 in').read('lower-die.height', lower, 'above-seat-base').read('upper-die.rest-gap', gap).look('lower-die.face', 'cracked');

test('the new die of the loose one closes its gap by 2 3/4 + 2 3/4 - 2 1/2 - 1 13/16 in, and the sheet reckons with it', () => {
  const rise = 2.75 + 2.75 - 2.5 - 1.8125;
  const gap = gapOf(loose);
  expect(gap.state).toBe('off');
  expect((gap.afterJobs?.value ?? 0) / INCH).toBeCloseTo(0.5625 - rise, 9);
  expect((gap.change?.value ?? 0) / INCH).toBeCloseTo(rise, 9);
  const words = JSON.stringify(settingBlocks(loose, knowledge));
  for (const part of ['Before the new lower die goes in and anything is barred over: shorten the rod by 1 3/16 in', 'the dies would meet 5/8 in before the bottom', 'set the gap to 9/16 in', '+ 1 3/16 in, the rod shorter', 'A guess only: the dies lost 1 3/16 in and the rod has 1/4 in of thread left', 'Nobody read how far the rod still goes into its ends']) expect(words).toContain(part);
});

test('the ram is moved up before the die goes in, which waits for it, and the gap is set afterwards', () => {
  const [room, die, gap] = ['rod.make-room', 'dies.new-lower', 'rod.set-gap'].map((id) => job(loose, id)!);
  expect(room!.ownWords).toContain('shorten the rod by 1 3/16 in');
  expect(room!.number).toBeLessThan(die!.number);
  expect(die!.after).toContain('rod.make-room');
  expect(gap!.number).toBeGreaterThan(die!.number);
  expect(job(loose, 'seat.fit-filler-plate')!.after).not.toContain('rod.make-room');
  expect(room!.urgency).toBe(die!.urgency);
  expect(cautionBlocks(loose, knowledge).map((one) => ('text' in one ? one.text : '')).join(' ')).toContain('with the rod as it stands the dies can meet before the bottom');
});

test('the sheet of the die says it in one line, that of the plate does not', () => {
  const warned = partsToMake(loose).flatMap((part) => (part.state === 'to-make' && part.warnings.some((one) => one.includes('shorten the rod by 1 3/16 in')) ? [part.kind] : []));
  expect(warned).toEqual(['lower-die']);
});

test('a sum of money that buys the die buys the room for it', () => {
  for (const money of [200, 500, 900, 1500, 3000]) {
    const { jobs } = bestUse(loose.known, loose.findings, loose.worksheet, knowledge, { money });
    expect(jobs.includes('rod.make-room') || !jobs.includes('dies.new-lower')).toBe(true);
  }
});

test.each(['kettlebrae-50-simply-good', 'dunmarrow-90-cracked-leaf', 'tannerwick-150-worn-pivot', 'wrenhollow-65-knocks-before-the-blow'])('no job of %s changes the stack by what is known, and nobody is told to move the ram', (name) => {
  const found = example(name);
  expect(job(found, 'rod.make-room')).toBeUndefined();
  expect(gapOf(found).afterJobs).toBeUndefined();
});

test.each([['dunmarrow-90-cracked-leaf', 'The new leaf and the new straps change the gap too'], ['tannerwick-150-worn-pivot', 'The bushed pivot and the new cushions change the gap too'], ['wrenhollow-65-knocks-before-the-blow', 'The new spring changes the gap too']])('%s: what no reading gives is named, and the gap is read again', (name, words) => {
  const found = example(name);
  expect(gapOf(found).first?.join(' ')).toContain(words);
  expect(JSON.stringify(settingBlocks(found, knowledge))).toContain('to be read again once the jobs are done');
});

test('a bow is shortened at its rod, the head of a helve is raised, each by 1 in for a die 1 in higher', () => {
  expect(gapOf(pictureOf(short('bow-spring', '2 in', '3/4 in'))).first?.join(' ')).toContain('shorten the rod by 1 in');
  expect(gapOf(pictureOf(short('helve', '2 in', '3/4 in'))).first?.join(' ')).toContain('raise the head by 1 in at the die, with the height screws');
  // With 1 in of gap 1 in of die leaves nothing, and the near end of the usual 3/4 to 1 in is aimed at.
  expect(gapOf(pictureOf(short('bow-spring', '2 in', '1 in'))).first?.join(' ')).toMatch(/no gap is left\. Before .* shorten the rod by 3\/4 in, .* the dies would just meet at the bottom/);
});

test('a die that leaves a gap holds up nothing: the gap is set when it is in', () => {
  const found = pictureOf(short('coil-and-toggle', '2 1/2 in', '1 1/2 in'));
  expect(job(found, 'rod.make-room')).toBeUndefined();
  // 1 1/2 in less 1/2 in leaves 1 in, which is usual.
  expect(gapOf(found)).toMatchObject({ state: 'set' });
  expect((gapOf(found).afterJobs?.value ?? 0) / INCH).toBeCloseTo(1, 9);
});

test('a plate that closes the gap by itself waits for the ram too', () => {
  const found = pictureOf(new LogOf('50 lb', 'coil-and-toggle').read('upper-die.height', '3 in').read('lower-die.height', '2 1/2 in', 'above-seat-base').read('seat.sunk', '1/2 in').read('upper-die.rest-gap', '1/2 in'));
  expect(job(found, 'seat.fit-filler-plate')?.after).toContain('rod.make-room');
  expect(job(found, 'rod.make-room')!.number).toBeLessThan(job(found, 'seat.fit-filler-plate')!.number);
  expect(job(found, 'rod.make-room')!.ownWords).toContain('Before the filler plate goes in');
});

test('lower dies ask for a longer rod, and only as far as its thread goes', () => {
  const built = (thread: string): SettingLine => {
    const { known, values, findings } = pictureOf(new LogOf('50 lb', 'coil-and-toggle').made('upper-die.height', '3 in').made('lower-die.height', '3 in').read('upper-die.height', '3 3/4 in').read('lower-die.height', '3 in', 'above-seat-base').read('upper-die.rest-gap', '1 in').read('connecting-rod.thread-left', thread));
    return settingSheet({ known, values, findings, jobs: new Set(['dies.new-upper', 'dies.new-lower']) }).find((one) => one.id === 'gap')!;
  };
  // 3/4 in less of die makes 1 3/4 in of gap, 3/4 in more than is usual.
  expect((built('1 in').change?.value ?? 0) / INCH).toBeCloseTo(-0.75, 9);
  expect(built('1 in').first?.join(' ')).toContain('lengthen the rod by 3/4 in');
  expect(built('1 in')).toMatchObject({ state: 'off' });
  expect(built('1/2 in')).toMatchObject({ state: 'held', held: [expect.stringContaining('only 1/2 in of thread left')] });
});

test('a rod that was moved after the gap was read is not moved twice', () => {
  const log = short('coil-and-toggle', '2 in', '1/2 in');
  expect(job(pictureOf(log), 'rod.make-room')?.state).toBe('open');
  log.put('job-progress', { job: 'rod.make-room', state: 'done' }, 600);
  const found = pictureOf(log);
  expect(gapOf(found).first?.join(' ')).toContain('read the gap again before anything is reckoned from it');
  expect(gapOf(found).first?.join(' ')).not.toContain('shorten the rod');
});

test('the prop is for the dies of today, and says how long it is for the usual gap', () => {
  const prop = partsToMake(loose).find((part) => part.kind === 'ram-prop');
  if (prop?.state !== 'to-make') throw new Error('no prop');
  // 9/16 + 2 x 1 7/8 - 1/4 = 4 1/16 in; 3/4 to 1 in of gap are 3/16 to 7/16 in more.
  expect(prop.notes[0]).toContain('For the dies of today, with 9/16 in between them');
  expect(prop.notes[0]).toContain('3/4 in to 1 in, it is 4 1/4 in to 4 1/2 in');
  expect(prop.dimensions.map((one) => one.why).join(' ')).toContain('up to 8,000 lb');
});
