import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Known } from '../survey/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import { isOpen } from './job-entry.ts';
import type { Worksheet, WorksheetJob } from './worksheet.ts';

/** A measuring place in the words of a job: `{dovetail.flank-angle}`. */
const PLACE = /\{([a-z.-]+)\}/gu;

/**
 * What is done, in the words for this hammer: beside a job that takes part of it over, for its family, and with what was read where
 * the words leave room for it. Angles only, which read alike in inches and in millimetres.
 * @returns nothing where the knowledge given is without words
 */
export function jobWords(known: Known, knowledge: Knowledge, worksheet: Pick<Worksheet, 'jobs'>, { job: id, ownWords, cures, state }: Pick<WorksheetJob, 'job' | 'ownWords' | 'cures' | 'state'>): string {
  const job = knowledge.jobs.find((one) => one.id === id);
  const beside = state === 'done' || state === 'dropped' ? undefined : job?.wordsWith?.find((one) => worksheet.jobs.some((other) => other.job === one.job && isOpen(other)))?.words;
  return (ownWords ?? beside ?? job?.wordsFor?.[known.identity.family] ?? job?.words ?? '').replace(PLACE, (_, place: string) => readAt(known, place, cures));
}

/** The readings at a place, at the ends that the findings name; nothing where nobody read it. */
function readAt({ values }: Known, place: string, cures: readonly string[]): string {
  const ends = new Set(cures.flatMap((key) => key.split('@')[1] ?? []));
  const keys = Object.keys(values).filter((key) => key === place || (key.startsWith(`${place}@`) && !key.includes('#') && (ends.size === 0 || ends.has(key.slice(place.length + 1)))));
  const words = keys.flatMap((key) => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' && outcome.quantity.dimension === 'angle' ? [formatQuantity({ ...outcome.quantity, uncertainty: 0 }, { unit: 'deg', doubt: false })] : [];
  });
  return words.length === 0 ? '' : `, ${[...new Set(words)].join(' and ')} as read`;
}
