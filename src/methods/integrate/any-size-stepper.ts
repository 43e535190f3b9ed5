import { DENSE, ERROR, NODES, STAGES } from './coefficients.ts';
import { ERROR_NORM, STEP, TIME, spreadAbsolute } from './stepper.ts';
import type { Stepper, Tolerance } from './stepper.ts';

/** Writes the slopes at a state. Must be pure: the same state and time, the same slopes. */
export type Slopes = (state: Float64Array, slopes: Float64Array, time: number) => void;

/** The stepper for any number of equations, with time in them if wanted. */
export class AnySizeStepper implements Stepper {
  readonly clock = new Float64Array(3);
  readonly state: Float64Array;
  readonly trial: Float64Array;
  private readonly slopes: Float64Array[];
  private readonly stage: Float64Array;
  private readonly bend: Float64Array[];
  private readonly absolute: Float64Array;
  private readonly relative: number;

  constructor(
    readonly size: number,
    private readonly rates: Slopes,
    tolerance: Tolerance,
  ) {
    this.state = new Float64Array(size);
    this.trial = new Float64Array(size);
    this.stage = new Float64Array(size);
    this.slopes = NODES.map(() => new Float64Array(size));
    this.bend = [0, 1, 2, 3].map(() => new Float64Array(size));
    this.absolute = spreadAbsolute(tolerance, size);
    this.relative = tolerance.relative;
  }

  begin(): void {
    this.rates(this.state, this.slopes[0]!, this.clock[TIME]!);
  }

  attempt(): void {
    const { state, trial, stage, slopes, size } = this;
    const time = this.clock[TIME]!;
    const step = this.clock[STEP]!;
    for (let s = 1; s < 7; s++) {
      const row = STAGES[s]!;
      const target = s === 6 ? trial : stage;
      for (let i = 0; i < size; i++) {
        let sum = 0;
        for (let j = 0; j < s; j++) sum += row[j]! * slopes[j]![i]!;
        target[i] = state[i]! + step * sum;
      }
      this.rates(target, slopes[s]!, time + NODES[s]! * step);
    }
    let squares = 0;
    let judged = 0;
    for (let i = 0; i < size; i++) {
      if (this.absolute[i] === Infinity) continue;
      let sum = 0;
      for (let j = 0; j < 7; j++) sum += ERROR[j]! * slopes[j]![i]!;
      const scale = this.absolute[i]! + this.relative * Math.max(Math.abs(state[i]!), Math.abs(trial[i]!));
      const ratio = (step * sum) / scale;
      squares += ratio * ratio;
      judged++;
    }
    this.clock[ERROR_NORM] = judged === 0 ? 0 : Math.sqrt(squares / judged);
  }

  accept(): void {
    this.state.set(this.trial);
    this.slopes[0]!.set(this.slopes[6]!);
    this.clock[TIME] = this.clock[TIME]! + this.clock[STEP]!;
  }

  prepareDense(): void {
    const { state, trial, slopes, size } = this;
    const [rise, bend, twist, last] = this.bend as [Float64Array, Float64Array, Float64Array, Float64Array];
    const step = this.clock[STEP]!;
    for (let i = 0; i < size; i++) {
      rise[i] = trial[i]! - state[i]!;
      bend[i] = step * slopes[0]![i]! - rise[i]!;
      twist[i] = rise[i]! - step * slopes[6]![i]! - bend[i]!;
      let sum = 0;
      for (let j = 0; j < 7; j++) sum += DENSE[j]! * slopes[j]![i]!;
      last[i] = step * sum;
    }
  }

  denseOf(fraction: number, i: number): number {
    const rest = 1 - fraction;
    return (
      this.state[i]! +
      fraction * (this.bend[0]![i]! + rest * (this.bend[1]![i]! + fraction * (this.bend[2]![i]! + rest * this.bend[3]![i]!)))
    );
  }

  dense(fraction: number, into: Float64Array): void {
    for (let i = 0; i < this.size; i++) into[i] = this.denseOf(fraction, i);
  }

  /** The four coefficients of each component's interpolant, for keeping. Call after `prepareDense`. */
  densePiece(): Float64Array {
    const piece = new Float64Array(5 * this.size);
    piece.set(this.state, 0);
    this.bend.forEach((row, k) => piece.set(row, (k + 1) * this.size));
    return piece;
  }
}
