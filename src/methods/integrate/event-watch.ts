import type { EventRule } from './event-rule.ts';
import { locateCrossing } from './locate-crossing.ts';
import { STEP, TIME } from './stepper.ts';
import type { Stepper } from './stepper.ts';

const LOOKS = [0.2, 0.4, 0.6, 0.8, 1];

/**
 * Watches one rule over successive steps.
 *
 * `side` is the sign the guard was last seen to have; zero just after the event, until the guard has moved off zero.
 * A rule can fire only from a side it has been seen on, so the zero it starts from after a reset never fires again.
 */
export class EventWatch {
  private side = 0;
  private readonly seenAt: number[] = [];
  private readonly seenSide: number[] = [];
  /** where in the step just looked through the rule fires, as a fraction; undefined where it does not */
  found: number | undefined;
  /** true where a wall was fired and the state does not come off it again */
  resting = false;

  constructor(
    readonly rule: EventRule,
    private readonly scratch: Float64Array,
  ) {}

  /** Looks at the state where the integration begins. */
  look(state: Float64Array, time: number): void {
    const value = this.rule.guard(state, time);
    if (value !== 0) this.side = value > 0 ? 1 : -1;
  }

  /** After the rule has fired: it is on neither side until seen on one. */
  disarm(): void {
    this.side = 0;
  }

  /** True where a guard of this value, coming from the side the rule is on, has crossed. */
  crossed(value: number): boolean {
    const { direction } = this.rule;
    if (this.side > 0) return direction <= 0 && value <= 0;
    return this.side < 0 && direction >= 0 && value >= 0;
  }

  private see(at: number, value: number): void {
    if (value === 0) return;
    this.seenAt.push(at);
    this.seenSide.push(value > 0 ? 1 : -1);
  }

  /** Takes the side last seen before a place in the step just looked through. */
  settle(fraction: number): void {
    for (let n = this.seenAt.length - 1; n >= 0; n--) {
      if (this.seenAt[n]! > fraction) continue;
      this.side = this.seenSide[n]!;
      return;
    }
  }

  /** Looks through the step just tried; `prepareDense` must have been called. */
  find(stepper: Stepper): void {
    const { scratch, rule } = this;
    const time = stepper.clock[TIME]!;
    const step = stepper.clock[STEP]!;
    const value = (fraction: number): number => {
      if (fraction === 1) return rule.guard(stepper.trial, time + step);
      stepper.dense(fraction, scratch);
      return rule.guard(scratch, time + fraction * step);
    };
    this.found = undefined;
    this.seenAt.length = 0;
    this.seenSide.length = 0;
    const atStart = this.side;
    let from = 0;
    if (this.side === 0) {
      // Fresh from a reset. The hop may be far shorter than the step, so look for it at ever smaller fractions.
      let place = LOOKS[0]!;
      for (let n = 0; n < 40; n++, place *= 0.5) {
        const v = value(place);
        if (v === 0) continue;
        this.side = v > 0 ? 1 : -1;
        from = place;
        if (rule.direction === 0 || this.side === -rule.direction) break;
      }
      if (this.side !== 0) this.see(from, this.side);
      this.resting = rule.wall === true && this.side === rule.direction;
    }
    for (const look of LOOKS) {
      if (look <= from) continue;
      const v = value(look);
      if (this.crossed(v)) {
        this.found = locateCrossing(value, from, look);
        break;
      }
      this.see(look, v);
      if (v !== 0) this.side = v > 0 ? 1 : -1;
      from = look;
    }
    this.side = atStart;
  }
}
