import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSpec, namesOf, runHammer, usualHammer, withMeasured } from '../../src/derived/motion/index.ts';
import type { MotionSpec } from '../../src/derived/motion/index.ts';

const b = usualHammer(25).spec;

/** A copy with one dotted value replaced. */
function put(spec: MotionSpec, field: string, value: unknown): MotionSpec {
  const copy = structuredClone(spec) as unknown as Record<string, unknown>;
  const keys = field.split('.');
  let at = copy;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
  at[keys[keys.length - 1]!] = value;
  return copy as unknown as MotionSpec;
}

/** Every number anywhere in a value. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (value instanceof Float64Array) return [...value].map((v, i) => [`${path}[${i}]`, v]);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => numbersIn(v, `${path}.${k}`));
}

describe('a specification that cannot be', () => {
  for (const field of namesOf(b))
    it(`names ${field} when it is no number, far too large, or far too small`, () => {
      for (const value of [NaN, Infinity, -Infinity, 1e30, -1e30, 'six', undefined, null]) {
        const r = runHammer(put(b, field, value));
        if (r.outcome !== 'refused') throw new Error(`${field} = ${String(value)}: ${r.outcome}`);
        expect(r.problems.some((p) => p.field === field)).toBe(true);
        for (const p of r.problems) expect(p.sentence).toMatch(/: \S/);
      }
    });
  it('names the speed that is zero, the rod that cannot pass the crank, the spring that is slack or cannot carry the ram', () => {
    const field = (spec: MotionSpec): string => {
      const r = runHammer(spec);
      return r.outcome === 'refused' ? r.problems[0]!.field : r.outcome;
    };
    expect(field({ ...b, driveSpeed: 0 })).toBe('driveSpeed');
    expect(field({ ...b, rodLength: 0.05 })).toBe('rodLength');
    expect(field(put(b, 'suspension.sag', 0.05))).toBe('suspension.preCompression');
    expect(field(put(b, 'suspension.rate', 600))).toBe('suspension.preCompression');
    expect(field(put(b, 'suspension.travel', 0.04))).toBe('suspension.travel');
    expect(field(put(b, 'suspension.link', 0.05))).toBe('suspension.link');
    expect(field({ ...b, workThickness: 0.3 })).toBe('workThickness');
    expect(field({ ...b, frameHeight: 3 })).toBe('frameHeight');
  });
  it('the options too', () => {
    for (const options of [{ duration: NaN }, { duration: 1e9 }, { relative: 0 }, { sampleEvery: 0 }]) expect(runHammer(b, options).outcome).toBe('refused');
  });
});

describe('whatever passes', () => {
  it('is run without a number that is not finite, without a throw and without end', () => {
    const fields = namesOf(b);
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(
        fc.constantFrom('coil-toggle', 'bow-strap', 'helve'),
        fc.array(fc.tuple(fc.nat(200), fc.integer({ min: -1200, max: 1200 }).map((v) => v / 2000)), { minLength: 1, maxLength: 8 }),
        (kind, changes) => {
          let spec = usualHammer(25, kind as 'coil-toggle').spec;
          const names = namesOf(spec);
          for (const [pick, power] of changes) {
            const field = names[pick % names.length]!;
            const now = field.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], spec) as number;
            spec = put(spec, field, now * 10 ** power);
          }
          const r = runHammer(spec, { duration: 2, relative: 1e-4 });
          seen.set(r.outcome === 'ran' ? r.beatClass : r.outcome, (seen.get(r.outcome === 'ran' ? r.beatClass : r.outcome) ?? 0) + 1);
          for (const [path, value] of numbersIn(r)) if (!Number.isFinite(value)) throw new Error(`${path} is ${value}`);
          return true;
        },
      ),
      { numRuns: 600, seed: 3 },
    );
    console.log([...seen].map(([k, v]) => `${k} ${v}`).join(', '), `of ${fields.length} values`);
    expect(seen.size).toBeGreaterThan(3);
  });
  it('leaves its question untouched and answers the same each time, to the last bit', () => {
    const freeze = <T>(v: T): T => {
      if (typeof v === 'object' && v !== null) Object.values(v).forEach(freeze);
      return Object.freeze(v);
    };
    const spec = freeze(structuredClone(b));
    const once = JSON.stringify(runHammer(spec), (_, v: unknown) => (v instanceof Float64Array ? [...v] : v));
    for (let n = 0; n < 3; n++) expect(JSON.stringify(runHammer(spec), (_, v: unknown) => (v instanceof Float64Array ? [...v] : v))).toBe(once);
  });
});

describe('measured values', () => {
  it('take the place of assumed ones and are struck off the list', () => {
    const base = usualHammer(25);
    expect(base.assumed.length).toBe(namesOf(base.spec).length);
    const m = withMeasured(base, { throw: 0.052, suspension: { rate: 34e3 }, restGap: 0.04 });
    expect(m.spec.throw).toBe(0.052);
    expect(m.spec.suspension).toMatchObject({ kind: 'coil-toggle', rate: 34e3, link: 0.1 });
    for (const name of ['throw', 'suspension.rate', 'frameHeight']) expect(m.assumed).not.toContain(name);
    expect(m.assumed).toContain('rodLength');
    expect(checkSpec(m.spec)).toEqual([]);
    const r = runHammer(m.spec, { assumed: m.assumed });
    expect(r.outcome === 'ran' && r.assumed).toBe(m.assumed);
  });
});
