import { describe, expect, test } from 'vitest';
import { isLoose, makeBowEyeBushings, makeBowLeaf, makeBowStraps, makeCrankPin, makeFillerPlate, makeGuideShims, makeHelveBushings, makeHelveCushions, makeHelvePins, makeLowerDie, makeRodBushing, makeUpperKey, stockOf, stockWords, type PartKind } from '../../src/derived/making/index.ts';
import { shimStack, stackWords } from '../../src/derived/making/shim-stack.ts';
import { makingSheets } from '../../src/views/making/index.ts';
import { sizeWords } from '../../src/views/making/size-words.ts';
import { LogOf } from '../cases/log-of.ts';
import { SHEETS } from './every-sheet.ts';
import { dimension, inches, made, millimetres, pictureOf } from './figures-of.ts';
import { bowHammer, helveHammer, inchHammer } from './hammers.ts';

const and = (...kinds: PartKind[]) => ({ system: 'inch' as const, floorCut: false, alsoMade: new Set<PartKind>(kinds) });
const metric = { ...and(), system: 'metric' as const };

/** Sums by hand, in inches: the next 64th over shank, play and 0.010. */
test.each([['1.121 in', '4 thou', 73 / 64], ['1.492 in', '7 thou', 97 / 64], ['1.742 in', '8 thou', 113 / 64]] as const)('a plate hole of %s with %s of play leaves the reamer something to clean up', (shank, play, size) => {
  const found = pictureOf(inchHammer().read('crank.pin-shank', shank).read('crank.pin-play', play).read('crank.pin-collar', '2 1/2 in').read('crank.pin-thread', '0.873 in').read('crank.pin-thread-pitch', '0.1111 in'));
  const pin = made(makeCrankPin(found.values, found.known, and()));
  expect(inches(pin, 'shank')).toBeCloseTo(size, 9);
  expect(pin.notes.join(' ')).toContain('Ream the hole first, read it, then grind the shank to it');
});

test('in a metric shop a quarter of a millimetre is left: 28.7 mm and 0.1 of play are reamed to 30, not to 29', () => {
  const found = pictureOf(inchHammer().read('crank.pin-shank', '28.7 mm').read('crank.pin-play', '0.1 mm').read('crank.pin-thread', '23.8 mm').read('crank.pin-thread-pitch', '3 mm'), 'metric');
  expect(millimetres(made(makeCrankPin(found.values, found.known, metric)), 'shank')).toBeCloseTo(30, 9);
});

test('a rolled eye of 0.890 in is reamed to 29/32, not to the 57/64 that would not touch it; a helve pin of 1.968 in goes into 127/64', () => {
  const bow = new LogOf('90 lb', 'bow-spring').read('bow-spring.pin-diameter@left', '0.745 in').read('bow-spring.pin-diameter@right', '0.745 in').read('bow-spring.eye-bore@left', '0.885 in').read('bow-spring.eye-bore@right', '0.890 in');
  const found = pictureOf(bow);
  expect(inches(made(makeBowEyeBushings(found.values, found.known, and())), 'outside')).toBeCloseTo(29 / 32, 9);
  const helve = pictureOf(helveHammer());
  const pin = made(makeHelvePins(helve.values, helve.known, and()));
  expect(inches(pin, 'diameter')).toBeCloseTo(127 / 64, 9);
  expect(pin.notes.join(' ')).toContain('ream the hole first, read it, then grind the pin to it');
});

