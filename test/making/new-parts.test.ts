import { describe, expect, test } from 'vitest';
import { makeBowClipBushing, makeBowEyeBushings, makeBowLeaf, makeCountershaftDriven, makeCountershaftDriver, makeCrankPin, makeCrossheadBushing, makeFillerPlate, makeHelveBushings, makeLowerDie, makeLowerKey, makeMotorPulley, makeRodBushing, makeTogglePins, makeUpperDie, partsToMake, type Making, type PartKind } from '../../src/derived/making/index.ts';
import { layViews, notMadeWords } from '../../src/views/making/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { dimension, inches, made, millimetres, pictureOf } from './figures-of.ts';
import { bowHammer, helveHammer, inchHammer, slowHammer } from './hammers.ts';

const inch = pictureOf(inchHammer());
const bow = pictureOf(bowHammer(), 'metric');
const helve = pictureOf(helveHammer());
const and = (...kinds: PartKind[]) => ({ system: 'inch' as const, floorCut: false, alsoMade: new Set<PartKind>(kinds) });
const metric = { ...and(), system: 'metric' as const };

describe('a crank pin', () => {
  test('runs in its rod, sits tight in its plate, and is drawn in by its nut', () => {
    const pin = made(makeCrankPin(inch.values, inch.known, and()));
    // Next sixty-fourth over 1.480 in; ISO 286 for 30 to 50 mm: d8 -119 to -80 micrometres, H8 0 to +39: 80 to 158, nearest to 0.003 to 0.006 in (76 to 152).
    expect(inches(pin, 'journal')).toBeCloseTo(95 / 64, 9);
    expect(dimension(pin, 'journal').fit).toBe('d8');
    expect(dimension(pin, 'journal').tolerance.plus * 1e6).toBeCloseTo(-80, 6);
    // 1.496 in, 0.004 in of play and 0.010 to clean up: 1.510, up to 97/64; k6 for 30 to 50 mm: +2 to +18.
    expect(inches(pin, 'shank')).toBeCloseTo(97 / 64, 9);
    expect(dimension(pin, 'shank').tolerance.plus * 1e6).toBeCloseTo(18, 6);
    expect(inches(pin, 'shank-length')).toBeCloseTo(1.25 - 1 / 32, 9);
    // Rod 2 1/16 in of pin, washer 1/8, half of an 8 mm hole.
    expect(millimetres(pin, 'to-hole')).toBeCloseTo((2 + 1 / 16 + 1 / 8) * 25.4 + 4, 9);
    // 1/32 in inside the plate, washer 0.19 and slotted nut 0.89 of the thread, two turns.
    expect(inches(pin, 'tail')).toBeCloseTo(1 / 32 + (0.19 + 0.89) * 1.25 + 2 * inches(pin, 'pitch'), 9);
  });

  test('calls its thread by the nuts that it takes, in both shops', () => {
    const words = (text: Making, system: 'inch' | 'metric'): string => layViews(made(text), { scale: 1000, height: 2.5, system, angle: 'third-angle' }).inks.flatMap((ink) => (ink.kind === 'text' ? [ink.words] : [])).join('|');
    expect(words(makeCrankPin(inch.values, inch.known, and()), 'inch')).toContain('1 1/4-7 RH, class 2A');
    expect(words(makeCrankPin(inch.values, inch.known, metric), 'metric')).toContain('1 1/4-7 RH, class 2A');
    const other = pictureOf(inchHammer().read('crank.pin-thread', '29.8 mm').read('crank.pin-thread-pitch', '3.5 mm').look('crank.thread-hand', 'left'));
    expect(words(makeCrankPin(other.values, other.known, metric), 'metric')).toContain('M30 × 3.5 LH, 6g');
  });

  test('takes its length from the rod where nobody measured the pin, and asks for thread and collar by their places', () => {
    const pin = made(makeCrankPin(helve.values, helve.known, and()));
    expect(inches(pin, 'run')).toBeCloseTo(2.5 + 1 / 32, 9);
    expect(pin.unknowns.map((one) => one.key)).toEqual(['crank.pin-thread', 'crank.pin-thread-pitch', 'crank.thread-hand', 'crank.pin-collar', 'crank.pin-collar-thickness', 'crank.pin-room']);
    expect(pin.warnings.join(' ')).toMatch(/Estimates.*diameter of the collar/);
  });

  test('the rod’s bush is bored to the new pin where one is made', () => {
    const bush = made(makeRodBushing(inch.values, inch.known, and('crank-pin')));
    expect(inches(bush, 'bore')).toBeCloseTo(95 / 64, 9);
    expect(dimension(bush, 'bore').fit).toBe('H8');
    expect(dimension(bush, 'bore').tolerance.plus * 1e6).toBeCloseTo(39, 6);
  });
});

