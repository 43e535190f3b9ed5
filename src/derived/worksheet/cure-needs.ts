import type { LinkageFamily } from '../../hammer/index.ts';
import type { Job, Knowledge } from '../../knowledge/index.ts';
import { isFault, type Finding } from '../condition/index.ts';
import { valueKey } from '../value.ts';

/** Name of a finding: `criterion` or `criterion@place`. */
export const findingKey = (finding: Finding): string => valueKey(finding.criterion, finding.at);

/**
 * What has to be done before a finding may be taken as cured: of each list one job, the first being the one that the
 * worksheet has. A job that makes another pointless on the part of the finding does in its place.
 * @returns undefined where no job cures it, or where it asks for one that this version does not know
 */
export function cureWays(finding: Finding, knowledge: Knowledge, family: LinkageFamily): readonly (readonly Job[])[] | undefined {
  if (!isFault(finding)) return undefined;
  const ways: (readonly Job[])[] = [];
  for (const id of finding.ownCures ?? finding.cures) {
    const asked = knowledge.jobs.find((one) => one.id === id);
    if (asked === undefined) return undefined;
    const serving = [asked, ...insteadOf(asked.id, finding.part, knowledge)].filter((job) => job.families.includes(family));
    if (serving.length > 0) ways.push([...serving].sort((a, b) => Number(finding.cures.includes(b.id)) - Number(finding.cures.includes(a.id))));
  }
  return ways.length === 0 ? undefined : ways;
}

/** Jobs that make a job pointless on a part. */
export const insteadOf = (job: string, part: string, knowledge: Knowledge): readonly Job[] =>
  knowledge.jobs.filter((one) => one.replaces?.some((other) => other.job === job && other.on.includes(part)) === true);
