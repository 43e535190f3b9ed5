/** One thing to do, and what must come before it. */
export interface Step {
  readonly id: string;
  /** among steps that could come next, the lowest goes first; then as listed */
  readonly rank: number;
  /** ids of the steps that must be done before it */
  readonly after: readonly string[];
}

export type Ordered =
  | { readonly state: 'ordered'; readonly order: readonly string[] }
  /** Steps that wait for each other: each must come after the one before it in the list, and the first after the last. */
  | { readonly state: 'cycle'; readonly cycle: readonly string[] };

/**
 * Steps in an order in which each comes after everything it waits for; lowest rank first wherever there is a choice.
 *
 * A. B. Kahn, "Topological sorting of large networks", Comm. ACM 5:558, 1962, with the choice fixed by rank and listing,
 * so that the same steps always come out in the same order.
 * @param steps distinct ids; every id in `after` must be among them (throws otherwise: the caller chose the steps)
 */
export function inOrder(steps: readonly Step[]): Ordered {
  const place = new Map(steps.map((step, index) => [step.id, index]));
  if (place.size !== steps.length) throw new Error(`Steps must have distinct ids: ${steps.map((step) => step.id).join(', ')}`);
  const waits = steps.map((step) => new Set(step.after.map((id) => placeOf(place, id, step.id))));
  const followers: number[][] = steps.map(() => []);
  waits.forEach((before, index) => before.forEach((other) => followers[other]!.push(index)));
  const open = waits.map((before) => before.size);
  const ready = steps.flatMap((_, index) => (open[index] === 0 ? [index] : []));
  const order: string[] = [];
  while (ready.length > 0) {
    const next = ready.reduce((best, one) => (sooner(steps, one, best) ? one : best));
    ready.splice(ready.indexOf(next), 1);
    order.push(steps[next]!.id);
    for (const follower of followers[next]!) if (--open[follower]! === 0) ready.push(follower);
  }
  if (order.length === steps.length) return { state: 'ordered', order };
  return { state: 'cycle', cycle: cycleAmong(waits, open).map((index) => steps[index]!.id) };
}

function placeOf(place: ReadonlyMap<string, number>, id: string, of: string): number {
  const index = place.get(id);
  if (index === undefined) throw new Error(`Step ${of} waits for a step that is not among those to order: ${id}`);
  return index;
}

const sooner = (steps: readonly Step[], one: number, best: number): boolean => {
  const difference = steps[one]!.rank - steps[best]!.rank;
  return difference < 0 || (difference === 0 && one < best);
};

/** Walks back from any step that never became ready, always to one that it still waits for, until a step comes again. */
function cycleAmong(waits: readonly ReadonlySet<number>[], open: readonly number[]): readonly number[] {
  const walked: number[] = [];
  let at = open.findIndex((count) => count > 0);
  while (!walked.includes(at)) {
    walked.push(at);
    const before = [...waits[at]!].find((other) => open[other]! > 0);
    if (before === undefined) throw new Error(`Step number ${at} waits for nothing and was never ready`);
    at = before;
  }
  return walked.slice(walked.indexOf(at)).reverse();
}
