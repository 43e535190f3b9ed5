import { demandPositive } from '../../numerics/index.ts';

/** One spring of a nest. */
export interface NestedSpring {
  /** N/m, > 0. */
  readonly rate: number;
  /** m, > 0. */
  readonly freeLength: number;
}

/** How a nest stands under load. */
export interface NestUnderLoad {
  /** Common length of all springs that carry, m. */
  readonly length: number;
  /** Load and deflection of each, N and m, in the order given; a spring not yet reached has 0 and 0. */
  readonly shares: readonly { readonly load: number; readonly deflection: number }[];
}

/**
 * Springs inside each other between two plates, with free lengths that may differ: the longest takes load first, the next when
 * the plate reaches it (Bhandari, Design of Machine Elements, ex. 10.19). Solid lengths are not looked at.
 * @param springs one at least
 * @param load N, 0 or above
 */
export const nestUnderLoad = (springs: readonly NestedSpring[], load: number): NestUnderLoad => {
  if (springs.length === 0 || !(load >= 0 && Number.isFinite(load))) throw new RangeError(`A nest needs one spring at least and a load of 0 N or above: ${springs.length} springs, ${load} N`);
  const order = [...springs].sort((a, b) => b.freeLength - a.freeLength);
  let rates = 0;
  let weighted = 0;
  let length = order[0]!.freeLength;
  for (const [i, spring] of order.entries()) {
    rates += demandPositive('spring rate', spring.rate);
    weighted += spring.rate * demandPositive('free length', spring.freeLength);
    // Common length if exactly these springs carried; it is right once the next spring is not reached.
    length = (weighted - load) / rates;
    const next = order[i + 1];
    if (next === undefined || length >= next.freeLength) break;
  }
  const shares = springs.map((spring) => {
    const deflection = Math.max(0, spring.freeLength - length);
    return { load: spring.rate * deflection, deflection };
  });
  return { length, shares };
};
