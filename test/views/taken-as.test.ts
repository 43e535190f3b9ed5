import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';
import { reportTree } from '../../src/views/index.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';

const rowsOf = (tag: string): readonly (readonly string[])[] => {
  const { found } = EXAMPLE_PICTURES.find((one) => one.tag === tag)!;
  return reportTree(found, knowledge).blocks.flatMap((block) => (block.kind === 'table' && block.columns.includes('Taken as') ? block.rows.map((row) => row.cells) : []));
};
const taken = (tag: string, written: string): readonly string[] => rowsOf(tag).filter((cells) => cells[1] === written).map((cells) => cells[2] ?? '');

test('no reading is taken as another figure than was read', () => {
  for (const one of taken('KB-50', '85 %')) expect(one).toMatch(/^85 (?:±|%)/u);
  for (const one of [...taken('KB-50', '1.5 thou'), ...taken('WH-65', '1.8 thou')]) expect(one).toMatch(/^1\.[58] (?:±|thou)/u);
  expect(taken('DT-90', '55 %').length).toBeGreaterThan(0);
  for (const one of taken('DT-90', '55 %')) expect(one).toMatch(/^55 (?:±|%)/u);
  expect(taken('KB-50', '0.1 in').join()).toMatch(/^0\.1 ± 0\.0\d in|^0\.1 in \(/u);
});

test.each(EXAMPLE_PICTURES.map(({ tag }) => tag))('the readings of %s begin with the figure that was written', (tag) => {
  for (const [, written = '', printed = ''] of rowsOf(tag)) {
    const unit = /(in|thou|lb|%)$/u.exec(written)?.[1];
    if (unit === undefined || !printed.includes(unit) || written.includes('±')) continue;
    const dimension = unit === '%' ? 'ratio' : unit === 'lb' ? 'mass' : 'length';
    const first = /^([\d./, ]+?)(?: ±| \(| (?:in|thou|lb|%))/u.exec(printed)?.[1];
    const own = / (in|thou|lb|%)/u.exec(printed)?.[1] ?? unit;
    const [read, said] = [readQuantity(written, { dimension }), readQuantity(`${first} ${own}`, { dimension })];
    if (!read.ok || !said.ok) continue;
    expect(said.quantity.value, `${written} taken as ${printed}`).toBeCloseTo(read.quantity.value, 9);
  }
});
