import { describe, expect, it } from 'vitest';
import { DENSE, ERROR, FIFTH, FOURTH, NODES, STAGES, integrate } from '../../src/methods/integrate/index.ts';

// J. C. Butcher, Numerical Methods for Ordinary Differential Equations, 3rd ed. (2016), section 31: the order
// conditions by rooted trees to order five (from memory). Tolerance set beforehand: ten units in the last place of the
// sum of the magnitudes of the terms.
const ULP = 2.220446049250313e-16;
const times = (row: readonly number[], v: readonly number[]): number => row.reduce((s, a, j) => s + a * (v[j] ?? 0), 0);
const A = STAGES;
const c = NODES;
const apply = (v: readonly number[]): number[] => A.map((row) => times(row, v));
const power = (k: number): number[] => c.map((x) => x ** k);
const product = (...vs: readonly (readonly number[])[]): number[] => c.map((_, i) => vs.reduce((p, v) => p * v[i]!, 1));
const one = c.map(() => 1);
const Ac = apply(c);
const Ac2 = apply(power(2));
const AAc = apply(Ac);
const trees: readonly { readonly order: number; readonly vector: number[]; readonly value: number }[] = [
  { order: 1, vector: one, value: 1 },
  { order: 2, vector: [...c], value: 1 / 2 },
  { order: 3, vector: power(2), value: 1 / 3 },
  { order: 3, vector: Ac, value: 1 / 6 },
  { order: 4, vector: power(3), value: 1 / 4 },
  { order: 4, vector: product(c, Ac), value: 1 / 8 },
  { order: 4, vector: Ac2, value: 1 / 12 },
  { order: 4, vector: AAc, value: 1 / 24 },
  { order: 5, vector: power(4), value: 1 / 5 },
  { order: 5, vector: product(power(2), Ac), value: 1 / 10 },
  { order: 5, vector: product(c, Ac2), value: 1 / 15 },
  { order: 5, vector: product(c, AAc), value: 1 / 30 },
  { order: 5, vector: product(Ac, Ac), value: 1 / 20 },
  { order: 5, vector: apply(power(3)), value: 1 / 20 },
  { order: 5, vector: apply(product(c, Ac)), value: 1 / 40 },
  { order: 5, vector: apply(Ac2), value: 1 / 60 },
  { order: 5, vector: apply(AAc), value: 1 / 120 },
];
const miss = (weights: readonly number[], vector: readonly number[], value: number): number => {
  const size = weights.reduce((s, b, i) => s + Math.abs(b * vector[i]!), Math.abs(value));
  return Math.abs(times(weights, vector) - value) / (ULP * size);
};

describe('the coefficients', () => {
  it('meet the order conditions to ten units in the last place', () => {
    let worst = 0;
    for (const t of trees) {
      worst = Math.max(worst, miss(FIFTH, t.vector, t.value));
      if (t.order <= 4) worst = Math.max(worst, miss(FOURTH, t.vector, t.value));
    }
    A.forEach((row, s) => (worst = Math.max(worst, s === 0 ? 0 : miss(row, one, c[s]!))));
    FIFTH.forEach((b, i) => (worst = Math.max(worst, Math.abs(b - FOURTH[i]! - ERROR[i]!) / ULP)));
    console.log(`order conditions: worst ${worst.toFixed(2)} units in the last place`);
    expect(worst).toBeLessThan(10);
  });

  it('do not meet all of order five in the fourth-order weights, so that the estimate is not blind', () => {
    const misses = trees.filter((t) => t.order === 5).map((t) => Math.abs(times(FOURTH, t.vector) - t.value));
    expect(Math.max(...misses)).toBeGreaterThan(1e-4);
  });

  it('give an interpolant of fourth order: its weights meet the conditions at any place in the step', () => {
    // b_i(x): linear in the slopes, read off from the interpolant's own formula.
    const weights = (x: number): number[] =>
      FIFTH.map((b, i) => {
        const first = i === 0 ? 1 : 0;
        const last = i === 6 ? 1 : 0;
        const bend = first - b;
        const twist = b - last - bend;
        return x * (b + (1 - x) * (bend + x * (twist + (1 - x) * DENSE[i]!)));
      });
    let worst = 0;
    for (const x of [0.1, 0.3, 0.5, 0.77, 0.93])
      for (const t of trees.filter((tree) => tree.order <= 4)) worst = Math.max(worst, miss(weights(x), t.vector, t.value * x ** t.order));
    console.log(`interpolant: worst ${worst.toFixed(2)} units in the last place`);
    expect(worst).toBeLessThan(10);
  });
});

describe('the measured order', () => {
  const problems = [
    { name: 'x\' = x cos t', state: [1], to: 3, slopes: (y: Float64Array, d: Float64Array, t: number): void => void (d[0] = y[0]! * Math.cos(t)), exact: (t: number) => [Math.exp(Math.sin(t))] },
    { name: 'a swing', state: [1, 0], to: 6, slopes: (y: Float64Array, d: Float64Array): void => { d[0] = y[1]!; d[1] = -y[0]!; }, exact: (t: number) => [Math.cos(t), -Math.sin(t)] },
  ];
  for (const p of problems)
    it(`is five within 0.3 at the steps and at least four between them: ${p.name}`, () => {
      const counts = [32, 64, 128, 256];
      const errors = counts.map((n) => {
        const s = integrate({ slopes: p.slopes, state: p.state, from: 0, to: p.to }, { tolerance: { relative: 1e-6, absolute: 1 }, fixedStep: p.to / n });
        expect(s.code).toBe('reached-end');
        const ends = p.exact(p.to).map((v, i) => Math.abs(v - s.state[i]!));
        let between = 0;
        for (let k = 0; k < 50; k++) {
          const t = (p.to * (k + 0.37)) / 50;
          const y = s.trajectory.at(t);
          p.exact(t).forEach((v, i) => (between = Math.max(between, Math.abs(v - y[i]!))));
        }
        return [Math.max(...ends), between] as const;
      });
      const slope = (k: 0 | 1): number => {
        const x = counts.map((n) => Math.log(p.to / n));
        const y = errors.map((e) => Math.log(e[k]));
        const mx = x.reduce((a, b) => a + b) / x.length;
        const my = y.reduce((a, b) => a + b) / y.length;
        return x.reduce((s, v, i) => s + (v - mx) * (y[i]! - my), 0) / x.reduce((s, v) => s + (v - mx) ** 2, 0);
      };
      console.log(`${p.name}: slope ${slope(0).toFixed(3)} at the steps, ${slope(1).toFixed(3)} between`);
      expect(Math.abs(slope(0) - 5)).toBeLessThan(0.3);
      expect(slope(1)).toBeGreaterThan(3.7);
    });
});
