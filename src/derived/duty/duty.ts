import type { Limit } from '../condition/index.ts';

export type Verdict = 'fit' | 'fit-within-limits' | 'stand-down' | 'not-known-yet';

/** What would settle an unknown: the reading or look, and the minutes it takes. */
export interface Settling {
  readonly criterion: string;
  readonly title: string;
  /** What to do, one sentence. */
  readonly how: string;
  /** Value keys or look keys to enter. */
  readonly missing: readonly string[];
  readonly minutes: number;
}

/** What the hammer may do today. */
export interface Duty {
  readonly verdict: Verdict;
  readonly sentence: string;
  /** Three or fewer reasons, the weightiest first. */
  readonly reasons: readonly { readonly finding: string; readonly sentence: string }[];
  readonly limits: readonly Limit[];
  /** Chance that the verdict holds given the readings' doubt alone; 1 where nothing lies near a step. */
  readonly sure: number;
  readonly sureWords: string;
  /** Dated checks that are overdue on the day of the picture; absent where there is none. They change no verdict and are said with it. */
  readonly overdue?: readonly string[];
  /** Gates that are not known, each with what would settle it. */
  readonly missing: readonly Settling[];
}
