import { partsFor, saysLeftOut } from '../hammer/index.ts';
import type { Finding } from './condition/index.ts';
import type { Known } from './survey/index.ts';

/** A part on which nothing, or not everything, was checked. */
export interface NotChecked {
  readonly part: string;
  readonly name: string;
  /** True where nothing at all was read or looked at on this part. */
  readonly wholly: boolean;
  /** Criteria that could not be answered. */
  readonly criteria: readonly string[];
  readonly titles: readonly string[];
  readonly gate: boolean;
}

/** What was not checked is said, part by part, gates first; it is never taken as good. */
export function notCheckedOf(known: Known, findings: readonly Finding[]): readonly NotChecked[] {
  const touched = new Set([...Object.keys(known.history), ...Object.keys(known.looks)].map((key) => key.split('.')[0]));
  const rows = partsFor(known.identity.family).flatMap((part) => {
    const open = findings.filter((finding) => finding.part === part.id && finding.grade === 'not-known');
    const wholly = !touched.has(part.id);
    const leftOut = saysLeftOut(part.id, known.looks) !== undefined || findings.some((finding) => finding.part === part.id) && findings.every((finding) => finding.part !== part.id || finding.grade === 'does-not-apply');
    // What the hammer has not got, or what no rule asks for here, is nothing to check.
    if (open.length === 0 && (!wholly || leftOut)) return [];
    return [{ part: part.id, name: part.name.us, wholly, criteria: open.map((finding) => finding.criterion), titles: open.map((finding) => finding.title), gate: open.some((finding) => finding.gate) }];
  });
  return rows.sort((a, b) => Number(b.gate) - Number(a.gate));
}
