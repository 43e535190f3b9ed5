import { GRADES, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { isOpen } from './job-entry.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

/** A hammer as far as a cheaper way asks. */
interface Ground {
  readonly known: Pick<Known, 'looks'>;
  readonly findings: readonly Finding[];
  readonly worksheet: Pick<Worksheet, 'jobs'>;
}

/**
 * The cheaper way of a job, in its words; none where a finding or a look of this hammer forbids it, or another open job would be
 * spoilt by it: what the readings forbid is no way of saving.
 */
export function cheaperHere({ known, findings, worksheet }: Ground, knowledge: Knowledge, job: Pick<WorksheetJob, 'job'>): string | undefined {
  const { cheaper, cheaperNot: bar } = knowledge.jobs.find((one) => one.id === job.job) ?? {};
  if (cheaper === undefined || bar === undefined) return cheaper;
  const grade = (name: string): number => GRADES.findIndex((one) => one === name);
  const found = bar.findings?.some(({ criterion, from }) => findings.some((one) => one.criterion === criterion && grade(one.grade) >= grade(from))) === true;
  const seen = bar.looks?.some(({ look, answers }) => answers.includes(known.looks[look]?.answer ?? '')) === true;
  const spoilt = bar.jobs?.some((id) => worksheet.jobs.some((one) => one.job === id && isOpen(one))) === true;
  return found || seen || spoilt ? undefined : cheaper;
}
