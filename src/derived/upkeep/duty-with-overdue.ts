import type { Entry } from '../../entries/index.ts';
import type { Duty } from '../duty/index.ts';
import type { Known } from '../survey/index.ts';
import { upkeepPlan } from './due.ts';

/** So many overdue checks are named in the sentence of the verdict; the others are counted. */
const NAMED = 3;

/**
 * The duty with the dated checks that are overdue. They change no verdict, since nothing was found; but what lets the
 * hammer run was read before they fell due, and the sentence of a hammer that may run says so.
 * @param entries the log of the hammer @param asOf the instant of asking, ISO 8601
 */
export function dutyWithOverdue(duty: Duty, known: Known, entries: readonly Entry[], asOf: string): Duty {
  const overdue = upkeepPlan(known, entries, asOf).items.filter((item) => item.state === 'overdue').map((item) => item.title);
  if (overdue.length === 0) return duty;
  if (duty.verdict !== 'fit' && duty.verdict !== 'fit-within-limits') return { ...duty, overdue };
  return { ...duty, overdue, sentence: `${duty.sentence.replace(/^(Fit(?: within limits)?):/, '$1 by what was read:')} ${overdueSentence(overdue)}` };
}

/** The overdue checks in one sentence: the first by name, the others counted. @param overdue their titles, at least one */
export function overdueSentence(overdue: readonly string[]): string {
  const named = overdue.slice(0, NAMED).map((title) => `${title.charAt(0).toLowerCase()}${title.slice(1)}`).join('; ');
  const more = overdue.length > NAMED ? `; and ${overdue.length - NAMED} more` : '';
  return `${overdue.length === 1 ? 'One dated check is' : `${overdue.length} dated checks are`} overdue: ${named}${more}.`;
}
