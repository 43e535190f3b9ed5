import { describe, expect, test } from 'vitest';
import { coverageFactor, effectiveFreedom, propagate, type Estimate } from '../../../src/methods/chance/index.ts';
import { digits, runRows, type Row } from '../row.ts';

const GUIDE = 'JCGM 100:2008, example H.1';

// Length of a 50 mm end gauge by comparison; nm, 1/°C and °C.
const GAUGE = [
  { name: 'ls', value: 50_000_623, uncertainty: 25, freedom: 18 },
  { name: 'd', value: 215, uncertainty: 9.7, freedom: 25.6 },
  { name: 'alpha-s', value: 11.5e-6, uncertainty: 1.2e-6, freedom: Number.POSITIVE_INFINITY },
  { name: 'theta', value: -0.1, uncertainty: 0.41, freedom: Number.POSITIVE_INFINITY },
  { name: 'delta-alpha', value: 0, uncertainty: 0.58e-6, freedom: 50 },
  { name: 'delta-theta', value: 0, uncertainty: 0.029, freedom: 2 },
] as const;
const gauge = ([ls, d, alpha, theta, deltaAlpha, deltaTheta]: number[]): number => ls! + d! - ls! * (deltaAlpha! * theta! + alpha! * deltaTheta!);

describe('end gauge', () => {
  const result = propagate(gauge, GAUGE);
  const size = result.contributions.map(Math.abs);
  const freedom = effectiveFreedom(size, GAUGE.map((one) => one.freedom));

  test('contributions, combined uncertainty, freedom and interval', () => {
    const row = (figure: string, printed: string, actual: number, status: 'read' | 'recomputed' = 'read', units = 1): Row<number> => ({
      source: GUIDE, status, figure, inputs: actual, expected: Number(printed), tolerance: digits(printed, units),
    });
    runRows('law of propagation, end gauge', [
      row('contribution of ls, nm', '25', size[0]!),
      row('contribution of d, nm', '9.7', size[1]!),
      row('contribution of alpha-s, nm', '0', size[2]!),
      row('contribution of theta, nm', '0', size[3]!),
      row('contribution of delta-alpha, nm', '2.9', size[4]!),
      // The guide's own table has 16.6 (from memory), later workings 16.7: 50 000 623 x 11.5e-6 x 0.029 is 16.675.
      row('contribution of delta-theta, nm', '16.7', size[5]!),
      row('combined standard uncertainty, nm', '32', result.uncertainty),
      row('combined standard uncertainty, nm', '31.71', result.uncertainty, 'recomputed'),
      row('combined standard uncertainty, nm', '31.711', result.uncertainty, 'recomputed'),
      row('effective degrees of freedom', '16.656', freedom, 'recomputed'),
      row('degrees of freedom used', '16', Math.floor(freedom)),
      row('coverage factor at 99 %', '2.92', coverageFactor(0.99, Math.floor(freedom))),
      row('coverage factor at 99 %', '2.9208', coverageFactor(0.99, Math.floor(freedom)), 'recomputed'),
      // The guide multiplies the rounded 32 nm; 93.45 is printed as 93.
      row('expanded uncertainty at 99 % from 32 nm, nm', '93', coverageFactor(0.99, 16) * 32),
      row('expanded uncertainty at 99 % unrounded, nm', '92.6', coverageFactor(0.99, 16) * result.uncertainty, 'recomputed'),
      row('length, nm', '50000838', result.value),
    ], (actual) => actual);
  });
});

interface Pool {
  readonly contributions: readonly number[];
  readonly freedoms: readonly number[];
}

test('Welch and Satterthwaite', () => {
  const inputs = { contributions: [5.8, 3.9, 6.7], freedoms: [24, 5, 8] };
  const equal = (count: number): Pool => ({ contributions: Array.from({ length: count }, () => 1), freedoms: Array.from({ length: count }, () => 10) });
  const rows: Row<Pool>[] = [
    { source: 'JCGM 100:2008, H.1.3.2, u(d)', status: 'read', figure: 'u(d), nm', inputs, expected: 9.7, tolerance: digits('9.7') },
    { source: 'JCGM 100:2008, H.1.3.2, u(d)', status: 'recomputed', figure: 'u(d), nm', inputs, expected: 9.68, tolerance: digits('9.68') },
    // Printed 25.6 from inputs not rounded; the rounded inputs here give 25.45.
    { source: 'JCGM 100:2008, H.1.6', status: 'read', figure: 'freedom of u(d)', inputs, expected: 25.6, tolerance: { absolute: 0.2 } },
    { source: 'JCGM 100:2008, H.1.6', status: 'recomputed', figure: 'freedom of u(d)', inputs, expected: 25.45, tolerance: digits('25.45') },
    { source: 'JCGM 100:2008, G.4.1, four equal contributions', status: 'read', figure: 'freedom of four equal parts', inputs: equal(4), expected: 40, tolerance: { absolute: 1e-12 } },
  ];
  runRows('effective degrees of freedom', rows, ({ contributions, freedoms }, row) =>
    row.figure.startsWith('u(d)') ? Math.hypot(...contributions) : effectiveFreedom(contributions, freedoms));
});

