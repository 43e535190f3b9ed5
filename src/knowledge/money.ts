import type { Span } from './job.ts';

/** How far a price of each kind is trusted: half-width of its range as a share of the price. Judgement; common practice, no source. */
export const PRICE_DOUBT = { paid: 0, quoted: 0.05, listed: 0.1, heard: 0.25 } as const;

/**
 * How early and how late work that was promised for a number of days comes, as shares of them: it is seldom early and often
 * half as long again. Judgement; common practice, no source.
 */
export const PROMISED_DAYS = { early: 0.9, late: 1.5 } as const;

/**
 * Correlation between the overruns of any two jobs, hours and money alike: a hammer that is worse than it looked is worse
 * all over, and one person's estimates err the same way. From memory of cost engineering, where 0.2 to 0.4 is usual.
 */
export const SHARED_OVERRUN = 0.3;

/** Who does the work where nobody says otherwise: one pair of hands, a careful amateur, so many hours in a working day. Editable defaults. */
export const USUAL_CREW = { hands: 1, skill: 2, hoursPerDay: 6 } as const;

/** What an hour of careful work is worth to whoever does it himself, generic units: from nothing to half a shop's rate. From memory. */
export const HOUR_WORTH: Span = { least: 0, likely: 20, most: 50 };
