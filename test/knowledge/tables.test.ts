import { expect, test } from 'vitest';
import { partOf } from '../../src/hammer/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';
import { FORGING_RANGES, HEAT_COLOURS, knowledge, OIL_AT_HUNDRED, OIL_POINTS, OIL_RUNS, SHOP_FIGURES, SOILS } from '../../src/knowledge/index.ts';

const sources = new Set(knowledge.sources.map((one) => one.id));

test.each([
  ['shop figures', SHOP_FIGURES], ['heat colours', HEAT_COLOURS], ['forging ranges', FORGING_RANGES], ['soils', SOILS], ['oil points', OIL_POINTS], ['oils', [OIL_AT_HUNDRED, OIL_RUNS]],
] as const)('every row of the table has a source that exists: %s', (_name, rows) => {
  for (const row of rows) expect(sources.has(row.source), JSON.stringify(row)).toBe(true);
});

test('shop figures are read as what they say they are, and have names of their own', () => {
  for (const row of SHOP_FIGURES) expect(readQuantity(row.text, { dimension: row.dimension, field: row.id }).ok, row.id).toBe(true);
  expect(new Set(SHOP_FIGURES.map((row) => row.id)).size).toBe(SHOP_FIGURES.length);
});

test('oil goes to parts that exist, colours grow hotter, soils grow stiffer', () => {
  for (const point of OIL_POINTS) expect(partOf(point.part), point.id).toBeDefined();
  const inOrder = (numbers: readonly number[]) => expect([...numbers].sort((a, b) => a - b)).toEqual(numbers);
  inOrder(HEAT_COLOURS.map((one) => one.temperature));
  inOrder(SOILS.map((one) => one.compression[0]));
  inOrder(FORGING_RANGES.map((one) => one.upTo));
});
