import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ECCENTRICITIES, RAIMONDI_BOYD, frictionPower, frictionTorque, meanPressure, petroffFriction, raimondiBoyd, shortBearingAttitude, shortBearingEccentricity, shortBearingNumber, sommerfeldNumber,
} from '../../../src/methods/elements/index.ts';
import { byFigure, digits, rowsOf, runRows, type Row } from '../row.ts';
import { degree, hp, inch, known, lbf, psi } from '../units.ts';
import { solveReynolds, type Solved } from './reynolds-solution.ts';

const TABLE = 'Raimondi and Boyd, ASLE Trans. 1, 1958, full bearing (from memory)';

describe('oil film of a full bearing', () => {
  test('the worked bearing of the textbook', () => {
    const inputs = { viscosity: 4e-6, N: 30, W: 500, r: 0.75, c: 0.0015, l: 1.5 };
    type Bearing = typeof inputs;
    const journal = (x: Bearing) => ({ radius: x.r * inch, radialClearance: x.c * inch, length: x.l * inch, viscosity: x.viscosity * psi, turnsPerSecond: x.N, load: x.W * lbf });
    const film = (x: Bearing) => known(raimondiBoyd(sommerfeldNumber(journal(x)), x.l / (2 * x.r)));
    const torque = (x: Bearing) => frictionTorque(journal(x), film(x).friction);
    // Read from charts by the book: two figures, to about 3 %, and the angle to about 2 degrees.
    const chart = { relative: 0.03 };
    runRows('worked bearing', rowsOf("Shigley's Mechanical Engineering Design, ex. 12-1 to 12-4 (from memory)", 'from memory', inputs, [
      ['mean pressure, psi', '222'], ['Sommerfeld number', '0.135'], ['least film ratio', '0.42', chart], ['least film, in', '0.00063', chart], ['eccentricity', '0.58', chart], ['attitude, degrees', '53', { absolute: 2 }],
      ['friction variable', '3.50', chart], ['coefficient of friction', '0.0070', chart], ['torque, in lbf', '2.62', chart], ['flow variable', '4.28', chart],
      // Remembered both as 0.655 and as 0.68; the second is the table's own value at S = 0.121, so it cannot be that at 0.135.
      ['side flow', '0.655', chart], ['pressure ratio', '0.42', chart],
    ]), byFigure({
      'mean pressure, psi': (x) => meanPressure(journal(x)) / psi, 'Sommerfeld number': (x) => sommerfeldNumber(journal(x)), 'least film ratio': (x) => film(x).leastFilmRatio,
      'least film, in': (x) => film(x).leastFilmRatio * x.c, eccentricity: (x) => film(x).eccentricity, 'attitude, degrees': (x) => film(x).attitude / degree, 'friction variable': (x) => film(x).friction,
      'coefficient of friction': (x) => (film(x).friction * x.c) / x.r, 'torque, in lbf': (x) => torque(x) / (inch * lbf), 'flow variable': (x) => film(x).flow,
      'side flow': (x) => film(x).sideFlow ?? Number.NaN, 'pressure ratio': (x) => film(x).pressureRatio ?? Number.NaN,
    }));
    // A loss of 0.125 hp is quoted for this torque; 2.62 in lbf at 30 turns a second is 0.0749 hp.
    const loss = frictionPower(journal(inputs), film(inputs).friction) / hp;
    expect(loss).toBeCloseTo((2 * Math.PI * 30 * torque(inputs)) / hp, 12);
    expect(Math.abs(loss / 0.0749 - 1)).toBeLessThan(0.03);
  });

  test('a bearing of the table gives back the table', () => {
    type Place = { readonly column: 'one' | 'half'; readonly lengthOverDiameter: number; readonly sommerfeld: number };
    const rows: Row<Place>[] = [];
    const add = (column: 'one' | 'half', lengthOverDiameter: number, S: readonly string[], values: Readonly<Record<string, readonly string[]>>): void => {
      for (const [figure, printed] of Object.entries(values)) printed.forEach((value, i) => rows.push({ source: `${TABLE}, l/d ${lengthOverDiameter}`, status: 'from memory', figure, inputs: { column, lengthOverDiameter, sommerfeld: Number(S[i]) }, expected: Number(value), tolerance: digits(value) }));
    };
    add('one', 1, ['1.33', '.631', '.264', '.121', '.0446', '.0188'], {
      eccentricity: ['.1', '.2', '.4', '.6', '.8', '.9'], 'attitude, degrees': ['79.5', '74.0', '63.1', '50.6', '36.2', '26.5'], friction: ['26.4', '12.8', '5.79', '3.22', '1.70', '1.05'],
      'pressure ratio': ['.540', '.529', '.484', '.415', '.313', '.247'],
    });
    // Attitude here is remembered to a tenth of a degree, in another memory to a hundredth; they differ by half of the tenth.
    add('half', 0.5, ['.779', '.319', '.0923'], { eccentricity: ['.4', '.6', '.8'], 'attitude, degrees': ['61.5', '48.1', '33.3'] });
    const film = (x: Place) => known(raimondiBoyd(x.sommerfeld, x.lengthOverDiameter));
    runRows('table of the finite bearing', rows.map((row) => (row.figure === 'attitude, degrees' ? { ...row, tolerance: { absolute: 0.0501 } } : row)), byFigure({
      eccentricity: (x) => film(x).eccentricity, 'attitude, degrees': (x) => film(x).attitude / degree, friction: (x) => film(x).friction, 'pressure ratio': (x) => film(x).pressureRatio ?? Number.NaN,
    }));
  });

  test('every column of the table against Reynolds equation on a grid', () => {
    type Place = { readonly column: keyof typeof RAIMONDI_BOYD; readonly row: number };
    const solved = new Map<string, Solved>();
    const solution = (lengthOverDiameter: number, row: number): Solved => {
      const key = `${lengthOverDiameter} ${row}`;
      const found = solved.get(key) ?? solveReynolds(ECCENTRICITIES[row]!, lengthOverDiameter);
      solved.set(key, found);
      return found;
    };
    const rows: Row<Place>[] = [];
    for (const [column, lengthOverDiameter] of [['one', 1], ['half', 0.5], ['quarter', 0.25]] as const) {
      ECCENTRICITIES.forEach((eccentricity, row) => {
        const s = solution(lengthOverDiameter, row);
        const where = `l/d ${lengthOverDiameter}, ε ${eccentricity}`;
        const add = (figure: string, expected: number, tolerance: Row<Place>['tolerance']): void => void rows.push({ source: `Reynolds' equation, finite volumes, ${where}`, status: 'recomputed', figure, inputs: { column, row }, expected, tolerance });
        // At 0.97 the pressure peak spans a few cells and the table itself comes from a coarse grid of 1958.
        const share = eccentricity > 0.95 ? 0.05 : 0.02;
        add('sommerfeld', s.sommerfeld, { relative: share });
        add('attitudeDegrees', s.attitudeDegrees, { absolute: 0.6 });
        add('friction', s.friction, { relative: share });
        add('flow', s.flow, { relative: 0.01 });
        add('sideFlow', s.sideFlow, { relative: 0.01 });
        add('pressureRatio', s.pressureRatio, { relative: eccentricity > 0.95 ? 0.06 : 0.03 });
      });
    }
    runRows('finite bearing against its equation', rows, ({ column, row }, { figure }) => RAIMONDI_BOYD[column][figure as keyof (typeof RAIMONDI_BOYD)['one']][row]!);
  });

  test('the column of the endless bearing against Reynolds equation on a grid', () => {
    const rows = RAIMONDI_BOYD.endless.sommerfeld.flatMap((_, row): Row<number>[] => {
      const s = solveReynolds(ECCENTRICITIES[row]!, Number.POSITIVE_INFINITY, 360, 1);
      const add = (figure: string, expected: number, relative: number): Row<number> => ({ source: `Reynolds' equation, endless, ε ${ECCENTRICITIES[row]}`, status: 'recomputed', figure, inputs: row, expected, tolerance: { relative } });
      return [add('sommerfeld', s.sommerfeld, 0.02), add('attitudeDegrees', s.attitudeDegrees, 0.01), add('friction', s.friction, 0.02), add('pressureRatio', s.pressureRatio, 0.03)];
    });
    runRows('endless bearing against its equation', rows, (row, { figure }) => RAIMONDI_BOYD.endless[figure as keyof (typeof RAIMONDI_BOYD)['one']][row]!);
  });

  test('between rows and columns against Reynolds equation on a grid', () => {
    type Place = { readonly sommerfeld: number; readonly lengthOverDiameter: number };
    const rows: Row<Place>[] = [];
    for (const lengthOverDiameter of [0.3, 0.4, 0.6, 0.75, 0.9, 1, 1.25, 1.5, 2, 3]) {
      for (const eccentricity of [0.15, 0.3, 0.5, 0.7, 0.85]) {
        const s = solveReynolds(eccentricity, lengthOverDiameter, 360, lengthOverDiameter > 1 ? 32 : 16);
        const add = (figure: string, expected: number, tolerance: Row<Place>['tolerance']): void => void rows.push({ source: `Reynolds' equation, l/d ${lengthOverDiameter}, ε ${eccentricity}`, status: 'recomputed', figure, inputs: { sommerfeld: s.sommerfeld, lengthOverDiameter }, expected, tolerance });
        add('eccentricity', eccentricity, { absolute: 0.02 });
        add('attitude, degrees', s.attitudeDegrees, { absolute: 2 });
        add('friction', s.friction, { relative: 0.04 });
        add('flow', s.flow, { relative: 0.04 });
        if (lengthOverDiameter <= 1) add('side flow', s.sideFlow, { relative: 0.04 });
        if (lengthOverDiameter <= 1) add('pressure ratio', s.pressureRatio, { relative: 0.04 });
      }
    }
    const film = (x: Place) => known(raimondiBoyd(x.sommerfeld, x.lengthOverDiameter));
    runRows('between rows and columns', rows, byFigure({
      eccentricity: (x) => film(x).eccentricity, 'attitude, degrees': (x) => film(x).attitude / degree, friction: (x) => film(x).friction, flow: (x) => film(x).flow,
      'side flow': (x) => film(x).sideFlow ?? Number.NaN, 'pressure ratio': (x) => film(x).pressureRatio ?? Number.NaN,
    }));
  });

  test('a heavier load brings the shaft nearer, at every length', () => {
    fc.assert(fc.property(fc.double({ min: 0.25, max: 3, noNaN: true }), fc.double({ min: 0.02, max: 0.3, noNaN: true }), (q, S) => {
      const light = raimondiBoyd(S, q);
      const heavy = raimondiBoyd(S / 1.05, q);
      if (light.state !== 'known' || heavy.state !== 'known') return;
      expect(heavy.eccentricity).toBeGreaterThan(light.eccentricity);
      expect(heavy.friction).toBeLessThan(light.friction);
    }));
    expect(raimondiBoyd(0.1, 4)).toMatchObject({ state: 'outside-validity', what: 'length over diameter' });
    expect(raimondiBoyd(100, 1)).toMatchObject({ state: 'outside-validity', what: 'Sommerfeld number' });
    expect(() => raimondiBoyd(Number.NaN, 1)).toThrow(RangeError);
  });

  test('short bearing, and both theories where they meet', () => {
    runRows('short bearing', [['0.4', '.170461'], ['0.6', '.062530'], ['0.8', '.013885']].map(([e, printed]): Row<number> =>
      ({ source: 'Ocvirk, NACA TN 2808, 1952 (formula from memory)', status: 'from memory', figure: 'S (l/d)²', inputs: Number(e), expected: Number(printed), tolerance: digits(printed!) })), shortBearingNumber);
    fc.assert(fc.property(fc.double({ min: 1e-6, max: 0.9999, noNaN: true }), (e) => {
      expect(Math.abs(shortBearingEccentricity(shortBearingNumber(e)) - e)).toBeLessThan(1e-9);
    }));
    // At l/d 1/4 and light load the table must agree with the short bearing, within what the short theory leaves out.
    const light = known(raimondiBoyd(16.2, 0.25));
    expect(Math.abs(light.eccentricity / shortBearingEccentricity(16.2 / 16) - 1)).toBeLessThan(0.06);
    expect(Math.abs(light.attitude - shortBearingAttitude(0.1)) / degree).toBeLessThan(2);
    // And its friction must tend to Petroff's.
    expect(light.friction / petroffFriction(16.2)).toBeGreaterThan(1);
    expect(light.friction / petroffFriction(16.2)).toBeLessThan(1.02);
  });
});
