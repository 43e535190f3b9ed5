import type { Entry } from '../entry.ts';
import { problemOf } from '../problem.ts';
import { CopyCounter, derivedId, type Draft } from './draft.ts';
import { NamedEntries, resolveCorrection, type PendingCorrection } from './read-corrections.ts';
import type { SurveyProblems } from './survey-problem.ts';

export interface Drafts {
  readonly problems: SurveyProblems;
  readonly enrol: Draft<'enrol'>;
  readonly drafts: readonly Draft[];
  readonly corrections: readonly PendingCorrection[];
}

/**
 * Gives every draft its id: the one written, else one that follows from its content. An id written twice is listed, and
 * its second bearer is left out.
 */
export function entriesOf({ problems, enrol, drafts, corrections }: Drafts): readonly Entry[] {
  const hammer = enrol.id ?? derivedId(enrol, 0);
  const taken = new Set([hammer]);
  const copies = new CopyCounter();
  const entries: Entry[] = [{ id: hammer, hammer, at: enrol.at, by: enrol.by, kind: enrol.kind, body: enrol.body }];
  const named = new NamedEntries();
  const put = (draft: Pick<Draft, 'kind' | 'at' | 'by' | 'body' | 'id' | 'name' | 'path' | 'span'>): void => {
    const { kind, at, by, body } = draft;
    const id = draft.id ?? derivedId({ kind, at, by, body, hammer }, copies.count({ kind, at, by, body }));
    if (taken.has(id)) {
      problems.put(draft.path, draft.span, { ...problemOf(draft.path, id, 'this id is written twice', 'each id once, or none at all'), field: draft.path });
      return;
    }
    taken.add(id);
    const entry: Entry = { id, hammer, at, by, kind, body };
    entries.push(entry);
    if (draft.name !== undefined) named.add({ entry, name: draft.name });
  };
  drafts.forEach(put);
  for (const pending of corrections) {
    const body = resolveCorrection(pending, named);
    const { at, by, id, path, reader } = pending;
    if (body !== undefined) put({ kind: 'correction', at, by, body, path, span: reader.record.span, ...(id === undefined ? {} : { id }) });
  }
  return entries;
}
