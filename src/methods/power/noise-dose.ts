/** A rule that trades level against time. Levels in dB(A) slow, times in s. */
export interface ExposureRule {
  readonly id: string;
  /** level allowed for eight hours, dB(A) */
  readonly criterion: number;
  /** dB for which the allowed time halves */
  readonly exchange: number;
  /** levels below it are left out of the dose, dB(A) */
  readonly threshold: number;
  readonly source: string;
}

/**
 * 29 CFR 1910.95: 90 dB(A) for eight hours, 5 dB for half the time. Counted from 80 dB(A) up, as for the hearing conservation
 * programme (from memory); for the permissible limit alone only levels from 90 count, which gives no larger a dose.
 */
export const OSHA: ExposureRule = { id: 'osha', criterion: 90, exchange: 5, threshold: 80, source: '29 CFR 1910.95 appendix A, table G-16a' };

/** What the US health institute recommends: 85 dB(A) for eight hours, 3 dB for half the time (equal energy); counted from 80 (from memory). */
export const NIOSH: ExposureRule = { id: 'niosh', criterion: 85, exchange: 3, threshold: 80, source: 'NIOSH 98-126, table 1-1' };

/** Greatest peak of a single blow, dB(C) (29 CFR 1910.95(b), from memory). */
export const GREATEST_PEAK_DECIBELS = 140;

const SHIFT_SECONDS = 28_800;

/** Time allowed at a steady level, s: 8 h halved for each exchange step above the criterion. @param level dB(A) */
export const allowedTime = (level: number, rule: ExposureRule): number => SHIFT_SECONDS / 2 ** ((level - rule.criterion) / rule.exchange);

/** A stretch of the day. */
export interface Exposure {
  /** dB(A) at the ear */
  readonly level: number;
  /** s, not negative */
  readonly time: number;
}

/**
 * Dose of a day as a share of what is allowed (1 = 100 %): the sum of time over allowed time. Stretches below the rule's threshold do not count.
 * 29 CFR 1910.95 appendix A, I(2).
 */
export function noiseDose(exposures: readonly Exposure[], rule: ExposureRule): number {
  return exposures.reduce((dose, { level, time }) => {
    if (!(time >= 0)) throw new Error(`A time of exposure must not be negative: ${time}`);
    return level < rule.threshold ? dose : dose + time / allowedTime(level, rule);
  }, 0);
}

/**
 * The steady level which over eight hours gives the same dose, dB(A); for a dose of 0 there is none: undefined.
 * 29 CFR 1910.95 appendix A, II, prints 16.61 log10(D/100) + 90; 16.61 is 5/log10(2) rounded, here unrounded.
 * @param dose share, 1 = 100 %
 */
export const timeWeightedAverage = (dose: number, rule: ExposureRule): number | undefined => (dose > 0 ? rule.criterion + rule.exchange * Math.log2(dose) : undefined);

/** Several noises at once, dB: their powers add. */
export const levelsTogether = (levels: readonly number[]): number => 10 * Math.log10(levels.reduce((sum, level) => sum + 10 ** (level / 10), 0));
