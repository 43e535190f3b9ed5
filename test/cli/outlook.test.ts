import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { EXAMPLES, typed } from './at-the-door.ts';

const folder = mkdtempSync(join(tmpdir(), 'tupwise-outlook-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const GOOD = join(EXAMPLES, 'kettlebrae-50-simply-good.yaml');
const SEAT = join(EXAMPLES, 'sallowfield-40-sunken-seat.yaml');

test.each([
  ['forge', /Largest bar for steady work: .* in .*square/, /Bar, *By a blow|By a blow, bright orange/i], ['oil', /Oil these \d+ points before starting/, /Main bearing, crank end/], ['power', /Full load \d+ A: conductors from \d+ A, breaker to \d+ A/, /licensed electrician/],
  ['ground', /The block moves .* under a full blow, at most/, /soft clay/], ['move', /It weighs .* lb and goes over at a lean from \d+°/, /pipe rollers/],
])('%s says the answer first, then what it rests on', async (name, answer, figure) => {
  const { exit, out, err } = await typed([name, GOOD]);
  expect([exit, err]).toEqual([0, '']);
  expect(out).toMatch(/^KB-50: /);
  expect(out.search(answer)).toBeGreaterThan(0);
  expect(out).toMatch(figure);
  expect(out.search(figure)).toBeGreaterThan(out.search(answer));
  expect(out).not.toMatch(/NaN|undefined|\[object/);
});

test('a hammer that stands down is not said to forge anything today', async () => {
  const { out } = await typed(['forge', SEAT]);
  expect(out).toContain('Nothing on this sheet lets it run.');
  expect(out).toContain('None today. Once it may run:');
});

test('for machines: answer, what to measure first, values and blocks', async () => {
  const { sheet, provenance } = JSON.parse((await typed(['power', SEAT, '--json'])).out) as { readonly sheet: { readonly id: string; readonly answer: { readonly estimate: boolean }; readonly measureFirst: readonly string[]; readonly values: readonly { readonly key: string }[] }; readonly provenance: { readonly logHash: string } };
  expect([sheet.id, sheet.answer.estimate]).toEqual(['power', true]);
  expect(sheet.measureFirst.length).toBeGreaterThan(0);
  expect(sheet.values.every((value) => value.key.startsWith('power.'))).toBe(true);
  expect(provenance.logHash).toMatch(/^[0-9a-f]{64}$/);
});

test('a sheet, the report and the card are written as PDF or as a page by the ending of their name', { timeout: 60_000 }, async () => {
  for (const [name, starts] of [['sheet.pdf', '%PDF-'], ['sheet.html', '<!doctype html>']] as const) {
    for (const command of ['oil', 'report', 'card']) {
      const file = join(folder, `${command}-${name}`);
      const heard = await typed([command, GOOD, '-o', file, '--paper', 'a4', '--metric']);
      expect([heard.exit, heard.err]).toEqual([0, `written: ${file}\n`]);
      expect(readFileSync(file, 'latin1').startsWith(starts), file).toBe(true);
    }
  }
});

test('door and floor are taken into the move, and bad ones are said plainly', async () => {
  const wide = await typed(['move', GOOD, '--door', '48 in x 96 in', '--floor', '1000 psf']);
  expect(wide.out).toMatch(/Its base goes through the door with .* to spare/);
  expect(wide.out).toMatch(/uses \d+ % of the rating stated/);
  const narrow = await typed(['move', GOOD, '--door', '12 in x 30 in', '--floor', '5 psf']);
  expect(narrow.out).toMatch(/too wide for the door/);
  expect(narrow.out).toMatch(/not on this floor without an engineer/);
  for (const door of ['36 in', 'wide x high', '36 kg x 80 kg']) {
    const heard = await typed(['move', GOOD, '--door', door]);
    expect(heard.exit, door).toBe(2);
    expect(heard.err, door).not.toMatch(/its own fault/);
    expect(heard.out).toBe('');
  }
  expect((await typed(['move', GOOD, '--floor', '3 furlongs'])).exit).toBe(2);
});

test('photographs of a folder come into the report by what is in them; a folder that is not there is said', async () => {
  const heard = await typed(['report', GOOD, '-o', join(folder, 'with.pdf'), '--photographs', join(folder, 'none')]);
  expect(heard.exit).toBe(2);
  expect(heard.err).toMatch(/^the folder of photographs cannot be read; [^:]+: .*none\n$/);
});
