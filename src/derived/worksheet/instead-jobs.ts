import { TRIAL_JOB, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { worst, type Chosen } from './asked-jobs.ts';
import { findingKey, insteadOf } from './cure-needs.ts';
import { isOpen, jobEntry } from './job-entry.ts';
import { priceBook } from './price-book.ts';
import { waitsFor } from './waits-for.ts';
import type { InsteadJob, Worksheet, WorksheetJob } from './worksheet.ts';

/**
 * Other ways: jobs that are not on a worksheet and would do in the place of some that are. The lesser that a greater has put
 * aside is always offered; a greater in the place of a lesser only where it spares money or hours.
 */
export function insteadJobs(known: Known, findings: readonly Finding[], knowledge: Knowledge, worksheet: Worksheet): readonly InsteadJob[] {
  const others = othersThatDo(known, findings, knowledge, new Set([...worksheet.jobs, ...(worksheet.mayBe ?? [])].map((job) => job.job)));
  const book = worksheet.prices ?? priceBook(known, knowledge);
  const all = new Map([...knowledge.jobs.map((job) => [job.id, { job }] as const)]);
  const curesOf = new Map([...worksheet.jobs, ...others.map((one) => ({ job: one.job.id, cures: one.cures }))].map((one) => [one.job, one.cures]));
  const asked = new Map(knowledge.jobs.map((job) => [job.id, { job, cures: curesOf.get(job.id) ?? [] }]));
  const among = new Set([...worksheet.jobs.map((job) => job.job), ...others.map((one) => one.job.id)]);
  const takes = (by: string, of: string): boolean => knowledge.jobs.find((job) => job.id === by)?.replaces?.some((other) => other.job === of) === true;
  return others.flatMap((one): readonly InsteadJob[] => {
    const { id } = one.job;
    const entry = jobEntry({ known, knowledge, book, all }, one, 0, waitsFor(one, asked).filter((before) => among.has(before)));
    const places = worksheet.jobs.filter((job) => takes(id, job.job) || takes(job.job, id));
    const worthAThought = (job: WorksheetJob): boolean => isOpen(job) && job.job !== TRIAL_JOB && (takes(job.job, id) || entry.cost.likely < job.cost.likely || entry.hours.likely < job.hours.likely);
    return places.some(worthAThought) ? [{ ...entry, takesPlaceOf: places.map((job) => job.job) }] : [];
  });
}

export function othersThatDo(known: Known, findings: readonly Finding[], knowledge: Knowledge, taken: ReadonlySet<string>): readonly Chosen[] {
  const found = new Map<string, Chosen>();
  for (const finding of findings) {
    const { grade } = finding;
    if (grade !== 'watch' && grade !== 'limited' && grade !== 'stand-down') continue;
    for (const id of finding.ownCures ?? finding.cures) {
      for (const job of [...knowledge.jobs.filter((one) => one.id === id), ...insteadOf(id, finding.part, knowledge)]) {
        if (taken.has(job.id) || !job.families.includes(known.identity.family)) continue;
        const before = found.get(job.id);
        found.set(job.id, { job, cures: [...(before?.cures ?? []), findingKey(finding)], urgency: worst(before?.urgency, grade), state: 'open', causes: [] });
      }
    }
  }
  return [...found.values()];
}