describe('a press bush', () => {
  const blind = pictureOf(inchHammer());
  const rod = (text: string) => {
    const found = pictureOf(inchHammer().read('connecting-rod.eye-bore', text));
    return made(makeRodBushing(found.values, found.known, and()));
  };

  test('whose hole was never read has an estimate outside, in red, and asks for the hole', () => {
    const bush = made(makeRodBushing(blind.values, blind.known, and()));
    expect(dimension(bush, 'outside').estimate).toBe(true);
    expect(bush.unknowns.map((one) => one.key)).toContain('connecting-rod.eye-bore');
    expect(bush.warnings.join(' ')).toMatch(/old bush out, read the hole, then turn the outside; where the hole is larger take the next size/);
    expect(makingSheets(blind, bush)[0]).toMatch(/>outside diameter<\/text><text[^>]*>[^<]*<\/text><text[^>]*>not known<\/text><text[^>]*limit-note[^>]*>estimate/);
  });

  test('is made to the hole where that was read: as practice wants it, or the next size over a larger hole', () => {
    const small = rod('1.600 in');
    expect(dimension(small, 'outside').estimate).toBe(false);
    expect(inches(small, 'outside')).toBeCloseTo(inches(made(makeRodBushing(blind.values, blind.known, and())), 'outside'), 9);
    // 1.900 in and 0.010 to clean up: 1.910, up to 123/64.
    expect(inches(rod('1.900 in'), 'outside')).toBeCloseTo(123 / 64, 9);
    const found = pictureOf(inchHammer().read('connecting-rod.eye-bore', '2.100 in').read('connecting-rod.eye-outside', '2 3/16 in'));
    expect(makeRodBushing(found.values, found.known, and()).state).toBe('cannot-be');
  });
});

test.each(SHEETS.filter((one) => one.part.kind.endsWith('bushing')))('edges and groove of $name stay under a third of its wall at their worst, and the bore has stock before pressing', ({ part }) => {
  const wall = (dimension(part, 'outside').quantity.value - dimension(part, 'bore').quantity.value) / 2;
  const worst = (name: string): number => {
    const one = part.dimensions.find((size) => size.name === name);
    return one === undefined ? 0 : one.quantity.value + one.tolerance.plus;
  };
  for (const name of ['groove-depth', 'chamfer']) expect(worst(name), name).toBeLessThanOrEqual(wall / 3 + 1e-9);
  // A face for the collar: a third of the wall where it has one, a hundredth of an inch and more on the thinnest.
  if (worst('bore-chamfer') > 0) expect(wall - worst('chamfer') - worst('bore-chamfer')).toBeGreaterThan(Math.min(wall / 4, 0.6e-3));
  expect(worst('bore-before')).toBeLessThan(dimension(part, 'bore').quantity.value - 0.2e-3);
});

describe('plate and foot rest on one reading of the seat', () => {
  const floorCut = { ...and('filler-plate', 'lower-die'), floorCut: true };
  const lean = (10 * Math.PI) / 180;

  test('unread over the plate, both leave metal on, with what is open in their doubt and the question on both sheets', () => {
    const found = pictureOf(inchHammer());
    const [plate, die] = [made(makeFillerPlate(found.values, found.known, floorCut)), made(makeLowerDie(found.values, found.known, floorCut))];
    expect(inches(plate, 'width')).toBeCloseTo(3 - 1 / 64, 9);
    expect(inches(die, 'base-width')).toBeCloseTo(3 - 0.375 / Math.cos(lean), 9);
    for (const [part, name] of [[plate, 'width'], [die, 'base-width']] as const) {
      expect((2 * dimension(part, name).quantity.uncertainty) / 0.0254).toBeGreaterThanOrEqual(2 * 0.25 * Math.tan(lean));
      expect(isLoose(dimension(part, name))).toBe(true);
      expect(part.unknowns.map((one) => one.key)).toContain('seat.width-over-plate');
      expect(part.warnings.join(' ')).toContain('0.088 in narrower on top of the plate');
    }
  });

  test('read there, both are made to it and nothing is asked', () => {
    const found = pictureOf(inchHammer().read('seat.width-over-plate', '2.912 in'));
    const [plate, die] = [made(makeFillerPlate(found.values, found.known, floorCut)), made(makeLowerDie(found.values, found.known, floorCut))];
    expect(inches(plate, 'width')).toBeCloseTo(2.912 - 1 / 64, 9);
    expect(inches(die, 'base-width')).toBeCloseTo(2.912 - 0.375 / Math.cos(lean), 9);
    for (const part of [plate, die]) expect(part.unknowns.map((one) => one.key)).not.toContain('seat.width-over-plate');
  });
});

