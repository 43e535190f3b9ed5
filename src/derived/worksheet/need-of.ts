import { chanceOfAny, drawOf, type Cause } from './cause.ts';
import { DOUBT } from './causes-of-readings.ts';
import type { Need } from './worksheet.ts';

/** One in twenty: what is less likely is not put on a list of work. */
const WORTH_SAYING = 0.05;

/**
 * How likely it is that a job is needed, from the causes that ask for it.
 * @returns undefined where it is certain, or too unlikely to be spoken of
 */
export function needOf(causes: readonly Cause[]): Need | undefined {
  if (causes.length === 0) return undefined;
  const draws = causes.map(drawOf);
  const chance = chanceOfAny(draws);
  if (chance < WORTH_SAYING || chance > 1 - DOUBT) return undefined;
  return { chance, draws, causes: causes.map(({ id, because, check }) => ({ id, because, ...(check === undefined ? {} : { check }) })) };
}
