import { instantMs, orderEntries, understoodEntries, type Entry } from '../../entries/index.ts';
import { struckOut } from '../survey/index.ts';

/** A look that was taken again and again, oldest answer first. */
export interface LookOverTime {
  readonly look: string;
  readonly at?: string;
  readonly answers: readonly { readonly when: string; readonly by: string; readonly answer: string; readonly words?: string }[];
  /** True where the answers are not all the same. */
  readonly changed: boolean;
}

/**
 * Every look that was answered on more than one day, with all its answers, corrections obeyed; those that changed first.
 * @param asOf instant up to which entries count
 */
export function looksOverTime(entries: readonly Entry[], asOf: string): readonly LookOverTime[] {
  const until = instantMs(asOf) ?? Number.POSITIVE_INFINITY;
  const ordered = understoodEntries(orderEntries(entries.filter((entry) => (instantMs(entry.at) ?? 0) <= until)));
  const { ids } = struckOut(ordered);
  const held = new Map<string, LookOverTime['answers'][number][]>();
  for (const entry of ordered) {
    if (entry.kind !== 'sighting' || ids.has(entry.id)) continue;
    const { look, at, answer, words } = entry.body;
    const key = at === undefined ? look : `${look}@${at}`;
    held.set(key, [...(held.get(key) ?? []), { when: entry.at, by: entry.by, answer, ...(words === undefined ? {} : { words }) }]);
  }
  return [...held]
    .filter(([, answers]) => new Set(answers.map((one) => one.when.slice(0, 10))).size > 1)
    .map(([key, answers]): LookOverTime => {
      const [look = key, at] = key.split('@');
      return { look, ...(at === undefined ? {} : { at }), answers, changed: new Set(answers.map((one) => one.answer)).size > 1 };
    })
    .sort((a, b) => Number(b.changed) - Number(a.changed));
}
