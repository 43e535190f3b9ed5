import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { picture, type PrintSystem } from '../../src/derived/index.ts';
import { keyWords } from '../../src/views/work/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { everythingSaid, FIVE } from './every-paper.ts';
import { pictureOf } from './paper-cases.ts';

function shownOf(log: LogOf, criterion: string, system: PrintSystem = 'inch'): string | undefined {
  return picture(log.entries, knowledge, '2026-11-26T00:00:00Z', 1, system)?.findings.find((one) => one.criterion === criterion && one.shown !== '')?.shown;
}

test('a reading carries its doubt once, and its figure is the one that was written', () => {
  // What was written as 85 % is never said to be 90 ± 10 %.
  expect(shownOf(new LogOf('50 lb', 'coil-and-toggle').read('keys.contact@lower', '85 %'), 'keys.contact')).toMatch(/^85 ± [\d.]+ %$/u);
  for (const { name, entries } of FIVE) {
    const twice = everythingSaid(pictureOf(entries, 'inch'), entries).filter(([, text]) => /(\d[\d ./]*) ?(in|thou|%) \(\d[\d ./]* ± [\d ./]+ \2\)/u.test(text));
    expect({ name, twice }).toEqual({ name, twice: [] });
  }
});

test.each(['inch', 'metric'] as const)('no paper prints a length below nothing as if it could be found: %s', (system) => {
  const short = new LogOf('50 lb', 'coil-and-toggle').read('main-shaft.diameter@front', '2 in').read('main-bearings.clearance@front', '12 thou').read('bearing-caps.shims@front', '6 thou');
  expect(shownOf(short, 'journals.shims-left', system)).toMatch(system === 'inch' ? /^6(?:\.0)? thou there, 9(?:\.0)? thou to take out: 3(?:\.0)? ± \d[\d.]* thou too few, reckoned; all of them out would leave about 6(?:\.0)? thou of clearance$/u : /^0\.15\d* mm there, 0\.\d+ mm to take out: 0\.0\d+ ± 0\.0\d+ mm too few, reckoned; all of them out would leave about 0\.15\d* mm of clearance$/u);
  for (const { name, entries } of FIVE) {
    const below = everythingSaid(pictureOf(entries, system), entries).filter(([where, text]) => /, Found$|, What, and what was found$/u.test(where) && /(?<![\w])[−-]\d[\d.]* (?:± [\d.]+ )?(?:mm|thou|in)\b/u.test(text));
    expect({ name, below }).toEqual({ name, below: [] });
  }
});

test('phases and pairs of legs are named, so that no letter stands alone at the end of a sentence', () => {
  expect(keyWords('motor.running-current@a')).toBe('motor, current running, phase A');
  expect(keyWords('motor.leg-voltage@bc')).toBe('motor, voltage between two legs, under load, legs B and C');
  for (const { name, entries } of FIVE) {
    const alone = everythingSaid(pictureOf(entries, 'inch'), entries).filter(([where, text]) => !where.startsWith('Drawing') && !where.endsWith(', letters') && /, (?:[abc]|ab|bc|ca)(?:[.;,:]|$)/u.test(text));
    expect({ name, alone }).toEqual({ name, alone: [] });
  }
});
