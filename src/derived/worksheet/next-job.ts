import { isOpen } from './job-entry.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

/** The step at which the hammer is made safe to work on: before every other. */
const SAFE_TO_WORK_ON = 0;

/**
 * The one job that comes next, the same on page, paper and command line: what makes it safe to work on, else the first job in
 * the order of the worksheet that the worst findings wait for, whatever must come before it included. A job that somebody
 * began goes on before another of its kind is begun.
 * @returns undefined where no job is open
 */
export function nextJob(worksheet: Pick<Worksheet, 'jobs'>): WorksheetJob | undefined {
  const open = worksheet.jobs.filter(isOpen);
  const worst = (['stand-down', 'limited', 'watch'] as const).find((grade) => open.some((job) => job.urgency === grade));
  const wanted = new Set(open.filter((job) => job.urgency === worst).map((job) => job.job));
  for (const job of [...open].reverse()) if (wanted.has(job.job)) job.after.forEach((before) => wanted.add(before));
  const ready = open.filter((job) => wanted.has(job.job) && !job.after.some((before) => open.some((one) => one.job === before)));
  return open.find((job) => job.stage === SAFE_TO_WORK_ON) ?? ready.find((job) => job.state === 'started') ?? open.find((job) => wanted.has(job.job));
}
