import type { EntryBodies, EntryKind } from '../entry.ts';
import { makeEntryId } from '../entry-id.ts';
import { canonicalJson } from '../hash/canonical-json.ts';
import { sha256 } from '../hash/sha-256.ts';
import { utf8Bytes } from '../hash/utf-8.ts';
import { instantMs } from '../instant.ts';
import type { Span } from './survey-problem.ts';

/** What the file says of one entry, before it has an id. */
export interface Draft<K extends EntryKind = EntryKind> {
  readonly kind: K;
  readonly at: string;
  readonly by: string;
  readonly body: EntryBodies[K];
  /** Id written in the file. */
  readonly id?: string;
  /** Name by which a correction may point at it: `upper-die.height`, `frame.crack`, `hours`. */
  readonly name?: string;
  readonly path: string;
  readonly span: Span;
}

const CHANCE_BYTES = 10;

/**
 * Derives an entry's id from its content, so that reading a file twice gives the same entries.
 * @param what kind, instant, author and body, and the hammer where the entry is not the hammer itself
 * @param copy how many equal ones came before it in the same file
 * @returns an id whose time is the instant seen, and whose chance is a hash of the content
 */
export function derivedId(what: { readonly kind: string; readonly at: string; readonly by: string; readonly body: unknown; readonly hammer?: string }, copy: number): string {
  const { kind, at, by, body, hammer } = what;
  const hash = sha256(utf8Bytes(canonicalJson({ kind, at, by, body, hammer, copy })));
  return makeEntryId(Math.max(0, instantMs(at) ?? 0), hash.slice(0, CHANCE_BYTES));
}

/** Counts equal content, so that two equal statements of one visit stay two entries. */
export class CopyCounter {
  readonly #seen = new Map<string, number>();

  /** How many equal ones were counted before this one. */
  count(what: { readonly kind: string; readonly at: string; readonly by: string; readonly body: unknown }): number {
    const text = canonicalJson({ kind: what.kind, at: what.at, by: what.by, body: what.body });
    const before = this.#seen.get(text) ?? 0;
    this.#seen.set(text, before + 1);
    return before;
  }
}