describe('bushes', () => {
  test('of the crosshead: the pin as it is and 0.002 to 0.005 in; a wall that leaves the eye as thick', () => {
    const bush = made(makeCrossheadBushing(inch.values, inch.known, and()));
    expect(inches(bush, 'bore')).toBeCloseTo(1.242, 9);
    expect(dimension(bush, 'bore').tolerance.plus / 0.0254).toBeCloseTo(0.003, 9);
    // Eye 1.875 in: a quarter of what is over 1.242 is 0.158, more than the 1/8 in of practice. 1.242 and twice that is 1.492: down to 95/64.
    expect(inches(bush, 'outside')).toBeCloseTo(95 / 64, 9);
    expect(inches(bush, 'length')).toBeCloseTo(1.75, 9);
    const thin = pictureOf(inchHammer().read('crosshead.eye-outside', '1.642 in'));
    // 0.4 in over the bore, in quarters: wall 0.1, and 0.1 of eye round it. 1.442 down to 92/64.
    expect(inches(made(makeCrossheadBushing(thin.values, thin.known, and())), 'outside')).toBeCloseTo(92 / 64, 9);
    expect(dimension(bush, 'outside').estimate).toBe(false);
  });

  test('of a bow: for the rolled eye as it is, and for the clip bored to it', () => {
    const eyes = made(makeBowEyeBushings(bow.values, bow.known, metric));
    expect(eyes.quantity).toBe(2);
    expect(millimetres(eyes, 'bore')).toBeCloseTo(18.9 + 0.0508, 9);
    // 24.6 mm and 0.25 to clean up: 25 in a metric shop; 0.9685 and 0.010 in, 0.9785, up to 63/64 in one of inches.
    expect(millimetres(eyes, 'outside')).toBeCloseTo(25, 9);
    expect(inches(made(makeBowEyeBushings(bow.values, bow.known, and())), 'outside')).toBeCloseTo(63 / 64, 9);
    const clip = made(makeBowClipBushing(bow.values, bow.known, metric));
    expect(clip.quantity).toBe(1);
    // 24.95 and two walls of 3.175 is 31.3: down to the half millimetre.
    expect(millimetres(clip, 'outside')).toBeCloseTo(31, 9);
  });

  test('of a helve: two alike, to the larger trunnion', () => {
    const bushes = made(makeHelveBushings(helve.values, helve.known, and()));
    expect(bushes.quantity).toBe(2);
    expect(inches(bushes, 'bore')).toBeCloseTo(1.972, 9);
    expect(bushes.warnings.filter((one) => one.includes('pin'))).toEqual([]);
    const odd = pictureOf(helveHammer().read('helve.pivot-diameter@left', '1.950 in'));
    expect(made(makeHelveBushings(odd.values, odd.known, and())).warnings.join(' ')).toMatch(/one bush is bored for the right pin, as drawn, the other for the left one, as in the table/);
  });
});

test('a main leaf: eyes rolled from nine tenths of a turn, bent to the bow’s own radius', () => {
  const leaf = made(makeBowLeaf(bow.values, bow.known, metric));
  const radius = 720 ** 2 / (8 * 140) + 70;
  expect(millimetres(leaf, 'radius')).toBeCloseTo(radius, 9);
  expect(millimetres(leaf, 'flat-length')).toBeCloseTo(785 + 2 * 0.9 * Math.PI * (24.6 + 8), 9);
  expect(millimetres(leaf, 'chord')).toBeCloseTo(2 * radius * Math.sin(785 / 2 / radius), 9);
  // Full leaf of a pack, half the span of 720 mm: 18 P L / (b t² K) at δ = 12 P L³ / (E b t³ K) is 1.5 E t δ / L² (Bhandari, chapter 10).
  expect(dimension(leaf, 'stress').quantity.value).toBeCloseTo((1.5 * 207e9 * 0.008 * 0.035) / 0.36 ** 2, -2);
  const plain = pictureOf(bowHammer().look('bow-spring.new-leaf', 'plain').read('bow-spring.new-leaf-length', '400 mm'), 'metric');
  expect(millimetres(made(makeBowLeaf(plain.values, plain.known, metric)), 'flat-length')).toBeCloseTo(400, 9);
});

