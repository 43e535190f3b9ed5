import { ERROR_NORM, STEP, TIME, spreadAbsolute } from './stepper.ts';
import type { Stepper, Tolerance } from './stepper.ts';

/** Five equations without the time in them. An object rather than a bare function, so that the call stays direct. */
export interface FiveStateSystem {
  /** Writes the five slopes at a state of five. Must be pure but for `slopes` and its own scratch. */
  rates(state: Float64Array, slopes: Float64Array): void;
}

/**
 * The same pair for exactly five equations: written out, on fixed scratch, with no allocation in a step.
 *
 * The coefficients stand in the lines as numbers, because here they are wanted as constants of the machine code;
 * a test holds every step against the stepper for any size.
 */
export class FiveStateStepper implements Stepper {
  readonly size = 5;
  readonly clock = new Float64Array(3);
  readonly state = new Float64Array(5);
  readonly trial = new Float64Array(5);
  private readonly stage = new Float64Array(5);
  private readonly a = new Float64Array(5);
  private readonly b = new Float64Array(5);
  private readonly c = new Float64Array(5);
  private readonly d = new Float64Array(5);
  private readonly e = new Float64Array(5);
  private readonly f = new Float64Array(5);
  private readonly g = new Float64Array(5);
  private readonly bend = new Float64Array(20);
  private readonly absolute: Float64Array;
  private readonly relative: number;

  constructor(
    private readonly system: FiveStateSystem,
    tolerance: Tolerance,
  ) {
    this.absolute = spreadAbsolute(tolerance, 5);
    this.relative = tolerance.relative;
  }

  begin(): void {
    this.system.rates(this.state, this.a);
  }