test('correlated inputs: resistance, reactance and impedance', () => {
  // JCGM 100:2008, example H.2, table H.2: five simultaneous observations of V, I and phase. From memory; the means that the guide prints are reproduced first.
  const observations = [
    [5.007, 19.663e-3, 1.0456], [4.994, 19.639e-3, 1.0438], [5.005, 19.64e-3, 1.0468], [4.99, 19.685e-3, 1.0428], [4.999, 19.678e-3, 1.0433],
  ] as const;
  const mean = (k: 0 | 1 | 2): number => observations.reduce((sum, one) => sum + one[k], 0) / 5;
  const covariance = (j: 0 | 1 | 2, k: 0 | 1 | 2): number => observations.reduce((sum, one) => sum + (one[j] - mean(j)) * (one[k] - mean(k)), 0) / 20;
  const indices = [0, 1, 2] as const;
  const inputs: Estimate[] = indices.map((k) => ({ value: mean(k), uncertainty: Math.sqrt(covariance(k, k)) }));
  const correlations = indices.map((j) => indices.map((k) => (j === k ? 1 : covariance(Math.min(j, k) as 0 | 1 | 2, Math.max(j, k) as 0 | 1 | 2) / Math.sqrt(covariance(j, j) * covariance(k, k)))));
  const resistance = propagate(([v, i, phase]) => (v! / i!) * Math.cos(phase!), inputs, correlations);
  const reactance = propagate(([v, i, phase]) => (v! / i!) * Math.sin(phase!), inputs, correlations);
  const impedance = propagate(([v, i]) => v! / i!, inputs, correlations);
  const row = (figure: string, printed: string, inputs: number): Row<number> => ({ source: 'JCGM 100:2008, example H.2', status: 'from memory', figure, inputs, expected: Number(printed), tolerance: digits(printed) });
  runRows('law of propagation with correlation', [
    row('mean V', '4.9990', inputs[0]!.value), row('s(V)', '0.0032', inputs[0]!.uncertainty), row('s(phase)', '0.00075', inputs[2]!.uncertainty),
    row('r(V,I)', '-0.36', correlations[0]![1]!), row('r(V,phase)', '0.86', correlations[0]![2]!), row('r(I,phase)', '-0.65', correlations[1]![2]!),
    row('R, ohm', '127.732', resistance.value), row('u(R), ohm', '0.071', resistance.uncertainty),
    row('X, ohm', '219.847', reactance.value), 
    // The guide prints 0.295 where its own observations give 0.29558: it rounds on the way.
    { ...row('u(X), ohm', '0.295', reactance.uncertainty), tolerance: digits('0.295', 2) },
    row('Z, ohm', '254.260', impedance.value), row('u(Z), ohm', '0.236', impedance.uncertainty),
  ], (actual) => actual);
});

test('tolerance stack of four equal parts', () => {
  const parts = [0.1, 0.1, 0.1, 0.1];
  const stack = propagate((x) => x.reduce((sum, one) => sum + one, 0), parts.map((uncertainty) => ({ value: 0, uncertainty })));
  const together = parts.map(() => parts.map(() => 1));
  const worst = propagate((x) => x.reduce((sum, one) => sum + one, 0), parts.map((uncertainty) => ({ value: 0, uncertainty })), together);
  const rows: Row<number>[] = [
    { source: 'root of the sum of squares, exact', status: 'recomputed', figure: '4 x ±0.1 by squares', inputs: stack.uncertainty, expected: 0.2, tolerance: { absolute: 1e-12 } },
    { source: 'worst case, exact', status: 'recomputed', figure: '4 x ±0.1 all one way', inputs: worst.uncertainty, expected: 0.4, tolerance: { absolute: 1e-12 } },
  ];
  runRows('tolerance stack', rows, (actual) => actual);
});

test('a formula without a figure on one side still has its doubt, and never one that is not a number', () => {
  const oneSided = propagate(([x]) => Math.sqrt(x!), [{ value: 0.01, uncertainty: 0.02 }]);
  expect(oneSided.uncertainty).toBeCloseTo(Math.sqrt(0.03) - 0.1, 12);
  const lost = propagate(([x]) => (x === 1 ? 1 : Number.NaN), [{ value: 1, uncertainty: 0.1 }]);
  expect(lost.uncertainty).toBe(Number.POSITIVE_INFINITY);
  expect(() => propagate(([x]) => x!, [{ value: 1, uncertainty: -0.1 }])).toThrow('-0.1');
  expect(() => propagate(([x, y]) => x! + y!, [{ value: 1, uncertainty: 1 }, { value: 1, uncertainty: 1 }], [[1, 0.5], [0.4, 1]])).toThrow();
});
