import { describe, expect, test } from 'vitest';
import { makeBowEyeBushings, makeBowEyePins, makeBowLeaf, makeBowStraps, makeCrankPin, makeFillerPlate, makeHelveBushings, makeTogglePins, partsToMake, stockOf, stockWords, type PartKind } from '../../src/derived/making/index.ts';
import { DIES_OUT, knowledge } from '../../src/knowledge/index.ts';
import { makingDxf } from '../../src/print/dxf/index.ts';
import { makingSheets } from '../../src/views/making/index.ts';
import { buyBlocks } from '../../src/views/work/making-blocks.ts';
import { SHEETS, YARD } from './every-sheet.ts';
import { dimension, inches, made, pictureOf } from './figures-of.ts';
import { bowHammer, helveHammer, inchHammer } from './hammers.ts';

/** What a machinist asks of the sheets before he starts: can it be held, locked, bought, oiled, and is it one part or another. */

const and = (...kinds: PartKind[]) => ({ system: 'inch' as const, floorCut: false, alsoMade: new Set<PartKind>(kinds) });
const sheet = (name: string) => {
  const found = SHEETS.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
};
const bought = (tag: string): string => JSON.stringify(buyBlocks(YARD.find(({ name }) => name === `${tag} inch`)!.found));

describe('the ram is held up in every state that the jobs bring', () => {
  test('with both dies out the prop of the old beam reaches from floor to floor', () => {
    const { part } = sheet('TW-150 inch ram-prop');
    // Gap 1 1/2, throw 2 1/2 by arms of 54 and 28 in, less 1/4: 10.893 in; the dies stand 3 3/4 and 3 13/16 in over their floors.
    expect(inches(part, 'length')).toBeCloseTo(1.5 + (5 * 54) / 28 - 0.25, 6);
    expect(inches(part, 'length-1')).toBeCloseTo(3.75 + 1.5 + (5 * 54) / 28 + 3.8125 - 0.25, 6);
    expect(part.quantity).toBe(2);
  });

  test('of the loose one: with the lower die out, the same after the ram was raised, and with both out', () => {
    const { part, found } = sheet('SF-40 inch ram-prop');
    // 5 7/8; the rod is shortened by 1 3/16 in before the new die: 7 1/16; the upper die of 2 1/2 in out as well: 9 9/16.
    expect(['length', 'length-1', 'length-2', 'length-3'].map((name) => inches(part, name))).toEqual([4.0625, 5.875, 7.0625, 9.5625].map((size) => expect.closeTo(size, 6) as number));
    const numbers = (...ids: string[]): number[] => ids.map((id) => found.worksheet.jobs.find((one) => one.job === id)!.number);
    for (const number of numbers('dies.grind-pair', 'dies.dress')) expect(dimension(part, 'length-3').title).toContain(String(number));
    expect(stockWords(stockOf(part, 'inch')!, 'inch')).toMatch(/4 pieces of 4 1\/2, 6 1\/4, 7 1\/2 and 10 in$/);
    expect(part.notes.join(' ')).toContain('does not go into the seat, 3 in wide');
  });

  test('every job that takes a die out says so on the worksheet, and is a job', () => {
    for (const id of Object.keys(DIES_OUT)) {
      const job = knowledge.jobs.find((one) => one.id === id);
      expect(job, id).toBeDefined();
      if (!id.startsWith('sow-block')) expect(job!.words, id).toContain('longer prop');
    }
  });
});

