import type { Job } from '../../knowledge/index.ts';
import type { Finding } from './finding.ts';

/**
 * Alternatives do not all land on the worksheet: where one finding asks for a job that makes another pointless on a part,
 * every finding on that part that asked for the other asks for the first instead, and keeps what it asked for by itself.
 */
export function settleCures(findings: readonly Finding[], jobs: readonly Job[]): readonly Finding[] {
  const asked = new Set(findings.filter((finding) => finding.grade === 'watch' || finding.grade === 'limited' || finding.grade === 'stand-down').flatMap((finding) => finding.cures));
  const replacers = jobs.filter((job) => asked.has(job.id) && job.replaces !== undefined);
  if (replacers.length === 0) return findings;
  const insteadOf = (job: string, part: string): string => replacers.find((one) => one.replaces?.some((other) => other.job === job && other.on.includes(part)) === true)?.id ?? job;
  return findings.map((finding) => {
    const cures = [...new Set(finding.cures.map((job) => insteadOf(job, finding.part)))];
    return cures.length === finding.cures.length && cures.every((job, index) => job === finding.cures[index]) ? finding : { ...finding, cures, ownCures: finding.cures };
  });
}
