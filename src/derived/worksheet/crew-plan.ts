/** Who works: pairs of hands that work at once, the skill of the best of them (1 owner to 4 specialist), hours in a day. */
export interface Crew {
  readonly hands: number;
  readonly skill: 1 | 2 | 3 | 4;
  readonly hoursPerDay: number;
}

/** A job to be planned; times in days. */
export interface PlannedJob {
  readonly days: number;
  /** Days from the start until its parts are there, all ordered on the first day. */
  readonly lead: number;
  /** Indices of the jobs that it waits for. */
  readonly after: readonly number[];
  /** Done by somebody else, who takes none of the crew's hands. */
  readonly outside: boolean;
}

/**
 * Days until the last job is done: whenever a pair of hands is free it takes the job that can start first, the earlier of
 * the order where two can. A rule of the shop, not the shortest plan there is; never shorter than the critical path.
 * @param jobs in an order in which each comes after those it waits for
 */
export function planDays(jobs: readonly PlannedJob[], hands: number): number {
  const finish = new Float64Array(jobs.length).fill(Number.NaN);
  // When its parts and all that it waits for are there; infinite until all of them are planned.
  const ready = new Float64Array(jobs.length).fill(Number.POSITIVE_INFINITY);
  const free = new Float64Array(Math.max(1, hands));
  let end = 0;
  for (let planned = 0; planned < jobs.length; planned++) {
    const soonest = earliest(free);
    let best = -1;
    let bestStart = Number.POSITIVE_INFINITY;
    for (let index = 0; index < jobs.length; index++) {
      if (!Number.isNaN(finish[index]!)) continue;
      const job = jobs[index]!;
      if (ready[index] === Number.POSITIVE_INFINITY) ready[index] = readyAt(job, finish);
      const start = job.outside ? ready[index]! : Math.max(ready[index]!, free[soonest]!);
      if (start < bestStart) {
        best = index;
        bestStart = start;
      }
    }
    if (best < 0) throw new Error(`${jobs.length - planned} jobs wait for each other and cannot be planned`);
    const job = jobs[best]!;
    finish[best] = bestStart + job.days;
    if (!job.outside) free[soonest] = finish[best]!;
    end = Math.max(end, finish[best]!);
  }
  return end;
}

/** @returns infinity where a job before it is not planned yet */
function readyAt(job: PlannedJob, finish: Float64Array): number {
  let at = job.lead;
  for (const before of job.after) {
    if (Number.isNaN(finish[before]!)) return Number.POSITIVE_INFINITY;
    at = Math.max(at, finish[before]!);
  }
  return at;
}

function earliest(free: Float64Array): number {
  let at = 0;
  for (let index = 1; index < free.length; index++) if (free[index]! < free[at]!) at = index;
  return at;
}
