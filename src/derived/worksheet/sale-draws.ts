import { draw, nextUniform, normalQuantile, seeded, type Distribution } from '../../methods/chance/index.ts';
import { HOUR_WORTH, LOOKING_JOBS, OF_THE_PLACE, SMALL_SETTING_HOURS, TRIAL_JOB, type Span } from '../../knowledge/index.ts';
import { isFault, type Finding } from '../condition/index.ts';
import { findingKey } from './cure-needs.ts';
import { SpanTables } from './quantile-table.ts';
import type { CostToCure, NothingOff } from './cost-to-cure.ts';
import { isOpen } from './job-entry.ts';
import type { WorksheetJob } from './worksheet.ts';

export const scaled = (span: Span, factor: number): Span => ({ least: span.least * factor, likely: span.likely * factor, most: span.most * factor });

/**
 * What every open finding that no share covers takes off, job by job, each job once, and what only may be needed, by its
 * chance; and why the others take nothing.
 * @param covered findings that a share of the price covers, with the words of the share
 * @param unitWorth of the generic unit in the currency of the jobs
 */
export function costsToCure(findings: readonly Finding[], { jobs, mayBe = [] }: { readonly jobs: readonly WorksheetJob[]; readonly mayBe?: readonly WorksheetJob[] }, covered: ReadonlyMap<string, string>, unitWorth: number): { readonly toCure: readonly CostToCure[]; readonly nothingOff: readonly NothingOff[] } {
  const open = jobs.filter((job) => isOpen(job) && job.job !== TRIAL_JOB);
  const curing = (key: string): readonly WorksheetJob[] => open.filter((job) => job.cures.includes(key));
  const paid = new Map([...covered].flatMap(([key, share]) => curing(key).map((job) => [job.job, share] as const)));
  const lines = new Map<string, WorksheetJob>();
  const nothingOff: NothingOff[] = [];
  for (const finding of findings.filter(isFault)) {
    const key = findingKey(finding);
    if (covered.has(key)) continue;
    const because = nothingBecause(finding, curing(key), paid);
    if (because !== undefined) nothingOff.push({ finding: key, because });
    else for (const job of curing(key)) if (!paid.has(job.job) && !isSmallSetting(job)) lines.set(job.job, job);
  }
  const certain = open.filter((job) => lines.has(job.job)).map((job) => lineOf(job, job.cures.filter((key) => !covered.has(key)), unitWorth));
  const byChance = mayBe.flatMap((job): readonly CostToCure[] => {
    const keys = keysBehind(job, findings);
    const asking = findings.filter((one) => keys.includes(findingKey(one)) && !covered.has(findingKey(one)) && !OF_THE_PLACE.includes(one.part)).map(findingKey);
    if (asking.length > 0 && !isSmallSetting(job)) return [lineOf(job, asking, unitWorth)];
    const because = isSmallSetting(job) ? 'with nothing to buy' : 'which a share above pays for, or which belongs to the place';
    nothingOff.push(...(asking.length > 0 ? asking : keys).map((finding) => ({ finding, because: `it may need, and may not, what takes nothing off: ${job.title.toLowerCase()}, ${because}` })));
    return [];
  });
  return { toCure: [...certain, ...byChance].sort((a, b) => b.amount - a.amount), nothingOff };
}

const lineOf = (job: WorksheetJob, because: readonly string[], unitWorth: number): CostToCure => {
  const chance = job.need?.chance ?? 1;
  return { job: job.job, title: job.title, cost: job.cost, hours: job.hours, chance, because, amount: chance * (job.cost.likely + job.hours.likely * HOUR_WORTH.likely * unitWorth) };
};

/** Findings whose readings leave it open whether a job is needed: a cause of readings carries the key of its finding before its grade. */
const keysBehind = ({ need }: WorksheetJob, findings: readonly Finding[]): readonly string[] =>
  findings.map(findingKey).filter((key) => need?.causes.some(({ id }) => id.startsWith(`${key}:`)) === true);

const isSmallSetting = (job: WorksheetJob): boolean => job.cost.most === 0 && job.hours.likely <= SMALL_SETTING_HOURS;

