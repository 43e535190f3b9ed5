import type { Entry } from '../entry.ts';
import { problemOf, type Problem } from '../problem.ts';
import { distinctEntries } from './order-entries.ts';

export interface MergedLog {
  /** Everything that either log held, once, in canonical order; both contents of a doubtful id. */
  readonly entries: readonly Entry[];
  /** One for each id that came with different contents. */
  readonly problems: readonly Problem[];
}

/**
 * Puts two logs together. Commutative, associative and idempotent, problems included, because nothing is thrown away:
 * `orderEntries` then takes one content for each id.
 * @param one a log, in any order
 * @param other another, in any order
 */
export function mergeLogs(one: readonly Entry[], other: readonly Entry[]): MergedLog {
  const entries = distinctEntries([...one, ...other]);
  return { entries, problems: conflictsOf(entries) };
}

function conflictsOf(distinct: readonly Entry[]): readonly Problem[] {
  const contents = new Map<string, number>();
  for (const entry of distinct) contents.set(entry.id, (contents.get(entry.id) ?? 0) + 1);
  return [...contents]
    .filter(([, count]) => count > 1)
    .sort(([left], [right]) => (left < right ? -1 : 1))
    .map(([id, count]) => problemOf('id', id, `one id stands for ${count} different entries, of which the first in order is used`, 'an entry never changes once written'));
}
