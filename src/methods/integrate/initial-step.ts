import type { Slopes } from './any-size-stepper.ts';

/**
 * A first step, from the slopes and how fast they change.
 *
 * E. Hairer, S. P. Norsett and G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), section II.4
 * (from memory), with the fourth root in place of the fifth, which square roots make alike in every engine.
 *
 * @param slopesAt the equations
 * @param time s or whatever the time is measured in
 * @param state where it starts
 * @param absolute absolute tolerance by component, `Infinity` for unjudged ones
 * @param relative relative tolerance
 * @param longest no longer than this, positive
 * @param direction 1 forward, -1 backward
 * @returns a positive length
 */
export function initialStep(
  slopesAt: Slopes,
  time: number,
  state: Float64Array,
  absolute: Float64Array,
  relative: number,
  longest: number,
  direction: number,
): number {
  const size = state.length;
  const first = new Float64Array(size);
  const second = new Float64Array(size);
  const moved = new Float64Array(size);
  const scaled = (v: (i: number) => number): number => {
    let sum = 0;
    let judged = 0;
    for (let i = 0; i < size; i++) {
      if (absolute[i] === Infinity) continue;
      const ratio = v(i) / (absolute[i]! + relative * Math.abs(state[i]!));
      sum += ratio * ratio;
      judged++;
    }
    return judged === 0 ? 0 : Math.sqrt(sum / judged);
  };
  slopesAt(state, first, time);
  const here = scaled((i) => state[i]!);
  const speed = scaled((i) => first[i]!);
  if (!(speed < Infinity)) return longest * 1e-3;
  let step = here < 1e-5 || speed < 1e-5 ? 1e-6 : (0.01 * here) / speed;
  step = Math.min(step, longest);
  for (let i = 0; i < size; i++) moved[i] = state[i]! + direction * step * first[i]!;
  slopesAt(moved, second, time + direction * step);
  const change = scaled((i) => second[i]! - first[i]!) / step;
  const worst = Math.max(speed, change);
  if (!(worst < Infinity)) return Math.min(step, longest) * 1e-3;
  const next = worst <= 1e-15 ? Math.max(1e-6, step * 1e-3) : Math.sqrt(Math.sqrt(0.01 / worst));
  return Math.min(100 * step, next, longest);
}
