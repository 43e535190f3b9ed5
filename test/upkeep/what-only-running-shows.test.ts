import { describe, expect, test } from 'vitest';
import { isOpen, type Picture } from '../../src/derived/index.ts';
import type { SettingLine } from '../../src/derived/upkeep/index.ts';
import { knowledge, SETTINGS, TRIAL_JOB } from '../../src/knowledge/index.ts';
import { settingBlocks, settingLines } from '../../src/views/work/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { FIVE } from '../print/every-paper.ts';
import { pictureOf as onPaper } from '../print/paper-cases.ts';
import { pictureOf } from '../worksheet/worn-hammer.ts';

const named = (start: string): Picture => onPaper(FIVE.find(({ name }) => name.startsWith(start))?.entries ?? [], 'inch');
const line = (picture: Picture, id: string): SettingLine => {
  const one = settingLines(picture).find((candidate) => candidate.id === id);
  if (one === undefined) throw new Error(`no such setting: ${id}`);
  return one;
};
const column = (picture: Picture, name: string): readonly string[] => settingBlocks(picture, knowledge).flatMap((block) => (block.kind === 'table' && block.columns.includes(name) ? block.rows.map((row) => row.cells[block.columns.indexOf(name)] ?? '') : []));
const paragraphs = (picture: Picture): string => settingBlocks(picture, knowledge).flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])).join(' ');
const numberOf = (picture: Picture, key: string): number => {
  const outcome = picture.values[key]?.outcome;
  return outcome?.state === 'known' ? outcome.quantity.value : Number.NaN;
};

/** Words that want the hammer to run. */
const RUNS = /full (?:speed|tread|stroke on)|film it|count the blows|let go/iu;

describe.each(FIVE)('setting sheet of $name', ({ entries }) => {
  const picture = onPaper(entries, 'inch');

  test('is worked from the top with the power off: nothing in it runs the hammer before the last line', () => {
    expect(column(picture, 'How').filter((how) => RUNS.test(how))).toEqual([]);
    expect(settingLines(picture).filter((one) => one.running !== undefined).length).toBeGreaterThan(1);
    const kinds = settingBlocks(picture, knowledge).map((block) => (block.kind === 'table' ? block.columns.join() : ''));
    expect(kinds.findIndex((one) => one.includes('Running'))).toBe(kinds.length - 1);
  });

  test('what runs waits for what stops the hammer, for the trial, and goes no deeper than the card allows', () => {
    const running = column(picture, 'Running');
    if (picture.duty.verdict === 'stand-down') expect(running.filter((one) => !one.startsWith('When it may run again: '))).toEqual([]);
    const trial = picture.worksheet.jobs.find((job) => job.job === TRIAL_JOB && isOpen(job));
    if (trial !== undefined) expect(paragraphs(picture)).toContain(`on the trial (job ${trial.number} of the worksheet)`);
    expect(paragraphs(picture)).toContain('prop out');
    for (const limit of picture.duty.limits.filter((one) => one.kind === 'greatest-tread')) expect(paragraphs(picture)).toContain(limit.sentence);
  });
});

test('both hammers whose card allows half the tread say so where they are told to run', () => {
  for (const start of ['wrenhollow', 'tannerwick']) expect(paragraphs(named(start)), start).toContain('Tread no deeper than 50 %.');
});

test('a brake is tried on wood with no prop in: a ram on a timber is not run', () => {
  const brake = SETTINGS.find((rule) => rule.id === 'brake');
  expect(brake?.running).toMatch(/^Wood between the dies and no prop/u);
  expect(brake?.running).toMatch(/no deeper tread than the limits card allows.*Then lock off, put the prop in, and only then set the band/u);
  expect(SETTINGS.filter(({ how, running = '' }) => /propped/u.test(running) || (/\bprop\b/u.test(how) && RUNS.test(how)))).toEqual([]);
});

test('a hammer whose belt is its clutch is told of no other', () => {
  const told = (picture: Picture): string => ['treadle', 'brake'].map((id) => `${line(picture, id).how} ${line(picture, id).because}`).join(' ');
  expect(told(named('tannerwick'))).not.toMatch(/clutch (?:begins|that drags)|finished clutch/u);
  expect(told(named('kettlebrae'))).toMatch(/until the clutch begins to take/u);
});