describe('a countershaft', () => {
  const rate = (found: typeof bow): number => {
    const outcome = found.values['class.working-rate']?.outcome;
    if (outcome?.state !== 'known') throw new Error('the class has no rate');
    return outcome.quantity.value;
  };

  test('steps down by the same in both belts, and the hammer strikes at the rate wanted', () => {
    const driven = millimetres(made(makeCountershaftDriven(bow.values, bow.known, metric)), 'diameter');
    const driver = millimetres(made(makeCountershaftDriver(bow.values, bow.known, metric)), 'diameter');
    expect(driven / 90).toBeCloseTo(450 / driver, 9);
    expect((((1450 / 60) * 90 * 0.97) / driven) * ((driver * 0.97) / 450)).toBeCloseTo(rate(bow), 9);
  });

  test('a driven pulley that is there stays, and the driver is made to it', () => {
    const there = pictureOf(bowHammer().read('drive-line.countershaft-driven', '250 mm'), 'metric');
    expect(makeCountershaftDriven(there.values, there.known, metric).state).toBe('not-needed');
    const driver = millimetres(made(makeCountershaftDriver(there.values, there.known, metric)), 'diameter');
    expect((((1450 / 60) * 90 * 0.97) / 250) * ((driver * 0.97) / 450)).toBeCloseTo(rate(there), 9);
  });

  test('is asked for where one motor pulley would be too small for its belt, and only then', () => {
    const log = inchHammer().read('motor.speed', '3450 rpm').read('running.rate', '420 blows/min').made('running.rate', '300 blows/min');
    const kinds = partsToMake(pictureOf(log)).map((one) => one.kind);
    expect(kinds).toContain('countershaft-driver');
    expect(kinds).not.toContain('motor-pulley');
    const slow = inchHammer().read('motor.speed', '1140 rpm').read('belt.thickness', '1/8 in').read('running.rate', '420 blows/min').made('running.rate', '300 blows/min');
    expect(partsToMake(pictureOf(slow)).map((one) => one.kind)).toEqual(expect.arrayContaining(['motor-pulley']));
    expect(partsToMake(pictureOf(slow)).map((one) => one.kind)).not.toContain('countershaft-driver');
  });
});

test('a motor pulley is bored to the shaft, with the keyway of ANSI B17.1', () => {
  const pulley = made(makeMotorPulley(inch.values, inch.known, and()));
  expect(inches(pulley, 'bore')).toBeCloseTo(0.875, 9);
  expect(inches(pulley, 'key-width')).toBeCloseTo(3 / 16, 9);
  // (D + √(D² - W²) + H) / 2 + 0.005
  expect(inches(pulley, 'key-depth')).toBeCloseTo((0.875 + Math.sqrt(0.875 ** 2 - 0.1875 ** 2) + 0.1875) / 2 + 0.005, 9);
  expect(pulley.unknowns.map((one) => one.key)).toEqual(['motor.key-width', 'motor.shaft-length']);
});

test('a parallel seat puts the taper of the key on the die: narrower where the key goes in', () => {
  const die = made(makeUpperDie(inch.values, inch.known, and()));
  const rise = ((1 / 96) * 4.5) / Math.cos((10 * Math.PI) / 180);
  expect(inches(die, 'far-width') - inches(die, 'base-width')).toBeCloseTo(rise, 9);
  expect((inches(die, 'far-width') + inches(die, 'base-width')) / 2).toBeCloseTo(2.25, 9);
  expect(inches(die, 'dovetail-height')).toBeCloseTo(5 / 8 + 1 / 32, 9);
  // The lower seat itself runs to the taper: that die is parallel.
  expect(made(makeLowerDie(inch.values, inch.known, and())).dimensions.map((one) => one.name)).not.toContain('far-width');
});

test('a plate for a floor that was cut is as thick as was cut off it', () => {
  const cut = pictureOf(inchHammer().read('seat.cut', '0.300 in'));
  expect(inches(made(makeFillerPlate(cut.values, cut.known, { ...and(), floorCut: true })), 'thickness')).toBeCloseTo(0.3, 9);
  const uncut = made(makeFillerPlate(inch.values, inch.known, { ...and(), floorCut: true }));
  expect(dimension(uncut, 'thickness').estimate).toBe(true);
  expect(uncut.unknowns.map((one) => one.key)).toEqual(['seat.width-over-plate', 'seat.cut']);
});

