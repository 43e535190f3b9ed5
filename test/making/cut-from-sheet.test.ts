import { describe, expect, test } from 'vitest';
import { isLoose, MAKERS, partsToMake, type Making, type PartToMake } from '../../src/derived/making/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { isOpen } from '../../src/derived/worksheet/index.ts';
import { makingPanels, makingSheets, notMadeWords } from '../../src/views/making/index.ts';
import { dimension } from './figures-of.ts';
import { majorLimits2A, majorLimits6g } from '../../src/derived/making/thread-limits.ts';
import { SHEETS, YARD } from './every-sheet.ts';

const wordsOf = (part: PartToMake): readonly string[] => [part.material, part.hardness, ...part.notes, ...part.warnings, ...part.dimensions.flatMap((one) => [one.title, one.why]), ...part.unknowns.flatMap((one) => [one.what, one.how]), ...part.disputes.flatMap((one) => [one.oneSide, one.otherSide, one.because])];

/** Turned parts that a job uses up or whose making it tells, by the words of the trade. */
const TURNED = /\b(pins?|bush(es)?|sleeve|thrust washers?|links?|bolt|rod, ends)\b/;
/** Jobs whose part comes ready from a shelf. */
const BOUGHT: Readonly<Record<string, string>> = { 'pins.hold': 'split pins and collars' };

describe('every job that makes a turned part', () => {
  const jobs = knowledge.jobs.filter((job) => job.parts.some((part) => TURNED.test(part.words)) && !/bolts/.test(job.parts.map((part) => part.words).join(' ')));

  test('has its part to make, is made to the old part with what to read on it, or is bought', () => {
    // The open jobs of every invented hammer say what they ask for; here each turned job of the trade alone.
    expect(jobs.map((job) => job.id)).toEqual(expect.arrayContaining(['bow.bush-eyes', 'helve.bush-pivot', 'crank.pin-bush', 'rod.bush', 'crosshead.bush', 'pins.renew', 'treadle.bush', 'shaft.set-end-float', 'clutch-pulley.bush']));
    const [{ found } = { found: undefined }] = YARD;
    if (found === undefined) throw new Error('the yard is empty');
    for (const job of jobs) {
      const only = { ...found, worksheet: { ...found.worksheet, jobs: [{ ...found.worksheet.jobs[0]!, job: job.id, state: 'open' as const, cautions: [] }] } };
      const kinds = partsToMake(only).map((one) => one.kind);
      expect(kinds.length > 0 || BOUGHT[job.id] !== undefined, `${job.id} (${job.parts.map((part) => part.words).join('; ')}) has no part to make`).toBe(true);
      // Where pins are made there are pins, and where bushes there are bushes.
      const words = job.parts.map((part) => part.words).join(' ');
      if (BOUGHT[job.id] !== undefined || partsToMake(only).every((one) => one.state === 'by-pattern')) continue;
      if (/\bpins?\b/.test(words)) expect(kinds.filter((kind) => kind.endsWith('pin')), `${job.id} makes pins`).not.toEqual([]);
      if (/\bbush/.test(words)) expect(kinds.filter((kind) => kind.endsWith('bushing')), `${job.id} makes bushes`).not.toEqual([]);
    }
  });

  test.each(YARD)('of $name: a drawing, or plainly what is missing and how to read it', ({ found }) => {
    const open = found.worksheet.jobs.filter(isOpen).map((one) => one.job);
    const made = new Map<string, Making>(partsToMake(found).map((one) => [one.kind, one]));
    for (const job of jobs.filter((one) => open.includes(one.id) && BOUGHT[one.id] === undefined)) {
      const alone = partsToMake({ ...found, worksheet: { ...found.worksheet, jobs: found.worksheet.jobs.filter((one) => one.job === job.id) } });
      expect(alone.length, job.id).toBeGreaterThan(0);
      for (const { kind } of alone) {
        const part = made.get(kind);
        if (part === undefined) throw new Error(`${job.id} asks for ${kind}, which is on no sheet`);
        if (part.state !== 'to-make') expect(notMadeWords(part).join(' ').length, kind).toBeGreaterThan(40);
        for (const one of part.state === 'to-make' ? part.unknowns : part.state === 'not-known' ? part.missing : []) expect(one.how.length, `${kind}: ${one.what}`).toBeGreaterThan(10);
      }
    }
  });

  test('the pins of two ends stand on one sheet in one size, and both old sizes beside it', () => {
    const helve = YARD.find((one) => one.name === 'TW-150 inch')!.found;
    const pins = partsToMake(helve).find((one) => one.kind === 'helve-pin');
    if (pins?.state !== 'to-make') throw new Error('no pin');
    expect(pins.quantity).toBe(2);
    // 1.962 and 1.968 in, and 0.010 to clean the seats up: 1.978, the next 64th is 127/64.
    expect(dimension(pins, 'diameter').quantity.value / 0.0254).toBeCloseTo(127 / 64, 9);
    expect(pins.notes.join(' ')).toMatch(/right 1\.968 in, left 1\.962 in/);
    const bush = partsToMake(helve).find((one) => one.kind === 'helve-bushing');
    if (bush?.state !== 'to-make') throw new Error('no bush');
    expect(dimension(bush, 'bore').quantity.value / 0.0254).toBeCloseTo(127 / 64 + 0.004, 9);
    // Without new pins the bushes are bored to two, and both bores stand on the sheet.
    const old = MAKERS['helve-bushing'](helve.values, helve.known);
    if (old.state !== 'to-make') throw new Error('no bush');
    expect([dimension(old, 'bore'), dimension(old, 'bore-left')].map((one) => Math.round(one.quantity.value / 0.0254e-3))).toEqual([1972, 1966]);
  });
});

