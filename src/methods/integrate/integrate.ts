import { AnySizeStepper } from './any-size-stepper.ts';
import type { Slopes } from './any-size-stepper.ts';
import type { EventHappened, EventRule } from './event-rule.ts';
import { EventWatch } from './event-watch.ts';
import { initialStep } from './initial-step.ts';
import type { ReturnCode } from './return-code.ts';
import { refusedFactor, stepFactor } from './step-size.ts';
import { ERROR_NORM, STEP, TIME, spreadAbsolute } from './stepper.ts';
import type { Tolerance } from './stepper.ts';
import { Trajectory } from './trajectory.ts';

/** A question for the integrator. */
export interface Problem {
  /** the equations */
  readonly slopes: Slopes;
  /** where it starts */
  readonly state: ArrayLike<number>;
  /** time at the start and at the end; the end may lie before the start */
  readonly from: number;
  readonly to: number;
  /** events, in the order in which they are to be taken when they fall on the same instant */
  readonly events?: readonly EventRule[];
}

/** How it is to be answered. Every loop has its limit here. */
export interface Settings {
  readonly tolerance: Tolerance;
  /** steps tried, refused ones included; 100 000 unless said */
  readonly mostSteps?: number;
  /** events; 100 000 unless said */
  readonly mostEvents?: number;
  /** positive; the whole span unless said */
  readonly longestStep?: number;
  /** positive; taken without any control of error where given, for measuring the order of the method */
  readonly fixedStep?: number;
  /** keep the trajectory; true unless said */
  readonly keep?: boolean;
}

/** What came of it: always with the part of the trajectory that was reached. */
export interface Solution {
  readonly code: ReturnCode;
  /** for `bad-input` only: what is wrong, and what is allowed */
  readonly problem?: string;
  readonly time: number;
  readonly state: Float64Array;
  readonly events: readonly EventHappened[];
  readonly trajectory: Trajectory;
  readonly steps: number;
  readonly refused: number;
}

function whatIsWrong(problem: Problem, settings: Settings): string | undefined {
  const { relative, absolute } = settings.tolerance;
  if (!(relative >= 1e-15 && relative <= 0.1)) return `the relative tolerance must be 1e-15 to 0.1: ${relative}`;
  const worst = typeof absolute === 'number' ? absolute : Math.min(...absolute);
  if (!(worst >= 0)) return `the absolute tolerance must not be negative: ${worst}`;
  if (!Number.isFinite(problem.from) || !Number.isFinite(problem.to)) return `the times must be finite: ${problem.from} to ${problem.to}`;
  for (let i = 0; i < problem.state.length; i++)
    if (!Number.isFinite(problem.state[i]!)) return `the starting state must be finite: component ${i} is ${problem.state[i]}`;
  for (const [name, value] of [['longest step', settings.longestStep], ['fixed step', settings.fixedStep]] as const)
    if (value !== undefined && !(value > 0)) return `the ${name} must be positive: ${value}`;
  return undefined;
}

/**
 * Carries a state from one time to another by the Dormand-Prince pair, with events.
 *
 * Deterministic to the last bit: additions, multiplications, divisions and square roots only, no clock and no chance.
 *
 * @returns how it ended, the state there, the events and the trajectory; never throws for numerical trouble
 */
