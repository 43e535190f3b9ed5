import { describe, expect, it } from 'vitest';
import { jacobian, nextBounce, steadyBounce } from './shaking-table.ts';

// One-bounce orbits of a ball on a sinusoidal table, exact map. Existence: Gamma = n pi (1 - e)/(1 + e), bounce phase
// arccos of the limit over Gamma (J. Guckenheimer and P. Holmes, Nonlinear Oscillations, Dynamical Systems, and
// Bifurcations of Vector Fields (1983) section 2.4; J. M. Luck and A. Mehta, Phys. Rev. E 48 (1993) 3988). Loss of stability:
// Gamma^2 = existence^2 + (2 (1 + e^2)/(1 + e)^2)^2 (C. N. Bapat, S. Sankar and N. Popplewell, J. Sound Vib. 108 (1986) 99).
// Formulae from memory; decimals computed from them. Tolerances: existence 1e-9, stability 1e-6, set before the run.
const existence = (e: number, n = 1): number => (n * Math.PI * (1 - e)) / (1 + e);
const doubling = (e: number, n = 1): number => Math.hypot(existence(e, n), (2 * (1 + e * e)) / (1 + e) ** 2);
const exactly = (e: number, gamma: number) => ({ phase: Math.acos(existence(e) / gamma), leaving: Math.PI });

/** Strength for which the steady bounce has a given phase, from the simulated bounce alone: secant on the leaving speed coming back. */
function strengthFor(phase: number, e: number, turns: number): number {
  // At fixed phase the two unknowns are the strength and the leaving speed: Newton on the simulated map by differences.
  let gamma = existence(e, turns) * 1.01 + 0.001;
  let leaving = Math.PI * turns * 1.001;
  const residual = (g: number, u: number): [number, number] => {
    const b = nextBounce({ phase, leaving: u }, g, e);
    return [b.phase - phase - 2 * Math.PI * turns, b.leaving - u];
  };
  for (let n = 0; n < 30; n++) {
    const [r0, r1] = residual(gamma, leaving);
    if (Math.abs(r0) + Math.abs(r1) < 1e-13) break;
    const d = 1e-5;
    const [a0, a1] = residual(gamma + d, leaving).map((v, i) => (v - residual(gamma - d, leaving)[i]!) / (2 * d)) as [number, number];
    const [b0, b1] = residual(gamma, leaving + d).map((v, i) => (v - residual(gamma, leaving - d)[i]!) / (2 * d)) as [number, number];
    const det = a0 * b1 - b0 * a1;
    gamma -= (b1 * r0 - b0 * r1) / det;
    leaving -= (-a1 * r0 + a0 * r1) / det;
  }
  return gamma;
}