describe('every sheet', () => {
  test.each(SHEETS)('of $name warns of each size that is known less well than it is cut', ({ part, found }) => {
    const loud = part.warnings.find((one) => one.startsWith('CHECK BEFORE CUTTING')) ?? '';
    const loose = part.dimensions.filter(isLoose);
    for (const one of loose) expect(loud).toContain(one.title);
    if (loose.length === 0) expect(loud).toBe('');
    if (loose.length > 0) expect(makingSheets(found, part)[0]).toContain('Known less well than it is cut');
  });

  test.each(SHEETS)('of $name keeps to the units of its shop', ({ part, found }) => {
    const other = found.system === 'metric' ? /\d ?(in|inch|inches|lb|ft|thou|psi|ksi|°?F)\b(?! \d)|\d\/\d+ (in|lb)/ : /\d ?(mm|kg|MPa|m\/s|m|°C)\b/;
    expect(wordsOf(part).filter((one) => other.test(one))).toEqual([]);
  });

  test.each(SHEETS)('of $name is to a scale, on both papers and in a folder', ({ part, found }) => {
    for (const paper of ['A4', 'letter'] as const) expect(makingSheets(found, part, { paper })[0], paper).not.toContain('not to scale<');
    for (const height of [225, 210]) expect(makingPanels(found, part, { width: 170, height })[0], `panel ${height}`).not.toContain('Scale not to scale');
  });

  test.each(SHEETS)('of $name has one hardness where its material can be hardened, and no size that is chosen and doubtful at once', ({ part }) => {
    expect(part.hardness).not.toMatch(/sheet 2/);
    for (const one of part.disputes) expect(one[one.taken].length * one.because.length).toBeGreaterThan(0);
    for (const one of part.dimensions) if (one.from.length === 0 && !one.estimate) expect(one.quantity.uncertainty, one.name).toBe(0);
  });

  test('dies: tough is taken, 28 to 32 HRC, with its reason and the other side beside it on the first sheet', () => {
    const die = SHEETS.find((one) => one.name === 'SF-40 inch lower-die')!;
    expect(die.part.hardness).toMatch(/^28 to 32 HRC/);
    expect(die.part.notes.join(' ')).toMatch(/Hardness: .*because.*The other side: .*48 to 50 HRC/);
    const [, second = ''] = makingSheets(die.found, die.part);
    expect(second.replace(/<[^>]+>/g, ' ')).toMatch(/Taken here/);
  });
});

