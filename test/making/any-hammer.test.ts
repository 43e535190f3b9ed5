import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAKERS } from '../../src/derived/making/index.ts';
import { makingSheets } from '../../src/views/making/index.ts';
import { pictureOf } from './figures-of.ts';
import type { LogOf } from '../cases/log-of.ts';
import { bowReadings, bowWith, logWith, readings } from './random-hammer.ts';

/** Draws every part that can be, and counts them: finite sizes, known grounds, clean sheets. */
function drawAll(log: LogOf, system: 'inch' | 'metric'): number {
  const found = pictureOf(log, system);
  let drawn = 0;
  for (const make of Object.values(MAKERS)) {
    const part = make(found.values, found.known, { system, alsoMade: new Set(), floorCut: false });
    if (part.state !== 'to-make') continue;
    drawn += 1;
    expect(part.mass === undefined || part.mass > 0, `${part.id} weighs ${part.mass}`).toBe(true);
    for (const one of part.dimensions) {
      expect(Number.isFinite(one.quantity.value) && Number.isFinite(one.quantity.uncertainty), `${part.id} ${one.name}`).toBe(true);
      if (one.quantity.dimension === 'length') expect(one.quantity.value, `${part.id} ${one.name}`).toBeGreaterThanOrEqual(0);
      for (const key of one.from) {
        expect(found.values[key]?.outcome.state, `${part.id} ${one.name} from ${key}`).toBe('known');
        if (found.values[key]?.rests === 'assumed') expect(one.estimate || one.why.includes('estimate'), `${part.id} ${one.name} rests on ${key}`).toBe(true);
      }
    }
    for (const sheet of makingSheets(found, part)) expect(sheet).not.toMatch(/NaN|undefined|Infinity/);
  }
  return drawn;
}

const systems = fc.constantFrom('inch' as const, 'metric' as const);

test('whatever was read: a part with finite sizes and known grounds, or a plain reason; never a throw, never a figure from nowhere', () => {
  let drawn = 0;
  fc.assert(fc.property(readings, systems, fc.constantFrom('motor-flat-belt' as const, 'countershaft' as const), (given, system, kind) => {
    drawn += drawAll(logWith(given, kind), system);
  }), { numRuns: 40, seed: 5 });
  console.log(`parts drawn from random readings: ${drawn}`);
  expect(drawn).toBeGreaterThan(60);
});

test('whatever was read on a bow', () => {
  let drawn = 0;
  fc.assert(fc.property(bowReadings, systems, fc.constantFrom('main' as const, 'plain' as const), (given, system, leaf) => {
    drawn += drawAll(bowWith(given, leaf), system);
  }), { numRuns: 60, seed: 5 });
  console.log(`parts drawn from random bows: ${drawn}`);
  expect(drawn).toBeGreaterThan(20);
});
