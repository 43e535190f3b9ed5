import { median } from '../../methods/signal/index.ts';

/** A pause of more strokes than this is looked into. */
const LONGEST_GAP = 4.5;
/** s around a foretold blow in which its onset is looked for */
const NEAR = 0.008;
/** Places of the turn that hold no blow. */
const ELSEWHERE = [0.3, 0.43, 0.57, 0.7] as const;
/** Standard errors by which what lies on the beat must exceed what lies elsewhere. */
const SURE = 4.5;

/**
 * Blows that a pause of the chain holds all the same: where the background rose, single onsets no longer stand out, but
 * taken together those on the beat still exceed those elsewhere in the turn. The beat is foretold from both sides.
 * @param novelty by frame
 * @param times s, members of the chain, in order
 * @returns s, the blows to add, in order; none in a true pause
 */
export function blowsInPauses(novelty: Float32Array, frameRate: number, times: readonly number[], periodAt: (time: number) => number): number[] {
  const added: number[] = [];
  for (let i = 1; i < times.length; i++) {
    const [start, gap] = [times[i - 1]!, times[i]! - times[i - 1]!];
    const near = (periodAt(start) + periodAt(times[i]!)) / 2;
    if (gap <= LONGEST_GAP * near) continue;
    const turn = gap / Math.round(gap / near);
    const count = Math.round(gap / turn) - 1;
    const on = Array.from({ length: count }, (_, k) => highest(novelty, frameRate, start + (k + 1) * turn));
    const off = on.flatMap((_, k) => ELSEWHERE.map((share) => highest(novelty, frameRate, start + (k + 1 + share) * turn).height));
    const [a, b] = [moments(on.map((one) => one.height)), moments(off)];
    if (!(a.mean - b.mean >= SURE * Math.sqrt(a.variance / on.length + b.variance / off.length))) continue;
    const usual = median(off);
    added.push(...on.filter((one) => one.height > usual).map((one) => one.time));
  }
  return added;
}

function highest(row: Float32Array, frameRate: number, time: number): { time: number; height: number } {
  let top = Math.max(0, Math.round((time - NEAR) * frameRate));
  for (let i = top, end = Math.min(row.length - 1, Math.round((time + NEAR) * frameRate)); i <= end; i++) if (row[i]! > row[top]!) top = i;
  return { time: top / frameRate, height: row[top] ?? 0 };
}

function moments(values: readonly number[]): { mean: number; variance: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return { mean, variance: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, values.length - 1) };
}
