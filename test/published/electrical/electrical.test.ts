import { expect, test } from 'vitest';
import {
  capacitanceFor, capacitorCurrent, converterCapacitance, converterIdlerPower, fullLoadCurrent, greatestBreakerRating, leastConductorCurrent, polesOf, rotorFrequency,
  rotorVoltage, slipOf, synchronousSpeed, UNBALANCE_LIMITS, voltageUnbalance,
} from '../../../src/methods/power/index.ts';
import { byFigure, rowsOf, runRows } from '../row.ts';
import { hp, known, rpm } from '../units.ts';

test('full-load currents', () => {
  const threePhase: readonly (readonly [number, string])[] = [
    [1, '4.8 4.6 4.2 2.1 1.7'], [1.5, '6.9 6.6 6.0 3.0 2.4'], [2, '7.8 7.5 6.8 3.4 2.7'], [3, '11 10.6 9.6 4.8 3.9'],
    [5, '17.5 16.7 15.2 7.6 6.1'], [7.5, '25.3 24.2 22 11 9'], [10, '32.2 30.8 28 14 11'],
  ];
  const singlePhase: readonly (readonly [number, string])[] = [[0.5, '4.9'], [1, '8'], [1.5, '10'], [2, '12'], [3, '17'], [5, '28'], [7.5, '40'], [10, '50']];
  const rows = [
    ...threePhase.flatMap(([power, printed]) => printed.split(' ').flatMap((amperes, i) => {
      const voltage = [200, 208, 230, 460, 575][i]!;
      return rowsOf('NEC 2008, table 430.250', 'read', { phases: 3 as 1 | 3, power: power * hp, voltage }, [[`${power} hp at ${voltage} V, A`, amperes]]);
    })),
    ...singlePhase.flatMap(([power, amperes]) => rowsOf('NEC, table 430.248', 'read', { phases: 1 as 1 | 3, power: power * hp, voltage: 230 }, [[`${power} hp single-phase, A`, amperes]])),
  ];
  runRows('full-load currents', rows, (plate) => known(fullLoadCurrent(plate)).current);
});

test('between the steps of the table there is no answer, and it says what is allowed', () => {
  const between = fullLoadCurrent({ phases: 3, power: 4 * hp, voltage: 230 });
  expect(between.state === 'outside-validity' && between.because).toMatch(/1, 1.5, 2, 3, 5, 7.5, 10 hp: 4/);
  const supply = fullLoadCurrent({ phases: 3, power: 5 * hp, voltage: 240 });
  expect(supply.state === 'outside-validity' && supply.because).toMatch(/200, 208, 230, 460, 575 V: 240/);
  // A plate of 1.5 kW stands for 2 hp only to within 2 %: 1492 W.
  expect(fullLoadCurrent({ phases: 3, power: 1500, voltage: 230 })).toMatchObject({ state: 'known', current: 6.8 });
  expect(known(fullLoadCurrent({ phases: 1, power: 2 * hp, voltage: 230 })).note).toMatch(/local code/);
});

test('wire, breaker, slip, unbalance and capacitors', () => {
  const inputs = { fullLoad: 15.2 };
  runRows('wire and breaker', rowsOf('NEC 430.22 and 430.52, 5 hp at 230 V', 'read', inputs, [['conductors, A', '19.0'], ['breaker, A', '38']]), byFigure<typeof inputs>({
    'conductors, A': (x) => leastConductorCurrent(x.fullLoad), 'breaker, A': (x) => greatestBreakerRating(x.fullLoad),
  }));
  const motor = { frequency: 60, poles: 6 };
  const slip = (x: typeof motor): number => slipOf(1100 * rpm, synchronousSpeed(x.frequency, x.poles));
  runRows('induction motor', [
    ...rowsOf('Hubert, Electric Machines, ex. 4.1, p. 140', 'transcribed', motor, [['speed at 85 % of 60 Hz, rpm', '1020']]),
    ...rowsOf('Hubert, Electric Machines, ex. 4.2, p. 143', 'transcribed', motor, [['synchronous, rpm', '1200'], ['slip', '.08333'], ['rotor frequency, Hz', '5'], ['rotor voltage, V', '8.333']]),
  ], byFigure<typeof motor>({
    'speed at 85 % of 60 Hz, rpm': (x) => synchronousSpeed(0.85 * x.frequency, x.poles) / rpm, 'synchronous, rpm': (x) => synchronousSpeed(x.frequency, x.poles) / rpm,
    slip, 'rotor frequency, Hz': (x) => rotorFrequency(slip(x), x.frequency), 'rotor voltage, V': (x) => rotorVoltage(slip(x), 100),
  }));
  runRows('voltage unbalance', [
    ...rowsOf<readonly [number, number, number]>('NEMA MG 1, 14.36', 'from memory', [460, 467, 450], [['unbalance, %', '1.96']]),
    ...rowsOf<readonly [number, number, number]>('voltages read of a shop converter', 'recomputed', [239, 210, 213], [['unbalance, %', '8.31']]),
  ], (voltages) => 100 * voltageUnbalance(voltages));
  // A page in circulation allows 10 %: the rule derates above 1 and bars above 5.
  expect(UNBALANCE_LIMITS).toEqual({ derate: 0.01, doNotRun: 0.05 });
  const capacitor = { reactive: 1000, frequency: 60, voltage: 240 };
  runRows('capacitor', rowsOf('Q = 2 pi f C V²', 'recomputed', capacitor, [['capacitance, µF', '46.05']]), (x) => 1e6 * capacitanceFor(x.reactive, x.frequency, x.voltage));
  expect(capacitorCurrent(capacitanceFor(1000, 60, 240), 60, 240)).toBeCloseTo(1000 / 240, 9);
});

test('poles are read off the plate speed', () => {
  expect(polesOf(1740 * rpm, 60)).toBe(4);
  expect(polesOf(1140 * rpm, 60)).toBe(6);
  expect(polesOf(3450 * rpm, 60)).toBe(2);
  expect(polesOf(1420 * rpm, 50)).toBe(4);
  expect(polesOf(4000 * rpm, 60)).toBeUndefined();
  expect(() => synchronousSpeed(60, 3)).toThrow('3');
});

test('a converter is sized as a range that holds every rule', () => {
  for (const starting of ['easy', 'flywheel', 'hard'] as const) {
    const range = converterIdlerPower(5 * hp, starting);
    for (const rule of range.rules) {
      expect(rule.least).toBeGreaterThanOrEqual(range.least);
      expect(rule.most).toBeLessThanOrEqual(range.most);
      expect(rule.source).not.toBe('');
    }
  }
  // Self-start 25 to 30 µF and start 50 to 100 µF for each horsepower of the idler; other pages 10 µF for each bank.
  expect(converterCapacitance(5 * hp, 'self-start')).toMatchObject({ least: expect.closeTo(125e-6, 12), most: expect.closeTo(150e-6, 12) });
  expect(converterCapacitance(5 * hp, 'start')).toMatchObject({ least: expect.closeTo(250e-6, 12), most: expect.closeTo(500e-6, 12) });
  expect(converterCapacitance(5 * hp, 'balance').least).toBeCloseTo(50e-6, 12);
  expect(converterIdlerPower(5 * hp, 'easy').least).toBeCloseTo(5 * hp, 9);
  expect(converterIdlerPower(5 * hp, 'flywheel')).toMatchObject({ least: expect.closeTo(7.5 * hp, 6), most: expect.closeTo(10 * hp, 6) });
});
