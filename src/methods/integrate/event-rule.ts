/**
 * Something that happens when a smooth guard function crosses zero, kept apart from the equations.
 *
 * Both functions must be pure. The guard should cross zero, not touch it; two crossings closer together than a
 * fifth of a step may be missed, and the longest step is the caller's to set.
 */
export interface EventRule {
  /** the name under which the event is reported */
  readonly name: string;
  /** changes sign at the event */
  guard(state: Float64Array, time: number): number;
  /** -1: falling through zero as the integration goes; 1: rising; 0: either */
  readonly direction: -1 | 0 | 1;
  /** the state just after, from the state just before; left out where the event changes nothing */
  reset?(state: Float64Array, time: number): ArrayLike<number>;
  /**
   * The guard is a wall: the reset is meant to keep the state on its own side. A state that the equations then press
   * straight into the wall is at rest there, and the integration ends with `events-accumulate`.
   */
  readonly wall?: boolean;
  /** ends the integration when the event has happened this many times */
  readonly stopAfter?: number;
}

/** One event as it happened. */
export interface EventHappened {
  readonly name: string;
  readonly time: number;
  readonly before: Float64Array;
  readonly after: Float64Array;
}
