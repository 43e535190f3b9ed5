import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { LINKAGE_FAMILIES, partsFor } from '../../src/hammer/index.ts';
import { inOtherUnits, inSystem, ownUnitsFirst } from '../../src/views/index.ts';

test.each([
  ['0.003 to 0.006 in is good.', '0.076 to 0.152 mm is good.'], ['a 4 by 4 in hardwood prop carries 8,000 lb up to 44 in long', 'a 102 by 102 mm hardwood prop carries 3600 kg up to 1120 mm long'],
  ['Nobody but the operator within ten feet while it runs.', 'Nobody but the operator within three metres while it runs.'], ['scaled from the 50 lb class', 'scaled from the 50 lb class'], ['a foot that carries the taper', 'a foot that carries the taper'], ['1/8 in in a foot of face', '3.2 mm in 300 mm of face'],
  ['With the stack an inch short', 'With the stack 25 mm short'], ['watch from 1/2 in up; limited from 1 in up', 'watch from 12.7 mm up; limited from 25 mm up'], ['60 in 100 do this, in one go', '60 in 100 do this, in one go'],
  ['about 3/8 in', 'about 9.5 mm'], ['12 thou', '0.30 mm'], ['1 1/2 in', '38 mm'],
])('%s', (inch, metric) => {
  expect(inSystem(inch, 'metric')).toBe(metric);
  expect(inSystem(inch, 'inch')).toBe(inch);
});

test('no sentence of the knowledge and no way of measuring keeps inches or pounds for a reader of millimetres', () => {
  const words: string[] = [];
  const gather = (held: unknown, key = ''): void => {
    if (typeof held === 'string' && /^(because|sentence|words|how|accuracy|danger|oneSide|otherSide|cheaper)$/.test(key)) words.push(held);
    else if (Array.isArray(held)) for (const one of held) gather(one, key);
    else if (typeof held === 'object' && held !== null) for (const [name, one] of Object.entries(held)) gather(one, name);
  };
  gather(knowledge.criteria);
  gather(knowledge.cautions);
  for (const family of LINKAGE_FAMILIES) gather(partsFor(family));
  const kept = [...new Set(words)].filter((one) => /\d ?(?:in|thou|lb|ft|psi|hp)\b(?! class)(?! \d)/.test(inSystem(one, 'metric')));
  console.log(`${words.length} sentences; ${new Set(words).size} of them different`);
  expect(words.length).toBeGreaterThan(500);
  expect(kept).toEqual([]);
});

test('a reading is shown in the reader’s units first, and what was written stays beside it', () => {
  expect(ownUnitsFirst('12 thou (0.305 ± 0.026 mm)', 'metric')).toBe('0.305 ± 0.026 mm (written 12 thou)');
  expect(ownUnitsFirst('12 thou (12 ± 1 thou)', 'inch')).toBe('12 thou (12 ± 1 thou)');
  expect(ownUnitsFirst('19.5 mm (3/4 ± 1/64 in)', 'inch')).toBe('3/4 ± 1/64 in (written 19.5 mm)');
  expect(inOtherUnits('70 %', 'metric')).toBe(false);
});
