import type { KnownEntry } from '../../entries/index.ts';

/**
 * Which entries the corrections strike out. A correction can itself be corrected, which brings the first entry back,
 * so the latest correction is obeyed first.
 * @param ordered entries in the canonical order of the log
 * @returns ids passed over, and a sentence for each correction that points at nothing
 */
export function struckOut(ordered: readonly KnownEntry[]): { readonly ids: ReadonlySet<string>; readonly problems: readonly string[] } {
  const present = new Set(ordered.map((entry) => entry.id));
  const ids = new Set<string>();
  const problems: string[] = [];
  for (const entry of [...ordered].reverse()) {
    if (entry.kind !== 'correction' || ids.has(entry.id)) continue;
    if (present.has(entry.body.entry)) ids.add(entry.body.entry);
    else problems.push(`A correction of ${entry.at.slice(0, 10)} points at an entry that is not in this log; it waits until that entry arrives: ${entry.body.entry}`);
  }
  return { ids, problems: problems.reverse() };
}