test('a die whose heights as made are hearsay has 1/16 in left on in its size, to be ground off with its pair, and no finer reading is asked of it', () => {
  const sharp = pictureOf(inchHammer().made('upper-die.height', '3.000 ± 0.002 in').made('lower-die.height', '3.000 ± 0.002 in'));
  const known = made(makeLowerDie(sharp.values, sharp.known, and('upper-die')));
  expect(dimension(known, 'height').tolerance.plus / 0.0254).toBeCloseTo(0.01, 9);
  expect(inches(known, 'height')).toBeCloseTo(3, 9);
  expect(known.dimensions.some((one) => one.name === 'height-ground')).toBe(false);
  const yard = SHEETS.find((one) => one.name === 'SF-40 inch lower-die')!;
  // 2 3/4 and 2 3/4 in as made less an upper die of 2 1/2 in that stays, and comes back from the grinder without its hollow of 14 thou,
  // 2.486, are 3.014; 1/16 in is left on.
  const height = dimension(yard.part, 'height');
  expect(sizeWords(height, 'inch')).toBe('3.077 +0.010/−0');
  expect(height.why).toContain('ground to 3.014 in with its pair');
  expect(inches(yard.part, 'height-ground')).toBeCloseTo(3.014, 9);
  expect(yard.part.warnings.find((one) => one.startsWith('CHECK')) ?? '').not.toContain('foot to face');
  expect([...yard.part.notes, ...yard.part.warnings].join(' ')).not.toMatch(/in place/);
  expect(yard.part.notes.join(' ')).toContain('ground to 3.014 in with its pair, on the grinder, before the key is fitted');
  expect(yard.part.notes.join(' ')).toContain('Stamp FRONT on the end where the key is driven in');
  // Mass of the blank as it is cut: 1/16 in of body more, at most its whole width and length.
  const ground = { ...yard.part.shape };
  const front = ground.views.find((one) => one.name === 'front')!;
  const tops = front.marks.flatMap((mark) => (mark.kind === 'line' && mark.line === 'visible' ? [mark.from[1], mark.to[1]] : []));
  expect((Math.max(...tops) - Math.min(...tops)) / 0.0254).toBeCloseTo(3.014 + 1 / 16, 6);
});

test('a flank angle that is known less well than it is cut stands in red with the lengths', () => {
  const yard = SHEETS.find((one) => one.name === 'SF-40 inch lower-die')!;
  // A protractor is read to half a degree; the flank is cut to a fifth of one.
  expect(yard.part.warnings.find((one) => one.startsWith('CHECK'))).toContain('flank from upright, both sides: known to ± 0.5°, cut to ± 0.2°');
  const fine = pictureOf(inchHammer().read('dovetail.flank-angle@lower', '10.0 ± 0.05 deg'));
  expect(isLoose(dimension(made(makeLowerDie(fine.values, fine.known, and())), 'flank-angle'))).toBe(false);
});

describe('of two bushes in two holes', () => {
  const helve = (log: LogOf) => {
    const found = pictureOf(log);
    return made(makeHelveBushings(found.values, found.known, and('helve-pin')));
  };

  test('both holes are asked, and the outside is an estimate until both were read', () => {
    expect(helve(helveHammer()).unknowns.map((one) => one.key)).toEqual(expect.arrayContaining(['helve.pivot-bore@left', 'helve.pivot-bore@right']));
    const one = helve(helveHammer().read('helve.pivot-bore@left', '2.400 in'));
    expect(one.unknowns.map(({ key }) => key)).toContain('helve.pivot-bore@right');
    expect(dimension(one, 'outside').estimate).toBe(true);
    expect(one.warnings.join(' ')).toContain('until both holes were read');
    expect(stockWords(stockOf(one, 'inch')!, 'inch')).toMatch(/^bought after the hole is read/);
  });

  test('each has the outside of its own hole where both were read', () => {
    const both = helve(helveHammer().read('helve.pivot-bore@left', '2.400 in').read('helve.pivot-bore@right', '2.300 in'));
    // 2.410 in goes up to 2 27/64 in, 2.310 in to 2 5/16 in.
    expect(inches(both, 'outside')).toBeCloseTo(2 + 27 / 64, 9);
    expect(inches(both, 'outside-right')).toBeCloseTo(2 + 5 / 16, 9);
    expect(dimension(both, 'outside').title).toContain('left');
    expect(dimension(both, 'outside').estimate).toBe(false);
    expect(both.unknowns.filter(({ key }) => key?.startsWith('helve.pivot-bore'))).toEqual([]);
    // 2.422 in and a sixteenth: 2 1/2 in round.
    expect(stockWords(stockOf(both, 'inch')!, 'inch')).toMatch(/^bar 2 1\/2 in round, 2 pieces/);
  });
});

