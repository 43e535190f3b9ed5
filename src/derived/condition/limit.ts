import type { LimitKind } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';

/** A restriction on use, with the findings that put it there. */
export interface Limit {
  readonly kind: LimitKind;
  readonly quantity?: Quantity;
  /** The sentence for the limits card, figure included. */
  readonly sentence: string;
  /** Criterion ids (with `@place`) behind it, the strictest first. */
  readonly because: readonly string[];
}
