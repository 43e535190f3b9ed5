import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LEATHER_JOINT_STRESS, LEATHER_RULES, beltPull, beltSpeed, capstanRatio, drivenSpeed, driverForSpeed, leatherBeltPower, leatherBeltWidth, openBeltCentres, openBeltLength, openBeltLengthShort,
  openBeltWrap, speedOfGreatestPower, wrapShare, type LeatherRuleId,
} from '../../../src/methods/elements/index.ts';
import { byFigure, digits, rowsOf, runRows } from '../row.ts';
import { degree, feetPerMinute, hp, inch, lbf, psi, rpm } from '../units.ts';

describe('flat belts against worked examples and rules', () => {
  test('a belt about to slip', () => {
    const inputs = { d: 0.6, n: 200, friction: 0.25, wrap: 160, tight: 2500 };
    const pull = (x: typeof inputs) => beltPull(x.tight, x.friction, x.wrap * degree, beltSpeed(x.d, x.n * rpm));
    runRows('belt about to slip', [
      // The book reads its exponential from a logarithm of three places.
      ...rowsOf('Khurmi and Gupta, Theory of Machines, ex. 11.4, p. 342', 'transcribed', inputs, [['slack tension, N', '1243.8'], ['power, kW', '7.89']]),
      ...rowsOf('the same, worked again', 'recomputed', inputs, [['power, kW', '7.8930']]),
    ], byFigure({ 'slack tension, N': (x) => pull(x).slack, 'power, kW': (x) => pull(x).power / 1000 }));
  });

  test('line shaft', () => {
    const inputs = { n: 150, pulleys: [[750, 450], [900, 150]] as const };
    const speed = (x: typeof inputs, slip: number) => drivenSpeed(x.n, x.pulleys.map(([driver, driven]) => ({ driver: driver / 1000, driven: driven / 1000, slip })));
    runRows('line shaft', rowsOf('Khurmi and Gupta, Theory of Machines, ex. 11.1, p. 333', 'transcribed', inputs, [
      ['without slip, rpm', '1500'],
      // Printed as 1440: the book rounds to whole tens.
      ['two in a hundred slip at each belt, rpm', '1440', digits('144e1')],
    ]), byFigure({ 'without slip, rpm': (x) => speed(x, 0), 'two in a hundred slip at each belt, rpm': (x) => speed(x, 0.02) }));
    expect(speed(inputs, 0.02)).toBeCloseTo(1440.6, 9);
  });

  test('open belt', () => {
    const inputs = { d: 4, D: 6, C: 19, n: 1800, inBelt: 54 };
    runRows('open belt', [
      ...rowsOf('Wentzell, Machine Design, ex. 14.2, p. 310', 'transcribed', inputs, [['length, in', '53.76'], ['centres for 54 in, in', '19.12'], ['wrap on the small pulley, degrees', '174.0'], ['speed, ft/min', '1885']]),
      ...rowsOf('the same, worked again', 'recomputed', inputs, [['length, in', '53.7606'], ['length by the short formula, in', '53.7606']]),
    ], byFigure({
      'length, in': (x) => openBeltLength(x.d * inch, x.D * inch, x.C * inch) / inch, 'length by the short formula, in': (x) => openBeltLengthShort(x.d * inch, x.D * inch, x.C * inch) / inch,
      'centres for 54 in, in': (x) => openBeltCentres(x.d * inch, x.D * inch, x.inBelt * inch)! / inch, 'wrap on the small pulley, degrees': (x) => openBeltWrap(x.d * inch, x.D * inch, x.C * inch) / degree,
      'speed, ft/min': (x) => beltSpeed(x.d * inch, x.n * rpm) / feetPerMinute,
    }));
  });

  test('leather by the rules of thumb', () => {
    type Ask = { readonly rule: LeatherRuleId; readonly power: number; readonly width: number; readonly speed: number; readonly pulley?: number; readonly turns?: number };
    const ONE = { power: 1, width: 1 };
    const ENCYCLOPAEDIA = 'workshop encyclopaedia, chestofbooks.com, 326 Leather Belting';
    const CATALOGUE = 'hardware catalogue, shapleighs.com/page-2162';
    const ways = byFigure<Ask>({
      'power, hp': (x) => leatherBeltPower(x.width * inch, x.speed * feetPerMinute, Math.PI, x.rule) / hp,
      'pull, lb/in': (x) => (LEATHER_RULES.find(({ id }) => id === x.rule)!.pullPerWidth * inch) / lbf,
      'width, in': (x) => leatherBeltWidth(x.power * hp, x.speed * feetPerMinute, Math.PI, x.rule) / inch,
      'speed, ft/min': (x) => beltSpeed((x.pulley ?? Number.NaN) * inch, (x.turns ?? Number.NaN) * rpm) / feetPerMinute,
    });
    runRows('leather rules', [
      ...rowsOf<Ask>(ENCYCLOPAEDIA, 'read', { ...ONE, rule: 'single-1000', speed: 1000 }, [['power, hp', '1.0'], ['pull, lb/in', '33']]),
      ...rowsOf<Ask>(ENCYCLOPAEDIA, 'read', { ...ONE, rule: 'single-800', speed: 800 }, [['power, hp', '1.0']]),
      ...rowsOf<Ask>(ENCYCLOPAEDIA, 'read', { ...ONE, rule: 'double-1.7', speed: 1000 }, [['power, hp', '1.7']]),
      ...rowsOf<Ask>(ENCYCLOPAEDIA, 'read', { ...ONE, rule: 'double-2', speed: 1000 }, [['power, hp', '2.0']]),
      // D N w / 3300 and / 2100 for a pulley of 10 in at 330 and at 210 turns a minute; the second is the encyclopaedia's 550 ft/min.
      ...rowsOf<Ask>(CATALOGUE, 'read', { ...ONE, rule: 'single-864', speed: (Math.PI * 10 * 330) / 12 }, [['power, hp', '1.0']]),
      ...rowsOf<Ask>(CATALOGUE, 'read', { ...ONE, rule: 'double-550', speed: (Math.PI * 10 * 210) / 12 }, [['power, hp', '1.0']]),
      ...rowsOf<Ask>(ENCYCLOPAEDIA, 'read', { ...ONE, rule: 'double-550', speed: 550 }, [['power, hp', '1.00']]),
      ...rowsOf<Ask>('Hawkins Electrical Guide vol. 5 (problem; its answer was not seen), by the double-width rule', 'recomputed', { rule: 'double-2', power: 50, width: 1, pulley: 16, turns: 1000, speed: (Math.PI * 16 * 1000) / 12 }, [['speed, ft/min', '4189'], ['width, in', '5.97']]),
    ], ways);
    expect(Object.values(LEATHER_JOINT_STRESS).map((stress) => Math.round(stress / psi))).toEqual([300, 400, 250]);
  });
});

