import { integrate } from '../../../src/methods/integrate/index.ts';

/** Time in units of 1/omega, height in units of g/omega^2: the table is at gamma sin(t), the ball falls with unit acceleration. */
export interface Bounce {
  /** table phase of the bounce, rad, not wrapped */
  readonly phase: number;
  /** speed with which the ball leaves, in units of g/omega */
  readonly leaving: number;
}

/** The next bounce, by integration of the flight and location of the meeting with the table. */
export function nextBounce(from: Bounce, gamma: number, restitution: number): Bounce {
  const start = gamma * Math.sin(from.phase);
  const s = integrate(
    {
      slopes: (y, d) => { d[0] = y[1]!; d[1] = -1; },
      state: [start, from.leaving], from: from.phase, to: from.phase + 40,
      events: [{
        name: 'table', direction: -1, stopAfter: 1, wall: true,
        guard: (y, t) => y[0]! - gamma * Math.sin(t),
        reset: (y, t) => [gamma * Math.sin(t), (1 + restitution) * gamma * Math.cos(t) - restitution * y[1]!],
      }],
    },
    { tolerance: { relative: 1e-13, absolute: 1e-13 }, longestStep: 0.5, keep: false },
  );
  if (s.code !== 'stopped-by-event') throw new Error(`no bounce from phase ${from.phase}: ${s.code}`);
  return { phase: s.time, leaving: s.state[1]! };
}

/** Slopes of the bounce map at a bounce, by central differences: [dphase/dphase, dphase/dleaving, dleaving/dphase, dleaving/dleaving]. */
export function jacobian(at: Bounce, gamma: number, restitution: number, step = 1e-4): [number, number, number, number] {
  // Fourth-order central differences, so that the step can be wide enough for the digits.
  const along = (move: (d: number) => Bounce): [number, number] => {
    const [a, b, c, d] = [-2, -1, 1, 2].map((k) => nextBounce(move(k * step), gamma, restitution)) as [Bounce, Bounce, Bounce, Bounce];
    const slope = (f: (v: Bounce) => number): number => (f(a) - 8 * f(b) + 8 * f(c) - f(d)) / (12 * step);
    return [slope((v) => v.phase), slope((v) => v.leaving)];
  };
  const byPhase = along((d) => ({ phase: at.phase + d, leaving: at.leaving }));
  const byLeaving = along((d) => ({ phase: at.phase, leaving: at.leaving + d }));
  return [byPhase[0], byLeaving[0], byPhase[1], byLeaving[1]];
}

/** The steady bounce of n table turns at a shaking strength, by Newton's method on the simulated map; undefined where none was found. */
export function steadyBounce(gamma: number, restitution: number, turns: number, guess: Bounce): Bounce | undefined {
  let at = guess;
  for (let n = 0; n < 40; n++) {
    const next = nextBounce(at, gamma, restitution);
    const r0 = next.phase - at.phase - 2 * Math.PI * turns;
    const r1 = next.leaving - at.leaving;
    if (Math.abs(r0) + Math.abs(r1) < 3e-13) return at;
    const [a, b, c, d] = jacobian(at, gamma, restitution);
    const det = (a - 1) * (d - 1) - b * c;
    const phase = at.phase - ((d - 1) * r0 - b * r1) / det;
    const leaving = at.leaving - (-c * r0 + (a - 1) * r1) / det;
    if (!Number.isFinite(phase) || !(leaving > 0)) return undefined;
    at = { phase, leaving };
  }
  const next = nextBounce(at, gamma, restitution);
  const out = Math.abs(next.phase - at.phase - 2 * Math.PI * turns) + Math.abs(next.leaving - at.leaving);
  return out < 1e-11 ? at : undefined;
}
