import { instantMs, type Entry } from '../../entries/index.ts';
import { foldEntries } from '../survey/index.ts';
import { dayNumber } from './calendar-day.ts';

/** Running time of a hammer over its log, corrections obeyed. */
export interface HoursRun {
  /** Running time up to an instant, s. */
  readonly until: (when: string) => number;
  /** Mean running time in a day, s, from the first entry of hours to `asOf`; absent where it cannot be told yet. */
  readonly perDay?: number;
}

/** @param asOf instant up to which entries count */
export function hoursRun(entries: readonly Entry[], asOf: string): HoursRun {
  const end = instantMs(asOf) ?? Number.POSITIVE_INFINITY;
  const counted = entries.filter((entry) => (instantMs(entry.at) ?? 0) <= end);
  const held = new Map<string, number>();
  const until = (when: string): number => {
    const known = held.get(when);
    if (known !== undefined) return known;
    const limit = instantMs(when) ?? end;
    const time = foldEntries(counted.filter((entry) => entry.kind !== 'hours' || (instantMs(entry.at) ?? 0) <= limit))?.hoursRun ?? 0;
    held.set(when, time);
    return time;
  };
  const first = counted.filter((entry) => entry.kind === 'hours' || entry.kind === 'enrol').map((entry) => entry.at.slice(0, 10)).sort()[0];
  const total = until(asOf);
  const days = first === undefined ? 0 : dayNumber(asOf) - dayNumber(first);
  return { until, ...(total > 0 && days >= 7 ? { perDay: total / days } : {}) };
}
