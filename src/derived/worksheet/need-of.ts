import { chanceOfAny, drawOf, type Cause } from './cause.ts';
import { DOUBT } from './causes-of-readings.ts';
import { HOUR_WORTH } from '../../knowledge/index.ts';
import type { Need } from './worksheet.ts';

/** One in twenty: what is less likely is not put on a list of work. */
const WORTH_SAYING = 0.05;

/**
 * How likely it is that a job is needed, from the causes that ask for it.
 * @param at money and hours that it takes at likely figures, for what a check spares
 * @returns undefined where it is certain, or too unlikely to be spoken of
 */
export function needOf(causes: readonly Cause[], at: { readonly cost: number; readonly hours: number } = { cost: 0, hours: 0 }): Need | undefined {
  if (causes.length === 0) return undefined;
  const draws = causes.map(drawOf);
  const chance = chanceOfAny(draws);
  if (chance < WORTH_SAYING || chance > 1 - DOUBT) return undefined;
  const check = checkOf(causes, chance, at);
  return { chance, draws, because: [...new Set(causes.map((cause) => cause.because))], ...(check === undefined ? {} : { check }) };
}

/**
 * The check that settles it, where every cause of the job has one: the job is spared where all of them say no. Offered only
 * where it spares more than it takes, an hour of one's own reckoned at what it is commonly worth.
 */
function checkOf(causes: readonly Cause[], chance: number, at: { readonly cost: number; readonly hours: number }): Need['check'] {
  const checks = causes.flatMap((cause) => cause.check ?? []);
  if (checks.length < causes.length) return undefined;
  const distinct = [...new Map(checks.map((check) => [check.settles.join(), check])).values()];
  const minutes = distinct.reduce((sum, check) => sum + check.minutes, 0);
  // One look may settle several causes; of several looks none is likelier to clear the job than the doubt that there is.
  const clears = Math.min(1 - chance, ...distinct.map((check) => check.clears));
  const spares = { cost: clears * at.cost, hours: clears * at.hours - minutes / 60 };
  if (spares.cost + spares.hours * HOUR_WORTH.likely <= 0) return undefined;
  return { words: [...new Set(distinct.map((check) => check.words))].join('; '), minutes, settles: [...new Set(distinct.flatMap((check) => check.settles))], clears, spares };
}
