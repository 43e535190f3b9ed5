import { describe, expect, test } from 'vitest';
import { responseOf } from '../../src/derived/ground/response.ts';
import { groundStiffness, type GroundInput, type Underneath } from '../../src/derived/ground/index.ts';
import { viscosityOfGrade } from '../../src/derived/oiling/index.ts';
import { tableCurrent, type Phase } from '../../src/derived/power/index.ts';
import type { Ranged } from '../../src/derived/capacity/index.ts';
import { byFigure, digits, rowsOf, runRows } from '../published/row.ts';

const exactly = (value: number) => ({ value, uncertainty: 0 });
const known = (one: Ranged | undefined): number => (one?.state === 'known' ? one.value : Number.NaN);

describe('published figures, called through the rooms', () => {
  test('a hammer on a pad on a block: both modes, and the lower alone as the book prints it', () => {
    const G = 9.81;
    // 10 m² of block, where the coefficient of the table holds as it stands.
    const input: GroundInput = {
      kind: 'own-block', length: 4, width: 2.5, thickness: 2, baseLength: 2.5, baseWidth: 2.2, machineMass: exactly(1000e3 / G), anvilMass: exactly(1000e3 / G), anvilSeparate: false, ramMass: exactly(50e3 / G),
      impactSpeed: exactly(6.2), restitution: exactly(0.5), padStiffness: exactly(46e8),
    };
    const under: Underneath = { state: 'known', block: { length: 4, width: 2.5, thickness: 2, density: { kind: 'certain', value: 3052e3 / G / 20 }, words: '' }, pad: { perArea: { kind: 'certain', value: 1 }, words: '' }, taken: [] };
    expect(groundStiffness(73.2e7, 10)).toBeCloseTo(73.2e8, -2);
    const response = responseOf(input, under, { kind: 'certain', value: 73.2e7 }, 1, 100);
    runRows('two masses, through the room', [
      ...rowsOf('Geotechnical Engineering, ex. 20.11, pp. 871-872 (issuhub.com 4772)', 'read', response, [['anvil speed, m/s', '.443'], ['lower, Hz', '19.92'], ['upper, Hz', '41.43'], ['block, lower mode alone, mm', '1.00'], ['anvil, lower mode alone, mm', '1.54']]),
      ...rowsOf('the same system, both modes', 'recomputed', response, [['anvil, both, mm', '2.499', digits('2.499', 2)], ['block, both, mm', '1.486', digits('1.486', 2)]]),
    ], byFigure<typeof response>({
      'anvil speed, m/s': (one) => known(one.startSpeed), 'lower, Hz': (one) => known(one.lowerFrequency), 'upper, Hz': (one) => known(one.upperFrequency), 'block, lower mode alone, mm': (one) => known(one.blockLowerMode) * 1000,
      'anvil, lower mode alone, mm': (one) => known(one.machineLowerMode) * 1000, 'anvil, both, mm': (one) => known(one.machine) * 1000, 'block, both, mm': (one) => known(one.block) * 1000,
    }));
  });

  test('currents of the code table, conductors and breaker', () => {
    type Motor = { hp: number; volts: number; phase: Phase };
    const current = ({ hp, volts, phase }: Motor) => tableCurrent({ phase, power: hp * 745.6998715822702, voltage: volts, runningCurrents: [], converter: 'none' });
    const amperes = (pick: 'current' | 'conductors' | 'breaker') => (motor: Motor): number => {
      const found = current(motor);
      return found.state === 'known' ? found[pick] : Number.NaN;
    };
    const of = (hp: number, volts: number, phase: Phase, figure: string, printed: string) => rowsOf<Motor>('NEC tables 430.248 and 430.250, 430.22, 430.52', 'read', { hp, volts, phase }, [[figure, printed]]);
    runRows('currents for the electrician', [
      ...of(2, 230, 'three', 'A', '6.8'), ...of(5, 230, 'three-from-converter', 'A', '15.2'), ...of(2, 230, 'single', 'A', '12'), ...of(3, 208, 'three', 'A', '10.6'), ...of(7.5, 460, 'three', 'A', '11'),
      ...of(5, 230, 'three', 'conductors, A', '19.0'), ...of(5, 230, 'three', 'breaker, A', '38'),
    ], byFigure<Motor>({ A: amperes('current'), 'conductors, A': amperes('conductors'), 'breaker, A': amperes('breaker') }));
    expect(current({ hp: 2, volts: 240, phase: 'single' })).toMatchObject({ state: 'known', column: 230, note: expect.stringContaining('240 V; the 230 V column') });
    expect(current({ hp: 3, volts: 400, phase: 'three' })).toMatchObject({ state: 'outside-validity' });
    expect(current({ hp: 4, volts: 230, phase: 'three' })).toMatchObject({ state: 'outside-validity', because: expect.stringContaining('the table has') });
  });

  test('a grade has its number at 40 °C, thins with heat, and grades keep their order', () => {
    const at = (grade: 32 | 46 | 68 | 100, celsius: number): number => {
      const found = viscosityOfGrade(grade, celsius + 273.15);
      return found.state === 'known' ? found.viscosity * 1e6 : Number.NaN;
    };
    runRows('ISO 3448 grades at 40 °C', ([32, 46, 68, 100] as const).flatMap((grade) => rowsOf('ISO 3448', 'read', grade, [['mm²/s', String(grade)]])), (grade) => at(grade, 40));
    for (const grade of [32, 46, 68, 100] as const) for (const celsius of [-10, 0, 20, 60, 90]) expect(at(grade, celsius)).toBeGreaterThan(at(grade, celsius + 5));
    for (const celsius of [0, 40, 90]) expect([32, 46, 68, 100].map((grade) => at(grade as 32, celsius))).toEqual([32, 46, 68, 100].map((grade) => at(grade as 32, celsius)).sort((a, b) => a - b));
  });
});
