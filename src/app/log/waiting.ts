import { decodeEntries, type Entry } from '../../entries/index.ts';

const PLACE = 'tupwise.waiting';

/** Entries that were typed on this device and not yet taken by the server. */
export function readWaiting(): readonly Entry[] {
  try {
    const held: unknown = JSON.parse(localStorage.getItem(PLACE) ?? '[]');
    return Array.isArray(held) ? decodeEntries(held).entries : [];
  } catch {
    return [];
  }
}

/** Keeps them where a reload or a dead battery does not reach. */
export function keepWaiting(entries: readonly Entry[]): void {
  localStorage.setItem(PLACE, JSON.stringify(entries));
}
