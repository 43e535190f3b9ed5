import type { Picture } from '../../derived/index.ts';
import type { Estimate } from '../../derived/sound/index.ts';
import { halfWidth, plainRate, rateNumber, shownShare, withDoubt } from './shown.ts';

/** Speed by ear against speed by the pulleys. */
export interface Slip {
  /** share lost between motor and crank with the ends of its 95 % interval; below 0 where it runs faster than its pulleys allow */
  readonly share: Estimate;
  readonly words: string;
}

/** @returns undefined where the pulleys and the motor's speed are not known */
export function slipOf(picture: Picture, rate: Estimate): Slip | undefined {
  const outcome = picture.values['drive.rate-without-slip']?.outcome;
  if (outcome?.state !== 'known' || !(outcome.quantity.value > 0)) return undefined;
  const { value: without, uncertainty } = outcome.quantity;
  const share = 1 - rate.value / without;
  const doubt = Math.max(1e-4, (rate.value / without) * Math.hypot(halfWidth(rate) / rate.value, (2 * uncertainty) / without));
  const usual = picture.values['practice.belt-slip']?.outcome;
  const most = usual?.state === 'known' ? usual.quantity.value + usual.quantity.uncertainty : 0.04;
  const range = { value: share, low: share - doubt, high: share + doubt };
  const beside = `By its pulleys it would make ${plainRate(without)} without slip; ${rateNumber(rate)} are heard`;
  return { share: range, words: `${beside}: ${meaning(range, doubt, most)}` };
}

function meaning(share: Estimate, doubt: number, most: number): string {
  if (share.high < 0) return `faster than the pulleys allow, so motor speed, a pulley, or the rate read here is wrong${share.value < -0.8 ? '; it looks like double the rate' : ''}.`;
  if (Math.abs(share.value - 0.5) < 0.06) return 'about half. Either it strikes every second turn, or half the rate was read: count ten blows against a clock.';
  const lost = `${withDoubt(share.value * 100, doubt * 100)} % is lost between motor and crank`;
  if (share.low <= 0 && share.high > most) return `${lost}, which the doubt of the pulleys and the motor’s speed does not let one judge.`;
  if (share.low > most) return `${lost}, more than the ${shownShare(most)} of a belt in good order. Whether belt or clutch slips, or the treadle was not down, a run without load beside a run with load tells.`;
  return `${lost}, as a belt in good order does.`;
}
