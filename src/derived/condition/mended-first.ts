import type { Criterion, Job } from '../../knowledge/index.ts';
import { isFault, type Finding } from './finding.ts';

/**
 * What is only watched as long as nothing is made to it is mended before something is: a bearing is poured to a journal, so
 * the journal is turned first.
 */
export function mendedFirst(findings: readonly Finding[], criteria: readonly Criterion[], jobs: readonly Job[]): readonly Finding[] {
  const asked = new Set(findings.filter(isFault).flatMap((finding) => finding.cures));
  const first = new Map(jobs.filter((job) => asked.has(job.id)).flatMap((job) => (job.mendsFirst ?? []).map((other) => [other, job] as const)));
  if (first.size === 0) return findings;
  return findings.map((finding) => {
    if (!isFault(finding) || finding.cures.length > 0) return finding;
    const may = criteria.find((one) => one.id === finding.criterion)?.cures ?? [];
    const wanted = may.filter((job) => first.has(job)).slice(0, 1);
    return wanted.length === 0 ? finding : { ...finding, cures: wanted, reason: `${finding.reason} Something is made to it now, so it is made right first: "${first.get(wanted[0] ?? '')?.title ?? ''}" is on the worksheet.` };
  });
}
