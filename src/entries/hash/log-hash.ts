import type { Entry } from '../entry.ts';
import { orderEntries } from '../order/order-entries.ts';
import { canonicalJson } from './canonical-json.ts';
import { hexOf, sha256 } from './sha-256.ts';
import { utf8Bytes } from './utf-8.ts';

/**
 * Fingerprint of a log: equal whenever the same entries are there, in whatever order they arrived.
 * @param entries the log of one hammer or of a whole yard
 * @returns 64 hexadecimal figures
 */
export const logHash = (entries: readonly Entry[]): string => hashOfOrdered(orderEntries(entries));

/** The same of a log that `orderEntries` has put in order already. */
export const hashOfOrdered = (ordered: readonly Entry[]): string => hexOf(sha256(utf8Bytes(canonicalJson(ordered))));
