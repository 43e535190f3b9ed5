/**
 * How an integration ended. A failure is data: the trajectory up to it is always handed back.
 *
 * - `reached-end`        the whole span was covered
 * - `stopped-by-event`   an event that asks for a stop was met
 * - `too-many-steps`     the allowance of steps ran out
 * - `too-many-events`    the allowance of events ran out
 * - `events-accumulate`  events follow one another faster than a step can be taken, as a ball coming to rest does
 * - `step-too-small`     the tolerance asks for steps that no longer move the time
 * - `not-finite`         the slopes are not finite numbers however small the step
 * - `bad-input`          the question itself makes no sense; `problem` says which part
 */
export type ReturnCode =
  | 'reached-end'
  | 'stopped-by-event'
  | 'too-many-steps'
  | 'too-many-events'
  | 'events-accumulate'
  | 'step-too-small'
  | 'not-finite'
  | 'bad-input';