/** Why a finding takes nothing off; undefined where it does. A look that costs money is paid for by whoever buys. */
function nothingBecause(finding: Finding, curing: readonly WorksheetJob[], paid: ReadonlyMap<string, string>): string | undefined {
  if (OF_THE_PLACE.includes(finding.part)) return 'it belongs to the place and not to the hammer: it is made anew where the hammer goes';
  if (curing.length === 0) return finding.cures.length === 0 && finding.grade === 'watch' ? 'it is only to be watched, and nothing has to be done yet' : 'nothing that is still open cures it; a buyer bargains about it without a figure';
  const shares = [...new Set(curing.flatMap((job) => paid.get(job.job) ?? []))];
  if (curing.every((job) => paid.has(job.job))) return `it comes right with work that the share for ${shares.map((share) => `"${share}"`).join(' and ')} above pays for: ${curing.map((job) => job.title.toLowerCase()).join('; ')}`;
  if (curing.every((job) => LOOKING_JOBS.includes(job.job) && job.cost.most === 0)) return `it only asks for a look, which decides: ${curing.map((job) => job.title.toLowerCase()).join('; ')}`;
  if (curing.every((job) => isSmallSetting(job) || paid.has(job.job))) return `it is set right with nothing to buy: ${curing.map((job) => job.title.toLowerCase()).join('; ')}`;
  return undefined;
}

interface Draws {
  readonly base: Span;
  readonly shares: readonly { readonly share: Span; readonly adds: boolean }[];
  readonly toCure: readonly CostToCure[];
  /** Likely share of each thing that nobody checked. */
  readonly open: readonly number[];
  readonly hourWorth: Span;
}

/** What each line came to in one draw: the base, each share, each cure, what nobody checked, and what keeps it from falling below nought. */
interface Columns {
  readonly base: Float64Array;
  readonly shares: readonly Float64Array[];
  readonly cures: readonly Float64Array[];
  readonly open: Float64Array;
  readonly iron: Float64Array;
}

/** Each line at the middle of the value, money added or, below nought, taken off. Together they give the middle itself. */
export interface MiddleLines {
  readonly base: number;
  readonly shares: readonly number[];
  readonly cures: readonly number[];
  readonly open: number;
  readonly iron: number;
}

/** Draws the value with and without what nobody checked, and each line with it. It never falls below nought: a hammer is worth its iron at least. */
export function drawValues({ base, shares, toCure, open, hourWorth }: Draws, seed: number, draws: number): { readonly value: Float64Array; readonly ifNoneThere: Float64Array; readonly columns: Columns } {
  const generator = seeded(seed, 'sale-value');
  const tables = new SpanTables();
  const score = (): number => normalQuantile(nextUniform(generator));
  const column = (): Float64Array => new Float64Array(draws);
  const value = column();
  const ifNoneThere = column();
  const columns: Columns = { base: column(), shares: shares.map(column), cures: toCure.map(column), open: column(), iron: column() };
  for (let index = 0; index < draws; index++) {
    const start = draw(triangular(base), generator);
    columns.base[index] = start;
    const shared = shares.reduce((left, { share, adds }, line) => {
      const part = draw(triangular(share), generator);
      columns.shares[line]![index] = adds ? left * part : -left * part;
      return left + columns.shares[line]![index]!;
    }, start);
    const hour = toCure.length === 0 ? 0 : draw(triangular(hourWorth), generator);
    const cured = toCure.reduce((left, line, place) => {
      const amount = tables.at(line.cost, score()) + tables.at(line.hours, score()) * hour;
      if (line.chance < 1 && nextUniform(generator) >= line.chance) return left;
      columns.cures[place]![index] = -amount;
      return left - amount;
    }, shared);
    ifNoneThere[index] = Math.max(0, cured);
    value[index] = Math.max(0, open.reduce((left, likely) => left * (1 - draw({ kind: 'triangular', least: 0, likely: 0, most: likely }, generator)), Math.max(0, cured)));
    columns.open[index] = value[index]! - ifNoneThere[index]!;
    columns.iron[index] = ifNoneThere[index]! - cured;
  }
  return { value, ifNoneThere, columns };
}

/** Share of the draws on either side of the middle that say what each line comes to there. */
const ABOUT_THE_MIDDLE = 0.1;

/**
 * What each line comes to where the value comes to its middle: the mean over the draws about it. What those miss of the
 * middle itself, a few parts in ten thousand, goes into the base.
 * @param middle of the value, in its money
 */
export function linesAtTheMiddle({ value, columns }: Pick<ReturnType<typeof drawValues>, 'value' | 'columns'>, middle: number): MiddleLines {
  const about = Array.from(value.keys()).sort((a, b) => value[a]! - value[b]!).slice(Math.floor((0.5 - ABOUT_THE_MIDDLE) * value.length), Math.ceil((0.5 + ABOUT_THE_MIDDLE) * value.length));
  const mean = (some: Float64Array): number => about.reduce((sum, index) => sum + some[index]!, 0) / about.length;
  const rest = { shares: columns.shares.map(mean), cures: columns.cures.map(mean), open: mean(columns.open), iron: mean(columns.iron) };
  return { ...rest, base: middle - [...rest.shares, ...rest.cures, rest.open, rest.iron].reduce((sum, amount) => sum + amount, 0) };
}

const triangular = ({ least, likely, most }: Span): Distribution => (least < most ? { kind: 'triangular', least, likely, most } : { kind: 'certain', value: likely });
