import type { Picture } from '../../derived/index.ts';

/** The range of stroke rates to look in. */
export interface ExpectedRates {
  /** strokes a second */
  readonly slowest: number;
  readonly fastest: number;
  /** where it comes from, in words */
  readonly from: string;
}

/**
 * Less than an octave, so that half and double the rate cannot both lie in it: a clutch that is not trodden right down
 * slips, and nothing but a wrong pulley makes it faster than its drive.
 */
const SLOWEST_SHARE = 0.58;
const FASTEST_SHARE = 1.12;

/** @param rate strokes a second that the drive gives at most */
export const rangeAbout = (rate: number, from: string): ExpectedRates => ({ slowest: rate * SLOWEST_SHARE, fastest: rate * FASTEST_SHARE, from });

/** What the survey lets one expect of the stroke rate: from the pulleys, or from a rate counted before; undefined where neither is known. */
export function expectedRates(picture: Picture): ExpectedRates | undefined {
  const known = (key: string): number | undefined => {
    const outcome = picture.values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : undefined;
  };
  const byPulleys = known('drive.rate-without-slip');
  if (byPulleys !== undefined && byPulleys > 0.5) return rangeAbout(byPulleys, 'by its pulleys');
  const counted = known('running.rate');
  return counted !== undefined && counted > 0.5 ? rangeAbout(counted, 'by the count of an earlier visit') : undefined;
}
