import { placeOf } from '../../hammer/index.ts';
import { HOUR_WORTH, type Criterion, type Grade, type Knowledge } from '../../knowledge/index.ts';
import { normalCdf, normalQuantile } from '../../methods/chance/index.ts';
import { TOOLS, canRead, toolHalfWidth, type Quantity, type ToolName } from '../../methods/quantity/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { jobsAt } from './causes-of-readings.ts';
import type { CheckFirst } from './cause.ts';
import { findingKey } from './cure-needs.ts';
import type { WorksheetJob } from './worksheet.ts';

/** A check that settles whether a job is needed, with what it spares on average at likely figures. */
export interface WorthChecking extends CheckFirst {
  readonly spares: { readonly cost: number; readonly hours: number };
}

/** How much finer a second reading must be before it is worth taking. */
const FINER = 2;

/**
 * The check that settles it, where every cause of the job has one: the job is spared where all of them say no. Offered only
 * where it spares more than it takes, an hour of one's own reckoned at what it is commonly worth.
 */
export function checkFirst(known: Known, findings: readonly Finding[], knowledge: Knowledge, job: WorksheetJob): WorthChecking | undefined {
  if (job.need === undefined) return undefined;
  const { causes, chance } = job.need;
  const at = { cost: job.cost.likely, hours: job.hours.likely };
  const checks = causes.flatMap((cause) => cause.check ?? checkOfReading(known, findings, knowledge, cause.id) ?? []);
  if (checks.length < causes.length) return undefined;
  const distinct = [...new Map(checks.map((check) => [check.settles.join(), check])).values()];
  const minutes = distinct.reduce((sum, check) => sum + check.minutes, 0);
  // One look may settle several causes; of several looks none is likelier to clear the job than the doubt that there is.
  const clears = Math.min(1 - chance, ...distinct.map((check) => check.clears));
  const spares = { cost: clears * at.cost, hours: clears * at.hours - minutes / 60 };
  if (spares.cost + spares.hours * HOUR_WORTH.likely <= 0) return undefined;
  return { words: [...new Set(distinct.map((check) => check.words))].join('; '), minutes, settles: [...new Set(distinct.flatMap((check) => check.settles))], clears, spares };
}

/** The check of a cause that the readings themselves leave open; its name is that of the finding with the grade. */
function checkOfReading(known: Known, findings: readonly Finding[], knowledge: Knowledge, cause: string): CheckFirst | undefined {
  const grade = (['watch', 'limited', 'stand-down'] as const).find((one) => cause.endsWith(`:${one}`));
  const finding = grade === undefined ? undefined : findings.find((one) => cause === `${findingKey(one)}:${grade}`);
  const criterion = knowledge.criteria.find((one) => one.id === finding?.criterion);
  return finding === undefined || criterion === undefined || grade === undefined ? undefined : finerReading(known, finding, criterion, grade);
}

/** The same place again with a finer tool that is fit for it, where there is one. */
function finerReading(known: Known, finding: Finding, criterion: Criterion, grade: Exclude<Grade, 'sound'>): CheckFirst | undefined {
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
  const needed = chanceOfJobs(finding, criterion, jobsAt(criterion, grade));
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
