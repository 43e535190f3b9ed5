import { inOrder } from './in-order.ts';

/** A task with its duration (any one unit of time, not negative) and the tasks it waits for. */
export interface Task {
  readonly id: string;
  readonly duration: number;
  readonly after: readonly string[];
}

/** When a task may and must run, in the unit of the durations from the start of the whole. */
export interface Scheduled {
  readonly id: string;
  readonly earliestStart: number;
  readonly earliestFinish: number;
  readonly latestStart: number;
  readonly latestFinish: number;
  /** how long it may be late without delaying the whole; 0 on the critical path */
  readonly slack: number;
}

export type Schedule =
  | {
      readonly state: 'scheduled';
      /** length of the whole, hands enough for everything at once */
      readonly length: number;
      /** in an order that the tasks allow */
      readonly tasks: readonly Scheduled[];
      /** one longest chain of tasks, first to last; where several are as long, the one with the tasks listed first */
      readonly critical: readonly string[];
    }
  | { readonly state: 'cycle'; readonly cycle: readonly string[] };

/**
 * Critical path with slacks (J. E. Kelley and M. R. Walker, "Critical-path planning and scheduling", Proc. Eastern Joint
 * Computer Conf. 1959): earliest times forwards, latest times backwards.
 * @param tasks distinct ids; every id in `after` must be among them
 */
export function criticalPath(tasks: readonly Task[]): Schedule {
  const ordered = inOrder(tasks.map((task) => ({ id: task.id, rank: 0, after: task.after })));
  if (ordered.state === 'cycle') return ordered;
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const chain = ordered.order.map((id) => byId.get(id)!);
  const start = new Map<string, number>();
  const finish = new Map<string, number>();
  for (const { id, duration, after } of chain) {
    if (!(duration >= 0 && duration < Number.POSITIVE_INFINITY)) throw new Error(`A duration must be a number not below 0: ${id} has ${duration}`);
    start.set(id, Math.max(0, ...after.map((before) => finish.get(before)!)));
    finish.set(id, start.get(id)! + duration);
  }
  const length = Math.max(0, ...finish.values());
  const latest = new Map(chain.map(({ id }) => [id, length]));
  for (const { id, duration, after } of [...chain].reverse()) {
    for (const before of after) latest.set(before, Math.min(latest.get(before)!, latest.get(id)! - duration));
  }
  // Sums of the same durations taken in another order differ in their last digits; such a slack is none.
  const hair = 1e-9 * Math.max(1, length);
  const scheduled = chain.map(({ id, duration }) => {
    const slack = latest.get(id)! - finish.get(id)!;
    return {
      id, earliestStart: start.get(id)!, earliestFinish: finish.get(id)!, latestStart: latest.get(id)! - duration, latestFinish: latest.get(id)!,
      slack: slack < hair ? 0 : slack,
    };
  });
  return { state: 'scheduled', length, tasks: scheduled, critical: longestChain(tasks, byId, start, finish, length, hair) };
}

function longestChain(
  tasks: readonly Task[], byId: ReadonlyMap<string, Task>, start: ReadonlyMap<string, number>, finish: ReadonlyMap<string, number>, length: number, hair: number,
): readonly string[] {
  const path: string[] = [];
  let at = tasks.find((task) => finish.get(task.id)! >= length - hair);
  while (at !== undefined) {
    path.unshift(at.id);
    const { id, after } = at;
    const before = after.find((one) => finish.get(one)! >= start.get(id)! - hair);
    at = before === undefined ? undefined : byId.get(before);
  }
  return path;
}