type Reading = readonly [key: string, text: string];
const readings = (log: LogOf, more: readonly Reading[]): LogOf => {
  for (const [key, text] of more) log.read(key, text);
  return log;
};

test.each([
  ['a collar no larger than its pin', makeCrankPin, inchHammer, [['crank.pin-collar', '1.5 in']], /above 1 43\/64 in is allowed: 1 1\/2 in/, 'crank.pin-collar'],
  ['a rod wider than its pin is long', makeCrankPin, inchHammer, [['connecting-rod.eye-width', '2 1/2 in']], /wider than the pin is long; below 2 1\/16 in is allowed: 2 1\/2 in/, 'crank.pin-length'],
  ['a thread that does not go through the plate', makeCrankPin, inchHammer, [['crank.pin-thread', '1 3/4 in']], /thicker than the shank; up to 1 33\/64 in is allowed: 1 3\/4 in/, 'crank.pin-thread'],
  ['a pin beyond the table of fits', makeCrankPin, inchHammer, [['crank.pin-diameter', '7 3/4 in']], /table of fits/, ''],
  ['an eye without metal for a bush', makeCrossheadBushing, inchHammer, [['crosshead.eye-outside', '1.4 in']], /no metal for a bush; above 1\.492 in across is allowed/, 'crosshead.eye-outside'],
  ['an eye smaller than its pin', makeBowEyeBushings, bowHammer, [['bow-spring.eye-bore@left', '18 mm'], ['bow-spring.eye-bore@right', '18 mm']], /wider than its pin by two walls/, 'bow-spring.eye-bore@left'],
  ['a clip pivot worn through', makeBowClipBushing, bowHammer, [['bow-spring.eye-outside@middle', '26 mm']], /no metal for a bush/, 'bow-spring.pin-diameter@middle'],
  ['a pivot bearing thinner than a bush', makeHelveBushings, helveHammer, [['helve.pivot-outside@left', '2 in']], /no metal for a bush/, 'helve.pivot-outside@left'],
  ['a leaf thicker than wide', makeBowLeaf, bowHammer, [['bow-spring.leaf-thickness', '30 mm'], ['bow-spring.leaf-width', '25 mm']], /thicker than it is wide; below/, 'bow-spring.leaf-width'],
  ['a hole that takes the leaf', makeBowLeaf, bowHammer, [['bow-spring.centre-hole', '35 mm']], /takes the leaf; up to/, 'bow-spring.centre-hole'],
  ['a leaf that meets itself', makeBowLeaf, bowHammer, [['bow-spring.new-leaf-length', '3500 mm']], /too long for the bow’s curve/, 'bow-spring.span'],
  ['an eye of the main leaf smaller than its pin', makeBowLeaf, bowHammer, [['bow-spring.eye-bore@left', '15 mm']], /smaller than its pin/, 'bow-spring.eye-bore@left'],
  ['a motor slower than the hammer', makeCountershaftDriver, bowHammer, [['motor.speed', '150 rpm']], /must turn faster than the hammer strikes/, 'motor.speed'],
  ['a countershaft that takes its pulley', makeCountershaftDriver, bowHammer, [['drive-line.countershaft-diameter', '150 mm'], ['pulley.diameter', '300 mm']], /too small for its shaft/, 'drive-line.countershaft-diameter'],
  ['a motor shaft that takes its pulley', makeMotorPulley, inchHammer, [['motor.shaft-diameter', '2 1/2 in']], /too small for its shaft/, 'motor.shaft-diameter'],
  ['a belt wider than the hammer’s pulley, through a countershaft', makeCountershaftDriven, bowHammer, [['belt.width', '130 mm']], /up to .* is allowed/, ''],
  ['a key thicker than its gap', makeLowerKey, inchHammer, [['keys.thickness@lower', '1 1/4 in']], /thicker than the gap that it is driven into; up to 0\.98\d+ in is allowed: 1 1\/4 in/, 'seat.width'],
  ['a die wider than the ram’s dovetail', makeUpperDie, inchHammer, [['ram.dovetail-width', '2 in']], /wider at its foot than the ram’s dovetail; up to 2 in is allowed: 2 1\/4 in/, 'ram.dovetail-width'],
  ['a pin shorter than its split pins', makeTogglePins, inchHammer, [['toggle-pins.length@lower-left', '3/4 in']], /shorter than what keeps it in/, 'toggle-pins.length@lower-left'],
] as const)('said plainly, with the readings behind it: %s', (_what, make, hammer, more, problem, reading) => {
  const found = pictureOf(readings(hammer(), more));
  const part = make(found.values, found.known, and());
  expect(part.state === 'cannot-be' ? part.problem : part.state).toMatch(problem);
  const words = part.state === 'to-make' ? '' : notMadeWords(part).join(' ');
  expect(words).toContain('cannot be made');
  expect(words).toContain(reading);
});

