import { describe, expect, it } from 'vitest';
import { checkSpec, doubtOfAssumed, restGapOf, runHammer, usualHammer, withMeasured } from '../../src/derived/motion/index.ts';

const KINDS = ['coil-toggle', 'bow-strap', 'helve'] as const;

describe('the usual hammer of a ram mass', () => {
  it('can be run and strikes cleanly, of every family and size from 10 to 250 kg', () => {
    for (const kind of KINDS)
      for (const mass of [10, 12, 18, 25, 40, 50, 60, 113, 250]) {
        const { spec } = usualHammer(mass, kind);
        expect(checkSpec(spec)).toEqual([]);
        const r = runHammer(spec, { duration: 6, relative: 1e-5 });
        if (r.outcome !== 'ran') throw new Error(JSON.stringify(r));
        console.log(`${kind} ${mass} kg: ${r.beatClass}, ${(r.rate * 60).toFixed(0)} a minute, stroke ${(r.stroke * 1e3).toFixed(0)} mm, ${r.blowEnergy.toFixed(0)} J, ${r.impactSpeed.toFixed(2)} m/s`);
        expect(r.beatClass).toBe('clean');
        expect(r.missed).toBe(0);
      }
  });
  it('grows in throw, gap and energy and slows in speed with its mass', () => {
    let before = usualHammer(8).spec;
    for (const mass of [10, 14, 20, 30, 45, 60, 120, 240]) {
      const { spec } = usualHammer(mass);
      expect(spec.throw).toBeGreaterThan(before.throw);
      expect(restGapOf(spec)).toBeGreaterThan(restGapOf(before));
      expect(spec.driveSpeed).toBeLessThan(before.driveSpeed);
      before = spec;
    }
    // A cube-root growth of the throw beyond the table, as of alike castings.
    expect(usualHammer(400).spec.throw / usualHammer(50).spec.throw).toBeCloseTo(2, 0);
  });
  it('gives a range for every assumed value but the treadle, holding the value, and none for what was measured', () => {
    for (const kind of KINDS) {
      const usual = usualHammer(25, kind);
      const ranges = doubtOfAssumed(usual);
      expect(ranges.map((r) => r.field).sort()).toEqual(usual.assumed.filter((f) => f !== 'treadle').sort());
      for (const r of ranges) {
        expect(r.low).toBeLessThanOrEqual(r.value);
        expect(r.high).toBeGreaterThanOrEqual(r.value);
        expect(r.high).toBeGreaterThan(r.low);
      }
    }
    const fields = doubtOfAssumed(withMeasured(usualHammer(25), { throw: 0.051 })).map((r) => r.field);
    expect(fields).not.toContain('throw');
    expect(fields).toContain('rodLength');
  });
});
