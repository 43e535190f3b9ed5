import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { groundOf, groundInputOf, workOutGround, type Ground, type GroundInput } from '../../src/derived/ground/index.ts';
import { workOutMoving } from '../../src/derived/moving/index.ts';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { fiveHammers, notFinite, numberAt, workedLog } from '../capacity/hammers.ts';
import { LogOf } from '../cases/log-of.ts';

const input = (more: Partial<GroundInput> = {}): GroundInput => ({
  kind: 'own-block', length: 1.5, width: 1, thickness: 0.5, baseLength: 0.94, baseWidth: 0.55, machineMass: { value: 816, uncertainty: 80 }, anvilMass: { value: 280, uncertainty: 15 }, anvilSeparate: false, ramMass: { value: 24, uncertainty: 0.3 },
  impactSpeed: { value: 3.8, uncertainty: 0.4 }, restitution: { value: 0.25, uncertainty: 0.05 }, ...more,
});
const ground = (more: Partial<GroundInput> = {}): Ground => {
  const answer = groundOf(input(more), 1, 300);
  if (answer.state !== 'known') throw new Error(JSON.stringify(answer));
  return answer;
};
const value = (one: { readonly state: string; readonly value?: number }): number => one.value ?? Number.NaN;

describe('block and ground', () => {
  test('both amplitudes are given and named; the lower mode alone is never the larger', () => {
    const one = ground();
    expect(one.reported).toContain('both modes together');
    expect(one.bySoil.map(({ soil }) => soil.id)).toEqual(['weak', 'medium', 'strong', 'rock']);
    for (const { response } of one.bySoil) {
      expect(value(response.blockLowerMode)).toBeLessThanOrEqual(value(response.block));
      expect(value(response.machineLowerMode)).toBeLessThanOrEqual(value(response.machine));
      expect(value(response.lowerFrequency)).toBeLessThan(value(response.upperFrequency!));
    }
    const moves = one.bySoil.map(({ response }) => value(response.block));
    expect([...moves].sort((a, b) => b - a)).toEqual(moves);
    expect(one.blockMass).toBeCloseTo(1.5 * 1 * 0.5 * 2350, 3);
    expect(one.notKnown.join(' ')).toMatch(/soil.*pad.*gap between block and floor.*bolts.*damping/s);
  });

  test('a heavier block moves less, belting lets the machine move more, a named soil is answered alone', () => {
    expect(value(ground({ thickness: 1 }).overall.block)).toBeLessThan(value(ground().overall.block));
    expect(value(ground({ kind: 'belting' }).overall.machine)).toBeGreaterThan(value(ground({ kind: 'slab' }).overall.machine));
    const belting = ground({ kind: 'belting' });
    expect(belting.pad?.words).toContain('rubber');
    expect(value(belting.pad!.stress)).toBeLessThan(belting.pad!.allowed * 5);
    expect(ground({ kind: 'timber', thickness: 0.2 }).pad?.words).toContain('oak');
    expect(ground({ soil: 'medium' }).bySoil).toHaveLength(1);
    const { length: _l, width: _w, thickness: _t, ...bare } = input();
    const soil = groundOf({ ...bare, kind: 'soil' }, 1, 300);
    expect(soil).toMatchObject({ state: 'known' });
    expect('blockMass' in soil).toBe(false);
  });

  test('what is not known, does not apply or cannot be is three different answers', () => {
    const { thickness: _, ...without } = input();
    expect(groundOf(without, 1)).toEqual({ state: 'not-known', missing: ['foundation.thickness'] });
    expect(groundOf(input({ kind: 'not-known' }), 1)).toEqual({ state: 'not-known', missing: ['foundation.kind'] });
    expect(groundOf(input({ kind: 'trailer' }), 1)).toMatchObject({ state: 'does-not-apply' });
    expect(groundOf(input({ thickness: -1 }), 1)).toMatchObject({ state: 'refused', problems: [{ field: 'thickness' }] });
    expect(groundOf(input({ anvilMass: { value: 2000, uncertainty: 0 } }), 1)).toMatchObject({ state: 'refused', problems: [{ field: 'anvilMass', sentence: expect.stringContaining('cannot outweigh') }] });
  });

  test('rules stand side by side with their sources; a small block misses the industrial code and says so', () => {
    const rules = Object.fromEntries(ground({ edgeGap: 0.006, boltDiameter: 0.0127 }).rules.map((rule) => [rule.id, rule]));
    expect(rules['thickness-practice']).toMatchObject({ meets: true });
    expect(rules['thickness-code']).toMatchObject({ meets: false, source: expect.stringContaining('from memory') });
    expect(rules['edge-gap']).toMatchObject({ meets: false });
    expect(rules['bolts']).toMatchObject({ meets: false });
    expect(rules['block-over-anvil-code']).toMatchObject({ meets: true });
  });

  test('absurd input is refused or answered, never with a number that is none', () => {
    const wild = fc.oneof(fc.double(), fc.double({ min: 0, max: 3, noNaN: true }), fc.constantFrom(Number.NaN, Infinity, 0, -1, 1e-300, 1e300));
    const estimate = (near: number) => fc.oneof({ weight: 3, arbitrary: fc.constant({ value: near, uncertainty: near / 10 }) }, { weight: 1, arbitrary: fc.record({ value: wild, uncertainty: wild }) });
    const mostly = (near: number) => fc.oneof({ weight: 4, arbitrary: fc.constant(near) }, { weight: 1, arbitrary: wild });
    let answered = 0;
    fc.assert(fc.property(fc.record({ kind: fc.constantFrom('own-block' as const, 'slab' as const, 'timber' as const, 'belting' as const, 'soil' as const), length: mostly(1.5), width: mostly(1), thickness: mostly(0.5), machineMass: estimate(800), impactSpeed: estimate(4), padStiffness: estimate(1e9) }), (one) => {
      const answer = groundOf({ ...input(), ...one }, 2, 100);
      expect(notFinite(answer)).toEqual([]);
      if (answer.state === 'known') answered += 1;
    }), { numRuns: 150, seed: 81 });
    expect(answered).toBeGreaterThan(10);
  });
});

