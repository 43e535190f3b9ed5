/** Grades of ISO 3448: kinematic viscosity at 40 °C in mm²/s (cSt), each within 10 % of its number. */
export const ISO_GRADES = [2.2, 3.2, 4.6, 6.8, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500] as const;

export type IsoGrade = (typeof ISO_GRADES)[number];

const SQUARE_METRE_PER_SECOND = 1e-6;

/** Limits of a grade at 40 °C, m²/s (ISO 3448: within 10 %). */
export const gradeLimits = (grade: IsoGrade): { readonly least: number; readonly most: number } => ({
  least: 0.9 * grade * SQUARE_METRE_PER_SECOND, most: 1.1 * grade * SQUARE_METRE_PER_SECOND,
});

/** Grade that holds a viscosity at 40 °C, or undefined between two grades. @param viscosity m²/s */
export const gradeOf = (viscosity: number): IsoGrade | undefined =>
  ISO_GRADES.find((grade) => {
    const { least, most } = gradeLimits(grade);
    return viscosity >= least * (1 - 1e-9) && viscosity <= most * (1 + 1e-9);
  });

/**
 * Nearest ISO grade of an SAE engine or gear-case grade; approximate, the pages that print it disagree at the light end
 * (20 goes with 46 or 68). Common practice.
 */
export const ISO_NEAR_SAE: ReadonlyMap<number, IsoGrade> = new Map([[20, 68], [30, 100], [40, 150], [50, 220], [60, 320]]);

export type Viscosity =
  | { readonly state: 'known'; readonly viscosity: number }
  | { readonly state: 'outside-validity'; readonly because: string };

/** Viscosity read at a temperature: m²/s and K. */
export interface ViscosityPoint {
  readonly viscosity: number;
  readonly temperature: number;
}

/**
 * Kinematic viscosity at a temperature from two known points, m²/s, by ASTM D341: log10 log10(v + 0.7) = A - B log10 T, v in mm²/s.
 * That short form holds from 2 mm²/s up (from memory), and not far outside petroleum oils' liquid range; so -40 to 150 °C here.
 * @param temperature K @param points two points of the same oil at different temperatures
 */
export function viscosityAt(temperature: number, points: readonly [ViscosityPoint, ViscosityPoint]): Viscosity {
  const outside = (because: string): Viscosity => ({ state: 'outside-validity', because });
  const [first, second] = points;
  if (first.temperature === second.temperature) return outside(`two points at different temperatures are wanted: both are at ${first.temperature} K`);
  for (const one of [first.temperature, second.temperature, temperature]) {
    if (!(one >= 233.15 && one <= 423.15)) return outside(`the law holds from 233.15 K to 423.15 K: ${one} K`);
  }
  const double = ({ viscosity }: ViscosityPoint): number => Math.log10(Math.log10(viscosity / SQUARE_METRE_PER_SECOND + 0.7));
  if (!(Math.min(first.viscosity, second.viscosity) >= 2 * SQUARE_METRE_PER_SECOND)) return outside(`both viscosities must be at least 2 mm²/s: ${first.viscosity} and ${second.viscosity} m²/s`);
  const slope = (double(second) - double(first)) / (Math.log10(second.temperature) - Math.log10(first.temperature));
  const value = 10 ** (10 ** (double(first) + slope * (Math.log10(temperature) - Math.log10(first.temperature)))) - 0.7;
  if (!(value >= 2)) return outside(`the short form of the law holds from 2 mm²/s: ${value.toPrecision(3)} mm²/s`);
  return { state: 'known', viscosity: value * SQUARE_METRE_PER_SECOND };
}

/** Kinematic viscosity from Saybolt seconds at 100 °F, m²/s: 0.226 t - 195/t to 100 s, 0.220 t - 135/t above (from memory). @param seconds 32 and up; undefined below */
export const fromSaybolt = (seconds: number): number | undefined =>
  seconds < 32 ? undefined : SQUARE_METRE_PER_SECOND * (seconds <= 100 ? 0.226 * seconds - 195 / seconds : 0.22 * seconds - 135 / seconds);

/** Drops in a millilitre of machine oil, most and fewest (from memory; no handbook gives it). */
export const DROPS_PER_MILLILITRE = { most: 25, fewest: 20 } as const;

/** Oil that a drip rate gives, m³/s, least and most by the size of a drop. @param dropsPerSecond 1/s, not negative */
export const oilFlow = (dropsPerSecond: number): { readonly least: number; readonly most: number } => ({
  least: (dropsPerSecond / DROPS_PER_MILLILITRE.most) * 1e-6, most: (dropsPerSecond / DROPS_PER_MILLILITRE.fewest) * 1e-6,
});