test('a key that goes in beside a new foot is cut when that is in its seat', () => {
  const found = pictureOf(inchHammer());
  expect(made(makeUpperKey(found.values, found.known, and('upper-die'))).notes[0]).toBe('Cut after the new foot is in the seat, to the gap found.');
  expect(made(makeUpperKey(found.values, found.known, and())).notes.join(' ')).not.toContain('new foot');
});

test('a die takes its body from its own face, else from the face that it meets, else says that none was read', () => {
  const faces = (log: LogOf) => {
    const found = pictureOf(log);
    return made(makeLowerDie(found.values, found.known, and()));
  };
  const own = faces(inchHammer().read('lower-die.face-width', '3 1/4 in'));
  expect(inches(own, 'body-width')).toBeCloseTo(3.25 + 3 / 16, 9);
  expect(dimension(own, 'dovetail-height').title).toBe('foot to shoulder');
  const yard = SHEETS.find((one) => one.name === 'SF-40 inch lower-die')!.part;
  if (!yard.dimensions.some((one) => one.name === 'body-width')) expect(yard.dimensions.find((one) => one.name === 'dovetail-height')?.title ?? '').not.toContain('shoulder');
});

test('a key to a gap says where the foot was taken as read, and what that leaves open', () => {
  const found = pictureOf(new LogOf('50 lb', 'coil-and-toggle').read('ram.dovetail-width', '2 5/8 in').read('ram.dovetail-length', '4 1/2 in').read('upper-die.width', '2 1/4 in').read('dovetail.flank-angle@upper', '10 deg').read('keys.taper@upper', '1/8 in'));
  const key = made(makeUpperKey(found.values, found.known, and()));
  // 1 in 96 over 4 1/2 in is 0.047: 0.023 to each side of the middle.
  expect(key.warnings.join(' ')).toContain('is 0.023 in wider or narrower at its ends');
  expect((2 * dimension(key, 'large-end').quantity.uncertainty) / 0.0254).toBeGreaterThan(4.5 / 96 / 2);
  expect(key.notes.join(' ')).toContain('1 in longer at the driving end');
});

test('shim packs are made up of leaves that are sold', () => {
  const found = pictureOf(inchHammer());
  // 0.062 less 0.0285 is 0.0335: half a thou goes up.
  expect(shimStack(0.0335 * 0.0254, 'inch').reduce((sum, one) => sum + one, 0) / 0.0254).toBeCloseTo(0.034, 9);
  expect(stackWords(0.044 * 0.0254, 'inch')).toBe('0.031 + 0.010 + 0.003 = 0.044 in');
  expect(stackWords(1.13e-3, 'metric')).toBe('1.000 + 0.100 + 0.025 = 1.125 mm');
  expect(made(makeGuideShims(found.values, found.known, and())).notes[0]).toMatch(/left 0\.031 \+ 0\.003 = 0\.034 in; right 0\.025 \+ 0\.005 = 0\.030 in/);
});

test('a cushion says that its height is the rubber, and how thick its plates are', () => {
  const found = pictureOf(helveHammer());
  const cushion = made(makeHelveCushions(found.values, found.known, and()));
  expect(inches(cushion, 'plate')).toBeCloseTo(0.25, 9);
  expect(inches(cushion, 'over-plates') - inches(cushion, 'height')).toBeCloseTo(0.5, 9);
});

