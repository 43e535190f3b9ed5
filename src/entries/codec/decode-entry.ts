import type { Entry, KnownEntry } from '../entry.ts';
import { isEntryId } from '../entry-id.ts';
import { instantMs } from '../instant.ts';
import { KIND_CHECKS } from '../kinds/index.ts';
import { problemOf, type Problem } from '../problem.ts';
import { numberFrom, optional, recordOf, shaped, text, textWhere, type Check } from './check.ts';
import { isEntryKind } from './is-known-entry.ts';
import { plainCopy } from './plain-copy.ts';
import { newestVersion, upgradeEntry } from './upgrade-entry.ts';

export type Decoded =
  | { readonly ok: true; readonly entry: KnownEntry | Entry }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const anything: Check<unknown> & { readonly mayBeAbsent: true } = { mayBeAbsent: true, run: () => undefined };

const envelope = recordOf<Entry>({
  id: textWhere(isEntryId, 'an entry id of 26 signs'),
  hammer: textWhere(isEntryId, 'the id of the hammer, 26 signs'),
  at: textWhere((value) => instantMs(value) !== undefined, 'an instant such as 2026-04-11T09:30:00Z, on a day that exists'),
  by: text('who saw it'),
  kind: shaped(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'a kind of entry such as reading'),
  version: optional(numberFrom(1, 1000, 'a whole version number from 1')),
  body: anything as Check<unknown> & { readonly mayBeAbsent: true },
});

/**
 * Decodes one entry that came from outside: from a store, a file or another device.
 * @param input whatever came
 * @returns the entry as it was written, frozen, with fields of newer versions kept; or every problem of it. An entry of
 * an unknown kind, or of a version newer than this program, passes when its envelope is right.
 */
export function decodeEntry(input: unknown): Decoded {
  const problems: Problem[] = [];
  const copy = plainCopy(input, problems);
  if (problems.length === 0) envelope.run(copy, '', problems);
  if (problems.length > 0) return { ok: false, problems };
  const entry = copy as Entry;
  const version = entry.version ?? 1;
  if (!Number.isInteger(version)) problems.push(problemOf('version', version, 'version cannot be used', 'a whole version number from 1'));
  else if (isEntryKind(entry.kind) && version <= newestVersion(entry.kind)) KIND_CHECKS[entry.kind].run(upgradeEntry(entry).body, 'body', problems);
  if (entry.kind === 'enrol' && entry.hammer !== entry.id) problems.push(problemOf('hammer', entry.hammer, 'an enrol entry is the hammer itself', `the same id as the entry, ${entry.id}`));
  return problems.length === 0 ? { ok: true, entry } : { ok: false, problems };
}

export interface DecodedLog {
  readonly entries: readonly Entry[];
  readonly problems: readonly Problem[];
}

/**
 * Decodes many entries: every problem is listed with the number of its entry, and the rest are kept.
 * @param inputs whatever came, in any order
 */
export function decodeEntries(inputs: readonly unknown[]): DecodedLog {
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  inputs.forEach((input, index) => {
    const decoded = decodeEntry(input);
    if (decoded.ok) entries.push(decoded.entry);
    else problems.push(...decoded.problems.map((problem) => ({ ...problem, field: `[${index}].${problem.field}` })));
  });
  return { entries, problems };
}
