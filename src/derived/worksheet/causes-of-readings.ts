import { normalCdf, normalQuantile } from '../../methods/chance/index.ts';
import { TOOLS, canRead, toolHalfWidth, type Quantity, type ToolName } from '../../methods/quantity/index.ts';
import { placeOf } from '../../hammer/index.ts';
import type { Criterion, Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import type { Cause, CheckFirst } from './cause.ts';
import { findingKey } from './cure-needs.ts';

/** Below this chance nothing is said, and from one less this on it counts as certain: the usual 95 % interval, one end. */
export const DOUBT = 0.025;

/** A grade that is less likely than this is not spoken of. */
const HARDLY = 0.005;

/** How much finer a second reading must be before it is worth taking. */
const FINER = 2;

/**
 * What the readings leave open: where the doubt of a reading lies across a step of its criterion, each grade on either
 * side with its chance and with the jobs that it asks for. Findings that rest on a common reading hold or fail together.
 */
export function causesOfReadings(known: Known, findings: readonly Finding[], knowledge: Knowledge): readonly Cause[] {
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
      const check = finerReading(known, finding, criterion, jobs);
      return [{
        id: `${findingKey(finding)}:${grade}`, title: finding.title, part: finding.part, chance: to - from, jobs, urgency: grade, basis: 'readings', draw: { by: names.get(finding) ?? findingKey(finding), from },
        because: `${finding.title}${finding.at === undefined ? '' : `, ${finding.at.replaceAll('-', ' ')}`}, ${finding.shown}: with the doubt of the reading the chance that it is ${GRADE_WORDS[grade]} is ${Math.round((to - from) * 100)} %.`, ...(check === undefined ? {} : { check }),
      }];
    });
  });
}

const GRADE_WORDS = { watch: 'past the first limit', limited: 'bad enough to limit use', 'stand-down': 'bad enough to stop it' } as const;

const jobsAt = (criterion: Criterion, grade: 'watch' | 'limited' | 'stand-down'): readonly string[] =>
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

/** The same place again with a finer tool that is fit for it, where there is one. */
function finerReading(known: Known, finding: Finding, criterion: Criterion, jobs: readonly string[]): CheckFirst | undefined {
  const readings = Object.values(known.values).filter((value) => !value.key.includes('#') && value.evidence.some((entry) => finding.evidence.includes(entry)));
  const again = readings.flatMap((value) => {
    if (value.outcome.state !== 'known') return [];
    const { quantity } = value.outcome;
    const tool = finestTool(value.key, quantity);
    return tool === undefined || tool.uncertainty * FINER > quantity.uncertainty ? [] : [{ value, quantity, tool }];
  });
  const [first] = again;
  if (first === undefined) return undefined;
  const names = again.map(({ value, tool }) => `${value.title.toLowerCase()} with a ${TOOLS[tool.name].us}`);
  const direct = criterion.rule.kind === 'measured' && finding.from.length === 1 && finding.from[0] === first.value.key;
  const needed = chanceOfJobs(finding, criterion, jobs);
  // A new reading scatters about the truth by its own doubt, so the limit moves away in its terms by both doubts together.
  const narrow = Math.sqrt(1 + (first.tool.uncertainty / Math.max(first.quantity.uncertainty, Number.MIN_VALUE)) ** 2);
  const clears = direct ? normalCdf(normalQuantile(1 - needed) / narrow) : 1 - needed;
  return { words: `${names.join('; ')}`, minutes: finding.minutes, settles: again.map(({ value }) => value.key), clears };
}

/** Chance of every grade that asks for all these jobs together. */
function chanceOfJobs(finding: Finding, criterion: Criterion, jobs: readonly string[]): number {
  const { watch, limited, standDown } = finding.chances;
  const parts = [['stand-down', standDown], ['limited', limited - standDown], ['watch', watch - limited]] as const;
  return parts.reduce((sum, [grade, chance]) => (jobs.every((job) => jobsAt(criterion, grade).includes(job)) ? sum + chance : sum), 0);
}

function finestTool(key: string, of: Quantity): { readonly name: ToolName; readonly uncertainty: number } | undefined {
  const fit = (placeOf(key.split('@')[0] ?? key)?.place.tools ?? []).flatMap((name) => {
    const half = toolHalfWidth(name, of.dimension, of.value);
    return half <= 0 || !canRead(name, of.dimension) ? [] : [{ name, uncertainty: half / 2 }];
  });
  return fit.sort((a, b) => a.uncertainty - b.uncertainty)[0];
}
