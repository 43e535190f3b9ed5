import type { Quantity } from '../methods/quantity/index.ts';
import type { Standing } from '../entries/index.ts';

/** What is known of one value. Unknown, not applicable and outside validity are answers, and they are three different ones. */
export type Outcome =
  | { readonly state: 'known'; readonly quantity: Quantity }
  | { readonly state: 'not-known'; readonly missing: readonly string[] }
  | { readonly state: 'does-not-apply'; readonly because: string }
  | { readonly state: 'outside-validity'; readonly because: string };

/** Where a value stands: entered by a person, taken as a class default, or worked out. */
export type ValueStanding = Standing | 'assumed' | 'as-made' | 'worked-out';

/**
 * One value of the hammer as known today: a reading (`upper-die.height`, `main-bearings.clearance@front`),
 * an as-made value (`upper-die.height#as-made`), or a consequence (`stack.loss`).
 */
export interface Value {
  readonly key: string;
  readonly title: string;
  readonly outcome: Outcome;
  readonly standing: ValueStanding;
  /** Keys of the values that it was worked out from. */
  readonly from: readonly string[];
  /** Formula in words and signs, for a reader with a pencil. */
  readonly formula?: string;
  /** Source ids of knowledge. */
  readonly sources: readonly string[];
  /** Entries that it rests on directly. */
  readonly evidence: readonly string[];
  /** Text as the person wrote it, for readings. */
  readonly asWritten?: string;
  /** SI size of the last place written, for printing. */
  readonly resolution?: number;
  readonly words?: string;
  /** Weakest standing among everything that it rests on; `assumed` makes it an estimate. */
  readonly rests: ValueStanding;
  /** When the newest reading behind it was taken; absent for class defaults. */
  readonly when?: string;
  /** Id of the measuring way, for readings of a place that has several. */
  readonly way?: string;
  /** Warning to print beside the figure wherever it is shown. */
  readonly warning?: string;
}

/** Joins a value id and its place on the part. */
export const valueKey = (id: string, at?: string): string => (at === undefined || at === '' ? id : `${id}@${at}`);