describe('the five invented hammers on their ground', () => {
  test('move by tenths of a millimetre, and a neighbour at thirty metres hardly feels them', () => {
    for (const { name, ledger, known } of fiveHammers()) {
      workOutMoving(ledger, known, 1);
      workOutGround(ledger, known, 1);
      const keys = [...ledger.values.keys()].filter((key) => key.startsWith('ground.'));
      console.log([name, ...keys.map((key) => {
        const { outcome } = ledger.values.get(key)!;
        return `  ${key}: ${outcome.state === 'known' ? formatQuantity(outcome.quantity, { system: 'metric' }) : JSON.stringify(outcome)}`;
      })].join('\n'));
      expect(numberAt(ledger, 'ground.block-amplitude')).toBeGreaterThan(0.03e-3);
      expect(numberAt(ledger, 'ground.block-amplitude')).toBeLessThan(1.2e-3);
      expect(numberAt(ledger, 'ground.lower-frequency')).toBeGreaterThan(10);
      expect(numberAt(ledger, 'ground.rest-pressure')).toBeLessThan(50e3);
      const found = groundInputOf(ledger, known);
      const answer = 'kind' in found ? groundOf(found, 1, 200) : undefined;
      if (answer?.state !== 'known') throw new Error(`${name}: ${JSON.stringify(answer)}`);
      console.log(answer.felt.map((felt) => `  at ${felt.distance} m ${(felt.least * 1000).toFixed(2)} to ${(felt.most * 1000).toFixed(2)} mm/s: ${felt.words}`).join('\n'));
      expect(answer.felt.find((felt) => felt.distance === 30)!.most).toBeLessThan(1e-3);
    }
  });

  test('a hammer of which nothing was read says what is missing', () => {
    const { ledger, known } = workedLog(new LogOf('50 lb', 'coil-and-toggle'));
    workOutMoving(ledger, known, 1);
    workOutGround(ledger, known, 1);
    expect(ledger.values.get('ground.block-mass')!.outcome).toEqual({ state: 'not-known', missing: ['frame.base-length', 'frame.base-width'] });
  });
});
