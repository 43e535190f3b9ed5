import type { LimitKind } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';

/** A restriction on use, with the findings that put it there. */
export interface Limit {
  readonly kind: LimitKind;
  readonly quantity?: Quantity;
  /** The sentence for the limits card, figure included. */
  readonly sentence: string;
  /** Oil ways that must be open first, as they are called on this hammer; `every` where the share of shut ones says so. */
  readonly oilWays?: { readonly named: readonly string[]; readonly every: boolean };
  /** Criterion ids (with `@place`) behind it, the strictest first. */
  readonly because: readonly string[];
}
