/** A full bearing solved on a grid, in the variables of Raimondi and Boyd. */
export interface Solved {
  readonly sommerfeld: number;
  readonly attitudeDegrees: number;
  readonly friction: number;
  readonly flow: number;
  readonly sideFlow: number;
  readonly pressureRatio: number;
}

/**
 * Reynolds' equation for a full bearing by finite volumes and projected over-relaxation: film from the widest place, pressure
 * never below that of the room. Independent of every table, so that a table from memory can be held against it.
 * ∂θ(H³ ∂θ p) + (d/l)² ∂ζ(H³ ∂ζ p) = ∂θ H, with H = 1 + ε cos θ and ζ from the middle (0) to the end (1).
 */
export const solveReynolds = (eccentricity: number, lengthOverDiameter: number, around = 360, along = 16): Solved => {
  const dt = (2 * Math.PI) / around;
  const dz = 1 / along;
  const film = (theta: number): number => 1 + eccentricity * Math.cos(theta);
  const across = (1 / lengthOverDiameter / dz) ** 2;
  // An endless bearing has no ends at which the pressure is let off.
  const free = Number.isFinite(lengthOverDiameter) ? along : along + 1;
  const p = new Float64Array((around + 1) * (along + 1));
  const at = (i: number, j: number): number => i * (along + 1) + j;
  const east = Float64Array.from({ length: around + 1 }, (_, i) => film((i + 0.5) * dt) ** 3 / dt ** 2);
  const side = Float64Array.from({ length: around + 1 }, (_, i) => film(i * dt) ** 3 * across);
  const source = Float64Array.from({ length: around + 1 }, (_, i) => (film((i + 0.5) * dt) - film((i - 0.5) * dt)) / dt);
  for (let sweep = 0; sweep < 20_000; sweep += 1) {
    let change = 0;
    let most = 0;
    for (let i = 1; i < around; i += 1) {
      for (let j = 0; j < free; j += 1) {
        const inner = p[at(i, j === 0 ? 1 : j - 1)]!;
        const gauss =
          (east[i]! * p[at(i + 1, j)]! + east[i - 1]! * p[at(i - 1, j)]! + side[i]! * (inner + p[at(i, j + 1)]!) - source[i]!) / (east[i]! + east[i - 1]! + 2 * side[i]!);
        const old = p[at(i, j)]!;
        const next = Math.max(0, old + 1.9 * (gauss - old));
        p[at(i, j)] = next;
        change = Math.max(change, Math.abs(next - old));
        most = Math.max(most, next);
      }
    }
    if (change < 1e-8 * most) break;
    if (sweep === 19_999) throw new Error(`The grid did not settle: ${change} of ${most}`);
  }
  let cosine = 0;
  let sine = 0;
  let peak = 0;
  let shear = 0;
  let leak = 0;
  let inlet = 0;
  // Trapezium from the middle to the end; the other half is its mirror.
  const weight = (j: number): number => (j === 0 || j === along ? dz / 2 : dz);
  for (let j = 0; j <= along; j += 1) {
    for (let i = 0; i < around; i += 1) {
      const here = p[at(i, j)]!;
      const H = film(i * dt);
      cosine += here * Math.cos(i * dt) * dt * weight(j);
      sine += here * Math.sin(i * dt) * dt * weight(j);
      peak = Math.max(peak, here);
      const slope = i === 0 ? (p[at(1, j)]! - 0) / dt : (p[at(i + 1, j)]! - p[at(i - 1, j)]!) / (2 * dt);
      // The shaft drags oil all the way round, in the broken film too: so the table was reckoned.
      shear += (1 / H + 3 * H * slope) * dt * weight(j);
    }
    // Second-order one-sided slope where the film begins.
    const start = (4 * p[at(1, j)]! - p[at(2, j)]!) / (2 * dt);
    inlet += Math.PI * (film(0) - film(0) ** 3 * start) * weight(j);
  }
  for (let i = 0; i < around; i += 1) leak += film(i * dt) ** 3 * ((4 * p[at(i, along - 1)]! - p[at(i, along - 2)]!) / (2 * dz)) * dt;
  const pull = 2 * Math.hypot(cosine, sine);
  const sommerfeld = 1 / (3 * Math.PI * pull);
  return {
    sommerfeld, attitudeDegrees: (Math.atan2(sine, -cosine) * 180) / Math.PI,
    // f (r/c) = shear over load: the mean of the shear integral times 2 π S.
    friction: Math.PI * sommerfeld * shear,
    flow: inlet, sideFlow: (Math.PI * leak) / lengthOverDiameter ** 2 / inlet, pressureRatio: pull / 4 / peak,
  };
};
