import type { Criterion, Knowledge } from '../../knowledge/index.ts';
import { placeWords, type Finding } from '../condition/index.ts';
import type { Cause } from './cause.ts';
import { findingKey } from './cure-needs.ts';

/** Below this chance nothing is said, and from one less this on it counts as certain: the usual 95 % interval, one end. */
export const DOUBT = 0.025;

/** A grade that is less likely than this is not spoken of. */
const HARDLY = 0.005;

/**
 * What the readings leave open: where the doubt of a reading lies across a step of its criterion, each grade on either
 * side with its chance and with the jobs that it asks for. Findings that rest on a common reading hold or fail together.
 */
export function causesOfReadings(findings: readonly Finding[], knowledge: Knowledge): readonly Cause[] {
  const open = findings.filter((finding) => [finding.chances.watch, finding.chances.limited, finding.chances.standDown].some((chance) => chance > DOUBT && chance < 1 - DOUBT));
  const names = sharedReadings(open);
  return open.flatMap((finding): readonly Cause[] => {
    const criterion = knowledge.criteria.find((one) => one.id === finding.criterion);
    if (criterion?.rule.kind !== 'measured') return [];
    const { standDown, limited, watch } = finding.chances;
    const parts = [{ grade: 'stand-down', from: 0, to: standDown }, { grade: 'limited', from: standDown, to: limited }, { grade: 'watch', from: limited, to: watch }] as const;
    return parts.flatMap(({ grade, from, to }): readonly Cause[] => {
      const jobs = jobsAt(criterion, grade);
      if (to - from < HARDLY || jobs.length === 0) return [];
      return [{
        id: `${findingKey(finding)}:${grade}`, title: finding.title, part: finding.part, chance: to - from, jobs, urgency: grade, basis: 'readings', draw: { by: names.get(finding) ?? findingKey(finding), from },
        because: `${finding.title}${placeWords(finding)}: ${finding.shown}. With the doubt of the reading the chance that it is ${GRADE_WORDS[grade]} is ${Math.round((to - from) * 100)} %.`,
      }];
    });
  });
}

const GRADE_WORDS = { watch: 'past the first limit', limited: 'bad enough to limit use', 'stand-down': 'bad enough to stop it' } as const;

/** Jobs that a measured criterion asks for at a grade. */
export const jobsAt = (criterion: Criterion, grade: 'watch' | 'limited' | 'stand-down'): readonly string[] =>
  criterion.rule.kind !== 'measured' ? [] : criterion.rule.steps.filter((step) => step.grade === grade).slice(-1).flatMap((step) => step.cures ?? criterion.cures);

/** One name for all findings that are tied to each other by common entries. */
function sharedReadings(findings: readonly Finding[]): ReadonlyMap<Finding, string> {
  const names = new Map<Finding, string>(findings.map((finding) => [finding, findingKey(finding)]));
  const byEntry = new Map<string, string>();
  for (const finding of findings) {
    for (const entry of finding.evidence) {
      const held = byEntry.get(entry);
      const own = names.get(finding) ?? findingKey(finding);
      if (held !== undefined && held !== own) {
        for (const [other, name] of names) if (name === own) names.set(other, held);
        for (const [other, name] of byEntry) if (name === own) byEntry.set(other, held);
      }
      byEntry.set(entry, names.get(finding) ?? own);
    }
  }
  return names;
}
