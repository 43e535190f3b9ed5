/** Time, step and error of a stepper live in one typed array, so that no step has to box a number. */
export const TIME = 0;
export const STEP = 1;
export const ERROR_NORM = 2;

/**
 * One step of the pair, without any opinion on how long it should be.
 *
 * The order of use: write `state` and `clock[TIME]`, `begin()`; write `clock[STEP]`, `attempt()`; look at
 * `clock[ERROR_NORM]` (1 is the tolerance; may be not a number); then `accept()`, or a shorter `attempt()`.
 * Between `attempt` and `accept` the step can be looked into with `prepareDense()` and `dense`.
 */
export interface Stepper {
  readonly size: number;
  /** [time, step, error norm of the last attempt] */
  readonly clock: Float64Array;
  /** the state at the start of the step */
  readonly state: Float64Array;
  /** the state at its end, after `attempt` */
  readonly trial: Float64Array;
  /** takes the slopes at `state`; needed at the start and after anything has changed the state */
  begin(): void;
  /** tries one step of `clock[STEP]` */
  attempt(): void;
  /** makes the trial the state and moves the time on */
  accept(): void;
  /** makes ready the interpolant of the step just tried */
  prepareDense(): void;
  /**
   * The state inside the step just tried, to fourth order.
   * @param fraction 0 at its start, 1 at its end
   * @param into receives the state
   */
  dense(fraction: number, into: Float64Array): void;
  /** One component of the same. */
  denseOf(fraction: number, component: number): number;
}

/** How closely a step must be taken. */
export interface Tolerance {
  /** relative, dimensionless, 1e-14 to 0.1 */
  readonly relative: number;
  /** absolute, in the unit of each component; one number stands for all; `Infinity` leaves a component unjudged */
  readonly absolute: number | readonly number[];
}

/** The absolute tolerances spread over all components. */
export function spreadAbsolute(tolerance: Tolerance, size: number): Float64Array {
  const { absolute } = tolerance;
  const spread = new Float64Array(size);
  for (let i = 0; i < size; i++) spread[i] = typeof absolute === 'number' ? absolute : (absolute[i] ?? Infinity);
  return spread;
}
