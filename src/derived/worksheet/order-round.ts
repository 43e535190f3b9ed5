import { inOrder, type Step } from '../../methods/ordering/index.ts';

export interface OrderRound {
  readonly order: readonly string[];
  /** What each step really waits for: its own list without what could never be kept. */
  readonly after: ReadonlyMap<string, readonly string[]>;
  /** Rings of steps that wait for each other, each first to last. */
  readonly rings: readonly (readonly string[])[];
}

/**
 * Puts steps in order even where some wait for each other: within such a ring the waits are let go, everything else keeps
 * its place, and the ring is named.
 * @param steps distinct ids; every id in `after` among them
 */
export function orderRound(steps: readonly Step[]): OrderRound {
  const rings: (readonly string[])[] = [];
  let kept = steps;
  for (;;) {
    const ordered = inOrder(kept);
    if (ordered.state === 'ordered') return { order: ordered.order, after: new Map(kept.map((step) => [step.id, step.after])), rings };
    const { cycle } = ordered;
    rings.push(cycle);
    kept = kept.map((step) => (cycle.includes(step.id) ? { ...step, after: step.after.filter((before) => !cycle.includes(before)) } : step));
  }
}