describe('the nut of a crank pin is locked', () => {
  const { part, found } = sheet('SF-40 inch crank-pin');

  test('by a split pin through a slotted nut, for which the tail has the length', () => {
    // 1/32 inside the plate, a washer of 0.165 in and a nut of 0.776 in at most (ASME B18.22.1, B18.2.2, from memory), and two turns of 1/9 in.
    expect(inches(part, 'tail')).toBeGreaterThan(1 / 32 + 0.165 + 0.776 + 2 / 9 - 0.001);
    expect(inches(part, 'nut-hole') * 25.4).toBeCloseTo(4, 6);
    const holes = part.shape.views[0]!.marks.flatMap((mark) => (mark.kind === 'circle' ? [mark.centre[0]] : []));
    // One in front of the collar, one behind the plate.
    expect(holes.filter((x) => x < -dimension(part, 'shank-length').quantity.value)).toHaveLength(1);
    expect(makingSheets(found, part)[0]).toContain('nut and split pin at the left');
    expect(part.notes.join(' ')).toContain('never back');
  });

  test('and what is behind the plate is asked for; where there is too little room it is said', () => {
    expect(part.unknowns.map((one) => one.key)).toContain('crank.pin-room');
    const tight = pictureOf(inchHammer().read('crank.pin-room', '1 1/4 in'));
    const none = makeCrankPin(tight.values, tight.known, and());
    expect(none.state === 'cannot-be' ? none.problem : none.state).toContain('too little room behind the plate');
    const enough = pictureOf(inchHammer().read('crank.pin-room', '2 in'));
    expect(made(makeCrankPin(enough.values, enough.known, and())).unknowns.map((one) => one.key)).not.toContain('crank.pin-room');
  });
});

describe('a strap can be made from its sheet', () => {
  const { part, found } = sheet('DT-90 inch bow-strap');

  test('its hole at the ram goes by the pin at the ram, and waits until that is read', () => {
    expect(part.unknowns.map((one) => one.key)).toEqual(expect.arrayContaining(['bow-spring.ram-pin@left', 'bow-spring.ram-pin@right', 'bow-spring.strap-place']));
    expect(part.dimensions.map((one) => one.name)).not.toContain('ram-hole');
    const log = bowHammer().read('bow-spring.ram-pin@left', '24.0 mm').read('bow-spring.ram-pin@right', '23.8 mm');
    const read = pictureOf(log, 'metric');
    const strap = made(makeBowStraps(read.values, read.known, { ...and('bow-eye-pin'), system: 'metric' }));
    expect(dimension(strap, 'ram-hole').quantity.value).toBeCloseTo(0.024 + 0.0254 / 64, 9);
    // The next reamer over 18.9 mm, and a sixty-fourth.
    expect(dimension(strap, 'hole').quantity.value).toBeCloseTo(0.019 + 0.0254 / 64, 9);
    expect(strap.unknowns.map((one) => one.key)).not.toContain('bow-spring.ram-pin@left');
  });

  test('plates and rivets are drawn, and their sizes stand in the DXF', () => {
    const front = part.shape.views[0]!;
    const rivet = dimension(part, 'rivet').quantity.value / 2;
    expect(front.marks.filter((mark) => mark.kind === 'circle' && Math.abs(mark.radius - rivet) < 1e-9)).toHaveLength(8);
    for (const name of ['rivet-along', 'rivet-across', 'plate', 'plate-length']) expect(part.shape.views.some((view) => view.dimensions.some((one) => 'of' in one && one.of === name)), name).toBe(true);
    const dxf = makingDxf(found, part);
    expect(dxf).not.toContain('in the table');
    expect(dxf).toContain('2 in by 3 7/8 in');
  });

  test('it weighs what its plates weigh too', () => {
    // Belting 13 by 2 by 3/8 in is 0.41 lb; four plates of 3 7/8 by 2 by 1/8 in of steel 1.10 lb; rivets for what they fill, holes off: 1.5 lb.
    expect(part.mass! / 0.45359237).toBeGreaterThan(1.4);
    expect(part.mass! / 0.45359237).toBeLessThan(1.6);
  });

  test('how it sits on its pin is said with the sum: two to an eye where the pin has room for them', () => {
    // 2 1/4 + 2 x 5/8 = 3 1/2 of 4 1/2 - 2 x 0.315 - 0.197 = 3.673 in: 0.173 left, two washers of 1/16 in and not of 3/32.
    expect(part.quantity).toBe(4);
    expect(part.notes[0]).toContain('chosen, since nobody looked');
    expect(part.notes[0]).toContain('= 3 1/2 in');
    expect(inches(sheet('DT-90 inch bow-eye-pin').part, 'washer')).toBeCloseTo(1 / 16, 9);
    const beside = pictureOf(bowHammer().look('bow-spring.strap-place', 'one-side'), 'metric');
    const one = made(makeBowStraps(beside.values, beside.known, { ...and(), system: 'metric' }));
    expect(one.quantity).toBe(2);
    expect(one.notes[0]).toContain('as it was seen');
    expect(one.notes[0]).toContain('off the middle');
  });
});

