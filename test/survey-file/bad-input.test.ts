import { describe, expect, it } from 'vitest';
import { LONGEST_FILE, readSurveyFile, type SurveyProblem } from '../../src/entries/index.ts';

const HEAD = 'tupwise: 1\nhammer: {tag: T-1, family: coil-and-toggle, class: 50 lb}\n';
const MADE = 'as made:\n  upper-die.height: 3 in\n  lower-die.height: 3 in\n  upper-die.rest-gap: 1 in\n';
const VISIT = `${HEAD}${MADE}visits:\n  - date: 2026-04-11\n    by: Ada Quill\n`;
const read = (line: string): string => `${VISIT}    readings:\n      crank.throw: 4 in\n      ${line}\n`;

/** What is wrong, the text that must be named, what would be right, where it stands, and how many entries are kept beside it. */
interface Bad {
  readonly what: string;
  readonly text: string;
  readonly path: string;
  readonly message: RegExp;
  readonly at: readonly [line: number, column: number];
  readonly kept: number;
  readonly severity?: SurveyProblem['severity'];
}

const WITH_MADE = 4;
const WITH_THROW = 5;
const BAD: readonly Bad[] = [
  { what: 'a wrong unit', text: read('seat.sunk: 3 kg'), path: 'visits[0].readings.seat.sunk', message: /kg measures a weight, not a length/, at: [12, 18], kept: WITH_THROW },
  { what: 'an unknown unit', text: read('seat.sunk: 3 furlong'), path: 'visits[0].readings.seat.sunk', message: /furlong/, at: [12, 18], kept: WITH_THROW },
  { what: 'a bare number', text: read('seat.sunk: 3'), path: 'visits[0].readings.seat.sunk', message: /no unit.*thou/, at: [12, 18], kept: WITH_THROW },
  { what: 'no number at all', text: read('seat.sunk: deep'), path: 'visits[0].readings.seat.sunk', message: /deep/, at: [12, 18], kept: WITH_THROW },
  { what: 'nothing after the colon', text: read('seat.sunk:'), path: 'visits[0].readings.seat.sunk', message: /no value is written/, at: [12, 17], kept: WITH_THROW },
  { what: '400 in for 4.00', text: read('crank.pin-diameter: 400 in'), path: 'visits[0].readings.crank.pin-diameter', message: /impossible; at most .* in: "400 in"/, at: [12, 27], kept: WITH_THROW },
  { what: 'negative wear', text: read('ram.wear-step: -2 thou'), path: 'visits[0].readings.ram.wear-step', message: /impossible; at least 0 thou: "-2 thou"/, at: [12, 22], kept: WITH_THROW },
  { what: 'a die taller than the gap', text: read('upper-die.height: 8 in'), path: 'visits[0].readings.upper-die.height', message: /taller than the whole gap between ram and seat; less than 7 in/, at: [12, 7], kept: WITH_THROW },
  { what: 'a die taller than it was made', text: read('upper-die.height: 3 1/2 in'), path: 'visits[0].readings.upper-die.height', message: /more than it was made; at most 3 in/, at: [12, 7], kept: WITH_THROW + 1, severity: 'warning' },
  { what: 'a mistyped part', text: read('uper-die.height: 3 in'), path: 'visits[0].readings.uper-die.height', message: /did you mean upper-die\.height/, at: [12, 7], kept: WITH_THROW },
  { what: 'an unknown part', text: read('flux-capacitor.charge: 3 in'), path: 'visits[0].readings.flux-capacitor.charge', message: /no such measuring place is known/, at: [12, 7], kept: WITH_THROW },
  { what: 'a part of another family', text: read('bow-spring.span: 30 in'), path: 'visits[0].readings.bow-spring.span', message: /coil-and-toggle has no such/, at: [12, 7], kept: WITH_THROW },
  { what: 'a point that is not on the part', text: read('main-bearings.clearance@frnt: 9 thou'), path: 'visits[0].readings.main-bearings.clearance@frnt', message: /did you mean front/, at: [12, 7], kept: WITH_THROW },
  { what: 'a point left out', text: read('main-bearings.clearance: 9 thou'), path: 'visits[0].readings.main-bearings.clearance', message: /where on the part; one of main-bearings\.clearance@front/, at: [12, 7], kept: WITH_THROW },
  { what: 'a point too many', text: read('seat.sunk@front: 9 thou'), path: 'visits[0].readings.seat.sunk@front', message: /read once for the whole part/, at: [12, 7], kept: WITH_THROW },
  { what: 'an unknown tool', text: read('seat.sunk: {value: 9 thou, tool: calliper}'), path: 'visits[0].readings.seat.sunk.tool', message: /did you mean caliper/, at: [12, 40], kept: WITH_THROW + 1 },
  { what: 'an unknown way', text: read('lower-die.height: {value: 2 in, way: sideways}'), path: 'visits[0].readings.lower-die.height.way', message: /one of above-seat-base, above-seat-rim, whole-die/, at: [12, 44], kept: WITH_THROW + 1 },
  { what: 'an unknown field', text: read('seat.sunk: {value: 9 thou, tol: 1 thou}'), path: 'visits[0].readings.seat.sunk.tol', message: /no such name is known here; did you mean tool/, at: [12, 34], kept: WITH_THROW + 1 },
  { what: 'a key written twice', text: read('crank.throw: 5 in'), path: 'visits[0].readings.crank.throw', message: /written twice/, at: [12, 7], kept: WITH_THROW },
  { what: 'a place read twice in two notations', text: read('main-bearings.clearance: {front: 9 thou}\n      main-bearings.clearance@front: 8 thou'), path: 'visits[0].readings.main-bearings.clearance@front', message: /read twice in one visit/, at: [13, 7], kept: WITH_THROW + 1 },
  { what: 'an id written twice', text: read(`seat.sunk: {value: 9 thou, id: 01KNXY0WE0ZTDZN3Y8MKVYD36B}\n      seat.dish: {value: 9 thou, id: 01KNXY0WE0ZTDZN3Y8MKVYD36B}`), path: 'visits[0].readings.seat.dish', message: /id is written twice/, at: [13, 7], kept: WITH_THROW + 1 },
  { what: 'an id that is none', text: read('seat.sunk: {value: 9 thou, id: first}'), path: 'visits[0].readings.seat.sunk.id', message: /26 signs/, at: [12, 38], kept: WITH_THROW + 1 },
  { what: 'an unknown answer', text: `${VISIT}    looks:\n      frame.crack: noen\n      ram.crack: none\n`, path: 'visits[0].looks.frame.crack', message: /one of none, suspected, present, repaired/, at: [11, 20], kept: WITH_MADE + 1 },
  { what: 'an unknown look', text: `${VISIT}    looks:\n      frame.crak: none\n      ram.crack: none\n`, path: 'visits[0].looks.frame.crak', message: /did you mean frame\.crack/, at: [11, 7], kept: WITH_MADE + 1 },
  { what: 'a day that does not exist', text: `${HEAD}visits:\n  - date: 2026-02-30\n    by: x\n    hours: 1 h\n  - {date: 2026-03-01, by: x, hours: 2 h}\n`, path: 'visits[0].date', message: /date cannot be used; a day that exists.*2026-02-30/, at: [4, 11], kept: 2 },
  { what: 'a date in words', text: `${HEAD}visits:\n  - {date: last week, by: x}\n  - {date: 2026-03-01, by: x, hours: 2 h}\n`, path: 'visits[0].date', message: /date cannot be used/, at: [4, 12], kept: 2 },
  { what: 'a visit without an author', text: `${HEAD}visits:\n  - date: 2026-03-01\n    hours: 1 h\n  - {date: 2026-03-01, by: x, hours: 2 h}\n`, path: 'visits[0].by', message: /by is missing/, at: [4, 5], kept: 2 },
  { what: 'an hour that does not exist', text: `${HEAD}visits:\n  - {date: 2026-03-01, time: 25:00, by: x, hours: 1 h}\n`, path: 'visits[0].time', message: /time cannot be used/, at: [4, 30], kept: 2 },
  { what: 'a date after today', text: `${HEAD}visits:\n  - {date: 2027-03-01, by: x, hours: 1 h}\n`, path: 'visits[0].date', message: /future; a day up to 2026-12-31/, at: [4, 12], kept: 2, severity: 'warning' },
  { what: 'a tab', text: `${HEAD}visits:\n  - date: 2026-03-01\n    by: x\n\treadings:\n    looks:\n      frame.crack: none\n`, path: '', message: /begin with a tab; spaces/, at: [6, 1], kept: 1 },
  { what: 'a family that is none', text: `tupwise: 1\nhammer: {tag: a, family: coil-and-togle, class: 50 lb}\nvisits:\n  - {date: 2026-03-01, by: x, hours: 1 h}\n`, path: 'hammer.family', message: /did you mean coil-and-toggle/, at: [2, 26], kept: 0 },
  { what: 'no hammer', text: 'tupwise: 1\nvisits:\n  - {date: 2026-03-01, by: x, hours: 1 h}\n', path: 'hammer', message: /hammer is missing/, at: [1, 1], kept: 0 },
  { what: 'another version', text: `${VISIT.replace('tupwise: 1', 'tupwise: 7')}    hours: 1 h\n`, path: 'tupwise', message: /tupwise cannot be used; 1: "7"/, at: [1, 10], kept: WITH_MADE + 1 },
  { what: 'negative running time', text: `${VISIT}    hours: -3 h\n`, path: 'visits[0].hours', message: /cannot be negative/, at: [10, 12], kept: WITH_MADE },
  { what: 'money without sense', text: `${VISIT}    prices:\n      - {of: belt, price: a lot}\n      - {of: belt, price: 12.50}\n`, path: 'visits[0].prices[0].price', message: /three letters such as 120 USD/, at: [11, 27], kept: WITH_MADE + 1 },
  { what: 'a limit without its grade', text: `${VISIT}    overrides:\n      guide.play: {from: 40 thou, reason: light work}\n`, path: 'visits[0].overrides.guide.play.grade', message: /grade is missing/, at: [11, 19], kept: WITH_MADE },
  { what: 'a correction of nothing', text: `${VISIT}    corrections:\n      - {visit: 2026-04-11, of: crank.throw, why: typed wrong}\n    hours: 1 h\n`, path: 'visits[0].corrections[0].of', message: /of cannot be used/, at: [11, 33], kept: WITH_MADE + 1 },
  { what: 'a correction of a day without a visit', text: `${VISIT}    hours: 1 h\n    corrections:\n      - {visit: 2026-04-12, of: hours, why: typed wrong}\n`, path: 'visits[0].corrections[0].visit', message: /one of 2026-04-11/, at: [12, 17], kept: WITH_MADE + 1 },
  { what: 'a job in no known state', text: `${VISIT}    jobs: {clutch-reline: finished, pour-bearings: done}\n`, path: 'visits[0].jobs.clutch-reline', message: /one of planned, started, done, dropped/, at: [10, 27], kept: WITH_MADE + 1 },
  { what: 'a name that every record has from birth', text: read('__proto__: {value: 3 in}\n      constructor: 3 in\n      toString: 3 in'), path: 'visits[0].readings.__proto__', message: /no such measuring place/, at: [12, 7], kept: WITH_THROW },
  { what: 'a colon inside a value', text: read('seat.sunk: {value: 9 thou, words: net: by rule}'), path: '', message: /./, at: [12, 0], kept: WITH_THROW + 1 },
];

