import type { Estimate } from '../../derived/sound/index.ts';

/** The clock of a phone is good to some tenths of a blow in a minute; nothing closer is printed. */
const LEAST_RATE_DOUBT = 0.1;
const LEAST_DELAY_DOUBT = 0.5; // ms
const LEAST_LEVEL_DOUBT = 1; // dB

/** A value with its doubt, both to the place that the doubt allows: `238.4 ± 0.3`. @param doubt half of the stated width, above 0 */
export function withDoubt(value: number, doubt: number): string {
  const places = Math.max(0, Math.min(2, Math.ceil(-Math.log10(doubt) - 1e-9)));
  return `${value.toFixed(places)} ± ${doubt.toFixed(places)}`;
}

/** Half of the interval that holds the truth in 95 of 100 recordings; 0 where the estimate has none. */
export const halfWidth = (estimate: Estimate): number => Math.max(0, (estimate.high - estimate.low) / 2);

/** Strokes a minute with doubt, of an estimate a second. */
export const rateNumber = (rate: Estimate): string => withDoubt(rate.value * 60, Math.max(LEAST_RATE_DOUBT, halfWidth(rate) * 60));
export const shownRate = (rate: Estimate): string => `${rateNumber(rate)} a minute`;
export const plainRate = (perSecond: number): string => `${(perSecond * 60).toFixed(perSecond > 2 ? 0 : 1)} a minute`;

/** Delay in ms without sign; the words before or after carry it. */
export const shownDelay = (delay: Estimate): string => `${withDoubt(Math.abs(delay.value) * 1000, Math.max(LEAST_DELAY_DOUBT, halfWidth(delay) * 1000))} ms`;
export const plainDelay = (seconds: number): string => `${Math.round(Math.abs(seconds) * 1000)} ms`;

/** Decibels below or above the blow. */
export function shownLevel(level: Estimate): string {
  const doubt = Math.max(LEAST_LEVEL_DOUBT, halfWidth(level));
  const figure = `${withDoubt(Math.abs(level.value), doubt)} dB`;
  const words = `${figure} ${level.value > 0 ? 'louder' : 'fainter'}`;
  return Math.abs(level.value) <= doubt ? `about as loud as the blow (${/^0(\.0)? /u.test(figure) ? figure : words})` : `${words} than the blow`;
}

/** Seconds as one reads them on a clock. */
export function shownTime(seconds: number): string {
  if (seconds < 100) return `${seconds.toFixed(seconds < 10 ? 1 : 0)} s`;
  const whole = Math.round(seconds);
  return whole < 3600 ? `${Math.floor(whole / 60)} min ${whole % 60} s` : `${Math.floor(whole / 3600)} h ${Math.round((whole % 3600) / 60)} min`;
}

export const shownShare = (share: number): string => `${(share * 100).toFixed(Math.abs(share) < 0.1 ? 1 : 0)} %`;
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
