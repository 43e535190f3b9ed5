import type { Entry, EntryKind, KnownEntry } from '../entry.ts';
import { KIND_CHECKS } from '../kinds/index.ts';
import { newestVersion, upgradeEntry } from './upgrade-entry.ts';

export const isEntryKind = (kind: string): kind is EntryKind => Object.hasOwn(KIND_CHECKS, kind);

/** Whether this program understands the entry as it stands: a kind that it knows, in the newest version that it knows. */
export const isKnownEntry = (entry: Entry): entry is KnownEntry => isEntryKind(entry.kind) && (entry.version ?? 1) === newestVersion(entry.kind);

/**
 * The entries that this program understands, each brought to its newest version, in the order given. What it does not
 * understand is passed over here and stays in the log.
 * @param entries decoded entries; not written
 */
export const understoodEntries = (entries: readonly Entry[]): readonly KnownEntry[] => entries.map((entry) => upgradeEntry(entry)).filter(isKnownEntry);
