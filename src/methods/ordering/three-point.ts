import { normalCdf } from '../chance/index.ts';
import { criticalPath, type Schedule } from './critical-path.ts';

/** A duration (or a cost) as a person gives it: least, likely, most, in one unit; least <= likely <= most. */
export interface ThreePoint {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
}

/** Expected value and variance of a three-point estimate (Malcolm, Roseboom, Clark and Fazar, Oper. Res. 7:646, 1959). */
export function threePoint(one: ThreePoint): { readonly expected: number; readonly variance: number } {
  if (!(one.least <= one.likely && one.likely <= one.most)) {
    throw new Error(`A three-point estimate must rise from least to most: ${one.least}, ${one.likely}, ${one.most}`);
  }
  return { expected: (one.least + 4 * one.likely + one.most) / 6, variance: ((one.most - one.least) / 6) ** 2 };
}

export interface UncertainTask extends ThreePoint {
  readonly id: string;
  readonly after: readonly string[];
}

export type UncertainSchedule =
  | {
      readonly state: 'scheduled';
      readonly schedule: Schedule & { readonly state: 'scheduled' };
      /** sum along the critical path, in the unit of the estimates */
      readonly expected: number;
      /** sum of the variances along the critical path. Tasks off it can only make the whole longer, so the chance of being in time is somewhat flattered. */
      readonly variance: number;
      /** chance that the critical path is done within the time given */
      readonly chanceWithin: (time: number) => number;
    }
  | { readonly state: 'cycle'; readonly cycle: readonly string[] };

/**
 * Length of a set of tasks with three-point durations, the critical path taken at the expected durations and the sum taken as normal.
 * @param tasks distinct ids; every id in `after` must be among them
 */
export function uncertainSchedule(tasks: readonly UncertainTask[]): UncertainSchedule {
  const schedule = criticalPath(tasks.map((task) => ({ id: task.id, duration: threePoint(task).expected, after: task.after })));
  if (schedule.state === 'cycle') return schedule;
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const variance = schedule.critical.reduce((sum, id) => sum + threePoint(byId.get(id)!).variance, 0);
  const expected = schedule.length;
  const chanceWithin = (time: number): number => (variance === 0 ? Number(time >= expected) : normalCdf((time - expected) / Math.sqrt(variance)));
  return { state: 'scheduled', schedule, expected, variance, chanceWithin };
}
