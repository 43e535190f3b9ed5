/** Hits of events against true times, one to one, within a window; both in order. @param window s */
export function hits(found: readonly number[], truth: ArrayLike<number>, window: number, offset: number): number {
  let [count, j] = [0, 0];
  for (let i = 0; i < truth.length; i++) {
    while (j < found.length && found[j]! - offset < truth[i]! - window) j++;
    if (j < found.length && found[j]! - offset <= truth[i]! + window) {
      count++;
      j++;
    }
  }
  return count;
}

export interface Score {
  readonly f10: number;
  readonly f25: number;
  readonly precision: number;
  readonly recall25: number;
  /** s, median of found less true, which is taken out before matching */
  readonly offset: number;
}

/** F-measures at 10 and 25 ms with the constant offset removed, for every method alike. */
export function score(found: readonly number[], truth: ArrayLike<number>): Score {
  const offset = medianOffset(found, truth);
  const f = (window: number): number => (found.length + truth.length === 0 ? 1 : (2 * hits(found, truth, window, offset)) / (found.length + truth.length));
  const hit = hits(found, truth, 0.025, offset);
  return { f10: f(0.01), f25: f(0.025), precision: found.length ? hit / found.length : 0, recall25: truth.length ? hit / truth.length : 0, offset };
}

function medianOffset(found: readonly number[], truth: ArrayLike<number>): number {
  const off: number[] = [];
  let j = 0;
  for (const t of found) {
    while (j + 1 < truth.length && Math.abs(truth[j + 1]! - t) <= Math.abs(truth[j]! - t)) j++;
    if (truth.length && Math.abs(truth[j]! - t) < 0.03) off.push(t - truth[j]!);
  }
  off.sort((a, b) => a - b);
  return off.length ? off[Math.floor(off.length / 2)]! : 0;
}

export const mean = (values: readonly number[]): number => (values.length ? values.reduce((a, b) => a + b, 0) / values.length : NaN);

/** Value below which a share of the values lies. */
export function percentile(values: readonly number[], share: number): number {
  const inOrder = [...values].sort((a, b) => a - b);
  return inOrder.length ? inOrder[Math.min(inOrder.length - 1, Math.floor(share * inOrder.length))]! : NaN;
}
