import type { Entry, EntryKind } from '../entry.ts';

/** Makes the body of the next version out of a body of this one; pure. */
export type UpgradeStep = (body: unknown) => unknown;

/** Steps of each kind: the first makes version 2 out of version 1, and so on. All kinds still stand at version 1. */
export type UpgradeSteps = Readonly<Partial<Record<EntryKind, readonly UpgradeStep[]>>>;

export const UPGRADE_STEPS: UpgradeSteps = {};

/** Newest version of a kind that the steps lead to. */
export const newestVersion = (kind: string, steps: UpgradeSteps = UPGRADE_STEPS): number => (stepsOf(kind, steps)?.length ?? 0) + 1;

const stepsOf = (kind: string, steps: UpgradeSteps): readonly UpgradeStep[] | undefined => (Object.hasOwn(steps, kind) ? steps[kind as EntryKind] : undefined);

/**
 * Brings an entry to the newest version of its kind. The stored entry stays as it was written: this happens on reading,
 * so that no change of shape is ever a change of data.
 * @param entry not written
 * @param steps the steps to use; given only in tests
 * @returns the entry itself where nothing is to be done, else one with the newest body
 */
export function upgradeEntry(entry: Entry, steps: UpgradeSteps = UPGRADE_STEPS): Entry {
  const version = entry.version ?? 1;
  const pending = stepsOf(entry.kind, steps)?.slice(version - 1) ?? [];
  if (pending.length === 0) return entry;
  return { ...entry, version: version + pending.length, body: pending.reduce((body, step) => step(body), entry.body) };
}