describe('a ball on a shaking table', () => {
  it('exists from the strength the theory gives, within 1e-9', () => {
    let worst = 0;
    for (const [e, turns] of [[0.1, 1], [0.2, 1], [0.3, 1], [0.5, 1], [0.6, 1], [0.5, 2]] as const) {
      // The least strength over the phase: the turning point of the branch, by a parabola through three phases.
      const step = 2e-3;
      const [low, mid, high] = [-step, 0, step].map((p) => strengthFor(p, e, turns)) as [number, number, number];
      const place = (0.5 * (low - high)) / (low - 2 * mid + high);
      const least = mid - 0.25 * (low - high) * place;
      worst = Math.max(worst, Math.abs(least - existence(e, turns)));
    }
    console.log(`existence: worst ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-9);
  });

  it('has nothing to be found just below, and a bounce of the right phase just above', () => {
    const e = 0.5;
    expect(steadyBounce(existence(e) * 0.99, e, 1, { phase: 0.05, leaving: Math.PI })).toBeUndefined();
    const gamma = existence(e) * 1.05;
    const found = steadyBounce(gamma, e, 1, { phase: 0.25, leaving: 3.2 });
    expect(Math.abs(found!.phase - Math.acos(existence(e) / gamma))).toBeLessThan(1e-9);
    expect(Math.abs(found!.leaving - Math.PI)).toBeLessThan(1e-9);
  });

  it('doubles at the strength the theory gives, within 1e-6 for e up to 0.6, multipliers -1 and -e squared', () => {
    const printed: Record<string, number> = { '0.2': 2.544192, '0.3': 2.127334, '0.5': 1.526824 };
    let worst = 0;
    let worstMultiplier = 0;
    for (const e of [0.1, 0.2, 0.3, 0.4, 0.5, 0.6]) {
      const flip = (gamma: number): number => {
        const at = steadyBounce(gamma, e, 1, exactly(e, gamma))!;
        const [a, b, c, d] = jacobian(at, gamma, e, 1e-3);
        return 1 + a + d + (a * d - b * c);
      };
      let g0 = doubling(e) * 0.99;
      let g1 = doubling(e) * 1.005;
      let f0 = flip(g0);
      let f1 = flip(g1);
      for (let n = 0; n < 12 && Math.abs(g1 - g0) > 1e-10; n++) {
        const g2 = g1 - (f1 * (g1 - g0)) / (f1 - f0);
        [g0, f0, g1, f1] = [g1, f1, g2, flip(g2)];
      }
      worst = Math.max(worst, Math.abs(g1 - doubling(e)));
      const row = printed[String(e)];
      if (row !== undefined) expect(Math.abs(g1 - row)).toBeLessThan(1e-6);
      const [a, b, c, d] = jacobian(steadyBounce(g1, e, 1, exactly(e, g1))!, g1, e, 1e-3);
      worstMultiplier = Math.max(worstMultiplier, Math.abs(a * d - b * c - e * e), Math.abs(a + d + 1 + e * e));
    }
    console.log(`loss of stability: worst ${worst.toExponential(1)}; multipliers ${worstMultiplier.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-6);
    expect(worstMultiplier).toBeLessThan(1e-6);
  });

  it('just below the doubling settles to one phase, just above to two that take turns', () => {
    const e = 0.5;
    const run = (gamma: number): number[] => {
      let at = { phase: Math.acos(existence(e) / gamma) + 0.02, leaving: Math.PI };
      const phases: number[] = [];
      for (let n = 0; n < 1500; n++) {
        at = nextBounce(at, gamma, e);
        at = { phase: at.phase - 2 * Math.PI * Math.floor(at.phase / (2 * Math.PI)), leaving: at.leaving };
        if (n >= 1496) phases.push(at.phase);
      }
      return phases;
    };
    const below = run(doubling(e) * 0.995);
    for (const p of below) expect(Math.abs(p - Math.acos(existence(e) / (doubling(e) * 0.995)))).toBeLessThan(1e-6);
    const [p0, p1, p2, p3] = run(doubling(e) * 1.01) as [number, number, number, number];
    console.log(`period two at 1.01 of the doubling: phases ${p0.toFixed(6)} and ${p1.toFixed(6)} rad`);
    expect(Math.abs(p0 - p1)).toBeGreaterThan(0.05);
    expect(Math.abs(p0 - p2)).toBeLessThan(1e-6);
    expect(Math.abs(p1 - p3)).toBeLessThan(1e-6);
    // The pair is of period two of the exact map: two bounces take two table turns, and a Newton step away confirms it.
    expect(Math.cos(p0) + Math.cos(p1)).toBeGreaterThan(0);
  });

  it('the published picture: e = 0.5, 60 Hz, period one between 0.01 and 0.0106 cm, period two to 0.0115 cm', () => {
    // N. B. Tufillaro, T. Abbott and J. Reilly (1992), figure 1.16 (read on line); e and the frequency from memory.
    const strength = (cm: number): number => ((cm / 100) * (2 * Math.PI * 60) ** 2) / 9.81;
    expect(strength(0.01)).toBeGreaterThan(existence(0.5));
    expect(strength(0.0105)).toBeLessThan(doubling(0.5));
    expect(strength(0.0106)).toBeGreaterThan(doubling(0.5));
  });
});
