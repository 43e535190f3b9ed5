import { PROMISED_DAYS, type Span } from '../../knowledge/index.ts';
import { toBuy, type BuyLine } from './to-buy.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

/**
 * Days until the parts of a job are there, with their doubt: a number of days that somebody promised is one figure, and comes
 * late oftener than early.
 * @returns undefined where nothing is waited for, or where it was started and all is there
 */
export function leadOf({ state, leadDays }: Pick<WorksheetJob, 'state' | 'leadDays'>): Span | undefined {
  if (leadDays === undefined || state === 'started') return undefined;
  const { least, likely, most } = leadDays;
  return least < most ? leadDays : { least: likely * PROMISED_DAYS.early, likely, most: likely * PROMISED_DAYS.late };
}

/** Work of others, and whole jobs bought, whose wait nobody has asked about: it stands in no figure of days. What was started is there. */
export const unaskedWaits = (worksheet: Worksheet): readonly BuyLine[] =>
  toBuy(worksheet).filter(({ kind, wait, job }) => kind !== 'part' && wait === undefined && worksheet.jobs.find((one) => one.job === job)?.state !== 'started');
