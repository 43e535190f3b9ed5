import { describe, expect, test } from 'vitest';
import { nextBar, partsToMake, stockOf, stockWords, type Mark, type PartToMake } from '../../src/derived/making/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { notMadeWords } from '../../src/views/making/index.ts';
import { buyBlocks, makingBlocks, orderBlocks } from '../../src/views/work/making-blocks.ts';
import { SHEETS, YARD } from './every-sheet.ts';

const INCH = 0.0254;
const yard = (tag: string) => {
  const one = YARD.find(({ name }) => name === `${tag} inch`);
  if (one === undefined) throw new Error(`no such hammer: ${tag}`);
  return one.found;
};

/** Sides of the frame round a view of the drawing itself, the smaller first: what is drawn, not the sizes that the stock was chosen by. */
function frame(marks: readonly Mark[]): readonly [number, number] {
  const points = marks.flatMap((mark) => (mark.line === 'centre' || mark.line === 'break' ? [] : mark.kind === 'line' ? [mark.from, mark.to] : mark.kind === 'circle' ? [[mark.centre[0] - mark.radius, mark.centre[1] - mark.radius], [mark.centre[0] + mark.radius, mark.centre[1] + mark.radius]] as const : []));
  const span = (axis: 0 | 1): number => Math.max(...points.map((point) => point[axis])) - Math.min(...points.map((point) => point[axis]));
  return [Math.min(span(0), span(1)), Math.max(span(0), span(1))];
}

describe('what is bought for a part', () => {
  // A leaf is drawn bent and bought straight, timbers are drawn side by side, a strap with its plates: they are looked at by themselves below.
  const whole = SHEETS.filter(({ part }) => part.shape.broken === undefined && !['bow-leaf', 'sole-timbers', 'bow-strap'].includes(part.kind)).flatMap(({ name, part, found }) => {
    const stock = stockOf(part, found.system);
    return stock === undefined ? [] : [{ name, part, stock, system: found.system }];
  });

  test('covers every kind of part that is cut from a bar, a plate or a block', () => {
    const kinds = new Set(whole.map(({ part }) => part.kind));
    for (const kind of ['lower-key', 'upper-key', 'lower-die', 'upper-die', 'filler-plate', 'crank-pin', 'rod-bushing', 'clutch-pulley-bushing', 'bow-eye-pin', 'helve-pin', 'helve-bushing', 'ram-prop', 'thrust-washer'] as const) expect(kinds).toContain(kind);
  });

  test('takes in every view of its drawing, with a sixteenth, or a millimetre, to clean a machined section and a quarter to saw', () => {
    for (const { name, part, stock, system } of whole) {
      const [first = 0, second = first] = stock.across;
      // What is bought in millimetres as it is drawn is the nearest that is sold within the tolerance of the drawing.
      const clean = !stock.asSold ? (system === 'inch' ? INCH / 16 : 0.001) : system === 'inch' ? 0 : -Math.max(...part.dimensions.map((one) => (['height', 'width', 'side'].includes(one.name) ? one.tolerance.minus : 0)));
      const sides = [first - clean, second - clean, stock.length - INCH / 4].sort((a, b) => a - b);
      for (const view of part.shape.views) {
        const [small, large] = frame(view.marks);
        const fits = small <= sides[1]! + 1e-9 && large <= sides[2]! + 1e-9 && (small <= sides[0]! + 1e-9 || large <= sides[2]! + 1e-9);
        expect(fits, `${name}, ${view.name}: ${[small, large].map((one) => (one / INCH).toFixed(3)).join(' by ')} from ${sides.map((one) => (one / INCH).toFixed(3)).join(', ')}`).toBe(true);
      }
      expect(stock.pieces, name).toBe(part.quantity);
    }
  });

  test('is a size that a merchant keeps', () => {
    for (const { name, stock, system } of whole) {
      if (stock.asSold && system === 'inch') continue;
      stock.across.forEach((side, index) => expect(Math.abs(nextBar(side, system, stock.form, index === 0 ? 'thin' : 'wide') - side), `${name}: ${side}`).toBeLessThan(1e-9));
    }
    // 0.416 and 0.548 in with a sixteenth; just over an inch; 33 mm.
    expect([0.4785, 0.6105, 1.01, 3.01].map((size) => nextBar(size * INCH, 'inch') / INCH)).toEqual([0.5, 0.625, 1.125, 3.25].map((size) => expect.closeTo(size, 9) as number));
    expect(nextBar(0.033, 'metric')).toBeCloseTo(0.035, 9);
  });

  test('of a bent leaf is its straight length and its own section', () => {
    const { part, found } = SHEETS.find((one) => one.part.kind === 'bow-leaf' && one.found.system === 'inch')!;
    const of = (name: string): number => part.dimensions.find((one) => one.name === name)!.quantity.value;
    const stock = stockOf(part, found.system)!;
    expect(stock.across).toEqual([of('thickness'), of('width')]);
    expect(stock.length).toBeGreaterThan(of('flat-length'));
  });

  test('of a pad of timbers makes up its width', () => {
    for (const { part, found } of SHEETS.filter((one) => one.part.kind === 'sole-timbers')) {
      const stock = stockOf(part, found.system)!;
      expect(stock.pieces * stock.across[1]!).toBeGreaterThanOrEqual(part.dimensions.find((one) => one.name === 'pad-width')!.quantity.value - 1e-9);
    }
  });
});

