/** The steps that were taken, kept so that the state can be asked for at any time between. */
export class Trajectory {
  /** times at which steps began and, last, the time reached */
  readonly times: number[] = [];
  private readonly steps: number[] = [];
  private readonly pieces: Float64Array[] = [];
  private ending: Float64Array | undefined;

  constructor(private readonly size: number) {}

  /** Adds a step: its start, the full step its interpolant belongs to, and the interpolant. */
  add(time: number, step: number, piece: Float64Array): void {
    this.times.push(time);
    this.steps.push(step);
    this.pieces.push(piece);
  }

  /** Closes the trajectory with the last time and state. */
  close(time: number, state: Float64Array): void {
    this.times.push(time);
    this.ending = Float64Array.from(state);
  }

  /**
   * The state at a time; at a time where an event changed the state, the state after it.
   * @param time between the first and the last time, else the nearer end is given
   */
  at(time: number): Float64Array {
    const { times, pieces, size } = this;
    const last = times.length - 1;
    const forward = times[last]! >= times[0]! ? 1 : -1;
    if (pieces.length === 0 || (time - times[last]!) * forward >= 0) return Float64Array.from(this.ending ?? new Float64Array(size));
    let low = 0;
    let high = pieces.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((time - times[middle]!) * forward >= 0) low = middle;
      else high = middle - 1;
    }
    const fraction = Math.max(0, (time - times[low]!) / this.steps[low]!);
    const rest = 1 - fraction;
    const p = pieces[low]!;
    const state = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      const inner = p[2 * size + i]! + fraction * (p[3 * size + i]! + rest * p[4 * size + i]!);
      state[i] = p[i]! + fraction * (p[size + i]! + rest * inner);
    }
    return state;
  }
}
