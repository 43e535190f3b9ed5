import { expect, test } from 'vitest';
import { EUROPEAN_SHEAR_MODULUS, shearModulusOfWire, wireStrength, type WireKind, type WireTable } from '../../../src/methods/elements/index.ts';
import { digits, runRows, type Row } from '../row.ts';
import { GPa, MPa, inch, known, ksi, mm } from '../units.ts';

interface Wire { readonly table: WireTable; readonly kind: WireKind; readonly d: number }
const strength = ({ table, kind, d }: Wire): number => known(wireStrength(table, kind, d * mm)).tensileStrength / MPa;

test('tensile strength of spring wire by the two published tables', () => {
  const row = (source: string, status: Row<Wire>['status'], table: WireTable, kind: WireKind, d: number, printed: string): Row<Wire> =>
    ({ source, status, figure: `${kind} ${d} mm, MPa`, inputs: { table, kind, d }, expected: Number(printed), tolerance: digits(printed) });
  const EARLY = 'licensing examination handbook table, engineeringprep.com';
  const LATE = 'Shigley, 7th ed. and later, Table 10-4';
  runRows('wire strength', [
    row(`${EARLY}/problems/141`, 'read', 'early', 'music', 7.25, '1492'),
    row(`${EARLY}/problems/387`, 'read', 'early', 'oil-tempered', 10, '1032'),
    row(LATE, 'read', 'late', 'music', 1, '2211'),
    row(LATE, 'read', 'late', 'chrome-vanadium', 1, '2005'),
    row(`${LATE} (from memory)`, 'from memory', 'late', 'oil-tempered', 1, '1855'),
    row(`${LATE} (from memory)`, 'from memory', 'late', 'hard-drawn', 1, '1783'),
  ], strength);
});

test('the late table is the same in inch and metric', () => {
  // The same table prints A in ksi with d in inches: 201, 147, 140, 169, 202. A wire must have one strength. The metric constants were rounded apart.
  const inchConstants: readonly (readonly [WireKind, number, number])[] = [['music', 201, 0.145], ['oil-tempered', 147, 0.187], ['hard-drawn', 140, 0.19], ['chrome-vanadium', 169, 0.168], ['chrome-silicon', 202, 0.108]];
  const rows = inchConstants.map(([kind, A, m]): Row<Wire & { readonly A: number; readonly m: number }> => {
    const d = 4;
    return { source: 'Shigley, Table 10-4, inch column (from memory)', status: 'from memory', figure: `${kind} 4 mm, MPa`, inputs: { table: 'late', kind, d, A, m }, expected: (A * ksi * ((d * mm) / inch) ** -m) / MPa, tolerance: { relative: 0.005 } };
  });
  runRows('wire strength, inch against metric', rows, strength);
});

test('outside the printed range there is no strength', () => {
  expect(wireStrength('late', 'music', 7.25 * mm)).toEqual({ state: 'outside-validity', from: 0.1e-3, to: 6.5e-3 });
  expect(known(wireStrength('early', 'music', 7.25 * mm)).rangePrinted).toBe(false);
  expect(() => wireStrength('late', 'music', Number.NaN)).toThrow();
});

test('the rival tables disagree by up to a fifth, and the later one is not the stronger everywhere', () => {
  const kinds: readonly WireKind[] = ['music', 'oil-tempered', 'hard-drawn', 'chrome-vanadium', 'chrome-silicon'];
  const shares = kinds.map((kind) => strength({ table: 'late', kind, d: 5 }) / strength({ table: 'early', kind, d: 5 }));
  console.log('late over early table at 5 mm:', kinds.map((kind, i) => `${kind} ${shares[i]!.toFixed(3)}`).join(', '));
  expect(Math.max(...shares)).toBeLessThan(1.25);
  expect(Math.min(...shares)).toBeGreaterThan(0.95);
  expect(Math.max(...shares)).toBeGreaterThan(1.05);
});

test('shear modulus by kind and thickness', () => {
  const rows = ([
    ['music', 0.03, '12'], ['music', 0.033, '11.85'], ['music', 0.063, '11.85'], ['music', 0.064, '11.75'], ['music', 0.125, '11.75'], ['music', 0.126, '11.6'],
    ['hard-drawn', 0.03, '11.7'], ['hard-drawn', 0.2, '11.4'], ['oil-tempered', 0.5, '11.2'],
  ] as const).map(([kind, d, printed]) => ({ source: 'Shigley, Table 10-5 (from memory)', status: 'from memory' as const, figure: `${kind} ${d} in, Mpsi`, inputs: { kind, d }, expected: Number(printed), tolerance: digits(printed) }));
  runRows('shear modulus', rows, ({ kind, d }) => shearModulusOfWire(kind, d * inch) / (1000 * ksi));
  expect(shearModulusOfWire('oil-tempered', 0.01) / GPa).toBeCloseTo(77.2, 1);
  expect(EUROPEAN_SHEAR_MODULUS.patented).toBeGreaterThan(EUROPEAN_SHEAR_MODULUS['oil-hardened']);
});