describe('a filler plate is held', () => {
  const found = pictureOf(inchHammer());
  const pocket = made(makeFillerPlate(found.values, found.known, and()));

  test('by two dowels that have place, depth and fit, are drawn and bought; never by the key that stands above it', () => {
    const top = pocket.shape.views.find((view) => view.name === 'top')!;
    expect(top.marks.filter((mark) => mark.kind === 'circle')).toHaveLength(2);
    // A dowel 1 in long in a plate of 1/4 in, 1/16 in under its face.
    expect(inches(pocket, 'dowel-depth')).toBeCloseTo(1 - (0.25 - 1 / 16), 9);
    expect(dimension(pocket, 'dowel-hole').quantity.value).toBeGreaterThan((3 / 8) * 0.0254);
    expect(pocket.besides).toEqual(['dowel 3/8 in by 1 in, 2 pieces']);
    expect(pocket.notes.join(' ')).toContain('holds nothing of it');
    expect(knowledge.jobs.find((one) => one.id === 'seat.fit-filler-plate')!.words).not.toContain('key or dowel');
  });

  test('a guided disc trues by thousandths: the plate of the loose one fills its pocket, and nothing says that a cutter went right across', () => {
    const { part } = sheet('SF-40 inch filler-plate');
    expect(inches(part, 'width')).toBeCloseTo(1.75 - 1 / 64, 6);
    expect(inches(part, 'length')).toBeCloseTo(4.25 - 1 / 64, 6);
    // (3 x 4 1/2 - 1 3/4 x 4 1/4) x 1/4 = 1.52 cu in.
    expect(part.notes.join(' ')).toContain('1.5 cu in');
    expect([...part.notes, ...part.dimensions.map((one) => one.why)].join(' ')).not.toMatch(/cutter|slides in/);
    const milled = made(makeFillerPlate(found.values, found.known, { ...and(), floorCut: true }));
    expect([...milled.notes, ...milled.dimensions.map((one) => one.why)].join(' ')).not.toMatch(/pocket/);
    expect(milled.notes.join(' ')).toContain('right across from flank to flank');
  });
});

test('the neck of a tapered foot is dimensioned at both ends, and the body runs with it', () => {
  const { part, found } = sheet('SF-40 inch lower-die');
  const shoulder = 2 * inches(part, 'dovetail-height') * Math.tan((10 * Math.PI) / 180);
  expect(inches(part, 'neck-width')).toBeCloseTo(inches(part, 'base-width') - shoulder, 6);
  expect(inches(part, 'far-neck')).toBeCloseTo(inches(part, 'far-width') - shoulder, 6);
  const first = makingSheets(found, part)[0]!;
  expect(first).toContain('(2.364) est. key end');
  expect(first).toContain('(2.412) est. far end');
  expect(part.notes.join(' ')).toContain('with no ledge');
});

test('nobody drills the rolled eye of a hard leaf; pin and bush say the same of the oil', () => {
  const found = pictureOf(bowHammer());
  const bush = made(makeBowEyeBushings(found.values, found.known, and()));
  expect(bush.dimensions.map((one) => one.name)).not.toContain('oil-hole');
  expect(bush.dimensions.map((one) => one.why).join(' ')).not.toContain('drilled through bush and eye');
  expect(bush.notes.join(' ')).toContain('The eye is not drilled');
  const pin = made(makeBowEyePins(found.values, found.known, and()));
  expect(pin.notes.join(' ')).toContain('oil goes in at the end of the bush');
  expect(made(makeHelveBushings(pictureOf(helveHammer()).values, pictureOf(helveHammer()).known, and())).notes.join(' ')).not.toContain('greased by oil');
});

