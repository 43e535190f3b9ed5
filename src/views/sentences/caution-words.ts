import type { PrintSystem } from '../../derived/index.ts';
import { METRIC_CAUTION_WORDS, type Caution } from '../../knowledge/index.ts';

/** A caution in the reader's units; most have no figure in them and read alike in both. */
export const cautionWords = (caution: Caution, system: PrintSystem): string => (system === 'metric' ? (METRIC_CAUTION_WORDS[caution.id] ?? caution.words) : caution.words);
