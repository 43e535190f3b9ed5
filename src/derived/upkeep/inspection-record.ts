import { atName } from '../../hammer/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Duty } from '../duty/index.ts';
import type { Known } from '../survey/index.ts';
import { valueKey } from '../value.ts';

/** A written record of one inspection: date, who, which machine, what was looked at and what was found; signed by hand. */
export interface InspectionRecord {
  readonly machine: { readonly tag: string; readonly id: string; readonly serial?: string; readonly name?: string; readonly place?: string };
  readonly date: string;
  readonly by: readonly string[];
  readonly lines: readonly { readonly what: string; readonly shown: string; readonly grade: string; readonly gate: boolean }[];
  readonly jobsDone: readonly { readonly job: string; readonly by: string }[];
  /** Matters of safety that this inspection did not touch. */
  readonly gatesNotChecked: readonly string[];
  readonly verdict: string;
  /** Running time up to the record, s. */
  readonly hoursRun: number;
  readonly source: string;
}

/**
 * Record of the inspection of a day: what was read or looked at on that day and still counts. Employers in the United
 * States must keep such records, with date, signature and machine identifier (29 CFR 1910.218(a)(2)).
 * @param date year, month, day; the last visit where left out
 * @returns undefined where nobody was at the hammer on that day
 */
export function inspectionRecord(known: Known, findings: readonly Finding[], duty: Duty, date?: string): InspectionRecord | undefined {
  const visit = date === undefined ? known.visits.at(-1) : known.visits.find((one) => one.date === date);
  if (visit === undefined) return undefined;
  const ofDay = new Set([
    ...Object.values(known.history).flatMap((past) => past.filter((one) => one.when.startsWith(visit.date)).map((one) => one.entry)),
    ...Object.values(known.looks).filter((look) => look.when.startsWith(visit.date)).map((look) => look.entry),
  ]);
  const touched = findings.filter((finding) => finding.evidence.some((entry) => ofDay.has(entry)));
  const { tag, serial, name, place } = known.identity;
  return {
    machine: { tag, id: known.hammer, ...(serial === undefined ? {} : { serial }), ...(name === undefined ? {} : { name }), ...(place === undefined ? {} : { place }) },
    date: visit.date, by: visit.by,
    lines: touched.map((finding) => ({ what: finding.at === undefined ? finding.title : `${finding.title}, ${atName(finding.at)}`, shown: finding.shown === '' ? finding.reason : finding.shown, grade: finding.grade.replaceAll('-', ' '), gate: finding.gate })),
    jobsDone: Object.values(known.progress).filter((one) => one.state === 'done' && one.when.startsWith(visit.date)).map((one) => ({ job: one.job, by: one.by })),
    gatesNotChecked: findings.filter((finding) => finding.gate && finding.grade !== 'does-not-apply' && !touched.includes(finding)).map((finding) => valueKey(finding.criterion, finding.at)),
    verdict: duty.sentence, hoursRun: known.hoursRun, source: 'osha-1910-218',
  };
}
