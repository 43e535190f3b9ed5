import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXAMPLES, typed } from './at-the-door.ts';

const file = (name: string): string => join(EXAMPLES, name);
const GOOD = file('kettlebrae-50-simply-good.yaml');
const KNOCKER = file('wrenhollow-65-knocks-before-the-blow.yaml');
const SEAT = file('sallowfield-40-sunken-seat.yaml');
const BOW = file('dunmarrow-90-cracked-leaf.yaml');
const HELVE = file('tannerwick-150-worn-pivot.yaml');
const NO_TRACE = /\n\s+at .*:\d+:\d+|Error:/;

describe('judging at the command line', () => {
  it.each([
    { survey: GOOD, exit: 0, says: /Fit by what was read: it may run as it is.* (One dated check is|\d+ dated checks are) overdue: / },
    { survey: KNOCKER, exit: 10, says: /Fit within limits[\s\S]*Spring travel left[\s\S]*spring\.renew/ },
    { survey: HELVE, exit: 10, says: /Fit within limits[\s\S]*Play at the pivot[\s\S]*motor\.renew/ },
    { survey: BOW, exit: 30, says: /Stand down[\s\S]*leaf/ },
    { survey: SEAT, exit: 30, says: /Stand down[\s\S]*keys[\s\S]*Nothing thinner than 3\/8 in/ },
  ])('gives $exit for $survey', async ({ survey, exit, says }) => {
    const heard = await typed(['judge', survey]);
    expect(heard.exit).toBe(exit);
    expect(heard.out).toMatch(says);
    expect(heard.out).toContain('An invented hammer.');
    expect(heard.err).toBe('');
  });

  it('does not know a hammer of which nothing was looked at, and says what would settle it', async () => {
    const heard = await typed(['judge', '-'], 'tupwise: 1\nhammer: {tag: N-1, family: helve, class: 100 lb}\nvisits:\n  - {date: 2026-01-01, by: Ada Quill}\n');
    expect(heard.exit).toBe(20);
    expect(heard.out).toMatch(/What would settle the verdict\n(  - .+\(\d+ min; [a-z.-]+.*\)\n){5,}/);
  });

  it('says the same for machines, with everything behind it', async () => {
    const heard = await typed(['judge', SEAT, '--json']);
    const said = JSON.parse(heard.out) as { duty: { verdict: string }; findings: { criterion: string; grade: string }[]; worksheet: { jobs: unknown[] }; problems: unknown[] };
    expect(heard.exit).toBe(30);
    expect(said.duty.verdict).toBe('stand-down');
    expect(said.findings.find((finding) => finding.criterion === 'keys.secure')?.grade).toBe('stand-down');
    expect(said.worksheet.jobs.length).toBeGreaterThan(5);
    expect(said.problems).toEqual([]);
  });

  it('judges as of a day: before the spring was measured nothing speaks against it', async () => {
    const before = await typed(['judge', KNOCKER, '--as-of', '2024-12-31', '--json']);
    const said = JSON.parse(before.out) as { findings: { criterion: string; grade: string }[] };
    const clash = said.findings.find((finding) => finding.criterion === 'spring.clash');
    expect(clash?.grade).toBe('not-known');
    expect((await typed(['judge', KNOCKER, '--as-of', '2020-01-01'])).err).toMatch(/nothing is known of the hammer by that day; a day from 2024-10-19 on: 2020-01-01/);
  });

  it('lists the whole yard, and ends with the worst verdict', async () => {
    const heard = await typed(['yard', GOOD, KNOCKER, BOW]);
    expect(heard.exit).toBe(30);
    expect(heard.out.trimEnd().split('\n')).toHaveLength(3);
    expect((await typed(['yard', GOOD])).exit).toBe(0);
  });

  it('explains a finding and a consequence down to the reading, its tool and the sources', async () => {
    const finding = await typed(['why', SEAT, 'seat.sunk']);
    expect(finding.out).toMatch(/seat\.sunk[\s\S]*limited[\s\S]*source: [\s\S]*measured on 2025-06-21 by Bram Oake with depth gauge/);
    const value = await typed(['why', SEAT, 'stack.loss']);
    expect(value.out).toMatch(/stack\.loss\][\s\S]*lower-die\.height\][\s\S]*1 13\/16 in/);
    const missing = await typed(['why', SEAT, 'stack.los']);
    expect(missing.exit).toBe(2);
    expect(missing.err).toMatch(/did you mean stack\.loss/);
    expect((await typed(['why', SEAT])).out.split('\n')).toContain('upper-die.height');
  });

  it('lists the work in order, each job with its reason', async () => {
    const heard = await typed(['work', BOW]);
    expect(heard.exit).toBe(0);
    expect(heard.out.match(/^\d+\. /gm)?.length).toBeGreaterThan(8);
    expect(heard.out.match(/why here: \S/g)?.length).toBe(heard.out.match(/^\d+\. /gm)?.length);
  });
});

