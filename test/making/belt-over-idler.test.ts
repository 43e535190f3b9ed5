import { describe, expect, test } from 'vitest';
import { makeBelt, type PartKind } from '../../src/derived/making/index.ts';
import type { LogOf } from '../cases/log-of.ts';
import { dimension, inches, made, pictureOf } from './figures-of.ts';
import { inchHammer } from './hammers.ts';

const and = (...kinds: PartKind[]) => ({ system: 'inch' as const, floorCut: false, alsoMade: new Set<PartKind>(kinds) });

describe('a belt over an idler', () => {
  const over = (log: LogOf) => {
    const found = pictureOf(log.look('belt-idler.fitted', 'yes'));
    return made(makeBelt(found.values, found.known, and()));
  };

  test('has no length to cut until it is taped with the idler down', () => {
    const belt = over(inchHammer());
    expect(belt.dimensions.map((one) => one.name)).not.toContain('cut-length');
    expect(belt.unknowns.map((one) => one.key)).toEqual(['belt.run']);
    const taped = over(inchHammer().read('belt.run', '130 in').look('belt.material', 'rubber'));
    // The tape lies inside; the middle of the belt is 3.14 times its thickness longer.
    expect(inches(taped, 'cut-length')).toBeCloseTo(130 + (Math.PI * 3) / 16, 9);
  });

  test('is never cut shorter than the length drawn, and a rubber one has no grain side', () => {
    const found = pictureOf(inchHammer().look('belt.material', 'rubber'));
    const belt = made(makeBelt(found.values, found.known, and()));
    expect(dimension(belt, 'cut-length').tolerance.minus).toBe(0);
    expect(dimension(belt, 'cut-length').tolerance.plus).toBeGreaterThan(0);
    expect(belt.notes.join(' ')).not.toMatch(/grain/i);
  });
});
