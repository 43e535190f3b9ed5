import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bearings, floorAnswer, machineMassOfClass, movingInputOf, movingOf, standingOf, workOutMoving, type MovingInput } from '../../src/derived/moving/index.ts';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { fiveHammers, notFinite, numberAt, workedLog } from '../capacity/hammers.ts';
import { LogOf } from '../cases/log-of.ts';

const POUND = 0.45359237;
const input = (more: Partial<MovingInput> = {}): MovingInput => ({
  family: 'coil-and-toggle', mass: { value: 816, uncertainty: 80 }, weighed: false, ramMass: { value: 24, uncertainty: 1 }, anvilMass: { value: 280, uncertainty: 20 }, anvilKind: 'in-frame', overallHeight: 1.5, seatHeight: 0.61, shaftHeight: 1.4, baseLength: 0.94, baseWidth: 0.55, assumedLengths: [], ...more,
});

describe('moving a hammer', () => {
  test('class weights are those of the trade', () => {
    // Common practice, part of it read on public pages: 900 lb for 25 lb without motor, 1,600 to 2,000 for 50, 2,700 to 3,500 for 100, 6,000 to 8,000 for 250, 10,000 and more for 500.
    for (const [ram, least, most] of [[25, 900, 1100], [50, 1600, 2000], [100, 2700, 3500], [250, 6000, 8000], [500, 10_000, 14_000]] as const) {
      const mass = machineMassOfClass(ram * POUND).value / POUND;
      expect(mass).toBeGreaterThanOrEqual(least);
      expect(mass).toBeLessThanOrEqual(most);
    }
  });

  test('a heavy low anvil lowers the weight, a wider base leans further, and all of it stands inside the machine', () => {
    const of = (more: Partial<Parameters<typeof standingOf>[0]> = {}) => {
      const found = standingOf({ machine: { value: 816, uncertainty: 40 }, anvil: { value: 280, uncertainty: 10 }, ram: { value: 24, uncertainty: 1 }, seatHeight: 0.61, shaftHeight: 1.4, columnHeight: 1.4, baseLength: 0.94, baseWidth: 0.55, ...more }, 1);
      if (typeof found === 'string') throw new Error(found);
      return Object.fromEntries(Object.entries(found).map(([name, one]) => [name, one.state === 'known' ? one.value : Number.NaN])) as Record<keyof typeof found, number>;
    };
    expect(of({ anvil: { value: 400, uncertainty: 10 } }).gravityHeight).toBeLessThan(of().gravityHeight);
    expect(of({ baseWidth: 0.8 }).sideways).toBeGreaterThan(of().sideways);
    expect(of().forwards).toBeGreaterThan(of().sideways);
    expect(of().gravityHeight).toBeGreaterThan(0.3);
    expect(of().gravityHeight).toBeLessThan(1.4);
    // The tangent of the lean is half the base over the height.
    expect(Math.tan(of().sideways) * of().gravityHeight).toBeCloseTo(0.275, 2);
    expect(standingOf({ machine: { value: 300, uncertainty: 1 }, anvil: { value: 280, uncertainty: 1 }, ram: { value: 24, uncertainty: 1 }, seatHeight: 0.61, shaftHeight: 1.4, columnHeight: 1.4, baseLength: 0.94, baseWidth: 0.55 }, 1)).toMatch(/leave too little/);
  });

  test('slopes are kept by whatever goes over first: the body, once its anvil is out', () => {
    const found = movingOf(input({ anvilKind: 'separate' }), 1);
    if (found.state !== 'known' || 'state' in found.whole || found.body === undefined || 'state' in found.body) throw new Error('whole and body stand');
    const angles = (of: typeof found.whole) => [of.sideways, of.forwards, of.backwards].map((one) => (one.state === 'known' ? one.low : Number.NaN));
    expect(Math.min(...angles(found.body))).toBeLessThan(Math.min(...angles(found.whole)));
    expect(found.leastLean).toBe(Math.min(...angles(found.body)));
    expect(found.advice.some((one) => one.sentence.includes(`below ${Math.floor(((found.leastLean ?? 0) * 60) / Math.PI)}°`))).toBe(true);
  });

  test('above two thousand pounds a rigger; a separate anvil travels alone; a door that is too low is said', () => {
    const of = (more: Partial<MovingInput>) => {
      const answer = movingOf(input(more), 1);
      if (answer.state !== 'known') throw new Error(JSON.stringify(answer));
      return answer;
    };
    expect(of({ mass: { value: 500, uncertainty: 50 }, anvilMass: { value: 150, uncertainty: 10 } }).rigger.wanted).toBe(false);
    expect(of({ mass: { value: 880, uncertainty: 50 } }).rigger).toMatchObject({ wanted: true, sentence: expect.stringContaining('professional rigger') });
    expect(of({ anvilKind: 'separate' }).pieces.map((piece) => piece.words)).toEqual(['body without its anvil', 'anvil']);
    expect(of({ door: { width: 0.9, height: 1.4 } }).door.join(' ')).toContain('too tall for the door');
    expect(of({ door: { width: 0.5, height: 2.4 } }).door.join(' ')).toContain('too wide for the door');
    expect(of({}).notKnown.join('; ')).toMatch(/true weight.*door width and height.*what the floor carries/);
    expect(of({}).cautions).toContain('top-heavy');
    // Two legs at 60° from level, a quarter added: W x 1.25 / (2 sin 60°).
    expect(of({}).legTension).toMatchObject({ value: expect.closeTo((816 * 9.80665 * 1.25) / Math.sqrt(3), 3) });
  });

  test('a floor is asked about, and its rating is compared over base and a foot round it', () => {
    expect(floorAnswer(816, 0.94, 0.55)).toMatchObject({ state: 'not-known', missing: ['floor rating'] });
    expect(floorAnswer(816, 0.94, 0.55, { rating: 2400 })).toMatchObject({ holds: false, sentence: expect.stringContaining('not on this floor') });
    expect(floorAnswer(816, 0.94, 0.55, { rating: 24_000 })).toMatchObject({ holds: true, sentence: expect.stringContaining('No hammer runs on a suspended floor') });
    const pressures = bearings(816, 0.94, 0.55).map((one) => one.pressure);
    expect([...pressures].sort((a, b) => a - b)).toEqual(pressures);
  });

  test('absurd input is refused with field and bound, or answered without a number that is none', () => {
    const wild = fc.oneof(fc.double(), fc.double({ min: 0.1, max: 3, noNaN: true }), fc.constantFrom(Number.NaN, Infinity, 0, -5));
    const estimate = (near: number) => fc.oneof({ weight: 3, arbitrary: fc.constant({ value: near, uncertainty: near / 10 }) }, { weight: 1, arbitrary: fc.record({ value: wild, uncertainty: wild }) });
    let answered = 0;
    fc.assert(fc.property(fc.record({ mass: estimate(800), anvilMass: estimate(280), ramMass: estimate(24), shaftHeight: fc.oneof(fc.constant(1.4), wild), baseLength: fc.oneof(fc.constant(0.9), wild), baseWidth: fc.oneof(fc.constant(0.5), wild), overallHeight: fc.oneof(fc.constant(1.5), wild) }), (more) => {
      const answer = movingOf(input(more), 1);
      expect(notFinite(answer)).toEqual([]);
      if (answer.state === 'known') answered += 1;
      else for (const problem of answer.problems) expect(problem.sentence).toMatch(/allowed: /);
    }), { numRuns: 100, seed: 91 });
    expect(answered).toBeGreaterThan(3);
  });

  test('the five invented hammers stand as such machines do', () => {
    for (const { name, ledger, known } of fiveHammers()) {
      workOutMoving(ledger, known, 1);
      const keys = [...ledger.values.keys()].filter((key) => key.startsWith('moving.'));
      console.log([name, ...keys.map((key) => {
        const { outcome } = ledger.values.get(key)!;
        return `  ${key}: ${outcome.state === 'known' ? formatQuantity(outcome.quantity) : JSON.stringify(outcome)}`;
      })].join('\n'));
      const height = numberAt(ledger, 'frame.height');
      expect(numberAt(ledger, 'moving.gravity-height')).toBeGreaterThan(0.25 * height);
      expect(numberAt(ledger, 'moving.gravity-height')).toBeLessThan(0.6 * height);
      expect(numberAt(ledger, 'moving.tip-angle-side')).toBeGreaterThan((15 * Math.PI) / 180);
      expect(numberAt(ledger, 'moving.tip-angle-side')).toBeLessThan(numberAt(ledger, 'moving.tip-angle-forwards'));
      const answer = movingOf(movingInputOf(Object.fromEntries(ledger.values), known), 1, 'metric');
      expect(answer.state).toBe('known');
      expect(JSON.stringify(answer)).not.toMatch(/NaN|undefined/);
    }
  });

  test('of a hammer of which nothing was read, every length is named as taken', () => {
    const { ledger, known } = workedLog(new LogOf('50 lb', 'coil-and-toggle'));
    expect(movingInputOf(Object.fromEntries(ledger.values), known).assumedLengths).toHaveLength(5);
  });
});