export function integrate(problem: Problem, settings: Settings): Solution {
  const size = problem.state.length;
  const trajectory = new Trajectory(size);
  const events: EventHappened[] = [];
  let steps = 0;
  let refused = 0;
  const stepper = new AnySizeStepper(size, problem.slopes, settings.tolerance);
  const { clock, state } = stepper;
  const keep = settings.keep ?? true;
  const finish = (code: ReturnCode, wrong?: string): Solution => {
    trajectory.close(clock[TIME]!, state);
    const base = { code, time: clock[TIME]!, state: Float64Array.from(state), events, trajectory, steps, refused };
    return wrong === undefined ? base : { ...base, problem: wrong };
  };
  const wrong = whatIsWrong(problem, settings);
  for (let i = 0; i < size; i++) state[i] = problem.state[i]!;
  clock[TIME] = problem.from;
  if (wrong !== undefined) return finish('bad-input', wrong);

  const { to } = problem;
  const direction = to >= problem.from ? 1 : -1;
  const mostSteps = settings.mostSteps ?? 100_000;
  const mostEvents = settings.mostEvents ?? 100_000;
  const longest = Math.min(settings.longestStep ?? Infinity, Math.abs(to - problem.from));
  const absolute = spreadAbsolute(settings.tolerance, size);
  const watches = (problem.events ?? []).map((rule) => new EventWatch(rule, new Float64Array(size)));
  const counts = new Map<string, number>();
  const first = (): number =>
    settings.fixedStep ?? initialStep(problem.slopes, clock[TIME]!, state, absolute, settings.tolerance.relative, longest, direction);
  if (longest === 0) return finish('reached-end');

  /** Fires a rule at the present state; true when the integration is to stop. */
  const fire = (watch: EventWatch): boolean => {
    const { rule } = watch;
    const before = Float64Array.from(state);
    if (rule.reset !== undefined) {
      const after = rule.reset(before, clock[TIME]!);
      for (let i = 0; i < size; i++) state[i] = after[i]!;
    }
    events.push({ name: rule.name, time: clock[TIME]!, before, after: Float64Array.from(state) });
    watch.disarm();
    const count = (counts.get(rule.name) ?? 0) + 1;
    counts.set(rule.name, count);
    return rule.stopAfter !== undefined && count >= rule.stopAfter;
  };

  for (const watch of watches) watch.look(state, clock[TIME]!);
  stepper.begin();
  let length = first();
  let before = 1e-4;
  let wasRefused = false;
  let lastEvent = -Infinity * direction;
  let rapid = 0;

  while ((to - clock[TIME]!) * direction > 0) {
    if (steps >= mostSteps) return finish('too-many-steps');
    steps++;
    const left = Math.abs(to - clock[TIME]!);
    const least = 16 * 2.220446049250313e-16 * Math.max(Math.abs(clock[TIME]!), 1e-300);
    // The last two steps are shared out, so that the end is not reached by a sliver.
    const closing = length >= left * 0.999999;
    clock[STEP] = direction * (closing ? left : settings.fixedStep === undefined && length > 0.5 * left ? 0.5 * left : length);
    stepper.attempt();
    const error = settings.fixedStep === undefined ? clock[ERROR_NORM]! : 0;
    if (!(error <= 1)) {
      refused++;
      wasRefused = true;
      length = Math.abs(clock[STEP]!) * refusedFactor(error);
      if (!(length >= least)) return finish(Number.isFinite(error) ? 'step-too-small' : 'not-finite');
      continue;
    }
    const taken = Math.abs(clock[STEP]!);
    const whole = clock[STEP]!;
    if (keep || watches.length > 0) stepper.prepareDense();
    if (keep) trajectory.add(clock[TIME]!, whole, stepper.densePiece());

    let at = 2;
    for (const watch of watches) {
      watch.find(stepper);
      if (watch.resting) return finish('events-accumulate');
      if (watch.found !== undefined && watch.found < at) at = watch.found;
    }
    if (at > 1) {
      stepper.accept();
      for (const watch of watches) watch.settle(1);
      if (closing) clock[TIME] = to;
      if (settings.fixedStep === undefined) {
        const factor = stepFactor(error, before);
        length = Math.min(longest, taken * (wasRefused ? Math.min(1, factor) : factor));
        before = Math.max(error, 1e-4);
      }
      wasRefused = false;
      continue;
    }

    // An event inside the step: go there, fire it and whatever else falls on the same instant, and start afresh.
    const there = new Float64Array(size);
    if (at < 1) stepper.dense(at, there);
    else there.set(stepper.trial);
    for (const watch of watches) watch.settle(at);
    state.set(there);
    clock[TIME] = at < 1 ? clock[TIME]! + at * whole : clock[TIME]! + whole;
    const guards = watches.map((watch) => watch.rule.guard(state, clock[TIME]!));
    let stop = false;
    watches.forEach((watch, n) => {
      const value = watch.rule.guard(state, clock[TIME]!);
      const together = watch.found !== undefined && (watch.found - at) * taken <= least && value === guards[n];
      if (together || watch.crossed(value)) stop = fire(watch) || stop;
    });
    if (stop) return finish('stopped-by-event');
    if (events.length >= mostEvents) return finish('too-many-events');
    const gap = Math.abs(clock[TIME]! - lastEvent);
    // Each hop shorter than the last step that could be taken: a ball coming to rest.
    rapid = gap <= 64 * least ? rapid + 1 : 0;
    if (rapid > 8 + 4 * watches.length) return finish('events-accumulate');
    lastEvent = clock[TIME]!;
    stepper.begin();
    length = Math.min(settings.fixedStep ?? first(), taken, Number.isFinite(gap) && gap > 0 ? Math.max(gap, least) : Infinity);
    length = Math.max(length, least);
    before = 1e-4;
    wasRefused = false;
  }
  return finish('reached-end');
}
