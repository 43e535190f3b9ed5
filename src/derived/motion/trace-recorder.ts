import type { HammerRates } from './hammer-rates.ts';
import type { Sampler } from './hammer-run.ts';
import type { ClearancesLeft, MotionTrace, PeakForces } from './motion-result.ts';
import { suspensionDetail } from './suspension/law.ts';

/** Watches an audited run from a time on: peaks and clearances, and the samples of the last turns. */
export class TraceRecorder implements Sampler {
  private readonly rows: number[][] = [];
  private stroke = [Infinity, -Infinity];
  private worst = { suspension: 0, link: 0, spring: 0, rod: 0, guide: 0 };
  private near = { joint: Infinity, upper: Infinity, ledge: Infinity, spring: Infinity };
  /** m, largest travel of the anvil either way */
  anvilTravel = 0;

  constructor(
    readonly from: number,
    readonly every: number,
    private readonly traceFrom: number,
    private readonly numbers: Float64Array,
    private readonly ledge: number,
  ) {}

  sample(time: number, y: Float64Array, rates: HammerRates): void {
    const n = this.numbers;
    const [q, force, , , rod, side] = rates.seen as unknown as [number, number, number, number, number, number];
    const band = n[27]!;
    const slack = Math.min(Math.max(q > band ? q - band : q < -band ? q + band : 0, n[25]!), n[26]!);
    const law = suspensionDetail(n[34]!, n, slack);
    const { worst, near, stroke } = this;
    worst.suspension = Math.max(worst.suspension, Math.abs(force));
    worst.link = Math.max(worst.link, law.linkForce);
    worst.spring = Math.max(worst.spring, law.springForce);
    worst.rod = Math.max(worst.rod, Math.abs(rod));
    worst.guide = Math.max(worst.guide, Math.abs(side));
    near.joint = Math.min(near.joint, n[23]! - q);
    near.upper = Math.min(near.upper, q - n[24]!);
    near.ledge = Math.min(near.ledge, y[0]! - this.ledge);
    near.spring = Math.min(near.spring, law.travelLeft);
    if (n[31]! > 0) this.anvilTravel = Math.max(this.anvilTravel, Math.abs(y[5]!));
    if (y[0]! < stroke[0]!) stroke[0] = y[0]!;
    if (y[0]! > stroke[1]!) stroke[1] = y[0]!;
    if (time < this.traceFrom) return;
    // Height of the carrier over its middle: q + y is what the crank has done, less the frame's constant.
    const carrier = q + y[0]! - n[4]! + Math.sqrt(n[3]!);
    this.rows.push([time, y[2]!, y[0]!, y[1]!, carrier, force, rod, 0.5 * n[0]! * y[1]! * y[1]!, y[3]!, q, side]);
  }

  get strokeHeight(): number {
    return Math.max(0, this.stroke[1]! - this.stroke[0]!);
  }

  get peaks(): PeakForces {
    return { ...this.worst };
  }

  get left(): ClearancesLeft {
    return { ...this.near };
  }

  trace(): MotionTrace {
    const column = (k: number): Float64Array => Float64Array.from(this.rows, (row) => row[k]!);
    return {
      time: column(0), angle: column(1), gap: column(2), speed: column(3), carrier: column(4),
      force: column(5), rod: column(6), energy: column(7), crankSpeed: column(8), hang: column(9), side: column(10),
    };
  }
}
