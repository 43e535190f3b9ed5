import type { PrintSystem } from '../print-system.ts';
import { contradictedName, contradictionWords, toldCountsWords, type Contradiction, type Known } from '../survey/index.ts';
import type { Value } from '../value.ts';
import type { Finding } from './finding.ts';

/** Findings, each with the contradictions of whatever it rests on, so that nobody reads one side of them alone. */
export function sayAtOdds(findings: readonly Finding[], { known, values, system }: { readonly known: Known; readonly values: ReadonlyMap<string, Value>; readonly system: PrintSystem }): readonly Finding[] {
  if (known.contradictions.length === 0) return findings;
  return findings.map((finding) => {
    const behind = keysBehind(finding, values);
    const parted = known.contradictions.filter((one) => behind.has(one.key));
    return parted.length === 0 ? finding : { ...finding, atOdds: parted.map((one) => `${wordsOf(finding, one, system)}.`).join(' ') };
  });
}

/** One that the finding rests on itself needs no name; one further behind has it. */
function wordsOf(finding: Finding, one: Contradiction, system: PrintSystem): string {
  const words = finding.evidence.includes(one.other.entry) && !finding.evidence.includes(one.used.entry) ? toldCountsWords(one, system) : contradictionWords(one, system);
  return finding.from.includes(one.key) ? `${words.charAt(0).toUpperCase()}${words.slice(1)}` : `${contradictedName(one.key)}: ${words}`;
}

/** Keys of all that a finding rests on, or waits for. */
function keysBehind(finding: Finding, values: ReadonlyMap<string, Value>): ReadonlySet<string> {
  const behind = new Set<string>();
  const visit = (key: string): void => {
    if (behind.has(key)) return;
    behind.add(key);
    values.get(key)?.from.forEach(visit);
  };
  [...finding.from, ...finding.missing].forEach(visit);
  return behind;
}