describe('papers at the command line', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tupwise-cli-'));

  it('writes report, card and drawing, each one file by itself', async () => {
    for (const [words, name, begins] of [[['report', SEAT], 'report.html', /^<!doctype html>/i], [['card', SEAT], 'card.html', /^<!doctype html>/i], [['draw', SEAT], 'elevation.svg', /^<svg /]] as const) {
      const path = join(folder, name);
      const heard = await typed([...words, '-o', path]);
      expect(heard).toMatchObject({ exit: 0, out: '', err: `written: ${path}\n` });
      const text = readFileSync(path, 'utf8');
      expect(text).toMatch(begins);
      expect(text).toContain('SF-40');
      expect(text).not.toMatch(/<script|src="http|url\(http/);
    }
    expect(readdirSync(folder).sort()).toEqual(['card.html', 'elevation.svg', 'report.html']);
  });

  it('prints the card as text, and the drawing of each view', async () => {
    expect((await typed(['card', HELVE])).out).toMatch(/^TW-150: FIT WITHIN LIMITS\nAn invented hammer\.\n\nLimits\n/);
    const [front, side] = await Promise.all([typed(['draw', GOOD, '--view', 'front']), typed(['draw', GOOD, '--view', 'side'])]);
    expect(front.out).not.toBe(side.out);
    expect((await typed(['draw', GOOD, '--view', 'top'])).err).toMatch(/one of front, side, both: top/);
  });

  it('writes nothing where the survey has a mistake, nor where the place cannot be written', async () => {
    const bad = join(folder, 'bad.yaml');
    writeFileSync(bad, readFileSync(SEAT, 'utf8').replace('seat.sunk: {value: 1/4 in', 'seat.sunk: {value: 14 in'));
    const path = join(folder, 'never.html');
    const heard = await typed(['report', bad, '-o', path]);
    expect(heard.exit).toBe(2);
    expect(heard.err).toMatch(/bad\.yaml:\d+:\d+: visits\[0\]\.readings\.seat\.sunk\.value: .+ is impossible; at most .+: "14 in"\n/);
    expect(readdirSync(folder)).not.toContain('never.html');
    const nowhere = await typed(['report', SEAT, '-o', join(folder, 'no-such-folder', 'report.html')]);
    expect(nowhere.exit).toBe(2);
    expect(nowhere.err).toMatch(/cannot be written; there is no such file/);
  });
});

describe('bad input at the command line', () => {
  const bad = 'tupwise: 1\nhammer: {tag: B-1, family: helve, class: 100 lb}\nvisits:\n  - date: 2026-01-01\n    by: Ada Quill\n    readings:\n      seat.sunk: 3 kg\n      seat.dish: 2 thou\n';

  it('lists the problems with their places, says how much was read, and exits with 2', async () => {
    const heard = await typed(['judge', '-'], bad);
    expect(heard.exit).toBe(2);
    expect(heard.out).toBe('');
    expect(heard.err).toMatch(/^-:7:18: visits\[0\]\.readings\.seat\.sunk: .*kg measures a weight/);
    expect(heard.err).toMatch(/2 entries could be read/);
  });

  it('goes on with the rest when asked to, and still exits with 2', async () => {
    const heard = await typed(['judge', '-', '--despite-problems'], bad);
    expect(heard.exit).toBe(2);
    expect(heard.out).toMatch(/Not known yet/);
  });

  it('says the problems for machines too', async () => {
    const heard = await typed(['judge', '-', '--json'], bad);
    expect(heard.exit).toBe(2);
    const said = JSON.parse(heard.out) as { problems: { line: number; path: string; expected: string }[] };
    expect(said.problems).toMatchObject([{ line: 7, path: 'visits[0].readings.seat.sunk' }]);
  });

  it('checks without judging', async () => {
    expect(await typed(['check', GOOD])).toMatchObject({ exit: 0, out: expect.stringMatching(/: \d+ entries, 0 problems, 0 warnings\n$/) as string });
    expect((await typed(['check', '-'], bad)).exit).toBe(2);
    const warned = await typed(['check', '-'], bad.replace('      seat.sunk: 3 kg\n', '').replace('2026-01-01', '2026-02-01'));
    expect(warned).toMatchObject({ exit: 0, out: expect.stringMatching(/warning: .*future[\s\S]*0 problems, 1 warning/) as string });
  });

  it.each([
    [['judge', '/no/such/file.yaml'], /cannot be read; there is no such file: \/no\/such\/file\.yaml/],
    [['judge', EXAMPLES], /cannot be read; it is a folder/],
    [['judge', GOOD, '--as-of', '2026-02-30'], /the day cannot be used; a day that exists.*2026-02-30/],
    [['judge', GOOD, '--seed', 'x'], /the seed cannot be used/],
    [['jugde', GOOD], /unknown command[\s\S]*judge/],
    [['judge'], /missing required argument/],
    [['judge', GOOD, '--colour'], /unknown option/],
    [['serve', '--port', '99999'], /the port cannot be used/],
  ])('says of %j in a sentence what is wrong', async (words, message) => {
    const heard = await typed(words);
    expect(heard.exit).toBe(2);
    expect(heard.err).toMatch(message);
    expect(heard.err).not.toMatch(NO_TRACE);
  });

  it('says of empty, binary and enormous input that it is no survey, without a trace', async () => {
    for (const text of ['', '\u0000\u0001\u0002'.repeat(1000), 'x'.repeat(10_000_000), '[[[[', 'null', '- 1\n- 2\n']) {
      const heard = await typed(['judge', '-'], text);
      expect(heard.exit).toBe(2);
      expect(heard.err.length).toBeGreaterThan(20);
      expect(heard.err).not.toMatch(NO_TRACE);
    }
  });
});
