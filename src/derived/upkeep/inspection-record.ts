import { placeWords, type Finding } from '../condition/index.ts';
import type { Duty } from '../duty/index.ts';
import type { Known } from '../survey/index.ts';
import { valueKey } from '../value.ts';

/** A written record of what was inspected and still counts: when, who, which machine, what was looked at and what was found; signed by hand. */
export interface InspectionRecord {
  readonly machine: { readonly tag: string; readonly id: string; readonly serial?: string; readonly name?: string; readonly place?: string };
  /** The last visit. */
  readonly date: string;
  readonly by: readonly string[];
  /** Every visit whose readings or looks still count, the first first, with how many matters rest on it. */
  readonly visits: readonly { readonly date: string; readonly by: readonly string[]; readonly matters: number }[];
  /** Matters of safety first; `days` on which what they rest on was read or looked at. */
  readonly lines: readonly { readonly what: string; readonly shown: string; readonly grade: string; readonly gate: boolean; readonly days: readonly string[] }[];
  readonly jobsDone: readonly { readonly job: string; readonly by: string }[];
  /** Matters of safety that nobody has settled. */
  readonly gatesNotChecked: readonly string[];
  readonly verdict: string;
  /** Running time up to the record, s. */
  readonly hoursRun: number;
  readonly source: string;
}

/**
 * Record of all that was read or looked at and still counts, each with its days: one short visit after a full one does not
 * make a record of that visit alone. Employers in the United States must keep such records, with date, signature and
 * machine identifier (29 CFR 1910.218(a)(2)).
 * @param date year, month, day, for the record of that day alone
 * @returns undefined where nobody was at the hammer, on that day or ever
 */
export function inspectionRecord(known: Known, findings: readonly Finding[], duty: Duty, date?: string): InspectionRecord | undefined {
  const visit = date === undefined ? known.visits.at(-1) : known.visits.find((one) => one.date === date);
  if (visit === undefined) return undefined;
  const dayOf = new Map([
    ...Object.values(known.history).flatMap((past) => past.map((one) => [one.entry, one.when.slice(0, 10)] as const)),
    ...Object.values(known.looks).map((look) => [look.entry, look.when.slice(0, 10)] as const),
  ]);
  const daysOf = (finding: Finding): readonly string[] => [...new Set(finding.evidence.flatMap((entry) => dayOf.get(entry) ?? []))].filter((day) => date === undefined || day === date).sort();
  const settled = findings.filter((finding) => finding.grade !== 'does-not-apply' && (date !== undefined || finding.grade !== 'not-known'));
  const touched = settled.flatMap((finding) => { const days = daysOf(finding); return days.length === 0 ? [] : [{ finding, days }]; });
  const { tag, serial, name, place } = known.identity;
  return {
    machine: { tag, id: known.hammer, ...(serial === undefined ? {} : { serial }), ...(name === undefined ? {} : { name }), ...(place === undefined ? {} : { place }) },
    date: visit.date, by: visit.by,
    visits: known.visits.flatMap((one) => { const matters = touched.filter(({ days }) => days.includes(one.date)).length; return matters === 0 ? [] : [{ date: one.date, by: one.by, matters }]; }),
    lines: touched.map(({ finding, days }) => ({ what: `${finding.title}${placeWords(finding)}`, shown: finding.shown === '' ? finding.reason : finding.shown, grade: finding.grade.replaceAll('-', ' '), gate: finding.gate, days })).sort((a, b) => Number(b.gate) - Number(a.gate)),
    jobsDone: Object.values(known.progress).filter((one) => one.state === 'done' && (date === undefined || one.when.startsWith(date))).map((one) => ({ job: one.job, by: one.by })),
    gatesNotChecked: findings.filter((finding) => finding.gate && finding.grade !== 'does-not-apply' && !touched.some((one) => one.finding === finding)).map((finding) => valueKey(finding.criterion, finding.at)),
    verdict: duty.sentence, hoursRun: known.hoursRun, source: 'osha-1910-218',
  };
}
