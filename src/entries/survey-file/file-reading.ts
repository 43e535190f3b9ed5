import type { EntryKind } from '../entry.ts';
import type { LinkageFamily } from '../../hammer/index.ts';
import type { Draft } from './draft.ts';
import type { SurveyProblems } from './survey-problem.ts';

/** All that is gathered while one survey file is read. */
export interface FileReading {
  readonly problems: SurveyProblems;
  readonly drafts: Draft[];
  /** Family of the hammer, once its block was read; parts of other families are then refused. */
  family: LinkageFamily | undefined;
  readonly asOf: string | undefined;
}

/** Instant and author that the records of one visit share. */
export interface Visit {
  readonly at: (ownTime?: string) => string;
  readonly by: string;
}

/** Fields that any record may carry: an hour of its own, and an id where it must keep one. */
export const STAMP_FIELDS: readonly string[] = ['time', 'id'];

/** Adds one entry; typed so that the body fits its kind. */
export function addDraft<K extends EntryKind>(reading: FileReading, draft: Draft<K>): void {
  reading.drafts.push(draft as Draft);
}
