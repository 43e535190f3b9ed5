import type { Helve, SuspensionDetail } from './suspension.ts';

/**
 * [40 rate at the head, 41 squeeze at the head, 42 hardening at the head, 43 solid squeeze at the head, 44 solid rate at the head, 45 cushion over head radius]
 *
 * Everything is carried to the head by the lever: lengths by head/cushion radius, rates by the square of its inverse.
 */
export function helveNumbers(s: Helve): number[] {
  const lever = s.cushionRadius / s.headRadius;
  return [
    s.cushionRate * lever * lever,
    s.squeeze / lever,
    s.hardening * lever * lever,
    s.solidSqueeze / lever,
    s.solidRate * lever * lever,
    lever,
  ];
}

/**
 * Force at the head of a beam held between two cushions in a driving frame.
 *
 * q is how far the head lags below the frame's middle, measured at the head. The lower cushion is squeezed by
 * squeeze + q, the upper by squeeze - q, and neither can pull: F = f(s + q) - f(s - q), f(c) = K c (1 + h c^2) for
 * c > 0. Within the squeeze both work and the beam is carried twice as stiffly as beyond it, where one has come loose. The beam's
 * swing is taken as straight: at a tenth of a radian either way that errs by half a percent.
 */
export function helveForce(n: Float64Array, q: number): number {
  const rate = n[40]!;
  const low = n[41]! + q;
  const high = n[41]! - q;
  let force = 0;
  if (low > 0) {
    force += rate * low * (1 + n[42]! * low * low);
    if (low > n[43]!) force += n[44]! * (low - n[43]!);
  }
  if (high > 0) {
    force -= rate * high * (1 + n[42]! * high * high);
    if (high > n[43]!) force -= n[44]! * (high - n[43]!);
  }
  return force;
}

/** The same with everything worth showing. */
export function helveDetail(n: Float64Array, q: number): SuspensionDetail {
  const one = (c: number): [number, number] => {
    if (c <= 0) return [0, 0];
    const beyond = Math.max(0, c - n[43]!);
    const square = c * c;
    return [
      n[40]! * c * (1 + n[42]! * square) + n[44]! * beyond,
      n[40]! * (0.5 * square + 0.25 * n[42]! * square * square) + 0.5 * n[44]! * beyond * beyond,
    ];
  };
  const [low, lowEnergy] = one(n[41]! + q);
  const [high, highEnergy] = one(n[41]! - q);
  return {
    force: low - high,
    energy: lowEnergy + highEnergy - 2 * one(n[41]!)[1],
    springForce: Math.max(low, high) / n[45]!,
    travelLeft: (n[43]! - n[41]! - Math.abs(q)) * n[45]!,
    linkForce: 0,
  };
}