describe('a crank pin', () => {
  const sheets = SHEETS.filter((one) => one.part.kind === 'crank-pin');

  test.each(sheets)('$name: no two holes meet, and what goes over its fillets is chamfered wider', ({ part, found }) => {
    const most = (name: string) => dimension(part, name).quantity.value + dimension(part, name).tolerance.plus;
    const least = (name: string) => dimension(part, name).quantity.value - dimension(part, name).tolerance.minus;
    expect(least('mouth')).toBeGreaterThanOrEqual(most('fillet'));
    const bush = MAKERS['rod-bushing'](found.values, found.known, { system: found.system, alsoMade: new Set(['crank-pin']), floorCut: false });
    if (bush.state !== 'to-make') throw new Error('no bush');
    expect(dimension(bush, 'bore-chamfer').quantity.value - dimension(bush, 'bore-chamfer').tolerance.minus).toBeGreaterThanOrEqual(most('fillet'));
    // Chamfers inside and outside at their largest leave a land on the face of the bush.
    const wall = (dimension(bush, 'outside').quantity.value - dimension(bush, 'bore').quantity.value) / 2;
    const largest = (name: string) => dimension(bush, name).quantity.value + dimension(bush, name).tolerance.plus;
    expect(wall - largest('bore-chamfer') - largest('chamfer')).toBeGreaterThan(0.3e-3);
    // The hole of the split pin goes through the axis: no other hole may lie along it.
    expect(part.notes.filter((one) => /oil hole/i.test(one)).join(' ')).toMatch(/^No oil hole in the pin/);
  });
});

test.each(SHEETS.filter((one) => one.part.shape.broken === undefined && one.part.kind !== 'coil-spring'))('no two round holes of $name meet in a view', ({ part }) => {
  for (const view of part.shape.views) {
    const rounds = view.marks.flatMap((mark) => (mark.kind === 'circle' && mark.line === 'visible' ? [mark] : []));
    rounds.forEach((one, index) => rounds.slice(index + 1).forEach((other) => {
      const apart = Math.hypot(one.centre[0] - other.centre[0], one.centre[1] - other.centre[1]);
      // One inside another, as the bore of a bush, or two that keep clear.
      expect(apart + Math.min(one.radius, other.radius) <= Math.max(one.radius, other.radius) + 1e-9 || apart > one.radius + other.radius, `${view.name}`).toBe(true);
    }));
  }
});

test.each(SHEETS.filter((one) => one.part.kind.endsWith('bushing') && one.part.shape.broken === undefined))('the oil groove of $name has width, depth and place, and leaves wall and ends', ({ part }) => {
  const groove = part.dimensions.find((one) => one.name === 'groove-depth');
  if (groove === undefined) {
    expect(part.notes.join(' ')).toContain('Too short for an oil groove');
    return;
  }
  const wall = (dimension(part, 'outside').quantity.value - dimension(part, 'bore').quantity.value) / 2;
  expect(groove.quantity.value + groove.tolerance.plus).toBeLessThan(wall * 0.67);
  expect(dimension(part, 'groove-width').quantity.value).toBeGreaterThan(0);
  expect(2 * dimension(part, 'groove-end').quantity.value).toBeLessThan(dimension(part, 'length').quantity.value / 1.9);
});

/** Greatest and least major diameter of external threads: ASME B1.1 class 2A in inches, ISO 965-2 class 6g in millimetres, as handbooks print them (from memory). */
test.each([
  ['7/8-9 UNC', 0.875, 1 / 9, 0.8731, 0.8592], ['1-8 UNC', 1, 1 / 8, 0.998, 0.983], ['1 1/4-7 UNC', 1.25, 1 / 7, 1.2478, 1.2314], ['1/2-13 UNC', 0.5, 1 / 13, 0.4985, 0.4876],
] as const)('the crests of %s class 2A', (_name, diameter, pitch, most, least) => {
  const { upper, lower } = majorLimits2A(diameter * 0.0254, pitch * 0.0254);
  expect(diameter + upper / 0.0254).toBeCloseTo(most, 4);
  expect(diameter + lower / 0.0254).toBeCloseTo(least, 4);
});

test.each([['M10', 10, 1.5, 9.968, 9.732], ['M20', 20, 2.5, 19.958, 19.623], ['M30', 30, 3.5, 29.947, 29.522]] as const)('the crests of %s class 6g', (_name, diameter, pitch, most, least) => {
  const { upper, lower } = majorLimits6g(pitch * 1e-3);
  expect(diameter + upper * 1e3).toBeCloseTo(most, 3);
  expect(diameter + lower * 1e3).toBeCloseTo(least, 3);
});

test('the thread of a crank pin stands on its sheet within its class', () => {
  const pin = SHEETS.find((one) => one.name === 'SF-40 inch crank-pin')!;
  const text = makingSheets(pin.found, pin.part)[0]!.replace(/<[^>]+>/g, '|');
  expect(text).toContain('0.8750 2A −0.0019/−0.0158');
});