test('a new leaf is bent to leaves that have set, and says which thickness it has', () => {
  const { part } = sheet('DT-90 inch bow-leaf');
  // 28 1/4 in across and 5 1/2 in high: (14.125² + 5.5²) / 11; as made (14² + 6²) / 12 = 19.33 in.
  expect(inches(part, 'radius')).toBeCloseTo((14.125 ** 2 + 5.5 ** 2) / 11, 6);
  expect(inches(part, 'rise')).toBeCloseTo(1.806, 3);
  expect(dimension(part, 'radius').why).toContain('19.33 in');
  expect(dimension(part, 'radius').why).toContain('0.140 in');
  expect(dimension(part, 'thickness').why).toContain('0.305 in now');
  const bare = pictureOf(bowHammer());
  expect(dimension(made(makeBowLeaf(bare.values, bare.known, and())), 'thickness').why).toContain('as the other leaves');
});

test('the drawing of a leaf without eyes and the report reckon one bending: two thirds of that of the leaf with the eyes', () => {
  const { part, found } = sheet('DT-90 inch bow-leaf');
  // Bhandari, Design of Machine Elements, chapter 10: 18 P L / (b t² (3 nf + 2 ng)) in the full leaf, two thirds of it in the graduated ones.
  const report = found.values['bow.stress']?.outcome;
  if (report?.state !== 'known') throw new Error('the report does not reckon the bow');
  // The report takes the leaves as they read now, 0.305 in; the new one is 5/16 in.
  expect(dimension(part, 'stress').quantity.value / ((2 / 3) * report.quantity.value * (0.3125 / 0.305))).toBeCloseTo(1, 3);
});

test('nuts, washers and split pins stand on the buying list, with their thickness', () => {
  expect(bought('SF-40')).toMatch(/slotted nut 7\/8-9, 1 piece; hard washer under it, .*; split pin 5\/32 in by .*; flat washer, over 1 1\/8 in and up to 1\/8 in thick, 1 piece; split pin 5\/16 in/);
  expect(bought('DT-90')).toMatch(/pin of the bow’s eyes, bar 13\/16 in round, 2 pieces of [^;]*; flat washer, over 3\/4 in and up to 1\/16 in thick, 4 pieces; split pin 3\/16 in by [^;]*, 4 pieces/);
  expect(bought('TW-150')).toContain('slotted nut with washer and split pin: first measure the thread');
  // The line of pin and bush says that the bush has one of its own.
  for (const tag of ['TW-150', 'DT-90']) expect(bought(tag)).toMatch(/pin and bush: crank pin, bar [^"]*; bushing of the rod’s big end by its own line/);
  const found = pictureOf(inchHammer());
  const pin = made(makeTogglePins(found.values, found.known, and()));
  expect(inches(pin, 'washer')).toBeCloseTo(1 / 8, 9);
  expect(pin.besides?.[1]).toContain('8 pieces');
  const crank = made(makeCrankPin(found.values, found.known, and()));
  expect(crank.notes.join(' ')).toContain('drilled before hardening');
  expect(dimension(crank, 'tail').title).toBe('length behind the shank');
  expect(dimension(crank, 'tail').why).toContain('1/32 in inside the plate');
});

test('metric papers buy what metric merchants keep', () => {
  const words = (name: string): string => stockWords(stockOf(sheet(name).part, 'metric')!, 'metric');
  expect(words('SF-40 metric ram-prop')).toContain('timber 120 by 120 mm');
  // 10.58 and 0.25 mm, and a millimetre to clean it: 11.83.
  expect(words('SF-40 metric lower-key')).toContain('flat bar 12 by 16 mm');
  expect(words('DT-90 metric bow-leaf')).toContain('strip 8 by 60 mm');
  // A pin of 19 mm and a millimetre to clean it.
  expect(words('DT-90 metric bow-eye-pin')).toContain('bar 20 mm round');
  expect(JSON.stringify(buyBlocks(YARD.find(({ name }) => name === 'DT-90 metric')!.found))).not.toMatch(/plate 3 by 51|7\.938|101\.6/);
});

test('a belt that is not of leather says that the rules are for leather, and whose table wins', () => {
  const belt = partsToMake(YARD.find(({ name }) => name === 'TW-150 inch')!.found).find((one) => one.kind === 'belt');
  if (belt?.state !== 'to-make') throw new Error('no belt');
  expect(belt.notes.join(' ')).toContain('by the rules for leather');
  expect(belt.notes.join(' ')).toContain('The maker of the belt has a table for its kind: that wins.');
});
