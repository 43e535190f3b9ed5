/** One point of the trial: red and green with the reason; not done is neither. */
export interface AcceptancePoint {
  readonly id: string;
  readonly title: string;
  readonly state: 'green' | 'red' | 'not-done';
  readonly reason: string;
  /** Reading or look behind it, as a person reads it. */
  readonly shown: string;
  /** What has to be entered where it was not done. */
  readonly missing: readonly string[];
  readonly source: string;
}