  attempt(): void {
    const { system, state, trial, stage, a, b, c, d, e, f, g, absolute, relative } = this;
    const h = this.clock[STEP]!;
    const y0 = state[0]!;
    const y1 = state[1]!;
    const y2 = state[2]!;
    const y3 = state[3]!;
    const y4 = state[4]!;
    const a0 = a[0]!;
    const a1 = a[1]!;
    const a2 = a[2]!;
    const a3 = a[3]!;
    const a4 = a[4]!;
    stage[0] = y0 + h * ((1 / 5) * a0);
    stage[1] = y1 + h * ((1 / 5) * a1);
    stage[2] = y2 + h * ((1 / 5) * a2);
    stage[3] = y3 + h * ((1 / 5) * a3);
    stage[4] = y4 + h * ((1 / 5) * a4);
    system.rates(stage, b);
    const b0 = b[0]!;
    const b1 = b[1]!;
    const b2 = b[2]!;
    const b3 = b[3]!;
    const b4 = b[4]!;
    stage[0] = y0 + h * ((3 / 40) * a0 + (9 / 40) * b0);
    stage[1] = y1 + h * ((3 / 40) * a1 + (9 / 40) * b1);
    stage[2] = y2 + h * ((3 / 40) * a2 + (9 / 40) * b2);
    stage[3] = y3 + h * ((3 / 40) * a3 + (9 / 40) * b3);
    stage[4] = y4 + h * ((3 / 40) * a4 + (9 / 40) * b4);
    system.rates(stage, c);
    const c0 = c[0]!;
    const c1 = c[1]!;
    const c2 = c[2]!;
    const c3 = c[3]!;
    const c4 = c[4]!;
    stage[0] = y0 + h * ((44 / 45) * a0 + (-56 / 15) * b0 + (32 / 9) * c0);
    stage[1] = y1 + h * ((44 / 45) * a1 + (-56 / 15) * b1 + (32 / 9) * c1);
    stage[2] = y2 + h * ((44 / 45) * a2 + (-56 / 15) * b2 + (32 / 9) * c2);
    stage[3] = y3 + h * ((44 / 45) * a3 + (-56 / 15) * b3 + (32 / 9) * c3);
    stage[4] = y4 + h * ((44 / 45) * a4 + (-56 / 15) * b4 + (32 / 9) * c4);
    system.rates(stage, d);
    const d0 = d[0]!;
    const d1 = d[1]!;
    const d2 = d[2]!;
    const d3 = d[3]!;
    const d4 = d[4]!;
    stage[0] = y0 + h * ((19372 / 6561) * a0 + (-25360 / 2187) * b0 + (64448 / 6561) * c0 + (-212 / 729) * d0);
    stage[1] = y1 + h * ((19372 / 6561) * a1 + (-25360 / 2187) * b1 + (64448 / 6561) * c1 + (-212 / 729) * d1);
    stage[2] = y2 + h * ((19372 / 6561) * a2 + (-25360 / 2187) * b2 + (64448 / 6561) * c2 + (-212 / 729) * d2);
    stage[3] = y3 + h * ((19372 / 6561) * a3 + (-25360 / 2187) * b3 + (64448 / 6561) * c3 + (-212 / 729) * d3);
    stage[4] = y4 + h * ((19372 / 6561) * a4 + (-25360 / 2187) * b4 + (64448 / 6561) * c4 + (-212 / 729) * d4);
    system.rates(stage, e);
    const e0 = e[0]!;
    const e1 = e[1]!;
    const e2 = e[2]!;
    const e3 = e[3]!;
    const e4 = e[4]!;
    stage[0] = y0 + h * ((9017 / 3168) * a0 + (-355 / 33) * b0 + (46732 / 5247) * c0 + (49 / 176) * d0 + (-5103 / 18656) * e0);
    stage[1] = y1 + h * ((9017 / 3168) * a1 + (-355 / 33) * b1 + (46732 / 5247) * c1 + (49 / 176) * d1 + (-5103 / 18656) * e1);
    stage[2] = y2 + h * ((9017 / 3168) * a2 + (-355 / 33) * b2 + (46732 / 5247) * c2 + (49 / 176) * d2 + (-5103 / 18656) * e2);
    stage[3] = y3 + h * ((9017 / 3168) * a3 + (-355 / 33) * b3 + (46732 / 5247) * c3 + (49 / 176) * d3 + (-5103 / 18656) * e3);
    stage[4] = y4 + h * ((9017 / 3168) * a4 + (-355 / 33) * b4 + (46732 / 5247) * c4 + (49 / 176) * d4 + (-5103 / 18656) * e4);
    system.rates(stage, f);
    const f0 = f[0]!;
    const f1 = f[1]!;
    const f2 = f[2]!;
    const f3 = f[3]!;
    const f4 = f[4]!;
    trial[0] = y0 + h * ((35 / 384) * a0 + (500 / 1113) * c0 + (125 / 192) * d0 + (-2187 / 6784) * e0 + (11 / 84) * f0);
    trial[1] = y1 + h * ((35 / 384) * a1 + (500 / 1113) * c1 + (125 / 192) * d1 + (-2187 / 6784) * e1 + (11 / 84) * f1);
    trial[2] = y2 + h * ((35 / 384) * a2 + (500 / 1113) * c2 + (125 / 192) * d2 + (-2187 / 6784) * e2 + (11 / 84) * f2);
    trial[3] = y3 + h * ((35 / 384) * a3 + (500 / 1113) * c3 + (125 / 192) * d3 + (-2187 / 6784) * e3 + (11 / 84) * f3);
    trial[4] = y4 + h * ((35 / 384) * a4 + (500 / 1113) * c4 + (125 / 192) * d4 + (-2187 / 6784) * e4 + (11 / 84) * f4);
    system.rates(trial, g);
    const r0 =
      (h * ((71 / 57600) * a0 + (-71 / 16695) * c0 + (71 / 1920) * d0 + (-17253 / 339200) * e0 + (22 / 525) * f0 + (-1 / 40) * g[0]!)) /
      (absolute[0]! + relative * Math.max(Math.abs(y0), Math.abs(trial[0]!)));
    const r1 =
      (h * ((71 / 57600) * a1 + (-71 / 16695) * c1 + (71 / 1920) * d1 + (-17253 / 339200) * e1 + (22 / 525) * f1 + (-1 / 40) * g[1]!)) /
      (absolute[1]! + relative * Math.max(Math.abs(y1), Math.abs(trial[1]!)));
    const r2 =
      (h * ((71 / 57600) * a2 + (-71 / 16695) * c2 + (71 / 1920) * d2 + (-17253 / 339200) * e2 + (22 / 525) * f2 + (-1 / 40) * g[2]!)) /
      (absolute[2]! + relative * Math.max(Math.abs(y2), Math.abs(trial[2]!)));
    const r3 =
      (h * ((71 / 57600) * a3 + (-71 / 16695) * c3 + (71 / 1920) * d3 + (-17253 / 339200) * e3 + (22 / 525) * f3 + (-1 / 40) * g[3]!)) /
      (absolute[3]! + relative * Math.max(Math.abs(y3), Math.abs(trial[3]!)));
    const r4 =
      (h * ((71 / 57600) * a4 + (-71 / 16695) * c4 + (71 / 1920) * d4 + (-17253 / 339200) * e4 + (22 / 525) * f4 + (-1 / 40) * g[4]!)) /
      (absolute[4]! + relative * Math.max(Math.abs(y4), Math.abs(trial[4]!)));
    this.clock[ERROR_NORM] = Math.sqrt((r0 * r0 + r1 * r1 + r2 * r2 + r3 * r3 + r4 * r4) * 0.2);
  }

  accept(): void {
    const { state, trial, a, g, clock } = this;
    for (let i = 0; i < 5; i++) {
      state[i] = trial[i]!;
      a[i] = g[i]!;
    }
    clock[TIME] = clock[TIME]! + clock[STEP]!;
  }

  prepareDense(): void {
    const { state, trial, bend, a, c, d, e, f, g } = this;
    const h = this.clock[STEP]!;
    for (let i = 0; i < 5; i++) {
      const rise = trial[i]! - state[i]!;
      const turn = h * a[i]! - rise;
      bend[i] = rise;
      bend[5 + i] = turn;
      bend[10 + i] = rise - h * g[i]! - turn;
      bend[15 + i] =
        h *
        ((-12715105075 / 11282082432) * a[i]! +
          (87487479700 / 32700410799) * c[i]! +
          (-10690763975 / 1880347072) * d[i]! +
          (701980252875 / 199316789632) * e[i]! +
          (-1453857185 / 822651844) * f[i]! +
          (69997945 / 29380423) * g[i]!);
    }
  }

  denseOf(fraction: number, i: number): number {
    const { bend } = this;
    const rest = 1 - fraction;
    return (
      this.state[i]! + fraction * (bend[i]! + rest * (bend[5 + i]! + fraction * (bend[10 + i]! + rest * bend[15 + i]!)))
    );
  }

  dense(fraction: number, into: Float64Array): void {
    for (let i = 0; i < 5; i++) into[i] = this.denseOf(fraction, i);
  }
}
