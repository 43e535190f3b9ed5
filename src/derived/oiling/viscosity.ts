import { ISO_GRADES, viscosityAt, type IsoGrade, type Viscosity } from '../../methods/power/index.ts';

const CELSIUS_ZERO = 273.15;
const AT_40 = 40 + CELSIUS_ZERO;
const AT_100 = 100 + CELSIUS_ZERO;

/** mm²/s at 100 °C of plain mineral oils of viscosity index 95 or so, by grade (from memory; a data sheet of the oil used is better). */
const AT_HUNDRED: Readonly<Partial<Record<IsoGrade, number>>> = { 10: 2.6, 15: 3.4, 22: 4.3, 32: 5.4, 46: 6.8, 68: 8.7, 100: 11.2, 150: 14.7, 220: 19, 320: 24.5, 460: 31 };

/**
 * Kinematic viscosity of a grade at a temperature, m²/s, by ASTM D341 through its 40 °C figure and a usual 100 °C one.
 * @param temperature K
 */
export function viscosityOfGrade(grade: IsoGrade, temperature: number): Viscosity {
  const hot = AT_HUNDRED[grade];
  if (hot === undefined) return { state: 'outside-validity', because: `a 100 °C figure is at hand for ${ISO_GRADES.filter((one) => AT_HUNDRED[one] !== undefined).join(', ')}: ${grade}` };
  return viscosityAt(temperature, [{ viscosity: grade * 1e-6, temperature: AT_40 }, { viscosity: hot * 1e-6, temperature: AT_100 }]);
}

/** m²/s below which a drop runs straight out of a slow plain bearing, and above which it does not run in at all (common practice, no source). */
const RUNS = { thin: 15e-6, thick: 500e-6 } as const;

/**
 * The grade of a list that suits a temperature: the one whose viscosity there lies nearest the middle of what runs in and stays.
 * @param temperature K of the bearing
 * @returns undefined where none of them holds
 */
export function gradeFor(grades: readonly IsoGrade[], temperature: number): { readonly grade: IsoGrade; readonly viscosity: number; readonly fits: boolean } | undefined {
  const middle = Math.log(Math.sqrt(RUNS.thin * RUNS.thick));
  const known = grades.flatMap((grade) => {
    const found = viscosityOfGrade(grade, temperature);
    return found.state === 'known' ? [{ grade, viscosity: found.viscosity, fits: found.viscosity >= RUNS.thin && found.viscosity <= RUNS.thick }] : [];
  });
  return known.sort((a, b) => Math.abs(Math.log(a.viscosity) - middle) - Math.abs(Math.log(b.viscosity) - middle))[0];
}
