import { isEntryId } from '../entry-id.ts';
import type { Visit } from './file-reading.ts';
import type { RecordReader } from './record-reader.ts';
import { readTime } from './read-stamp.ts';

/** Instant, author and id of a record that may carry an hour or an id of its own. */
export function stamped(reader: RecordReader | undefined, visit: Visit): { readonly at: string; readonly by: string; readonly id?: string } {
  if (reader === undefined) return { at: visit.at(), by: visit.by };
  const id = readId(reader);
  return { at: visit.at(readTime(reader)), by: visit.by, ...(id === undefined ? {} : { id }) };
}

/** Reads an optional id. */
export function readId(reader: RecordReader): string | undefined {
  const id = reader.text('id', 'an entry id of 26 signs');
  if (id === undefined || isEntryId(id)) return id;
  reader.refuse('id', id, 'an entry id of 26 signs, or none');
  return undefined;
}