test('a belt that stops slipping makes the hammer faster by itself, and the sheet says by how much', () => {
  const beam = named('tannerwick');
  // Plate 1425 a minute, 4.7 in on 30 in, and 3 % of slip as is usual: 1425 x 4.7 / 30 x 0.97 = 216.6, where 186 were counted.
  const then = (1425 * 4.7 / 30) * 0.97;
  const speed = line(beam, 'speed');
  expect((speed.afterJobs?.value ?? 0) * 60).toBeCloseTo(then, 6);
  expect(speed.first?.[0]).toContain('217 blows/min with the pulleys as they are, 31 faster than today');
  // 16 A of 11.5 A on the plate at 186: 139 %, and the current rises with the speed at the least.
  expect(speed.first?.[1]).toContain(`${Math.round((100 * 16 * then) / (11.5 * 186))} % of its full-load current`);
  expect(column(beam, 'As found')).toContain('186 blows/min today; with the open jobs about 217 blows/min');
  expect(speed.state).toBe('held');
});

test('a speed whose slip is usual, or that no open job mends, is as it is counted', () => {
  for (const start of ['wrenhollow', 'kettlebrae', 'dunmarrow', 'sallowfield']) expect(line(named(start), 'speed').afterJobs, start).toBeUndefined();
});

test('a mended belt that brings the speed where it should be leaves nothing to set', () => {
  // 1425 x 5 / 30 = 237.5; counted 190, so 20 % of slip; with 3 % it is 230, the maker’s 232 less 2.
  const log = new LogOf('150 lb', 'helve').made('running.rate', '232 rpm').read('running.rate', '190 rpm').read('motor.speed', '1425 rpm').read('motor.pulley', '5 in').read('pulley.diameter', '30 in');
  const speed = line(pictureOf(log), 'speed');
  expect((speed.afterJobs?.value ?? 0) * 60).toBeCloseTo(237.5 * 0.97, 6);
  expect(speed.state).toBe('set');
});

test('a rate that its own rule finds sound is left, on every paper alike: no other pulley is named and none is bought', () => {
  for (const start of ['wrenhollow', 'sallowfield']) {
    const picture = named(start);
    expect(picture.findings.find((one) => one.criterion === 'drive.rate')?.grade, start).toBe('sound');
    expect(line(picture, 'speed'), start).toMatchObject({ state: 'good' });
    expect(line(picture, 'speed').change, start).toBeUndefined();
    expect(line(picture, 'speed').target?.sentence, start).not.toContain('pulley');
    expect(picture.worksheet.jobs.filter((job) => job.job === 'drive.set-speed'), start).toEqual([]);
  }
  // Greatest that is usual for 50 lb: 350 a minute, watched from 105 %, which is 367.5.
  const at = (rate: string) => pictureOf(new LogOf('50 lb', 'coil-and-toggle').read('running.rate', rate).read('motor.speed', '1140 rpm').read('motor.pulley', '4.5 in').read('pulley.diameter', '14 in'));
  expect(numberOf(at('360 rpm'), 'class.rate') * 60).toBeCloseTo(350, 6);
  expect(line(at('366 rpm'), 'speed').state).toBe('good');
  const fast = at('369 rpm');
  expect(line(fast, 'speed').state).toBe('off');
  expect(line(fast, 'speed').target?.sentence).toMatch(/motor pulley of .* gives/u);
  expect(fast.worksheet.jobs.map((job) => job.job)).toContain('drive.set-speed');
});

test('a rate above what the limits card allows is never good', () => {
  // A bent shaft, 12 thou, limits it to the working rate of the class.
  const bent = pictureOf(new LogOf('50 lb', 'coil-and-toggle').read('running.rate', '345 rpm').read('main-shaft.run-out', '12 thou'));
  const greatest = bent.findings.flatMap((one) => one.limits).find((one) => one.kind === 'greatest-speed')?.quantity?.value ?? Number.NaN;
  expect(greatest * 60).toBeLessThan(345);
  expect(line(bent, 'speed').state).toBe('off');
});
