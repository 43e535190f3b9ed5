import { coverageFactor, normalQuantile } from '../../methods/chance/index.ts';
import { leastSquares } from '../../methods/numerics/index.ts';

/** One reading of the same place with the same meaning. */
export interface WearReading {
  /** Running time or days, any one unit, rising or not. */
  readonly at: number;
  /** SI. */
  readonly value: number;
  /** Standard uncertainty, SI, 0 or more. */
  readonly uncertainty: number;
}

export type WearForecast =
  | { readonly state: 'refused'; readonly because: string }
  | {
      readonly state: 'fitted';
      /** SI per unit of `at`, with its 95 % interval. */
      readonly rate: number;
      readonly rateInterval: readonly [low: number, high: number];
      /** Scatter of a reading about the line that was reckoned with, SI; never less than the readings' own doubt. */
      readonly scatter: number;
      /** Degrees of freedom of the interval; without bound where the readings scatter no more than their own doubt, which is then taken as known. */
      readonly freedom: number;
      /** False where the interval of the rate holds nought: the readings do not show that it wears at all. */
      readonly wearShown: boolean;
      /** The reading to be expected, with its 95 % prediction interval. */
      readonly at: (place: number) => { readonly value: number; readonly low: number; readonly high: number };
      /** When the wear itself reaches a limit: as likely, and the earliest and latest that the 95 % band of the line allows. Each is absent where it is not within three times the span of the readings beyond the last, further than which nothing is claimed. */
      readonly reaches: (limit: number, worse: 'more' | 'less') => { readonly already: boolean; readonly likely?: number; readonly earliest?: number; readonly latest?: number };
    };

const COVERAGE = 0.95;
const LEAST_READINGS = 3;
/** How far beyond the readings anything is claimed, in spans of the readings. */
const REACH = 3;

/**
 * Straight-line wear from repeated readings, by least squares with a prediction interval by Student's t
 * (N. R. Draper and H. Smith, Applied Regression Analysis, section 1.4; from memory). Two readings give a line and no
 * doubt, so fewer than three are refused. Where the readings scatter about the line no more than their own doubt explains
 * (chi-squared, 95 %), the doubt is taken as known, and the interval is normal; else the scatter is, with Student's t: the
 * luck of a few readings is no accuracy, and their bad luck no reason to claim nothing.
 */
export function wearForecast(readings: readonly WearReading[]): WearForecast {
  const bad = readings.find((one) => !Number.isFinite(one.at) || !Number.isFinite(one.value) || !(one.uncertainty >= 0));
  if (bad !== undefined) return { state: 'refused', because: `a reading is no number: ${bad.value} at ${bad.at}` };
  if (readings.length < LEAST_READINGS) return { state: 'refused', because: `a forecast wants at least ${LEAST_READINGS} readings of the same place, taken the same way: there ${readings.length === 1 ? 'is 1' : `are ${readings.length}`}` };
  const count = readings.length;
  const middle = readings.reduce((sum, one) => sum + one.at, 0) / count;
  const spread = readings.reduce((sum, one) => sum + (one.at - middle) ** 2, 0);
  const first = Math.min(...readings.map((one) => one.at));
  const last = Math.max(...readings.map((one) => one.at));
  if (!(last > first)) return { state: 'refused', because: 'all readings are of the same time, and wear shows only over time' };
  const fit = leastSquares(readings.map((one) => [1, (one.at - middle) / (last - first)]), readings.map((one) => one.value));
  if (fit.code !== 'fitted') return { state: 'refused', because: 'all readings are of the same time, and wear shows only over time' };
  const [centre = 0, slope = 0] = fit.coefficients;
  const rate = slope / (last - first);
  const doubt = readings.reduce((sum, one) => sum + one.uncertainty ** 2, 0) / count;
  const explained = doubt > 0 && fit.residualSum / doubt <= chiSquared(fit.freedom);
  const scatter = Math.sqrt(explained ? doubt : fit.residualSum / fit.freedom);
  const freedom = explained ? Number.POSITIVE_INFINITY : fit.freedom;
  const factor = explained ? normalQuantile((1 + COVERAGE) / 2) : coverageFactor(COVERAGE, fit.freedom);
  const rateHalf = (factor * scatter) / Math.sqrt(spread);
  const at = (place: number): { readonly value: number; readonly low: number; readonly high: number } => {
    const value = centre + rate * (place - middle);
    const half = factor * scatter * Math.sqrt(1 + 1 / count + (place - middle) ** 2 / spread);
    return { value, low: value - half, high: value + half };
  };
  /** The line itself, without the doubt of a next reading; `way` 1 for the upper edge of its band, -1 for the lower. */
  const line = (place: number, way: -1 | 0 | 1): number => centre + rate * (place - middle) + way * factor * scatter * Math.sqrt(1 / count + (place - middle) ** 2 / spread);
  const end = last + REACH * (last - first);
  return {
    state: 'fitted', rate, rateInterval: [rate - rateHalf, rate + rateHalf], scatter, freedom, wearShown: rate - rateHalf > 0 || rate + rateHalf < 0, at,
    reaches: (limit, worse) => {
      const beyond = (value: number): boolean => (worse === 'more' ? value >= limit : value <= limit);
      if (beyond(at(last).value)) return { already: true, likely: last, earliest: last };
      const soon = worse === 'more' ? 1 : -1;
      const likely = firstPlace((place) => beyond(line(place, 0)), last, end);
      const earliest = firstPlace((place) => beyond(line(place, soon)), last, end);
      const latest = firstPlace((place) => beyond(line(place, soon === 1 ? -1 : 1)), last, end);
      return { already: false, ...(likely === undefined ? {} : { likely }), ...(earliest === undefined ? {} : { earliest }), ...(latest === undefined ? {} : { latest }) };
    },
  };
}

/**
 * 95 % of chi-squared, by Wilson and Hilferty (Proc. Natl. Acad. Sci. 17:684, 1931; from memory): within 0.1 of the tables.
 */
const chiSquared = (freedom: number): number => freedom * (1 - 2 / (9 * freedom) + normalQuantile(0.95) * Math.sqrt(2 / (9 * freedom))) ** 3;

/** First place from which it holds: it holds at most once it has begun, since line and interval only widen onwards. */
function firstPlace(holds: (place: number) => boolean, from: number, to: number): number | undefined {
  if (holds(from)) return from;
  if (!holds(to)) return undefined;
  let [low, high] = [from, to];
  for (let step = 0; step < 60; step++) {
    const half = (low + high) / 2;
    if (holds(half)) high = half;
    else low = half;
  }
  return high;
}
