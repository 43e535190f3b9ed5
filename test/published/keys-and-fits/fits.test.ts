import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fitOf, holeLimits, shaftDeviation, shaftLimits, toleranceUnit, toleranceWidth, toleranceWidthByFormula, type HoleCode, type ShaftCode, type ShaftLetter, type ToleranceGrade,
} from '../../../src/methods/elements/index.ts';
import { byFigure, rowsOf, runRows, type Row } from '../row.ts';
import { known, micrometre, mm } from '../units.ts';

const STEPS = [[10, 18], [18, 30], [30, 50], [50, 80], [80, 120]] as const;
/** ISO 286-1 works its formulae at the geometric mean of the two bounds of a step (from memory). */
const geometricMean = ([over, upTo]: readonly [number, number]): number => Math.sqrt(over * upTo) * mm;

describe('ISO 286', () => {
  test('widths of tolerance', () => {
    type Ask = { readonly size: number; readonly grade: ToleranceGrade };
    const widths: readonly (readonly [step: string, size: number, printed: Readonly<Partial<Record<ToleranceGrade, string>>>])[] = [
      ['18 to 30', 25, { 5: '9', 6: '13', 7: '21', 8: '33', 9: '52' }], ['30 to 50', 50, { 6: '16', 7: '25', 8: '39', 9: '62' }],
      ['50 to 80', 63, { 6: '19', 7: '30', 8: '46', 9: '74' }], ['80 to 120', 100, { 6: '22', 7: '35', 8: '54', 9: '87' }],
    ];
    const rows = widths.flatMap(([step, size, printed]) => Object.entries(printed).flatMap(([grade, value]) =>
      rowsOf<Ask>(`ISO 286-1, ${step} mm, several tables that agree`, 'read', { size, grade: Number(grade) as ToleranceGrade }, [[`IT${grade}, µm`, value]])));
    runRows('widths of tolerance', rows, ({ size, grade }) => known(toleranceWidth(size * mm, grade)).width / micrometre);
  });

  test('unit of tolerance', () => {
    runRows('unit of tolerance', rowsOf('ISO 286-1, 30 to 50 mm (formula from memory)', 'from memory', [30, 50] as const, [['i, µm', '1.5612'], ['10 i, µm', '15.6'], ['16 i, µm', '24.98'], ['25 i, µm', '39.0']]), byFigure({
      'i, µm': (x) => toleranceUnit(geometricMean(x)) / micrometre, '10 i, µm': (x) => toleranceWidthByFormula(geometricMean(x), 6) / micrometre,
      '16 i, µm': (x) => toleranceWidthByFormula(geometricMean(x), 7) / micrometre, '25 i, µm': (x) => toleranceWidthByFormula(geometricMean(x), 8) / micrometre,
    }));
  });

  test('every width of the table lies where its formula rounds to', () => {
    let worst = 0;
    for (const step of [[6, 10], ...STEPS, [120, 180]] as const) for (const grade of [5, 6, 7, 8, 9, 10, 11] as const) {
      const formula = toleranceWidthByFormula(geometricMean(step), grade) / micrometre;
      const off = Math.abs(known(toleranceWidth(step[1] * mm, grade)).width / micrometre - formula);
      worst = Math.max(worst, off / formula);
      // The standard rounds small widths to whole micrometres, not always the nearest, and large ones to preferred numbers, within 4 in 100.
      expect(off, `IT${grade} to ${step[1]} mm, ${formula}`).toBeLessThanOrEqual(Math.max(1, 0.04 * formula));
    }
    console.log(`widths against their formula: worst ${worst.toFixed(4)}`);
  });

  test('every deviation lies where its formula rounds to', () => {
    const D = (step: readonly [number, number]): number => Math.sqrt(step[0] * step[1]);
    // ISO 286-1, formulae from memory, micrometres with D in millimetres.
    const formulae: Readonly<Partial<Record<ShaftLetter, (d: number, step: readonly [number, number]) => number>>> = {
      d: (d) => -16 * d ** 0.44, e: (d) => -11 * d ** 0.41, f: (d) => -5.5 * d ** 0.41, g: (d) => -2.5 * d ** 0.34, h: () => 0, k: (d) => 0.6 * Math.cbrt(d), n: (d) => 5 * d ** 0.34,
      m: (_, step) => (known(toleranceWidth(step[1] * mm, 7)).width - known(toleranceWidth(step[1] * mm, 6)).width) / micrometre,
    };
    for (const step of STEPS) for (const [letter, formula] of Object.entries(formulae)) {
      const table = known(shaftDeviation(step[1] * mm, letter as ShaftLetter, 6)).deviation / micrometre;
      expect(Math.abs(table - formula(D(step), step)), `${letter} at ${step[1]} mm: ${table} against ${formula(D(step), step)}`).toBeLessThanOrEqual(1.01 + 0.01 * Math.abs(table));
    }
    // p lies on IT7 or up to five above; s from 50 mm on is IT7 + 0.4 D of its finer step.
    for (const step of STEPS) {
      const above = known(shaftDeviation(step[1] * mm, 'p', 6)).deviation / micrometre - known(toleranceWidth(step[1] * mm, 7)).width / micrometre;
      expect(above).toBeGreaterThanOrEqual(-1e-9);
      expect(above).toBeLessThanOrEqual(5 + 1e-9);
    }
    for (const step of [[50, 65], [65, 80], [80, 100], [100, 120]] as const) {
      const formula = known(toleranceWidth(step[1] * mm, 7)).width / micrometre + 0.4 * D(step);
      expect(Math.abs(known(shaftDeviation(step[1] * mm, 's', 6)).deviation / micrometre - formula)).toBeLessThan(1.01);
    }
  });

  test('fits', () => {
    type Ask = { readonly size: number; readonly hole: HoleCode; readonly shaft: ShaftCode };
    const bhandari: Ask = { size: 50, hole: 'H7', shaft: 's6' };
    const wide: Ask = { size: 132.5, hole: 'H6', shaft: 'h6' };
    const fit = (x: Ask) => known(fitOf(x.size * mm, x.hole, x.shaft));
    const rows: readonly Row<Ask>[] = [
      ...rowsOf('Bhandari, Design of Machine Elements, ex. 3.3, p. 70', 'transcribed', bhandari, [
        ['hole upper, µm', '25'], ['hole lower, µm', '0'], ['shaft upper, µm', '59'], ['shaft lower, µm', '43'], ['least interference, µm', '18'], ['most interference, µm', '59'],
      ]),
      ...rowsOf('notes on tolerances in an open repository', 'read', wide, [['hole upper, µm', '25'], ['hole lower, µm', '0']]),
    ];
    runRows('fits', rows, byFigure({
      'hole upper, µm': (x) => fit(x).hole.upper / micrometre, 'hole lower, µm': (x) => fit(x).hole.lower / micrometre, 'shaft upper, µm': (x) => fit(x).shaft.upper / micrometre, 'shaft lower, µm': (x) => fit(x).shaft.lower / micrometre,
      'least interference, µm': (x) => -fit(x).mostClearance / micrometre, 'most interference, µm': (x) => -fit(x).leastClearance / micrometre,
    }));
    expect(fit(bhandari).kind).toBe('interference');
    // Kinds of the usual fits for pins and bushes, at every size offered.
    for (const size of [8, 10, 10.1, 18, 25, 40, 50, 63, 80, 100, 120, 150, 180]) {
      for (const shaft of ['d9', 'e8', 'f7', 'g6', 'h6'] as const) expect(fit({ size, hole: 'H7', shaft }).kind, `H7/${shaft} ${size}`).toBe('clearance');
      for (const shaft of ['k6', 'm6', 'n6'] as const) expect(fit({ size, hole: 'H7', shaft }).kind, `H7/${shaft} ${size}`).toBe('transition');
      for (const shaft of ['p6', 'r6', 's6'] as const) expect(fit({ size, hole: 'H7', shaft }).kind, `H7/${shaft} ${size}`).toBe('interference');
    }
  });

  test('laws: a looser letter is looser, a hole mirrors its shaft, a fit spans both widths', () => {
    const size = fc.double({ min: 6.001, max: 180, noNaN: true });
    fc.assert(fc.property(size, (nominal) => {
      const looseToTight = (['d6', 'e6', 'f6', 'g6', 'h6', 'k6', 'm6', 'n6', 'p6', 'r6', 's6'] as const).map((shaft) => known(fitOf(nominal * mm, 'H7', shaft)).leastClearance);
      for (let i = 1; i < looseToTight.length; i += 1) expect(looseToTight[i]!).toBeLessThan(looseToTight[i - 1]!);
      for (const letter of ['d', 'e', 'f', 'g', 'h'] as const) {
        const hole = known(holeLimits(nominal * mm, `${letter.toUpperCase() as Uppercase<typeof letter>}8`));
        const shaft = known(shaftLimits(nominal * mm, `${letter}8`));
        expect(hole.lower).toBeCloseTo(-shaft.upper, 12);
        expect(hole.upper).toBeCloseTo(-shaft.lower, 12);
      }
      const fit = known(fitOf(nominal * mm, 'H7', 'g6'));
      expect(fit.mostClearance - fit.leastClearance).toBeCloseTo(known(toleranceWidth(nominal * mm, 7)).width + known(toleranceWidth(nominal * mm, 6)).width, 12);
    }));
    expect(fitOf(0.2, 'H7', 'g6').state).toBe('outside-validity');
    expect(fitOf(0.006, 'H7', 'g6').state).toBe('outside-validity');
    expect(() => shaftLimits(0.05, 'z6' as ShaftCode)).toThrow(RangeError);
  });
});
