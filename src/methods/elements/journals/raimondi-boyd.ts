import { demandPositive, monotoneCubic } from '../../numerics/index.ts';
import { ECCENTRICITIES, RAIMONDI_BOYD, type BearingColumn } from './raimondi-boyd-table.ts';

/** How a full bearing runs on its oil film. */
export interface FilmState {
  /** Share ε of the clearance by which the shaft is off the middle. */
  readonly eccentricity: number;
  /** Least film over radial clearance, h0/c = 1 - ε. */
  readonly leastFilmRatio: number;
  /** Angle from the load to the least film, rad. */
  readonly attitude: number;
  /** (r/c) f. */
  readonly friction: number;
  /** Q/(r c N l). */
  readonly flow: number;
  /** Share of the flow lost at the ends. */
  readonly sideFlow: number;
  /** Mean pressure over greatest pressure. */
  readonly pressureRatio: number;
}

export type FilmOutcome =
  | ({ readonly state: 'known' } & FilmState)
  | { readonly state: 'outside-validity'; readonly what: 'length over diameter' | 'Sommerfeld number'; readonly from: number; readonly to: number };

type Curve = (sommerfeld: number) => number;
interface ColumnCurves {
  readonly least: number;
  readonly most: number;
  readonly curves: Readonly<Record<'eccentricity' | 'attitude' | 'friction' | 'flow' | 'sideFlow' | 'pressureRatio', Curve>>;
}

const curvesOf = (column: BearingColumn): ColumnCurves => {
  // Rising Sommerfeld number, on a log scale because the column spans three decades.
  const places = column.sommerfeld.map(Math.log).reverse();
  const curve = (values: readonly number[], log = false): Curve => {
    const smooth = monotoneCubic(places, values.slice(0, places.length).map((value) => (log ? Math.log(value) : value)).reverse());
    return (s) => (log ? Math.exp(smooth(Math.log(s))) : smooth(Math.log(s)));
  };
  return {
    least: Math.exp(places[0]!) * (1 + 1e-12), most: Math.exp(places[places.length - 1]!) * (1 - 1e-12),
    curves: {
      eccentricity: curve(ECCENTRICITIES), attitude: curve(column.attitudeDegrees.map((angle) => (angle * Math.PI) / 180)), friction: curve(column.friction, true),
      flow: curve(column.flow), sideFlow: curve(column.sideFlow), pressureRatio: curve(column.pressureRatio),
    },
  };
};

const COLUMNS = { endless: curvesOf(RAIMONDI_BOYD.endless), one: curvesOf(RAIMONDI_BOYD.one), half: curvesOf(RAIMONDI_BOYD.half), quarter: curvesOf(RAIMONDI_BOYD.quarter) };

/** Weights of the four columns at a length ratio (Raimondi and Boyd 1958, their interpolation); exactly one column at 1, 1/2 and 1/4. */
const weights = (q: number): Readonly<Record<keyof typeof COLUMNS, number>> => ({
  endless: (-(1 - q) * (1 - 2 * q) * (1 - 4 * q)) / (8 * q ** 3),
  one: ((1 - 2 * q) * (1 - 4 * q)) / (3 * q ** 3),
  half: (-(1 - q) * (1 - 4 * q)) / (4 * q ** 3),
  quarter: ((1 - q) * (1 - 2 * q)) / (24 * q ** 3),
});

/**
 * Film of a full plain bearing from its Sommerfeld number and length, between the rows of Raimondi and Boyd's table.
 * Between the rows a smooth curve over the logarithm of S, between the columns their own interpolation. Good to a few in a hundred.
 * @param sommerfeld S, > 0; outside the rows of a column that is used the answer says between which values it holds
 * @param lengthOverDiameter l/d, 1/4 to 1
 */
export const raimondiBoyd = (sommerfeld: number, lengthOverDiameter: number): FilmOutcome => {
  demandPositive('Sommerfeld number', sommerfeld);
  demandPositive('length over diameter', lengthOverDiameter);
  if (lengthOverDiameter < 0.25 || lengthOverDiameter > 1) return { state: 'outside-validity', what: 'length over diameter', from: 0.25, to: 1 };
  // The ratios of the rows are exact in binary, so a bearing of the table uses its own column and that column's range alone.
  const used = (Object.entries(weights(lengthOverDiameter)) as [keyof typeof COLUMNS, number][]).filter(([, weight]) => weight !== 0);
  const from = Math.max(...used.map(([name]) => COLUMNS[name].least));
  // The endless column ends at S = 0.24; above, its curves follow the light-load laws they have there.
  const to = Math.min(...used.filter(([name]) => name !== 'endless').map(([name]) => COLUMNS[name].most));
  if (sommerfeld < from * (1 - 1e-9) || sommerfeld > to * (1 + 1e-9)) return { state: 'outside-validity', what: 'Sommerfeld number', from, to };
  const mix = (name: keyof ColumnCurves['curves']): number => used.reduce((sum, [column, weight]) => sum + weight * valueOf(column, name, sommerfeld), 0);
  const eccentricity = mix('eccentricity');
  return {
    state: 'known', eccentricity, leastFilmRatio: 1 - eccentricity, attitude: mix('attitude'), friction: mix('friction'), flow: mix('flow'), sideFlow: mix('sideFlow'),
    pressureRatio: mix('pressureRatio'),
  };
};

const valueOf = (column: keyof typeof COLUMNS, name: keyof ColumnCurves['curves'], sommerfeld: number): number => {
  const { most, curves } = COLUMNS[column];
  const value = curves[name](sommerfeld);
  if (column !== 'endless' || sommerfeld <= most) return value;
  // Light load: the friction tends to Petroff's, which goes with S; the eccentricity with 1/S; the others stay.
  if (name === 'friction') return (value * sommerfeld) / most;
  if (name === 'eccentricity') return (value * most) / sommerfeld;
  return value;
};
