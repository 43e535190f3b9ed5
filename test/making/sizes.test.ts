import { describe, expect, test } from 'vitest';
import { makeBelt, makeClutchPulleyBushing, makeCoilSpring, makeFillerPlate, makeGuideShims, makeLowerDie, makeLowerKey, makeMotorPulley, makeRamProp, makeRodBushing, makeSoleTimbers, makeToggleBushings, makeTogglePins, makeUpperDie, partsToMake, type PartKind } from '../../src/derived/making/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { dimension, inches, made, millimetres, pictureOf } from './figures-of.ts';
import { inchHammer, metricHammer } from './hammers.ts';

const found = pictureOf(inchHammer());
const alone = { system: 'inch', floorCut: false } as const;
const and = (...kinds: PartKind[]) => ({ ...alone, alsoMade: new Set<PartKind>(kinds) });

describe('dies restore the stack', () => {
  /** The heights as made are told, not read: so much is left on the blank, to be ground off with its pair. */
  const LEFT_ON = 1 / 16;

  test('lower die alone: both as made, 6 in, less the upper die as it is, 2 1/2 in', () => {
    const die = made(makeLowerDie(found.values, found.known, and()));
    expect(inches(die, 'height')).toBeCloseTo(3.5 + LEFT_ON, 9);
    // Seat floor 3 in less a key of 3/8 in leaning by 10 degrees.
    expect(inches(die, 'base-width')).toBeCloseTo(3 - 0.375 / Math.cos((10 * Math.PI) / 180), 9);
    expect(inches(die, 'length')).toBeCloseTo(4.75, 9);
    expect(inches(die, 'dovetail-height')).toBeCloseTo(0.75 + 1 / 32, 9);
    expect(inches(die, 'neck-width')).toBeCloseTo(inches(die, 'base-width') - 2 * (0.75 + 1 / 32) * Math.tan((10 * Math.PI) / 180), 9);
  });

  test('with a new upper die beside it, each is as made', () => {
    expect(inches(made(makeLowerDie(found.values, found.known, and('upper-die'))), 'height')).toBeCloseTo(3 + LEFT_ON, 9);
    expect(inches(made(makeUpperDie(found.values, found.known, and('lower-die'))), 'height')).toBeCloseTo(3 + LEFT_ON, 9);
  });

  test('upper die alone makes good the lower one, less what a plate under that raises', () => {
    expect(inches(made(makeUpperDie(found.values, found.known, and())), 'height')).toBeCloseTo(6 - 2 + LEFT_ON, 9);
    expect(inches(made(makeUpperDie(found.values, found.known, and('filler-plate'))), 'height')).toBeCloseTo(6 - 2 - 0.25 + LEFT_ON, 9);
  });

  test('both sides of the dispute about hardness stand on the sheet', () => {
    const [dispute] = made(makeLowerDie(found.values, found.known, and())).disputes;
    expect(dispute?.oneSide).toMatch(/48 to 50 HRC/);
    expect(dispute?.otherSide).toMatch(/37 HRC/);
  });

  test('a ram dovetail that nobody measured leaves the foot square, and says so', () => {
    const bare = pictureOf(metricHammer());
    const die = made(makeUpperDie(bare.values, bare.known, and()));
    expect(die.dimensions.map((one) => one.name)).not.toContain('dovetail-height');
    expect(die.unknowns.map((one) => one.what)).toContain('depth of the ram’s dovetail');
  });
});

test('the plate is as thick as the seat has lost, and fills the pocket of the old die', () => {
  const plate = made(makeFillerPlate(found.values, found.known, and()));
  expect(inches(plate, 'thickness')).toBeCloseTo(0.25, 9);
  expect(inches(plate, 'width')).toBeCloseTo(2 - 1 / 64, 9);
  expect(inches(made(makeFillerPlate(found.values, found.known, { ...and(), floorCut: true })), 'width')).toBeCloseTo(3 - 1 / 64, 9);
});

