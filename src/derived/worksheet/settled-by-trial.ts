import { LOOKING_JOBS, TRIAL_JOB, TRIAL_POINTS, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';

/** What only the running shows. Keys and bolts are looked at before it too, so no trial is made in order to know them. */
const SHOWN_BY_RUNNING = new Set(TRIAL_POINTS.filter((point) => point.afterRunning !== true).map((point) => point.criterion));

/**
 * The job among some that answers a question which nobody has answered yet: the trial for what the running shows, a look
 * for what it looks at.
 * @returns undefined where the finding is known, or where none of the jobs answers it
 */
export function settledBy(finding: Finding, jobs: readonly string[], knowledge: Knowledge): string | undefined {
  if (finding.grade !== 'not-known') return undefined;
  if (jobs.includes(TRIAL_JOB) && SHOWN_BY_RUNNING.has(finding.criterion)) return TRIAL_JOB;
  const cures = knowledge.criteria.find((criterion) => criterion.id === finding.criterion)?.cures ?? [];
  return jobs.find((job) => LOOKING_JOBS.includes(job) && cures.includes(job));
}
