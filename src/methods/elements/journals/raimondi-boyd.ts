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
  /** Share of the flow lost at the ends; absent above l/d 1, where the columns stand too far apart to tell. */
  readonly sideFlow?: number;
  /** Mean pressure over greatest pressure; absent above l/d 1. */
  readonly pressureRatio?: number;
}

export type FilmOutcome =
  | ({ readonly state: 'known' } & FilmState)
  | { readonly state: 'outside-validity'; readonly what: 'length over diameter' | 'Sommerfeld number'; readonly from: number; readonly to: number };

const SHORTEST = 0.25;
const LONGEST = 3;

/** Weights of three values at the places `at` for a parabola through them, taken at `x`. */
const parabola = (at: readonly [number, number, number], x: number): readonly [number, number, number] => {
  const [a, b, c] = at;
  return [((x - b) * (x - c)) / ((a - b) * (a - c)), ((x - a) * (x - c)) / ((b - a) * (b - c)), ((x - a) * (x - b)) / ((c - a) * (c - b))];
};

/**
 * The column of a bearing between those printed, at the same eccentricities. Up to l/d 1: a parabola over log(l/d), for S and friction
 * in their logarithms, since a short bearing goes by powers of l/d. Above: a parabola over d/l from the endless bearing.
 */
const columnAt = (lengthOverDiameter: number): BearingColumn => {
  const long = lengthOverDiameter > 1;
  const { endless, one, half, quarter } = RAIMONDI_BOYD;
  const columns = long ? [endless, one, half] : [one, half, quarter];
  const weights = long ? parabola([0, 1, 2], 1 / lengthOverDiameter) : parabola([0, 1, 2], -Math.log2(lengthOverDiameter));
  const rows = columns[0]!.sommerfeld.length;
  const mix = (name: keyof BearingColumn, logarithms: boolean): readonly number[] =>
    Array.from({ length: rows }, (_, i) => {
      const sum = columns.reduce((total, column, c) => total + weights[c]! * (logarithms ? Math.log(column[name][i]!) : column[name][i]!), 0);
      return logarithms ? Math.exp(sum) : sum;
    });
  return {
    sommerfeld: mix('sommerfeld', !long), attitudeDegrees: mix('attitudeDegrees', false), friction: mix('friction', !long), flow: mix('flow', false), sideFlow: mix('sideFlow', false),
    pressureRatio: mix('pressureRatio', false),
  };
};

/**
 * Film of a full plain bearing from its Sommerfeld number and length, by Raimondi and Boyd's table: a smooth curve over the logarithm of S
 * between the rows, and between the columns an interpolation of our own. Against a solution of Reynolds' equation: eccentricity within
 * 0.02, friction and flow within 4 in 100, at any length ratio of the range.
 * @param sommerfeld S, > 0; outside eccentricity 0.1 to 0.97 (0.9 above l/d 1) the answer says between which values it holds
 * @param lengthOverDiameter l/d, > 0; 1/4 to 3
 */
export const raimondiBoyd = (sommerfeld: number, lengthOverDiameter: number): FilmOutcome => {
  demandPositive('Sommerfeld number', sommerfeld);
  demandPositive('length over diameter', lengthOverDiameter);
  if (lengthOverDiameter < SHORTEST || lengthOverDiameter > LONGEST) return { state: 'outside-validity', what: 'length over diameter', from: SHORTEST, to: LONGEST };
  const column = columnAt(lengthOverDiameter);
  const from = column.sommerfeld[column.sommerfeld.length - 1]!;
  const to = column.sommerfeld[0]!;
  // A hundred-millionth of slack, so that a printed S is not refused for the last digit of a logarithm.
  if (sommerfeld < from * (1 - 1e-8) || sommerfeld > to * (1 + 1e-8)) return { state: 'outside-validity', what: 'Sommerfeld number', from, to };
  const places = column.sommerfeld.map(Math.log).reverse();
  const at = (values: readonly number[]): number => monotoneCubic(places, values.slice(0, places.length).reverse())(Math.log(sommerfeld));
  const eccentricity = at(ECCENTRICITIES);
  return {
    state: 'known', eccentricity, leastFilmRatio: 1 - eccentricity, attitude: (at(column.attitudeDegrees) * Math.PI) / 180, friction: Math.exp(at(column.friction.map(Math.log))), flow: at(column.flow),
    ...(lengthOverDiameter > 1 ? {} : { sideFlow: at(column.sideFlow), pressureRatio: at(column.pressureRatio) }),
  };
};
