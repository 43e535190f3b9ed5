import { describe, expect, test } from 'vitest';
import { capacityOf, LEAST_REDUCTION, workOutCapacity } from '../../src/derived/capacity/index.ts';
import { usualOfClass } from '../../src/derived/usual-of-class.ts';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { fiveHammers, numberAt, workedLog } from './hammers.ts';

const INCH = 0.0254;
const POUND = 0.45359237;

describe('the least reduction is what the trade means by the largest bar for steady work', () => {
  // Practical bars of the trade by ram class, inches: common practice, no source.
  const CLASSES = [[25, 1, 1.5], [50, 1.75, 2.25], [100, 2.5, 3], [250, 4, 5], [500, 6, 8]] as const;
  test(`at ${100 * LEAST_REDUCTION} % a blow the usual hammer of each class comes out within a fifth of its range`, () => {
    for (const [pounds, least, most] of CLASSES) {
      const mass = pounds * POUND;
      const usual = Object.fromEntries(usualOfClass(mass).map((one) => [one.key, one.quantity.value])) as Record<string, number>;
      const speed = 2.25 * 2 * Math.PI * usual['class.working-rate']! * usual['class.crank-throw']!;
      const energy = (mass * speed ** 2) / 2;
      const width = 0.0635 * Math.cbrt(pounds / 50);
      const answer = capacityOf({
        bar: { section: 'square', size: INCH, carbon: 0.002 }, temperature: { value: 1343, uncertainty: 30 }, dieWidth: { value: width, uncertainty: width * 0.05 }, blowEnergy: { value: energy, uncertainty: energy * 0.22 }, ramMass: { value: mass, uncertainty: mass * 0.03 },
        anvilRatio: { value: 10, uncertainty: 2.5 }, restitution: { value: 0.25, uncertainty: 0.05 }, rate: { value: usual['class.working-rate']!, uncertainty: 0.1 }, draws: 1000,
      }, 1);
      if (answer.state !== 'known' || answer.largestBar.state !== 'known') throw new Error(JSON.stringify(answer));
      const { value, low, high } = answer.largestBar;
      console.log(`${pounds} lb: ${energy.toFixed(0)} J, largest bar ${(value / INCH).toFixed(2)} in (${(low / INCH).toFixed(2)} to ${(high / INCH).toFixed(2)}); the trade says ${least} to ${most} in`);
      expect(value / INCH).toBeGreaterThan(least * 0.8);
      expect(value / INCH).toBeLessThan(most * 1.2);
    }
  });
});

describe('the five invented hammers', () => {
  test('give figures that the trade would believe', () => {
    for (const { name, ledger } of fiveHammers()) {
      workOutCapacity(ledger, { seed: 1 });
      const keys = ['capacity.blow-energy', 'capacity.reduction-per-blow', 'capacity.blows-per-heat', 'capacity.largest-bar', 'capacity.largest-bar-by-class', 'capacity.blow-power-share', 'capacity.strike-test-energy'];
      const shown = keys.map((key) => {
        const outcome = ledger.values.get(key)!.outcome;
        return `  ${key}: ${outcome.state === 'known' ? formatQuantity(outcome.quantity) : outcome.state}`;
      });
      console.log([name, ...shown].join('\n'));
      const bar = numberAt(ledger, 'capacity.largest-bar');
      const rival = numberAt(ledger, 'capacity.largest-bar-by-class');
      const { outcome } = ledger.values.get('capacity.largest-bar-by-work')!;
      const [low, high] = outcome.state === 'known' ? outcome.quantity.interval! : [Number.NaN, Number.NaN];
      // What the trade names for the class lies within the interval of what the blow does.
      expect(rival).toBeGreaterThan(low);
      expect(rival).toBeLessThan(high);
      expect(bar / rival).toBeLessThan(1.4);
      expect(numberAt(ledger, 'capacity.reduction-per-blow')).toBeGreaterThan(0.008);
      expect(numberAt(ledger, 'capacity.reduction-per-blow')).toBeLessThan(0.08);
      expect(numberAt(ledger, 'capacity.blows-per-heat')).toBeGreaterThan(30);
      expect(numberAt(ledger, 'capacity.blows-per-heat')).toBeLessThan(300);
      for (const value of ledger.values.values()) if (value.outcome.state === 'known') expect(Number.isFinite(value.outcome.quantity.value + value.outcome.quantity.uncertainty), value.key).toBe(true);
    }
  });

  test('a strike test stands beside the estimate: a bar thinned as the estimate says reads near it, one thinned far more reads far above it', () => {
    const ratio = (thickness: string): number => {
      const log = new LogOf('50 lb', 'coil-and-toggle').read('ram.mass', '54 lb').read('anvil.mass', '620 lb').read('running.rate', '322 blows/min').read('crank.throw', '2 in');
      for (const corner of ['front-left', 'front-right', 'rear-left', 'rear-right']) log.read(`running.test-bar-thickness@${corner}`, thickness);
      const { ledger } = workedLog(log);
      workOutCapacity(ledger, { seed: 1 });
      expect(ledger.values.get('capacity.strike-test-energy')!.words).toContain('record the length');
      return numberAt(ledger, 'capacity.strike-test-ratio');
    };
    expect(ratio('0.83 in')).toBeGreaterThan(0.8);
    expect(ratio('0.83 in')).toBeLessThan(1.25);
    expect(ratio('0.587 in')).toBeGreaterThan(3);
  });

  test('energy from the motion of the hammer takes the place of the estimate', () => {
    const [one] = fiveHammers();
    workOutCapacity(one!.ledger, { seed: 1, blowEnergy: { value: 420, uncertainty: 30 } });
    expect(numberAt(one!.ledger, 'capacity.blow-energy')).toBe(420);
    expect(one!.ledger.values.get('capacity.blow-energy')!.formula).toBe('motion of this hammer, simulated');
  });
});

describe('a hammer of which little was read', () => {
  test('keeps the rule of its class and says what is missing for the rest', () => {
    const { ledger } = workedLog(new LogOf('50 lb', 'coil-and-toggle'));
    workOutCapacity(ledger, { seed: 1 });
    expect(ledger.values.get('capacity.largest-bar-by-work')!.outcome).toEqual({ state: 'not-known', missing: ['upper-die.face-width', 'lower-die.face-width'] });
    expect(numberAt(ledger, 'capacity.largest-bar')).toBe(numberAt(ledger, 'capacity.largest-bar-by-class'));
    expect(ledger.values.get('capacity.strike-test-energy')!.outcome).toEqual({ state: 'not-known', missing: ['running.test-bar-thickness'] });
  });

  test('a class below and a class above every table is answered without a number that is none', () => {
    for (const [ram, family] of [['7 lb', 'helve'], ['3000 lb', 'bow-spring']] as const) {
      const { ledger } = workedLog(new LogOf(ram, family).read('upper-die.width', '2 in').read('lower-die.width', '2 in').read('crank.throw', '2 in').read('running.test-bar-thickness@front-left', '7 in'));
      workOutCapacity(ledger, { seed: 1 });
      for (const value of ledger.values.values()) if (value.outcome.state === 'known') expect(Number.isFinite(value.outcome.quantity.value + value.outcome.quantity.uncertainty), value.key).toBe(true);
      expect(ledger.values.get('capacity.strike-test-energy')!.outcome).toMatchObject({ state: 'outside-validity', because: expect.stringMatching(/thickness cannot be so/) });
    }
  });
});
