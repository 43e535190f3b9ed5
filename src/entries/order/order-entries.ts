import type { Entry } from '../entry.ts';
import { entryIdTime } from '../entry-id.ts';
import { canonicalJson } from '../hash/canonical-json.ts';
import { instantMs } from '../instant.ts';

/** When an entry was seen; an instant that cannot be read (a newer version's, perhaps) falls back on the time in the id. */
const timeOf = (entry: Entry): number => instantMs(entry.at) ?? entryIdTime(entry.id) ?? 0;

const compared = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);

/**
 * All distinct entries in the canonical order of the log: by the instant seen, then by id, then by content. Two entries
 * with one id and different content are both kept, side by side in content where their instants agree.
 * @param entries in any order, copies allowed
 */
export function distinctEntries(entries: readonly Entry[]): readonly Entry[] {
  const byId = new Map<string, Held[]>();
  for (const entry of entries) {
    const held = byId.get(entry.id);
    if (held === undefined) byId.set(entry.id, [{ entry, time: timeOf(entry) }]);
    // Texts are written only where an id comes again, which is rare; the same object needs none.
    else if (!held.some((one) => one.entry === entry || textOf(one) === canonicalJson(entry))) held.push({ entry, time: timeOf(entry) });
  }
  return [...byId.values()]
    .flat()
    .sort((one, other) => one.time - other.time || compared(one.entry.id, other.entry.id) || compared(textOf(one), textOf(other)))
    .map((held) => held.entry);
}

interface Held {
  readonly entry: Entry;
  readonly time: number;
  text?: string;
}

const textOf = (held: Held): string => (held.text ??= canonicalJson(held.entry));

/**
 * The log in its canonical order, one entry for each id: by the instant seen, so that a reading typed in late for an
 * older visit does not pass for the newest, then by id. Where an id came with two contents, the one first in this order
 * is taken, on every device alike; `mergeLogs` reports it.
 * @param entries in any order, copies allowed; not written
 */
export function orderEntries(entries: readonly Entry[]): readonly Entry[] {
  const taken = new Set<string>();
  return distinctEntries(entries).filter((entry) => {
    if (taken.has(entry.id)) return false;
    taken.add(entry.id);
    return true;
  });
}
