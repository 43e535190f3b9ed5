/** What the crests of a screw thread may measure against its nominal diameter, m; both below 0. */
export interface MajorLimits {
  readonly upper: number;
  readonly lower: number;
}

const INCH = 0.0254;
const TENTH_THOU = INCH * 1e-4;

const rounded = (length: number, step: number): number => Math.round(length / step) * step;

/**
 * Crests of a coarse external thread of class 2A, ASME B1.1: allowance 0.3 of the class 2A tolerance of the pitch diameter, with one
 * diameter in engagement; tolerance of the major diameter 0.060 P^(2/3), both in inches and to the nearest ten thousandth.
 * @param diameter nominal, m; @param pitch m
 */
export function majorLimits2A(diameter: number, pitch: number): MajorLimits {
  const [d, p] = [diameter / INCH, pitch / INCH];
  const pitchDiameter = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(d) + 0.015 * Math.cbrt(p) ** 2;
  const upper = -rounded(0.3 * pitchDiameter * INCH, TENTH_THOU);
  return { upper, lower: upper - rounded(0.06 * Math.cbrt(p) ** 2 * INCH, TENTH_THOU) };
}

/** Preferred numbers R40 of one decade, which tolerances of ISO 965 are rounded to. */
const R40 = [100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950];

/** Allowance of position g by pitch, mm and micrometres: 15 + 11 P as the standard rounds it (ISO 965-1, from memory). */
const ALLOWANCES_G: readonly (readonly [pitch: number, micrometres: number])[] = [[1, 26], [1.25, 28], [1.5, 32], [1.75, 34], [2, 38], [2.5, 42], [3, 48], [3.5, 53], [4, 60], [4.5, 63], [5, 71], [5.5, 75], [6, 80]];

/**
 * Crests of an external thread of class 6g, ISO 965-1: 15 + 11 P micrometres below the nominal size, then a tolerance of
 * 180 P^(2/3) - 3.15 / √P micrometres, rounded to preferred numbers; P in millimetres.
 * @param pitch m
 */
export function majorLimits6g(pitch: number): MajorLimits {
  const p = pitch * 1e3;
  const wide = 180 * Math.cbrt(p) ** 2 - 3.15 / Math.sqrt(p);
  const tolerance = R40.reduce((best, one) => (Math.abs(one - wide) < Math.abs(best - wide) ? one : best));
  const near = ALLOWANCES_G.find(([of]) => Math.abs(of - p) < 0.01);
  const upper = -(near === undefined ? Math.round(15 + 11 * p) : near[1]) * 1e-6;
  return { upper, lower: upper - tolerance * 1e-6 };
}