describe('laws of flat belts', () => {
  const pulleys = fc.record({ d: fc.double({ min: 0.05, max: 1, noNaN: true }), D: fc.double({ min: 0.05, max: 1, noNaN: true }), spare: fc.double({ min: 0.05, max: 5, noNaN: true }) });
  test('length is the same from either side, the wraps make a full turn, and the short formula never errs by more than it says', () => {
    fc.assert(fc.property(pulleys, ({ d, D, spare }) => {
      const C = (d + D) / 2 + spare;
      expect(openBeltLength(d, D, C)).toBeCloseTo(openBeltLength(D, d, C), 12);
      expect(openBeltWrap(d, D, C) + openBeltWrap(D, d, C)).toBeCloseTo(2 * Math.PI, 12);
      expect(Math.abs(openBeltLength(d, D, C) - openBeltLengthShort(d, D, C))).toBeLessThanOrEqual((D - d) ** 4 / (100 * C ** 3) + 1e-12);
      expect(openBeltCentres(d, D, openBeltLengthShort(d, D, C))).toBeCloseTo(C, 9);
      // A belt lengthens with its centres by twice the cosine of its lean.
      const h = 1e-6 * C;
      expect((openBeltLength(d, D, C + h) - openBeltLength(d, D, C - h)) / (2 * h)).toBeCloseTo(2 * Math.cos(Math.asin((D - d) / (2 * C))), 6);
    }));
    expect(openBeltCentres(0.5, 0.5, 1)).toBeUndefined();
    expect(() => openBeltLength(1, 1, 0.9)).toThrow(RangeError);
  });
  test('wraps in a row multiply their grip, and no friction grips nothing', () => {
    const angle = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(fc.property(fc.double({ min: 0, max: 0.8, noNaN: true }), angle, angle, (mu, a, b) => {
      expect(capstanRatio(mu, a + b) / (capstanRatio(mu, a) * capstanRatio(mu, b))).toBeCloseTo(1, 10);
    }));
    expect(beltPull(1000, 0, Math.PI, 10).power).toBe(0);
    expect(wrapShare(Math.PI)).toBe(1);
    expect(wrapShare(2)).toBeLessThan(1);
  });
  test('a belt carries most at the speed where a third of its tension is its own flight', () => {
    const best = speedOfGreatestPower(1000, 0.4);
    const power = (v: number) => beltPull(1000, 0.25, Math.PI, v, 0.4).power;
    expect(power(best)).toBeGreaterThan(power(best * 0.99));
    expect(power(best)).toBeGreaterThan(power(best * 1.01));
    expect(power(Math.sqrt(1000 / 0.4) * 1.5)).toBe(0);
  });
  test('a pulley chosen for a speed gives that speed', () => {
    fc.assert(fc.property(fc.double({ min: 500, max: 3500, noNaN: true }), fc.double({ min: 100, max: 500, noNaN: true }), fc.double({ min: 0, max: 0.1, noNaN: true }), (motor, wanted, slip) => {
      expect(drivenSpeed(motor, [{ driver: driverForSpeed(motor, wanted, 0.4, slip), driven: 0.4, slip }]) / wanted).toBeCloseTo(1, 12);
    }));
  });
});
