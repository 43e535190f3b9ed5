/** Kinds of beat, as numbers in the log. */
export const BEAT = { die: 0, joint: 1, upper: 2 } as const;
export type BeatKind = keyof typeof BEAT;
export const BEAT_NAMES: readonly BeatKind[] = ['die', 'joint', 'upper'];

/** The beats and turns of one run, in fixed columns so that keeping them costs nothing. */
export class BeatLog {
  /** beats kept so far */
  count = 0;
  /** turns completed so far */
  turns = 0;
  readonly time: Float64Array;
  readonly kind: Uint8Array;
  /** m/s with which the two came together */
  readonly speed: Float64Array;
  /** rad from top dead centre, 0 to 2 pi */
  readonly angle: Float64Array;
  /** J of the ram just before */
  readonly energy: Float64Array;
  /** J lost in the beat; 0 for stops, whose loss is spread over the contact */
  readonly lost: Float64Array;
  /** times of top dead centre */
  readonly top: Float64Array;

  constructor(
    readonly mostBeats: number,
    readonly mostTurns: number,
  ) {
    this.time = new Float64Array(mostBeats);
    this.kind = new Uint8Array(mostBeats);
    this.speed = new Float64Array(mostBeats);
    this.angle = new Float64Array(mostBeats);
    this.energy = new Float64Array(mostBeats);
    this.lost = new Float64Array(mostBeats);
    this.top = new Float64Array(mostTurns);
  }

  clear(): void {
    this.count = 0;
    this.turns = 0;
  }

  /** Keeps a beat; false when the log is full. */
  beat(time: number, kind: number, speed: number, angle: number, energy: number, lost: number): boolean {
    const i = this.count;
    if (i >= this.mostBeats) return false;
    this.time[i] = time;
    this.kind[i] = kind;
    this.speed[i] = speed;
    this.angle[i] = angle >= 6.283185307179586 ? angle - 6.283185307179586 : angle;
    this.energy[i] = energy;
    this.lost[i] = lost;
    this.count = i + 1;
    return true;
  }

  /** Keeps a turn; false when the log is full. */
  turn(time: number): boolean {
    if (this.turns >= this.mostTurns) return false;
    this.top[this.turns++] = time;
    return true;
  }
}