test('over a plate the seat is as deep as it was made: foot and key do not reckon with the sunk depth', () => {
  // Made 5/8 in deep, sunk by 1/4 in, and read down to the sunk floor: 7/8 in.
  const log = inchHammer().made('seat.depth', '5/8 in').read('seat.depth', '7/8 in');
  const sunk = pictureOf(log);
  const die = (...kinds: PartKind[]): number => inches(made(makeLowerDie(sunk.values, sunk.known, and(...kinds))), 'dovetail-height');
  expect(die()).toBeCloseTo(7 / 8 + 1 / 32, 9);
  expect(die('filler-plate')).toBeCloseTo(5 / 8 + 1 / 32, 9);
  const key = (...kinds: PartKind[]): number => inches(made(makeLowerKey(sunk.values, sunk.known, and('lower-die', ...kinds))), 'height');
  expect(key() - key('filler-plate')).toBeCloseTo(0.25 / Math.cos((10 * Math.PI) / 180), 9);
  // On a floor that is milled down the seat closes in over the plate; a pocket's plate comes flush with the floor that was read.
  expect(made(makeLowerDie(sunk.values, sunk.known, { ...and('filler-plate'), floorCut: true })).warnings.join(' ')).toContain('narrower on top of the plate');
  expect(made(makeLowerDie(sunk.values, sunk.known, and('filler-plate'))).warnings.join(' ')).not.toContain('narrower on top of the plate');
});

test('a key has its taper over its whole length, as much to each end of its seat', () => {
  const key = made(makeLowerKey(found.values, found.known, and('lower-die')));
  // Seat and 3/4 in at each end when it sits; an inch more at the driving end until then.
  expect(inches(key, 'length-fitted')).toBeCloseTo(4.75 + 1.5, 9);
  expect(inches(key, 'length')).toBeCloseTo(4.75 + 1.5 + 1, 9);
  expect(inches(key, 'large-end') - inches(key, 'small-end')).toBeCloseTo(7.25 / 96, 9);
  expect(inches(key, 'small-end')).toBeCloseTo(0.375 - 6.25 / 192, 9);
  expect(dimension(key, 'taper').estimate).toBe(false);
  expect(inches(made(makeLowerKey(found.values, found.known, and())), 'large-end')).toBeCloseTo(5 / 16 + 6.25 / 192 + 1 / 96, 9);
});

test('pins and bushes run at what ISO 286 gives nearest to 0.002 to 0.005 in', () => {
  const pin = made(makeTogglePins(found.values, found.known, and()));
  // ISO 286 for 18 to 30 mm: H8 0 to +33, d8 -98 to -65 micrometres.
  expect(dimension(pin, 'diameter').fit).toBe('d8');
  expect(millimetres(pin, 'diameter')).toBeCloseTo(19.05, 9);
  expect(dimension(pin, 'diameter').tolerance.plus * 1e6).toBeCloseTo(-65, 6);
  expect(dimension(pin, 'diameter').tolerance.minus * 1e6).toBeCloseTo(98, 6);
  const bush = made(makeToggleBushings(found.values, found.known, and()));
  expect(dimension(bush, 'bore').tolerance.plus * 1e6).toBeCloseTo(33, 6);
  // r6 for 18 to 30 mm: +28 to +41 micrometres.
  expect(dimension(bush, 'outside').tolerance.minus * 1e6).toBeCloseTo(-28, 6);
  expect(dimension(bush, 'outside').tolerance.plus * 1e6).toBeCloseTo(41, 6);
  // Two lengths: the longer on the drawing, each in the table.
  expect(pin.dimensions.filter((one) => one.name.startsWith('length')).map((one) => one.quantity.value / 0.0254)).toEqual([3.25, 3.25, 2.75, 2.75]);
});

test('without a size as made the pin is the next reamer over the worn hole', () => {
  const metric = pictureOf(metricHammer(), 'metric');
  // 19.4 mm of pin and 1.2 mm of play: 20.6, so 21 mm in steps of a half.
  expect(millimetres(made(makeTogglePins(metric.values, metric.known, { ...and(), system: 'metric' })), 'diameter')).toBeCloseTo(21, 9);
});

test('the rod’s bush is bored to the pin that is there', () => {
  const bush = made(makeRodBushing(found.values, found.known, and()));
  expect(inches(bush, 'bore')).toBeCloseTo(1.483, 9);
  expect(dimension(bush, 'bore').tolerance.plus / 0.0254).toBeCloseTo(0.003, 9);
  const clutch = made(makeClutchPulleyBushing(found.values, found.known, and()));
  expect(inches(clutch, 'bore')).toBeCloseTo(2.01, 9);
  expect(dimension(clutch, 'bore').tolerance.plus / 0.0254).toBeCloseTo(0.005, 9);
});