test('the stress of a leaf names the readings that it was worked out from', () => {
  const found = pictureOf(bowHammer().look('bow-spring.new-leaf', 'plain').read('bow-spring.new-leaf-length', '400 mm'), 'metric');
  const leaf = made(makeBowLeaf(found.values, found.known, metric));
  expect(dimension(leaf, 'stress').from).toEqual(expect.arrayContaining(['bow-spring.span', 'bow-spring.deflection']));
  expect(dimension(leaf, 'stress').from).not.toContain('bow-spring.new-leaf-length');
  expect(dimension(leaf, 'radius').why).toContain('as it stands');
  expect(leaf.title).toContain('without eyes');
  expect(leaf.notes[0]).toContain('the one that is 400 mm long');
});

test('a crank pin has its length over all, its end chamfers, the depth of its case and the square face that seats', () => {
  const found = pictureOf(inchHammer());
  const pin = made(makeCrankPin(found.values, found.known, and()));
  const sum = ['shank-length', 'tail', 'collar-thickness', 'to-hole', 'from-end'].reduce((all, name) => all + inches(pin, name), 0);
  expect(inches(pin, 'over-all')).toBeCloseTo(sum, 9);
  expect(inches(pin, 'end-chamfer')).toBeCloseTo(1 / 16, 9);
  expect(pin.hardness).toMatch(/case 0\.03 to 0\.04 in deep/);
  expect(pin.shape.views[0]?.dimensions.some((one) => one.kind === 'control' && one.geometric === 'square')).toBe(true);
});

test('the pitch of a thread of nine turns to the inch is 2.82 mm and not 2.8', () => {
  const found = pictureOf(inchHammer().read('crank.pin-thread', '0.873 in').read('crank.pin-thread-pitch', '0.1111 in').read('crank.pin-collar', '2 1/2 in'), 'metric');
  expect(sizeWords(dimension(made(makeCrankPin(found.values, found.known, metric)), 'pitch'), 'metric')).toBe('(2.82)');
});

test('red stands on a sheet only where something is open, and brackets are spoken of only where there are some', () => {
  for (const { part, found } of SHEETS) {
    const [first = ''] = makingSheets(found, part);
    const open = part.unknowns.length > 0 || part.warnings.length > 0 || part.dimensions.some((one) => one.estimate);
    if (!open) expect(first, part.id).not.toMatch(/class="limit-note"[^>]*>CHECK BEFORE CUTTING/);
    const follows = part.dimensions.some((one) => one.tolerance.plus === 0 && one.tolerance.minus === 0);
    expect(first.includes('Sizes in brackets'), part.id).toBe(follows);
  }
});

test('a strap has plates with a size, a hole and rivets, and holes in the belting that keep it off the pin', () => {
  const found = pictureOf(bowHammer(), 'metric');
  const strap = made(makeBowStraps(found.values, found.known, metric));
  expect(millimetres(strap, 'belting-hole') - millimetres(strap, 'hole')).toBeCloseTo(1.5875, 6);
  expect(millimetres(strap, 'plate-length')).toBeCloseTo(2 * millimetres(strap, 'margin'), 9);
  expect(strap.notes.join(' ')).toMatch(/Four rivets or bolts of 6 mm/);
  const marks = strap.shape.views[0]!.dimensions;
  expect(marks.find((one) => one.kind === 'leader' && one.of === 'belting-hole')).toMatchObject({ note: 'belting, at the eye' });
  expect(marks.find((one) => one.kind === 'leader' && one.of === 'hole')).toMatchObject({ note: 'plates, at the eye' });
});

test('a strap that is made longer says on the drawing what was measured and what was reckoned', () => {
  const { part, found } = SHEETS.find((one) => one.name === 'DT-90 inch bow-strap')!;
  expect(makingSheets(found, part)[0]).toContain('9 1/8 ±1/32 = 9 in measured + 1/8 in reckoned');
  expect(makingSheets(found, part)[0]).toContain('Ø0.828 +0.063/−0 belting, at the eye');
});
