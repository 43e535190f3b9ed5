import { expect, test } from 'vitest';
import { picture, type Picture } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { elevation, partConditions } from '../../src/views/index.ts';
import { LogOf } from '../cases/log-of.ts';

const seen = (log: LogOf, system: 'inch' | 'metric' = 'inch'): Picture => {
  const made = picture(log.entries, knowledge, '2026-05-13T00:00:00Z', 1, system);
  if (made === undefined) throw new Error('a hammer is enrolled');
  return made;
};

test('a crack in an arm, link or pin stands on all three on the drawing, since one look answers for all', () => {
  const cracked = seen(new LogOf('50 lb', 'coil-and-toggle').look('toggle-arms.crack', 'present'));
  const conditions = partConditions(cracked);
  for (const part of ['toggle-arms', 'toggle-links', 'toggle-pins']) {
    expect(conditions.get(part)!.condition, part).toBe('stand-down');
    expect(conditions.get(part)!.findings.map((finding) => finding.criterion), part).toContain('toggles.crack');
  }
  expect(conditions.get('coil-spring')?.condition ?? 'not-checked').not.toBe('stand-down');
  const drawn = elevation(cracked, { view: 'front' });
  for (const part of ['toggle-arms', 'toggle-links', 'toggle-pins']) expect(drawn).toMatch(new RegExp(`class="part stand-down" data-part="${part}"`));
});

test('what was looked at and good does not make the rest of the part good', () => {
  const conditions = partConditions(seen(new LogOf('50 lb', 'coil-and-toggle').look('coil-spring.crack', 'none')));
  const spring = conditions.get('coil-spring')!;
  expect(spring).toMatchObject({ condition: 'not-known', inPart: true });
  expect(spring.words).toMatch(/^sound so far, \d+ matters not known yet$/);
  // Of what nobody touched nothing is said but that.
  expect(conditions.get('helve')).toBeUndefined();
  expect(conditions.get('frame')).toMatchObject({ condition: 'not-checked', inPart: false, words: 'not checked' });
});

test('a measured figure of the elevation carries its doubt, a told one does not', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').read('lower-die.height', '2 7/8 in');
  log.put('reading', { place: 'upper-die.height', quantity: { dimension: 'length', value: 0.0746125, uncertainty: 0.0004 }, asWritten: '2 15/16 in', standing: 'told' });
  const figures = (system: 'inch' | 'metric'): string[] => [...elevation(seen(log, system), { view: 'front', balloons: false }).matchAll(/<text class="figure"[^>]*>(.*?)<\/text>/g)].map((one) => one[1]!.replace(/<[^>]*>/g, '').replace(/\s+/g, ' ').trim());
  expect(figures('inch')).toEqual([expect.stringMatching(/^2 7⁄8 in ± \d⁄\d+$/), expect.stringMatching(/^2 15⁄16 in$/)]);
  expect(figures('metric')).toEqual([expect.stringMatching(/^73\.03 mm ± \d\.\d\d$/), expect.stringMatching(/^74\.61 mm$/)]);
});