test('a floor cut less deep than the die had sunk is not flat, and is said', () => {
  const found = pictureOf(inchHammer().read('seat.cut', '1/8 in'));
  expect(makeFillerPlate(found.values, found.known, { ...and(), floorCut: true })).toMatchObject({ state: 'cannot-be', problem: expect.stringMatching(/1\/4 in and more is allowed: 1\/8 in/) as string });
});

test('one impossible part leaves the others standing', () => {
  const found = pictureOf(inchHammer().read('crank.pin-collar', '1 in'));
  const states = Object.fromEntries(partsToMake(found).map((one) => [one.kind, one.state]));
  expect(states['crank-pin']).toBe('cannot-be');
  expect(states['lower-die']).toBe('to-make');
  expect(states['rod-bushing']).toBe('to-make');
});

test('every reading that a drawing waits for has a place or a look to enter it', () => {
  for (const found of [inch, bow, helve, pictureOf(new LogOf('50 lb', 'coil-and-toggle')), pictureOf(new LogOf('50 lb', 'bow-spring')), pictureOf(new LogOf('50 lb', 'helve'))]) {
    for (const make of [makeCrankPin, makeRodBushing, makeCrossheadBushing, makeBowLeaf, makeBowEyeBushings, makeBowClipBushing, makeHelveBushings, makeCountershaftDriven, makeCountershaftDriver, makeMotorPulley, makeUpperDie, makeLowerDie, makeLowerKey, makeTogglePins, makeFillerPlate]) {
      const part = make(found.values, found.known, and());
      const asked = part.state === 'to-make' ? part.unknowns : part.state === 'not-known' ? part.missing : [];
      for (const one of asked) expect(one.key, one.what).toBeDefined();
    }
  }
});

test('a large pulley has rim, web and hub, and weighs what they do', () => {
  const slow = pictureOf(slowHammer());
  const pulley = made(makeMotorPulley(slow.values, slow.known, and()));
  const [D, f, c, b] = [inches(pulley, 'diameter'), inches(pulley, 'face'), inches(pulley, 'crown'), inches(pulley, 'bore')];
  const [t, w, h] = [inches(pulley, 'rim'), inches(pulley, 'web'), inches(pulley, 'hub')];
  expect(D).toBeGreaterThan(8);
  // A two-hundredth of 12.3 in and 1/8: 0.186, up to 3/16 in; the web not under 3/8; a hub of two shafts or over its keyway.
  expect([t, w]).toEqual([expect.closeTo(3 / 16, 9), expect.closeTo(3 / 8, 9)]);
  expect(h).toBeGreaterThanOrEqual(2 * b);
  // By hand: rings of rim, web and hub, cast iron 0.2601 lb/in³.
  const o = D - c;
  const i = o - 2 * t;
  const pounds = (Math.PI / 4) * ((o * o - i * i) * f + (i * i - h * h) * w + (h * h - b * b) * f) * 0.2601;
  expect((pulley.mass ?? 0) / 0.45359237 / pounds).toBeCloseTo(1, 3);
});

test('a die weighs what its foot, body and rounded edges do', () => {
  const die = made(makeLowerDie(inch.values, inch.known, and()));
  const [H, F, L, N, S, e] = ['height', 'base-width', 'length', 'neck-width', 'dovetail-height', 'edge-radius'].map((name) => (die.dimensions.some((one) => one.name === name) ? inches(die, name) : Number.NaN)) as [number, number, number, number, number, number];
  const B = die.dimensions.some((one) => one.name === 'body-width') ? inches(die, 'body-width') : N;
  const neck = Number.isNaN(N) ? F - 2 * S * Math.tan((10 * Math.PI) / 180) : N;
  const cubic = ((F + neck) / 2) * S * L + B * (H - S) * L - 2 * (1 - Math.PI / 4) * e * e * (L + B);
  // Steel, 7850 kg/m³: 0.2836 lb/in³.
  expect((die.mass ?? 0) / 0.45359237 / (cubic * 0.2836)).toBeCloseTo(1, 3);
});
