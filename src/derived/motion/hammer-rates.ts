import { sineCosine } from '../../methods/numerics/index.ts';
import { coilToggleForce } from './suspension/coil-toggle.ts';
import { suspensionForce } from './suspension/law.ts';

/** Places in `seen`. */
export const SEEN = { q: 0, force: 1, closing: 2, contact: 3, rod: 4, side: 5 } as const;

/** Places of the audit's sums behind the state, in the order they are kept. */
export const AUDIT = ['input', 'clutch', 'bearing', 'guide', 'viscous', 'pins', 'stops', 'ground'] as const;

/** x/sqrt(1 + x^2): the sign of x, made smooth. */
function softSign(x: number): number {
  return x / Math.sqrt(1 + x * x);
}

/**
 * The same where x is usually large, as the crank's turning is: beyond a hundred the series is good to the last digit, and
 * spares a square root in the innermost loop.
 */
function softSignFar(x: number): number {
  if (x < 100) return softSign(x);
  const i = 1 / (x * x);
  return 1 - i * (0.5 - i * (0.375 - i * 0.3125));
}

/**
 * The equations of motion of one hammer.
 *
 * State: 0 die gap y (m), 1 its rate v (m/s, up positive), 2 crank angle psi (rad from top dead centre), 3 crank speed w,
 * 4 driving speed W (rad/s); with an anvil also 5 its rise z and 6 that rise's rate; with the audit, eight sums of work behind
 * them. The ram obeys m v' = F - weight - friction; the crank and carrier (J + mc s'^2) w' = torques + s'(F + carrier weight) - mc s' s'' w^2;
 * the motor Jm W' = its torque less the clutch's. F is the suspension's force with pin hysteresis and the two stops.
 */
export class HammerRates {
  /** true while the die rests on the work */
  stuck = false;
  /** what the last evaluation saw: q (m), F (N), closing rate of q (m/s), contact force (N), rod force (N), side thrust (N) */
  readonly seen = new Float64Array(6);
  private readonly circle = new Float64Array(2);
  private readonly family: number;
  private readonly anvil: boolean;
  private readonly base: number;

  constructor(
    readonly numbers: Float64Array,
    private readonly audit: boolean = false,
  ) {
    this.family = numbers[34]!;
    this.anvil = numbers[31]! > 0;
    this.base = this.anvil ? 7 : 5;
  }

  rates(y: Float64Array, d: Float64Array): void {
    const n = this.numbers;
    const { seen, circle } = this;
    const v = y[1]!;
    const w = y[3]!;
    const drive = y[4]!;
    sineCosine(y[2]!, circle);
    const rs = n[2]! * circle[0]!;
    const rc = n[2]! * circle[1]!;
    const reach = Math.sqrt(n[3]! - rs * rs);
    const inverse = 1 / reach;
    const tilt = rs * inverse;
    const s1 = rs - tilt * rc;
    const s2 = rc - (rc * rc - rs * rs) * inverse - tilt * tilt * rc * rc * inverse;
    const q = n[4]! - reach + rc - y[0]!;
    const rate = -s1 * w - v;

    // The pins' lost motion is a dead band; the law is followed only a little beyond the stops, where its geometry still closes.
    const band = n[27]!;
    let slack = q > band ? q - band : q < -band ? q + band : 0;
    slack = slack < n[25]! ? n[25]! : slack > n[26]! ? n[26]! : slack;
    // The commonest family is called by name, so that the compiler can take it into this loop.
    const spring = this.family === 0 ? coilToggleForce(n, slack) : suspensionForce(this.family, n, slack);
    const carried = spring < 0 ? -spring : spring;
    const hysteresis = n[19]! * carried * softSign(rate * n[20]!);
    let stop = 0;
    if (q > n[23]!) {
      stop = n[21]! * (q - n[23]!) * (1 + n[22]! * rate);
      if (stop < 0) stop = 0;
    } else if (q < n[24]!) {
      stop = n[21]! * (q - n[24]!) * (1 - n[22]! * rate);
      if (stop > 0) stop = 0;
    }
    const force = spring + hysteresis + stop;

    const thrust = force * tilt;
    const rub = n[15]! + n[16]! * (thrust < 0 ? -thrust : thrust);
    const wayward = softSign(v * n[17]!);
    const torqueClutch = n[12]! * softSign((drive - w) * n[13]!);
    const lag = 1 - drive * n[11]!;
    const torqueMotor = (n[9]! * lag) / (lag * lag + n[10]!);
    const turning = softSignFar(10 * w);

    d[2] = w;
    const faster =
      (torqueClutch - n[14]! * turning + s1 * (force + n[7]!) - n[6]! * s1 * s2 * w * w) / (n[5]! + n[6]! * s1 * s1);
    d[3] = faster;
    d[4] = (torqueMotor - torqueClutch) * n[8]!;
    seen[0] = q;
    seen[1] = force;
    seen[2] = rate;
    if (this.stuck) {
      if (this.anvil) this.ride(y, d, force);
      else {
        d[0] = 0;
        d[1] = 0;
        seen[3] = n[1]! - force;
      }
    } else {
      d[0] = v;
      d[1] = (force - n[1]! - rub * wayward - n[18]! * v) * n[35]!;
      if (this.anvil) {
        d[5] = y[6]!;
        d[6] = (-n[32]! * y[5]! - n[33]! * y[6]!) / n[31]!;
      }
    }
    if (this.audit) {
      const b = this.base;
      // Upward on the carrier is along the rod by the cosine of its lean; tilt is that lean's tangent.
      seen[4] = (force + n[7]! - n[6]! * (s1 * faster + s2 * w * w)) * n[37]! * Math.sqrt(1 + tilt * tilt);
      seen[5] = thrust;
      d[b] = torqueMotor * drive;
      d[b + 1] = torqueClutch * (drive - w);
      d[b + 2] = n[14]! * turning * w;
      d[b + 3] = this.stuck ? 0 : rub * wayward * v;
      d[b + 4] = this.stuck ? 0 : n[18]! * v * v;
      d[b + 5] = hysteresis * rate;
      // What the stops take beyond the elastic part of their force.
      const elastic = q > n[23]! ? n[21]! * (q - n[23]!) : q < n[24]! ? n[21]! * (q - n[24]!) : 0;
      d[b + 6] = (stop - elastic) * rate;
      d[b + 7] = this.anvil ? n[33]! * y[6]! * y[6]! : 0;
    }
  }

  /** Ram and anvil moving as one, pressed together. */
  private ride(y: Float64Array, d: Float64Array, force: number): void {
    const n = this.numbers;
    const u = y[6]!;
    const pull = -n[32]! * y[5]! - n[33]! * u;
    const together = (force - n[1]! + pull) / (n[0]! + n[31]!);
    d[0] = u;
    d[1] = together;
    d[5] = u;
    d[6] = together;
    this.seen[3] = n[0]! * together + n[1]! - force;
  }
}
