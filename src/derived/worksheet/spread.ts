/** A figure with its doubt: 10, 50 and 90 chances in 100 that it is no more. */
export interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  readonly mean: number;
}

/** What makes a sum uncertain. */
export interface Driver {
  readonly id: string;
  readonly words: string;
  /** Part of the variance of the sum, the greatest first; all together 1, or all 0 where nothing varies. */
  readonly share: number;
  readonly mean: number;
}

function sumsOf(columns: readonly Float64Array[], draws: number): Float64Array {
  const sums = new Float64Array(draws);
  for (const column of columns) for (let draw = 0; draw < draws; draw++) sums[draw]! += column[draw]!;
  return sums;
}

/** Percentiles of the sum of the columns, straight between the two draws beside the place. */
export function rangeOf(columns: readonly Float64Array[], draws: number): Range {
  const sorted = sumsOf(columns, draws).sort();
  const at = (chance: number): number => {
    const place = chance * (draws - 1);
    const below = Math.floor(place);
    const low = sorted[below]!;
    return low + (place - below) * (sorted[Math.min(draws - 1, below + 1)]! - low);
  };
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9), mean: meanOf(sorted) };
}

/** Shares of the variance of the sum by covariance. @param names as many as columns */
export function driversOf(columns: readonly Float64Array[], names: readonly { readonly id: string; readonly words: string }[], draws: number): readonly Driver[] {
  const sums = sumsOf(columns, draws);
  const mean = meanOf(sums);
  let variance = 0;
  for (const sum of sums) variance += (sum - mean) ** 2;
  const hair = 1e-18 * draws * Math.max(1, mean * mean);
  return columns
    .map((column, index): Driver => {
      const own = meanOf(column);
      let together = 0;
      for (let draw = 0; draw < draws; draw++) together += (column[draw]! - own) * (sums[draw]! - mean);
      return { ...nameOf(names, index), share: variance > hair ? together / variance : 0, mean: own };
    })
    .sort((a, b) => b.share - a.share);
}

function nameOf(names: readonly { readonly id: string; readonly words: string }[], index: number): { readonly id: string; readonly words: string } {
  const name = names[index];
  if (name === undefined) throw new Error(`a column of draws has no name: number ${index} of ${names.length}`);
  return { id: name.id, words: name.words };
}

/** @returns 0 where there are none */
export function meanOf(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return values.length === 0 ? 0 : sum / values.length;
}
