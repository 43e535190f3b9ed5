import { AnySizeStepper, ERROR_NORM, FiveStateStepper, STEP, TIME, locateCrossing, refusedFactor, stepFactor } from '../../methods/integrate/index.ts';
import type { ReturnCode, Stepper } from '../../methods/integrate/index.ts';
import { BEAT } from './beat-log.ts';
import type { BeatLog } from './beat-log.ts';
import { restitutionAt, strike } from './contact.ts';
import type { BlowOutcome } from './contact.ts';
import { AUDIT, HammerRates } from './hammer-rates.ts';
import { STICKING_SPEED } from './motion-spec.ts';

const TURN = 6.283185307179586;
/** m, m/s, rad, rad/s, rad/s, m, m/s: sizes against which the tolerance is absolute. */
const SIZES = [0.02, 1, 1, 10, 10, 1e-3, 0.1];

/** Asked for the state at even times inside the run. */
export interface Sampler {
  /** s, first sample */
  readonly from: number;
  /** s between samples, positive */
  readonly every: number;
  sample(time: number, state: Float64Array, rates: HammerRates): void;
}

/** How a run is to be made. */
export interface RunSettings {
  /** s, positive */
  readonly duration: number;
  /** relative tolerance, 1e-12 to 1e-2 */
  readonly relative: number;
  /** steps tried, refused ones included */
  readonly mostSteps: number;
  /** the audit's sums, and forces in the rod and on the guide, are wanted */
  readonly audit?: boolean;
  readonly sampler?: Sampler;
}

/** How the run ended, where, and what it took. */
export interface RunEnd {
  readonly code: ReturnCode;
  readonly time: number;
  readonly state: Float64Array;
  readonly steps: number;
  readonly refused: number;
  /** J lost in blows; with the audit's sums in the state this closes the energy */
  readonly blowLoss: number;
}

/** The stepper a hammer needs: the one of five unless an anvil or the audit asks for more. */
export function stepperFor(rates: HammerRates, relative: number, audit: boolean): Stepper {
  const anvil = rates.numbers[31]! > 0;
  const size = anvil ? 7 : 5;
  const absolute = SIZES.slice(0, size).map((v) => v * relative);
  if (!anvil && !audit) return new FiveStateStepper(rates, { relative, absolute });
  const all = audit ? [...absolute, ...AUDIT.map(() => Infinity)] : absolute;
  return new AnySizeStepper(all.length, (y, d) => rates.rates(y, d), { relative, absolute: all });
}

/**
 * Carries one hammer through its turns, from blow to blow.
 *
 * Between events the equations are smooth; at a blow the ram's speed is turned round, at a stop the step begins afresh
 * so that the stiff contact starts with it. A die that comes back slower than the sticking speed, and that the suspension does not lift, rests on
 * the work until the force on it changes sign. The crank angle is wrapped at each top dead centre.
 *
 * @param numbers see `hammerNumbers`
 * @param start [die gap m, its rate m/s, crank angle rad, crank speed rad/s, driving speed rad/s]
 * @param log cleared, then filled
 */