test('both keys of the loose one come from a bar of 1/2 by 5/8 in, on worksheet and order list', () => {
  const loose = yard('SF-40');
  const keys = partsToMake(loose).filter((part): part is PartToMake => part.state === 'to-make' && part.kind.endsWith('-key'));
  expect(keys.map((key) => key.kind)).toEqual(['lower-key', 'upper-key']);
  for (const key of keys) for (const one of key.dimensions.filter(({ name }) => ['large-end', 'height'].includes(name))) expect(one.quantity.value + one.tolerance.plus).toBeLessThan((one.name === 'height' ? 0.625 : 0.5) * INCH);
  expect(JSON.stringify(buyBlocks(loose))).toMatch(/key steel: flat bar 1\/2 by 5\/8 in, 2 pieces of [\d/ ]+ in/);
  expect(JSON.stringify(orderBlocks(loose))).toMatch(/"To buy","flat bar 1\/2 by 5\/8 in, 1 piece of /);
});

test.each(YARD)('of $name: everything that a drawing decides has its size or says what to measure first', ({ found }) => {
  const cells = buyBlocks(found).flatMap((block) => (block.kind === 'table' ? block.rows.map((row) => row.cells[0] ?? '') : []));
  const decided = /^(key steel|tough steel plate|die, half|bronze|pin and bush|bushes and|leaf, spring|belting|rubber cushions|extension spring|bolts and lock nuts|strip steel and screws|band, lining)/;
  for (const cell of cells.filter((one) => decided.test(one))) expect(cell).toMatch(/: .*(\d|first measure|what to read first)/);
});

test('no thing to buy brings a size of its own that its drawing may contradict', () => {
  const drawn = ['key-steel', 'filler-plate', 'lower-die-blank', 'upper-die-blank', 'pulley-bush', 'crank-pin', 'rod-bush', 'crosshead-bush', 'pin-set', 'spring-leaf', 'strap-belting', 'eye-bushes', 'pivot-bushes', 'cushions', 'treadle-bushes', 'thrust-washers', 'flat-belt'];
  for (const part of knowledge.jobs.flatMap((job) => job.parts).filter((one) => drawn.includes(one.id))) expect(part.words, part.id).not.toMatch(/\d/);
});

test.each([['TW-150', 'Head and clamp bolts of the helve', 'length under the head'], ['SF-40', 'Return spring of the treadle', 'spring balance'], ['SF-40', 'Brake with band, lining and lever', 'diameter and face of flywheel'], ['WH-65', 'Retainer of the guide shims', 'width of the pack']])('%s: %s stands without a drawing, in one line with what to read', (tag, title, reading) => {
  const lines = makingBlocks(yard(tag)).flatMap((block) => (block.kind === 'list' ? block.items : []));
  const line = lines.find((one) => one.startsWith(title)) ?? '';
  expect(line).toContain('no drawing');
  expect(line).toContain(reading);
  expect(line).not.toContain('old one');
});

test('a part without a drawing is told in one line of its own', () => {
  for (const { found } of YARD) for (const part of partsToMake(found)) if (part.state === 'by-pattern') expect(notMadeWords(part)).toHaveLength(1);
});

test('a spring that was seen too short says why the same is ordered, and what would serve', () => {
  const spring = partsToMake(yard('WH-65')).find((part) => part.kind === 'coil-spring');
  if (spring?.state !== 'to-make') throw new Error('no spring');
  const words = spring.warnings.join(' ');
  // The old one, 0.469 against 0.466 in and 3 against 3.02 in, bore 8.20 - 5.375 = 2.825 in; the new one is stiffer by
  // (0.469 / 0.466)^4 x (3.486 / 3.469)^3 = 1.0413, so that the same force takes it 2.713 in, to 6.287 in.
  expect(words).toContain('has set 0.8 in: under the same force the new one comes to 6 1/4 in');
  // Its energy from 7 1/16 in: 2.825^2 - 1.1375^2 = 6.687, over 1.0413 = 6.421; with 1.9375^2 = 3.754 that is 10.175, 3.190 in, to 5.810 in.
  expect(words).toContain('with the nut as it stands taking up the same energy to 5 3/4 in. That is likely too short');
  // Slacker by the setting sheet, 7.615 in: 1.385^2 + 6.421 = 8.340, 2.888 in, to 6.112 in.
  expect(words).toContain('Set at 7.615 in, as the setting sheet has it, it comes to about 6 1/16 in');
  // The same wound longer: 3.190 / 0.8 = 3.988 in of travel over 5.159 in is 9.147 in, and 9.333 in where it may come 2 % short.
  // 360 lbf at 186 lbf/in is 1.938 in less; 9.375 - 3.190 = 6.185 in, and 5.159 + 0.2 x 4.216 = 6.002 in.
  expect(words).toContain('this would serve: same wire, coils and bore, wound longer: free 9 3/8 in. Set at the same load of 360 lbf it stands 7 7/16 in long');
  expect(words).toContain('it comes to 6 1/8 in and may come to 6 1/16 in. Box, bolt and carrier must have room for it');
  expect(knowledge.jobs.find((job) => job.id === 'spring.renew')?.words).not.toContain('never goes solid');
});

test('the weight in the table of props is printed as the table has it', () => {
  for (const { found } of YARD.filter(({ name }) => name.endsWith('inch'))) for (const part of partsToMake(found)) if (part.kind === 'ram-prop' && part.state === 'to-make') expect(part.dimensions.find((one) => one.name === 'side')?.why).toContain('up to 8,000 lb');
});

test('steel plates and rivets are on the order list beside rubber and belting, and a prop in its full size', () => {
  const order = (tag: string): string => JSON.stringify(orderBlocks(yard(tag)));
  // Two plates to each of two cushions; four to each of four straps, two to an eye, and four rivets through each of their two pairs.
  expect(order('TW-150')).toContain('"And","steel plate 1/4 by 5 in, 4 pieces of 6 in"');
  expect(order('DT-90')).toContain('"And","steel plate 1/8 by 2 in, 16 pieces of 3 7/8 in"');
  // 3/8 in of belting between two plates of 1/8 in.
  expect(order('DT-90')).toContain('"And","rivets or bolts of 1/4 in, 32 pieces for a grip of 5/8 in"');
  expect(JSON.stringify(buyBlocks(yard('TW-150')))).toContain('steel plate 1/4 by 5 in, 4 pieces of 6 in');
  expect(order('SF-40')).toMatch(/timber 4 by 4 in full size, rough-sawn, 4 pieces of/);
});

test('bronze for a hole that nobody read is bought after it is read', () => {
  for (const { part, found } of SHEETS.filter((one) => one.part.kind.endsWith('bushing'))) {
    const unread = part.unknowns.some((one) => one.what.startsWith('bore of'));
    const stock = stockOf(part, found.system);
    if (stock !== undefined) expect(stockWords(stock, found.system).startsWith('bought after the hole is read'), part.id).toBe(unread);
  }
});

test('words of a stock keep to the units of the shop', () => {
  for (const { part, found } of SHEETS) {
    const stock = stockOf(part, found.system);
    if (stock !== undefined) expect(stockWords(stock, found.system)).toMatch(found.system === 'inch' ? / in$/ : / mm$/);
  }
});