test('shims under a cap come down by the surplus play at both sides', () => {
  const shims = made(makeGuideShims(found.values, found.known, and()));
  // Fore and aft 36 thou at the tighter end, 7 1/2 left: 28 1/2 out of 62 and of 58.
  expect(inches(shims, 'pack-left')).toBeCloseTo(0.062 - 0.0285, 9);
  expect(inches(shims, 'pack-right')).toBeCloseTo(0.058 - 0.0285, 9);
});

test('the spring order: rate, travel and stress by pencil', () => {
  const spring = made(makeCoilSpring(found.values, found.known, and()));
  const [d, D, n, G] = [0.625 * 0.0254, 2.375 * 0.0254, 5, 79.5e9];
  const rate = (G * d ** 4) / (8 * D ** 3 * n);
  const travel = (6 - 7 * 0.625) * 0.0254;
  const c = D / d;
  expect(dimension(spring, 'rate').quantity.value).toBeCloseTo(rate, 3);
  expect(dimension(spring, 'travel').quantity.value).toBeCloseTo(travel, 12);
  const stress = (((4 * c - 1) / (4 * c - 4) + 0.615 / c) * 8 * rate * travel * D) / (Math.PI * d ** 3);
  expect(dimension(spring, 'stress-solid').quantity.value / stress).toBeCloseTo(1, 9);
  // Solid it would see more than the strongest wire stands by the older table, 0.56 x 1960 MPa / 15.875^0.091: travel ends there, before the last fifth.
  const most = (travel * 0.56 * 1960e6) / 15.875 ** 0.091 / stress;
  expect(most).toBeLessThan(0.8 * travel);
  expect(dimension(spring, 'greatest-travel').quantity.value).toBeCloseTo(most, 12);
  // It ran 5 1/4 - 4 5/8 = 5/8 in shorter than it stood: set so much longer than the shortest allowed, as on the setting sheet.
  expect(dimension(spring, 'installed-length').quantity.value).toBeCloseTo((6 + 0.625) * 0.0254 - most, 12);
  expect(dimension(spring, 'preload').quantity.value).toBeCloseTo(rate * (most - 0.625 * 0.0254), 3);
});

test('belt, pulley, prop and timbers', () => {
  const belt = made(makeBelt(found.values, found.known, and()));
  const lean = Math.asin(12 / 96);
  const inside = 96 * Math.cos(lean) + 14 * (Math.PI / 2 + lean) + 2 * (Math.PI / 2 - lean);
  expect(inches(belt, 'length')).toBeCloseTo(inside + (Math.PI * 3) / 16, 9);
  const pulley = made(makeMotorPulley(found.values, found.known, and()));
  const rate = found.values['class.working-rate']?.outcome;
  if (rate?.state !== 'known') throw new Error('the class has no rate');
  expect(inches(pulley, 'diameter')).toBeCloseTo((14 * rate.quantity.value * 60) / 1740 / 0.97, 9);
  expect(pulley.warnings.join(' ')).toMatch(/rate as made is not known/);
  const prop = made(makeRamProp(found.values, found.known, and()));
  expect(inches(prop, 'length')).toBeCloseTo(1 + 4 - 0.25, 9);
  expect(inches(prop, 'side')).toBeCloseTo(4, 9);
  const timbers = made(makeSoleTimbers(found.values, found.known, and()));
  expect(timbers.quantity).toBe(4);
  expect(inches(timbers, 'length')).toBeCloseTo(36 + 8, 9);
});

test('the worksheet decides which parts are made', () => {
  const kinds = partsToMake(found).map((part) => part.kind);
  expect(kinds).toEqual(['ram-prop', 'sole-timbers', 'filler-plate', 'lower-die', 'lower-key', 'upper-key', 'clutch-pulley-bushing', 'crank-pin', 'rod-bushing', 'toggle-pin', 'toggle-bushing', 'coil-spring', 'guide-shims', 'belt']);
  const log = inchHammer();
  log.put('job-progress', { job: 'spring.renew', state: 'done' });
  expect(partsToMake(pictureOf(log)).map((part) => part.kind)).not.toContain('coil-spring');
});

test('a helve lifts its head by the arms: a rear arm of half the length doubles the throw', () => {
  const helve = pictureOf(new LogOf('100 lb', 'helve').read('upper-die.rest-gap', '1 in').read('crank.throw', '2 in').read('ram.mass', '100 lb').read('helve.front-length', '40 in').read('helve.rear-length', '20 in'));
  expect(inches(made(makeRamProp(helve.values, helve.known, and())), 'length')).toBeCloseTo(1 + 8 - 0.25, 9);
});
