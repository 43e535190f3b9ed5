import type { LimitRule } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import type { Value } from '../value.ts';
import { shopBar, SMALL_BAR, type PrintSystem } from '../print-system.ts';

/** A limit as the judgement imposes it. */
interface Held {
  readonly kind: LimitRule['kind'];
  readonly quantity?: Quantity;
}

/** The largest square bar for steady work, rounded down to what is sold: once everything is cured, and as the limits allow. SI. */
export interface SteadyBar {
  readonly cured: number;
  /** Never above `cured`. */
  readonly within: number;
  /** Kinds of the limits that make `within` less than `cured`. */
  readonly because: readonly LimitRule['kind'][];
}

/**
 * One figure for every paper: the lesser of what the blow does and what the trade names for the class, and what today's limits leave of it.
 * With a part of the tread the energy is taken to fall in proportion, and the bar with its root (own reckoning).
 * @returns undefined where it is not known
 */
export function steadyBar(values: Readonly<Record<string, Value>>, limits: readonly Held[], system: PrintSystem): SteadyBar | undefined {
  const outcome = values['capacity.largest-bar']?.outcome;
  if (outcome?.state !== 'known') return undefined;
  const exact = outcome.quantity.value;
  const cured = shopBar(exact, system);
  const held = limits.flatMap((limit): readonly (readonly [LimitRule['kind'], number])[] => {
    if (limit.kind === 'light-work-only') return [[limit.kind, shopBar(limit.quantity?.value ?? exact * SMALL_BAR, system)]];
    if (limit.quantity === undefined) return [];
    if (limit.kind === 'greatest-tread') return [[limit.kind, shopBar(exact * Math.sqrt(Math.min(1, limit.quantity.value)), system)]];
    return limit.kind === 'greatest-bar' || limit.kind === 'greatest-work-thickness' ? [[limit.kind, shopBar(limit.quantity.value, system)]] : [];
  });
  return { cured, within: Math.min(cured, ...held.map(([, size]) => size)), because: held.filter(([, size]) => size < cured).map(([kind]) => kind) };
}
