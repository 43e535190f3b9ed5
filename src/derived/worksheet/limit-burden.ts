import { LIMIT_WEIGHTS } from '../../knowledge/index.ts';
import type { Limit } from '../condition/index.ts';
import type { Duty, Verdict } from '../duty/index.ts';

/** Verdicts from worst to best. An unknown matter of safety stands before a known fault that is limited: it may be worse. */
export const VERDICT_ORDER: readonly Verdict[] = ['stand-down', 'not-known-yet', 'fit-within-limits', 'fit'];

/**
 * What a limit takes from use, in whole hundredths of a point; greater for a stricter figure of the same kind, and the
 * whole of its points where the figure is not known.
 */
export function limitBurden(limit: Pick<Limit, 'kind' | 'quantity'>): number {
  const weight = LIMIT_WEIGHTS.find((one) => one.kind === limit.kind);
  if (weight === undefined) throw new Error(`knowledge: a kind of limit has no weight: ${limit.kind}`);
  const value = limit.quantity?.value;
  if (value === undefined || weight.half === undefined) return weight.points * 100;
  const share = weight.looser === 'less' ? value / (value + weight.half) : weight.half / (value + weight.half);
  return Math.max(1, Math.round(weight.points * 100 * share));
}

/** Burden of all limits of a duty together, in whole hundredths of a point. */
export const dutyBurden = (duty: Pick<Duty, 'limits'>): number => duty.limits.reduce((sum, limit) => sum + limitBurden(limit), 0);
