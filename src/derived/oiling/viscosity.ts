import { OIL_AT_HUNDRED, OIL_RUNS } from '../../knowledge/index.ts';
import { ISO_GRADES, viscosityAt, type IsoGrade, type Viscosity } from '../../methods/power/index.ts';

const CELSIUS_ZERO = 273.15;
const AT_40 = 40 + CELSIUS_ZERO;
const AT_100 = 100 + CELSIUS_ZERO;

const AT_HUNDRED = OIL_AT_HUNDRED.viscosity;

/**
 * Kinematic viscosity of a grade at a temperature, m²/s, by ASTM D341 through its 40 °C figure and a usual 100 °C one.
 * @param temperature K
 */
export function viscosityOfGrade(grade: IsoGrade, temperature: number): Viscosity {
  const hot = AT_HUNDRED[grade];
  if (hot === undefined) return { state: 'outside-validity', because: `a 100 °C figure is at hand for ${ISO_GRADES.filter((one) => AT_HUNDRED[one] !== undefined).join(', ')}: ${grade}` };
  return viscosityAt(temperature, [{ viscosity: grade * 1e-6, temperature: AT_40 }, { viscosity: hot * 1e-6, temperature: AT_100 }]);
}

/**
 * The grade of a list that suits a temperature: the one whose viscosity there lies nearest the middle of what runs in and stays.
 * @param temperature K of the bearing
 * @returns undefined where none of them holds
 */
export function gradeFor(grades: readonly IsoGrade[], temperature: number): { readonly grade: IsoGrade; readonly viscosity: number; readonly fits: boolean } | undefined {
  const middle = Math.log(Math.sqrt(OIL_RUNS.thin * OIL_RUNS.thick));
  const known = grades.flatMap((grade) => {
    const found = viscosityOfGrade(grade, temperature);
    return found.state === 'known' ? [{ grade, viscosity: found.viscosity, fits: found.viscosity >= OIL_RUNS.thin && found.viscosity <= OIL_RUNS.thick }] : [];
  });
  return known.sort((a, b) => Math.abs(Math.log(a.viscosity) - middle) - Math.abs(Math.log(b.viscosity) - middle))[0];
}
