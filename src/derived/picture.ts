import { hashOfOrdered, instantMs, orderEntries, type Entry } from '../entries/index.ts';
import type { Knowledge } from '../knowledge/index.ts';
import { assumedValues } from './assumed-values.ts';
import { workOutBlow } from './capacity/blow.ts';
import { idleOverrides, judge, sayWhere, type Finding } from './condition/index.ts';
import { workOutDrive } from './drive/drive.ts';
import { dutyOf, type Duty } from './duty/index.ts';
import { workOutClutch, workOutJournals } from './journals/journals.ts';
import type { Ledger } from './ledger.ts';
import { workOutLinkage } from './linkage/linkage.ts';
import { workOutBow, workOutHelve } from './linkage/other-families.ts';
import { workOutNoise } from './noise/noise.ts';
import { notCheckedOf, type NotChecked } from './not-checked.ts';
import type { PrintSystem } from './print-system.ts';
import { putSeatStrength, workOutSeatPressure } from './seat/seat-pressure.ts';
import { workOutCoilSpring } from './spring/index.ts';
import { workOutStack } from './stack/index.ts';
import { foldWithoutVainRuns } from './runs-in-vain.ts';
import { readingsAtOdds, type Known } from './survey/index.ts';
import { unknownNames } from './unknown-names.ts';
import type { Value } from './value.ts';
import { worksheetOf, type Worksheet } from './worksheet/index.ts';

/** What a paper needs so that somebody can compute it again. */
export interface Provenance {
  /** SHA-256 of the canonical log. */
  readonly logHash: string;
  readonly entries: number;
  readonly knowledgeVersion: string;
  readonly asOf: string;
  readonly seed: number;
}

/** Everything that follows from the log. Never stored: computed again each time. */
export interface Picture {
  readonly known: Known;
  readonly values: Readonly<Record<string, Value>>;
  readonly findings: readonly Finding[];
  readonly duty: Duty;
  readonly worksheet: Worksheet;
  readonly notChecked: readonly NotChecked[];
  readonly problems: readonly string[];
  readonly system: PrintSystem;
  readonly provenance: Provenance;
}

/**
 * The one entrance: from a log to all its consequences. Pure; the same log, knowledge, instant and seed give the same picture.
 * @param entries the log of one hammer, in any order
 * @param asOf instant (ISO 8601) up to which entries count
 * @param seed for whatever is drawn by chance
 * @param system units for sentences
 * @returns the picture, or undefined where the log holds no enrolment of a hammer up to `asOf`
 */
export function picture(entries: readonly Entry[], knowledge: Knowledge, asOf: string, seed: number, system: PrintSystem = 'inch'): Picture | undefined {
  const until = instantMs(asOf);
  if (until === undefined) throw new Error(`the instant of a picture must be ISO 8601 with its zone: ${asOf}`);
  const counted = orderEntries(entries.filter((entry) => (instantMs(entry.at) ?? Number.POSITIVE_INFINITY) <= until));
  const judged = (one: Known) => { const ledger = ledgerOf(one, knowledge); return { ledger, findings: sayWhere(judge({ known: one, values: ledger.values, knowledge, system }), one) }; };
  const known = foldWithoutVainRuns(counted, knowledge, (one) => judged(one).findings);
  if (known === undefined) return undefined;
  const { ledger, findings } = judged(known);
  return {
    known,
    values: Object.fromEntries(ledger.values),
    findings,
    duty: dutyOf(findings),
    worksheet: worksheetOf(known, findings, knowledge, { asOf }),
    notChecked: notCheckedOf(known, findings),
    problems: [...known.problems, ...(known.notCounted ?? []), ...readingsAtOdds(known, system), ...unknownNames(known, knowledge), ...idleOverrides(known, knowledge.criteria)],
    system,
    provenance: { logHash: hashOfOrdered(counted), entries: counted.length, knowledgeVersion: knowledge.version, asOf, seed },
  };
}

/** Readings, then assumptions, then every consequence in the order in which one feeds the next. */
function ledgerOf(known: Known, knowledge: Knowledge): Ledger {
  const ledger: Ledger = { family: known.identity.family, values: new Map(Object.entries(known.values)) };
  for (const value of assumedValues(known, knowledge)) ledger.values.set(value.key, value);
  workOutStack(ledger);
  workOutCoilSpring(ledger, known);
  workOutJournals(ledger);
  workOutClutch(ledger);
  workOutLinkage(ledger);
  workOutDrive(ledger);
  workOutBlow(ledger);
  putSeatStrength(ledger, known);
  workOutSeatPressure(ledger);
  workOutBow(ledger);
  workOutHelve(ledger);
  workOutNoise(ledger);
  return ledger;
}
