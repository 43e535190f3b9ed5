import type { Span } from '../../knowledge/index.ts';

/** What a buyer takes off because he has to put it right himself: what it costs, and the hours at what they are worth to him. */
export interface CostToCure {
  readonly job: string;
  readonly title: string;
  /** Money and hours together: of a sale, what they come to where the value comes to its middle. */
  readonly amount: number;
  readonly cost: Span;
  readonly hours: Span;
  /** Below 1 where it is doubtful that the job is needed. */
  readonly chance: number;
  readonly because: readonly string[];
}

/** An open finding that takes nothing off, and why. */
export interface NothingOff {
  readonly finding: string;
  readonly because: string;
}
