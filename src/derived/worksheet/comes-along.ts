import type { Knowledge } from '../../knowledge/index.ts';
import { isOpen } from './job-entry.ts';
import type { WorksheetJob } from './worksheet.ts';

type Told = Pick<WorksheetJob, 'job' | 'after' | 'state' | 'number'>;

/**
 * Ids of the open jobs of a worksheet that close up what a job has opened, or set what it has moved: a pack is clipped, a
 * new die is keyed and its gap set, before anything runs. A key at the other end closes nothing here.
 */
export function closersOf(id: string, jobs: readonly Told[], knowledge: Knowledge): readonly string[] {
  const closing = knowledge.jobs.find((one) => one.id === id)?.closedBy ?? [];
  return jobs.filter((job) => job.number > 0 && isOpen(job) && closing.includes(job.job)).filter((job) => {
    const waits = knowledge.jobs.find((one) => one.id === job.job)?.after.find((before) => before.job === id);
    return waits?.atSameEnd !== true || job.after.includes(id);
  }).map((job) => job.job);
}

/**
 * Ids of the open jobs of a worksheet for whose sake alone another is done: a shaft that is only watched is turned because
 * the bearings are poured, and turned without it would go undersize into bearings that have no shim left.
 */
export const doneForOf = (id: string, jobs: readonly Told[], knowledge: Knowledge): readonly string[] =>
  jobs.filter((job) => job.number > 0 && isOpen(job) && knowledge.jobs.find((one) => one.id === job.job)?.mendsFirst?.includes(id) === true).map((job) => job.job);

/**
 * Ids of the jobs that cost no money and follow on chosen ones, all that they wait for being chosen: what is free is not
 * left for a greater sum.
 * @param chosen ids @param open jobs in the order of work @param isFree true where a job costs nothing and the hours allow it
 * @param served true where a chosen job does in its place already
 */
export function comingAlong(chosen: readonly string[], open: readonly Told[], isFree: (job: string) => boolean, served: (job: string) => boolean): readonly string[] {
  const all = new Set(chosen);
  const among = new Set(open.map((job) => job.job));
  const added: string[] = [];
  for (let grows = true; grows;) {
    grows = false;
    for (const job of open) {
      const waits = job.after.filter((before) => among.has(before));
      if (all.has(job.job) || job.number === 0 || waits.length === 0 || !waits.every((before) => all.has(before)) || served(job.job) || !isFree(job.job)) continue;
      all.add(job.job);
      added.push(job.job);
      grows = true;
    }
  }
  return added;
}