export function hammerRun(numbers: Float64Array, start: ArrayLike<number>, settings: RunSettings, log: BeatLog): RunEnd {
  const audit = settings.audit ?? false;
  const rates = new HammerRates(numbers, audit);
  const stepper = stepperFor(rates, settings.relative, audit);
  const { clock, state, trial } = stepper;
  const { seen } = rates;
  const anvil = numbers[31]! > 0;
  const mass = numbers[0]!;
  const struck = numbers[28]!;
  const joint = numbers[23]!;
  const upper = numbers[24]!;
  const { duration, mostSteps, sampler } = settings;
  const inside = new Float64Array(stepper.size);
  const slopes = new Float64Array(stepper.size);
  const outcome: BlowOutcome = { ram: 0, anvil: 0, lost: 0 };
  const gapOf = (y: Float64Array): number => y[0]! - (anvil ? y[5]! : 0) - struck;
  const fallingOf = (y: Float64Array): number => (anvil ? y[6]! : 0) - y[1]!;
  const regionOf = (q: number): number => (q > joint ? 1 : q < upper ? -1 : 0);

  log.clear();
  for (let i = 0; i < 5; i++) state[i] = start[i]!;
  if (gapOf(state) < 0) state[0] = struck;
  stepper.begin();
  let region = regionOf(seen[0]!);
  let length = 1e-4;
  let before = 1e-4;
  let wasRefused = false;
  let steps = 0;
  let refused = 0;
  let blowLoss = 0;
  let nextSample = sampler?.from ?? Infinity;
  const least = 1e-13;
  const end = (code: ReturnCode): RunEnd => ({ code, time: clock[TIME]!, state: Float64Array.from(state), steps, refused, blowLoss });

  const value = {
    gap: (at: number): number => {
      stepper.dense(at, inside);
      return gapOf(inside);
    },
    falling: (at: number): number => {
      stepper.dense(at, inside);
      return fallingOf(inside);
    },
    seen: (at: number, which: number): number => {
      stepper.dense(at, inside);
      rates.rates(inside, slopes);
      return seen[which]!;
    },
  };

  /** Where in the step the die meets the work, or 2. The interpolant is made ready here when it is wanted. */
  const meeting = (): number => {
    const gapNow = gapOf(trial);
    const fallNow = fallingOf(trial);
    const fallBefore = fallingOf(state);
    if (gapNow < 0) {
      stepper.prepareDense();
      let low = 0;
      if (gapOf(state) <= 0) {
        // Fresh from the work: the hop may be far shorter than the step.
        let place = 0.5;
        let n = 0;
        while (n < 50 && value.gap(place) <= 0) {
          place *= 0.5;
          n++;
        }
        if (n === 50) return 0;
        low = place;
      }
      return locateCrossing(value.gap, low, 1);
    }
    if (fallBefore > 0 && fallNow < 0) {
      // Down and up again within the step: it may have touched.
      const reach = Math.abs(clock[STEP]!) * Math.max(fallBefore, -fallNow);
      if (Math.min(gapNow, gapOf(state)) > reach) return 2;
      stepper.prepareDense();
      const lowest = locateCrossing(value.falling, 0, 1);
      if (value.gap(lowest) < 0) return locateCrossing(value.gap, 0, lowest);
    }
    return 2;
  };

  while (clock[TIME]! < duration) {
    if (steps >= mostSteps) return end('too-many-steps');
    steps++;
    const left = duration - clock[TIME]!;
    // The audit's sums are not judged, so the short contact with a stop is taken in small steps for them.
    if (audit && region !== 0 && length > 2e-4) length = 2e-4;
    const last = length >= left;
    clock[STEP] = last ? left : length;
    stepper.attempt();
    const error = clock[ERROR_NORM]!;
    if (!(error <= 1)) {
      refused++;
      wasRefused = true;
      length = clock[STEP]! * refusedFactor(error);
      if (!(length >= least)) return end(Number.isFinite(error) ? 'step-too-small' : 'not-finite');
      continue;
    }
    const taken = clock[STEP]!;
    const regionNow = regionOf(seen[0]!);
    const closing = seen[2]!;
    let at = rates.stuck ? 2 : meeting();
    let what = at <= 1 ? 1 : 0;
    if (rates.stuck && seen[3]! < 0) {
      stepper.prepareDense();
      at = locateCrossing((x) => value.seen(x, 3), 0, 1, 1e-12);
      what = 2;
    }
    if (regionNow !== region) {
      stepper.prepareDense();
      const edge = region === 1 || (region === 0 && regionNow === 1) ? joint : upper;
      const cross = locateCrossing((x) => value.seen(x, 0) - edge, 0, 1, 1e-12);
      if (cross < at) {
        at = cross;
        what = 3;
      }
    }
    if (!wasRefused || error > 1e-4) {
      const factor = stepFactor(error, before);
      length = taken * (wasRefused && factor > 1 ? 1 : factor);
    }
    before = error > 1e-4 ? error : 1e-4;
    wasRefused = false;

    const upTo = at <= 1 ? at : 1;
    const time = clock[TIME]!;
    if (nextSample <= time + upTo * taken && sampler !== undefined) {
      stepper.prepareDense();
      while (nextSample <= time + upTo * taken) {
        stepper.dense((nextSample - time) / taken, inside);
        rates.rates(inside, slopes);
        sampler.sample(nextSample, inside, rates);
        nextSample += sampler.every;
      }
    }
    if (what === 0) {
      if (trial[2]! >= TURN) {
        stepper.prepareDense();
        const top = locateCrossing((x) => stepper.denseOf(x, 2) - TURN, 0, 1, 1e-12);
        if (!log.turn(time + top * taken)) return end('too-many-events');
        trial[2] = trial[2]! - TURN;
      } else if (trial[2]! < 0) trial[2] = trial[2]! + TURN;
      stepper.accept();
      if (last) clock[TIME] = duration;
      continue;
    }

    // An event: go to it, change what it changes, and begin afresh there.
    stepper.dense(at, inside);
    const top = inside[2]! >= TURN && state[2]! < TURN ? locateCrossing((x) => stepper.denseOf(x, 2) - TURN, 0, at, 1e-12) : -1;
    stepper.dense(at, inside);
    state.set(inside);
    clock[TIME] = time + at * taken;
    if (top >= 0) {
      if (!log.turn(time + top * taken)) return end('too-many-events');
      state[2] = state[2]! - TURN;
    }
    let kept = true;
    if (what === 1) {
      const arriving = fallingOf(state);
      const speed = arriving > 0 ? arriving : 0;
      const energy = 0.5 * mass * state[1]! * state[1]!;
      const e = restitutionAt(numbers[29]!, numbers[30]!, speed);
      strike(mass, numbers[31]!, state[1]!, anvil ? state[6]! : 0, e, outcome);
      state[0] = struck + (anvil ? state[5]! : 0);
      state[1] = outcome.ram;
      if (anvil) state[6] = outcome.anvil;
      stepper.begin();
      if (e * speed < STICKING_SPEED && seen[1]! < numbers[1]!) {
        // It stays. What speed was left over goes into the work too.
        strike(mass, numbers[31]!, outcome.ram, outcome.anvil, 0, outcome);
        const together = anvil ? outcome.anvil : 0;
        blowLoss += 0.5 * mass * (state[1]! * state[1]! - together * together);
        if (anvil) blowLoss += 0.5 * numbers[31]! * (state[6]! * state[6]! - together * together);
        state[1] = together;
        if (anvil) state[6] = together;
        rates.stuck = true;
      }
      strikeLoss(speed, e);
      if (speed > 0.02) kept = log.beat(clock[TIME]!, BEAT.die, speed, state[2]!, energy, outcome.lost);
    } else if (what === 2) {
      rates.stuck = false;
    } else {
      if (region === 0 && Math.abs(closing) > 0.02) {
        rates.rates(state, slopes);
        const speed = Math.abs(seen[2]!);
        kept = log.beat(clock[TIME]!, regionNow === 1 ? BEAT.joint : BEAT.upper, speed, state[2]!, 0.5 * mass * state[1]! * state[1]!, 0);
      }
      region = regionNow;
      if (region !== 0 && length > 3e-4) length = 3e-4;
    }
    if (!kept) return end('too-many-events');
    stepper.begin();
    if (what !== 3) region = regionOf(seen[0]!);
  }
  return end('reached-end');

  /** Books the loss of the blow just struck, by the relative speed and what of it came back. */
  function strikeLoss(speed: number, e: number): void {
    const reduced = anvil ? (mass * numbers[31]!) / (mass + numbers[31]!) : mass;
    const lost = 0.5 * reduced * (1 - e * e) * speed * speed;
    outcome.lost = lost;
    blowLoss += lost;
  }
}
