import { median, peaks, robustSpread } from '../../methods/signal/index.ts';
import { thinnedParts, type Part } from './sounding-parts.ts';

/** A moment that may be a blow. */
export interface Candidate {
  /** s */
  readonly time: number;
  /** height of the onset over its threshold's base, in robust spreads */
  readonly salience: number;
}

/**
 * Local peaks of the novelty that stand out of their surroundings.
 * @param least robust spreads above the median, above 0
 * @param parts where there is sound at all; absent means everywhere
 */
export function candidates(novelty: Float32Array, frameRate: number, least: number, parts: readonly Part[] = [[0, novelty.length]]): Candidate[] {
  const thin = thinnedParts(novelty, parts, 5);
  if (thin.length < 10) return [];
  const base = median(thin);
  const spread = Math.max(1e-3, robustSpread(thin, base));
  const out: Candidate[] = [];
  for (const peak of peaks(novelty, base + least * spread, Math.round(0.008 * frameRate))) out.push({ time: peak.at / frameRate, salience: (peak.height - base) / spread });
  return out;
}
