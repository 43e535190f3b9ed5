import type { Picture } from '../../derived/index.ts';
import { orderEntries, type Entry } from '../../entries/index.ts';

/** The log of one hammer as JSON: each entry as it was made, in order, with the fingerprint that the papers carry. */
export const logJson = ({ provenance, known }: Picture, entries: readonly Entry[], version?: string): string =>
  `${JSON.stringify({ hammer: known.hammer, tag: known.identity.tag, logHash: provenance.logHash, ...(version === undefined ? {} : { program: version }), knowledge: provenance.knowledgeVersion, asOf: provenance.asOf, seed: provenance.seed, entries: orderEntries(entries) }, null, 1)}\n`;
