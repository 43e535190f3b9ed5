import { instantMs } from '../../entries/index.ts';
import { LOOKING_JOBS, type Criterion } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';

/**
 * A repair makes what was found before it a thing of the past: until somebody looks again, the finding is not known.
 * @param when instant of the reading or look
 * @returns the sentence that says so, or undefined where the reading is newer than every cure
 */
export function staleSince(known: Known, criterion: Criterion, when: string | undefined): string | undefined {
  const seen = when === undefined ? undefined : instantMs(when);
  for (const job of criterion.cures.filter((one) => !LOOKING_JOBS.includes(one))) {
    const progress = known.progress[job];
    if (progress?.state === 'done' && seen !== undefined && seen < (instantMs(progress.when) ?? 0)) {
      return `Repaired on ${progress.when.slice(0, 10)}, and not looked at since: measure or look again to prove it.`;
    }
  }
  return undefined;
}

/**
 * A job that only looks mends nothing: what was found before it stands until somebody enters what it showed.
 * @returns the sentence that asks for it, or undefined where no such job was finished since
 */
export function lookedCloser(known: Known, criterion: Criterion, when: string): string | undefined {
  const seen = instantMs(when);
  const closer = criterion.cures.filter((job) => LOOKING_JOBS.includes(job)).flatMap((job) => known.progress[job] ?? []).find((one) => one.state === 'done' && (instantMs(one.when) ?? 0) > (seen ?? 0));
  return closer === undefined ? undefined : `Looked at closer on ${closer.when.slice(0, 10)}: enter what it showed; until then this stands.`;
}
