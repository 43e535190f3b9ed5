import { expect, it } from 'vitest';
import { runHammer, usualHammer } from '../../src/derived/motion/index.ts';
import type { MotionSpec } from '../../src/derived/motion/index.ts';

// Set beforehand: the account closes to 0.01 % of the work put in, relative tolerance 1e-6, ten seconds, stops included.
const b = usualHammer(25).spec;
const cases: readonly (readonly [string, MotionSpec])[] = [
  ['middle size, hot work', b],
  ['much throw: joint and upper stop', { ...b, throw: b.throw + 0.02 }],
  ['thick work, joint knock', { ...b, workThickness: 0.045 }],
  ['short dies: the linkage takes the blow', { ...b, stackLoss: 0.035 }],
  ['cold dies, fast: gallop', { ...b, workThickness: 0, contact: { kind: 'fixed', restitution: 0.6 }, driveSpeed: 1.2 * b.driveSpeed }],
  ['dead thick work, slow: the die stays down', { ...b, driveSpeed: 0.75 * b.driveSpeed, workThickness: 0.045, contact: { kind: 'fixed', restitution: 0.05 } }],
  ['worn pins, coil going solid, yielding work', { ...b, throw: b.throw + 0.008, lostMotion: 0.004, suspension: { ...b.suspension, travel: 0.075 } as MotionSpec['suspension'], contact: { kind: 'yielding', flowStress: 9e7, area: 6e-4, structureStiffness: 4e8, cap: 0.4 } }],
  ['anvil on its foundation', { ...b, anvil: { mass: 300, stiffness: 3e7, damping: 2e4 } }],
  ['bow and straps', usualHammer(25, 'bow-strap').spec],
  ['helve', usualHammer(25, 'helve').spec],
];
for (const [name, spec] of cases)
  it(`closes: ${name}`, () => {
    const r = runHammer(spec, { duration: 10, relative: 1e-6, tryEither: false });
    if (r.outcome !== 'ran') throw new Error(JSON.stringify(r));
    console.log(`${name}: ${r.beatClass}; residual ${(100 * r.audit.share).toExponential(1)} % of ${r.audit.input.toFixed(0)} J; stops ${r.audit.stops.toFixed(0)} J, blows ${r.audit.blows.toFixed(0)} J`);
    expect(r.audit.share).toBeLessThan(1e-4);
    for (const part of [r.audit.clutch, r.audit.bearing, r.audit.guide, r.audit.viscous, r.audit.pins, r.audit.ground, r.audit.blows]) expect(part).toBeGreaterThanOrEqual(0);
    expect(r.audit.stops).toBeGreaterThan(-1e-3);
  });
