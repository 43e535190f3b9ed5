import { expect, test } from 'vitest';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { reportTree } from '../../src/views/index.ts';
import { handOverSheet, SHEET_IDS } from '../../src/views/work/index.ts';
import { FIVE, saidIn } from '../print/every-paper.ts';
import { pictureOf } from '../print/paper-cases.ts';

/** Places that may truly lie below nothing, or are differences: what is left of a thing may be short. */
const MAY: RegExp = /\bleft\b|clearance|against|stroke|ratio|temperature|angle/iu;

test('a figure that cannot lie below nothing is printed from nothing up', () => {
  expect(formatQuantity({ dimension: 'ratio', value: 0, uncertainty: 0.05 }, { neverBelow: true })).toBe('0 % (0 to 10)');
  expect(formatQuantity({ dimension: 'ratio', value: 0.01, uncertainty: 0.024 }, { neverBelow: true })).toBe('1.0 % (0.0 to 5.8)');
  expect(formatQuantity({ dimension: 'ratio', value: 0.01, uncertainty: 0.002 }, { neverBelow: true })).toBe('1.0 ± 0.4 %');
  for (const { name, entries } of FIVE) {
    const picture = pictureOf(entries, 'inch');
    const said = [reportTree(picture, knowledge), ...SHEET_IDS.map((id) => handOverSheet(id, { picture, entries, knowledge }))].flatMap((tree) => [...saidIn(tree)]);
    expect(said.filter(([where]) => /, (?:Found|Taken as)$/u.test(where)).length, name).toBeGreaterThan(20);
    const below = said.filter(([where, text]) => /, (?:Found|Taken as)$/u.test(where) && [...text.matchAll(/(?<![\d/.])(\d+(?:\.\d+)?) ± (\d+(?:\.\d+)?)(?! ?\d*\/)/gu)].some(([, value, half]) => Number(value) < Number(half)) && !MAY.test(text));
    expect({ name, below }).toEqual({ name, below: [] });
  }
});