describe('a survey file with a mistake', () => {
  for (const { what, text, path, message, at, kept, severity } of BAD) {
    it(`says where and how ${what} is wrong, and keeps the rest`, () => {
      const { entries, problems } = readSurveyFile(text, { asOf: '2026-12-31' });
      const found = problems.find((problem) => problem.path === path && message.test(problem.message));
      expect(found, JSON.stringify(problems, null, 1)).toBeDefined();
      expect(found?.line).toBe(at[0]);
      if (at[1] > 0) expect(found?.column).toBe(at[1]);
      expect(found?.severity).toBe(severity ?? 'problem');
      expect(found?.message).toMatch(/^.+; .+: .+$/s);
      expect(entries.length).toBe(kept === 0 ? 0 : kept);
    });
  }

  it('lists all the mistakes of one file, in the order of the text', () => {
    const text = read('seat.sunk: 3 kg\n      uper-die.height: 3 in\n      ram.wear-step: -2 thou\n    looks:\n      frame.crack: maybe\n    hours: long');
    const { problems } = readSurveyFile(text);
    expect(problems.map((problem) => problem.line)).toEqual([12, 13, 14, 16, 17]);
  });

  it('takes nothing of a part named like a property of every record', () => {
    readSurveyFile(read('__proto__: {polluted: 3 in}'));
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('survives being cut off anywhere, keeps what came before, and never calls it whole', () => {
    const whole = `${VISIT}    readings:\n      crank.throw: 4 in\n      lower-die.height: {value: 1 7/8 in, tool: caliper, words: "net height"}\n    looks: {frame.crack: none}\n    told: ["it always ran"]\n`;
    const all = readSurveyFile(whole);
    expect(all.problems).toEqual([]);
    for (let end = 0; end < whole.length - 1; end += 1) {
      const cut = readSurveyFile(whole.slice(0, end));
      if (!/\n$/.test(whole.slice(0, end))) expect(cut.problems.length, `cut at ${end}`).toBeGreaterThan(0);
      expect(cut.entries.length).toBeLessThanOrEqual(all.entries.length + 1);
      if (end > whole.indexOf('    looks')) expect(cut.entries.filter((entry) => entry.kind === 'reading').length).toBe(2);
    }
  });
});

describe('a hostile file', () => {
  const bomb = `a: &a [x, x, x, x, x, x, x, x, x]\n${'bcdefghi'.split('').map((name, index) => `${name}: &${name} [${Array.from({ length: 9 }, () => `*${'abcdefghi'[index]}`).join(', ')}]`).join('\n')}\n`;
  let seed = 12345;
  const chance = (): number => (seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648) / 2_147_483_648;
  const noise = (length: number, least: number, most: number): string => Array.from({ length }, () => (chance() < 0.04 ? '\n' : String.fromCharCode(least + Math.floor(chance() * (most - least))))).join('');
  const full = (unit: string): string => unit.repeat(Math.floor(LONGEST_FILE / unit.length));
  const visits = `${HEAD}visits:\n`;
  const HOSTILE: readonly (readonly [what: string, text: string])[] = [
    ['ten megabytes of noise', noise(10_000_000, 32, 127)],
    ['noise as long as is read', noise(LONGEST_FILE, 32, 127)],
    ['bytes that are no text', noise(LONGEST_FILE, 0, 256)],
    ['references that swell', `${HEAD}${bomb}`],
    ['brackets without end', full('[')], ['braces without end', full('{')], ['empty lists', full('[],')], ['dashes in dashes', full('- ')], ['colons', full(': ')], ['questions', full('? ')],
    ['quotation marks', full('"')], ['marks for references', full('&a ')], ['references', full('*a\n')], ['tags', full('!a\n')], ['documents', full('---\n')], ['directives', full('%a\n')],
    ['comments', full(' #\n')], ['tabs', full('\t')], ['tabbed lines', full(' \t\n')], ['empty lines', full('\n')], ['keys in braces', `{${full('b: c, ')}`.slice(0, LONGEST_FILE)],
    ['steps of indent', Array.from({ length: 750 }, (_, index) => `${' '.repeat(index)}a:`).join('\n')],
    ['one key over and over', full('abc: 1\n')],
    ['mistyped parts', `${VISIT}    readings:\n${Array.from({ length: 9_000 }, (_, index) => `      upper-die.heigh${index}: 3 in`).join('\n')}\n`],
    ['statements by the ten thousand', `${VISIT}    told:\n${Array.from({ length: 29_000 }, () => '      - a').join('\n')}\n`.slice(0, LONGEST_FILE)],
    ['visits by the ten thousand', `${visits}${Array.from({ length: 7_000 }, () => '  - {date: 2026-01-01, by: x, hours: 1 h}').join('\n')}\n`],
    ['corrections by the thousand', `${visits}${Array.from({ length: 3_000 }, () => '  - {date: 2026-01-01, by: x, hours: 1 h, corrections: [{visit: 2026-01-01, of: hours, why: a}]}').join('\n')}\n`],
  ];

  it.each(HOSTILE)('is read in bounded time: %s', (what, text) => {
    // Processor time, so that a busy machine does not fail it.
    const begun = process.cpuUsage();
    const { problems } = readSurveyFile(text);
    const { user, system } = process.cpuUsage(begun);
    const seconds = (user + system) / 1e6;
    if (!/by the ten thousand/.test(what)) expect(problems.length).toBeGreaterThan(0);
    expect(problems.length).toBeLessThanOrEqual(401);
    for (const problem of problems) expect(problem.message.length).toBeLessThan(2_000);
    expect(seconds).toBeLessThan(5);
  });

  it('refuses a reference instead of following it, with a sentence', () => {
    const { problems } = readSurveyFile(`${HEAD}visits:\n  - {date: 2026-01-01, by: &who x, told: [*who]}\n`);
    expect(problems.map((problem) => problem.message).join('\n')).toMatch(/a reference to another place is not allowed; the value written out/);
  });

  it('says of a file that is too long how long it may be', () => {
    const { entries, problems } = readSurveyFile('a'.repeat(LONGEST_FILE + 1));
    expect(entries).toEqual([]);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.message).toMatch(/too long for a survey; at most 300000 characters: "300001 characters"/);
  });
});
