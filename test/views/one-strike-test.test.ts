import { expect, test } from 'vitest';
import { outlook, worksheetOf } from '../../src/derived/index.ts';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { acceptanceOf } from '../../src/views/work/acceptance-blocks.ts';
import { orderOfWorkBlocks } from '../../src/views/work/order-of-work-blocks.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';

test('one strike test reads back as one figure on the forging sheet and in the trial', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'KB-50')!;
  const test = outlook(found, found.provenance.seed).values['capacity.strike-test-energy']?.outcome;
  if (test?.state !== 'known') throw new Error('no strike test');
  const energy = (value: number): string => formatQuantity({ dimension: 'energy', value: Number(value.toPrecision(3)), uncertainty: 0 }, { system: 'inch', doubt: false, resolution: 2 });
  const shown = acceptanceOf(found).points.find((one) => one.id === 'strike-energy')?.shown;
  expect(shown).toBe(`${energy(test.quantity.value)} a blow, 95 % between ${energy(test.quantity.interval![0])} and ${energy(test.quantity.interval![1])}`);
});

test('what was said with a price stands beside it', () => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === 'DT-90')!;
  expect(worksheetOf(found.known, found.findings, knowledge).jobs.find((job) => job.job === 'bearings.pour')?.heard[0]?.words).toBe('both ends, shaft out and in by the owner');
  expect(JSON.stringify(orderOfWorkBlocks(found, knowledge))).toContain('both ends, shaft out and in by the owner');
});
