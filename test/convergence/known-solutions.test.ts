import { describe, expect, it } from 'vitest';
import { integrate } from '../../src/methods/integrate/index.ts';

describe('known solutions', () => {
  it('the error follows the tolerance', () => {
    for (const relative of [1e-4, 1e-6, 1e-8, 1e-10]) {
      const s = integrate({ slopes: (y, d) => { d[0] = y[1]!; d[1] = -y[0]!; }, state: [1, 0], from: 0, to: 20 }, { tolerance: { relative, absolute: relative } });
      const error = Math.max(Math.abs(s.state[0]! - Math.cos(20)), Math.abs(s.state[1]! + Math.sin(20)));
      console.log(`tolerance ${relative}: error ${error.toExponential(1)} in ${s.steps} steps`);
      expect(error).toBeLessThan(40 * relative);
      expect(error).toBeGreaterThan(relative / 1000);
    }
  });
  it('the two-body orbit of eccentricity 0.5 comes home', () => {
    // Problem D3, T. E. Hull, W. H. Enright, B. M. Fellen and A. E. Sedgwick, SIAM J. Numer. Anal. 9 (1972) 603-637 (from memory): one period is 2 pi.
    const e = 0.5;
    const s = integrate(
      {
        slopes: (y, d) => {
          const r3 = Math.sqrt(y[0]! ** 2 + y[1]! ** 2) ** 3;
          d[0] = y[2]!; d[1] = y[3]!; d[2] = -y[0]! / r3; d[3] = -y[1]! / r3;
        },
        state: [1 - e, 0, 0, Math.sqrt((1 + e) / (1 - e))], from: 0, to: 2 * Math.PI * 3,
      },
      { tolerance: { relative: 1e-11, absolute: 1e-11 } },
    );
    const home = [1 - e, 0, 0, Math.sqrt((1 + e) / (1 - e))];
    const error = Math.max(...home.map((v, i) => Math.abs(v - s.state[i]!)));
    console.log(`orbit after three turns: ${error.toExponential(1)}`);
    expect(error).toBeLessThan(1e-7);
  });
});
