import { instantMs } from '../../entries/index.ts';
import type { Criterion } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';

/**
 * A repair makes what was found before it a thing of the past: until somebody looks again, the finding is not known.
 * @param when instant of the reading or look
 * @returns the sentence that says so, or undefined where the reading is newer than every cure
 */
export function staleSince(known: Known, criterion: Criterion, when: string | undefined): string | undefined {
  const seen = when === undefined ? undefined : instantMs(when);
  for (const job of criterion.cures) {
    const progress = known.progress[job];
    if (progress?.state === 'done' && seen !== undefined && seen < (instantMs(progress.when) ?? 0)) {
      return `Repaired on ${progress.when.slice(0, 10)}, and not looked at since: measure or look again to prove it.`;
    }
  }
  return undefined;
}
