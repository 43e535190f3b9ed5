import type { Finding, Picture } from '../../derived/index.ts';
import { CONDITION_WORDS, type Condition } from '../drawing/hatch.ts';

export interface PartCondition {
  readonly condition: Condition;
  /** True where something about the part is still open though the rest was judged. */
  readonly inPart: boolean;
  /** The condition in words, with how much is still open: `sound so far, 2 matters not known yet`. */
  readonly words: string;
  readonly findings: readonly Finding[];
}

const WORST: readonly Condition[] = ['stand-down', 'limited', 'watch', 'sound'];

/** Rules whose one answer speaks for several parts: what is looked at together is drawn together. */
const TOGETHER: Readonly<Record<string, readonly string[]>> = { 'toggles.crack': ['toggle-links', 'toggle-pins'] };

/**
 * The condition of each part: its worst grade. What nobody checked stays not checked, and a part of which only some was checked, and that
 * was good, is not yet known to be sound.
 */
export function partConditions(picture: Picture): ReadonlyMap<string, PartCondition> {
  const byPart = new Map<string, Finding[]>();
  for (const finding of picture.findings) for (const part of [finding.part, ...(TOGETHER[finding.criterion] ?? [])]) byPart.set(part, [...(byPart.get(part) ?? []), finding]);
  const wholly = new Set(picture.notChecked.filter((one) => one.wholly).map((one) => one.part));
  const touched = new Set([...Object.keys(picture.known.history), ...Object.keys(picture.known.looks)].map((key) => key.split('.')[0] ?? key));
  const conditions = new Map<string, PartCondition>();
  for (const part of new Set([...byPart.keys(), ...wholly, ...touched])) {
    const findings = byPart.get(part) ?? [];
    const worst = WORST.find((grade) => findings.some((finding) => finding.grade === grade));
    const open = findings.filter((finding) => finding.grade === 'not-known').length;
    const unseen: Condition = wholly.has(part) || !touched.has(part) ? 'not-checked' : 'not-known';
    // What the hammer has not got is neither good nor open.
    const notHere = findings.length > 0 && findings.every((finding) => finding.grade === 'does-not-apply');
    const condition: Condition = notHere ? 'does-not-apply' : worst === undefined || (worst === 'sound' && open > 0) ? (worst === undefined ? unseen : 'not-known') : worst;
    conditions.set(part, { condition, inPart: worst !== undefined && open > 0, words: conditionWords(condition, worst, open), findings });
  }
  return conditions;
}

function conditionWords(condition: Condition, worst: Condition | undefined, open: number): string {
  if (worst === undefined || open === 0) return CONDITION_WORDS[condition];
  const rest = `${open} ${open === 1 ? 'matter' : 'matters'} not known yet`;
  return worst === 'sound' ? `sound so far, ${rest}` : `${CONDITION_WORDS[worst]}, ${rest}`;
}
