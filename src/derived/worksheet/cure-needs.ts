import type { LinkageFamily } from '../../hammer/index.ts';
import type { Job, Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import { valueKey } from '../value.ts';

/** Name of a finding: `criterion` or `criterion@place`. */
export const findingKey = (finding: Finding): string => valueKey(finding.criterion, finding.at);

/** True where a finding asks for work. What is sound, not known or does not apply asks for none. */
export const isFault = (finding: Finding): boolean => finding.grade === 'watch' || finding.grade === 'limited' || finding.grade === 'stand-down';

/**
 * Every job that has to be done before a finding may be taken as cured: all that its grade asks for and this linkage
 * family has. Alternatives are not told apart, so none is left out on a guess.
 * @returns undefined where no job cures it, or where it asks for one that this version does not know
 */
export function cureNeeds(finding: Finding, knowledge: Knowledge, family: LinkageFamily): readonly Job[] | undefined {
  if (!isFault(finding)) return undefined;
  const jobs: Job[] = [];
  for (const id of finding.cures) {
    const job = knowledge.jobs.find((one) => one.id === id);
    if (job === undefined) return undefined;
    if (job.families.includes(family)) jobs.push(job);
  }
  return jobs.length === 0 ? undefined : jobs;
}
