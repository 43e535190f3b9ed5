import type { Finding, Picture } from '../../derived/index.ts';
import type { Condition } from '../drawing/hatch.ts';

export interface PartCondition {
  readonly condition: Condition;
  /** True where something about the part is still open though the rest was judged. */
  readonly inPart: boolean;
  readonly findings: readonly Finding[];
}

const WORST: readonly Condition[] = ['stand-down', 'limited', 'watch', 'sound'];

/** The condition of each part: its worst grade; what nobody checked stays not checked. */
export function partConditions(picture: Picture): ReadonlyMap<string, PartCondition> {
  const byPart = new Map<string, Finding[]>();
  for (const finding of picture.findings) byPart.set(finding.part, [...(byPart.get(finding.part) ?? []), finding]);
  const wholly = new Set(picture.notChecked.filter((one) => one.wholly).map((one) => one.part));
  const touched = new Set([...Object.keys(picture.known.history), ...Object.keys(picture.known.looks)].map((key) => key.split('.')[0] ?? key));
  const conditions = new Map<string, PartCondition>();
  for (const part of new Set([...byPart.keys(), ...wholly, ...touched])) {
    const findings = byPart.get(part) ?? [];
    const worst = WORST.find((grade) => findings.some((finding) => finding.grade === grade));
    const open = findings.some((finding) => finding.grade === 'not-known');
    const condition = worst ?? (wholly.has(part) || !touched.has(part) ? 'not-checked' : 'not-known');
    conditions.set(part, { condition, inPart: worst !== undefined && open, findings });
  }
  return conditions;
}
