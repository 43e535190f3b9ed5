/** A fit by least squares, or why there is none. */
export type Fit =
  | {
      readonly code: 'fitted';
      readonly coefficients: readonly number[];
      /**
       * Covariance of the coefficients. With weights given as 1/u² it is theirs outright; without weights it is scaled by the
       * scatter of the residuals, and all nought where no row is left over to tell the scatter.
       */
      readonly covariance: readonly (readonly number[])[];
      /** Weighted sum of squared residuals. */
      readonly residualSum: number;
      /** Rows less coefficients. */
      readonly freedom: number;
    }
  | { readonly code: 'rank-deficient'; readonly column: number };

/**
 * Coefficients b that make the weighted sum of (y - X b)² least, by Householder reflections (G. Golub, Numer. Math. 7,
 * 1965, 206), which keeps the digits that the normal equations lose. For small dense tables.
 * @param rows one row of X per observation, all of the same length, at least as many rows as columns
 * @param ys observations, as many as rows
 * @param weights 1/u² per observation, > 0; absent: all alike, and the scatter is taken from the residuals
 */
export const leastSquares = (rows: readonly (readonly number[])[], ys: readonly number[], weights?: readonly number[]): Fit => {
  const m = rows.length;
  const n = rows[0]?.length ?? 0;
  if (n === 0 || m < n || ys.length !== m || (weights && weights.length !== m)) {
    throw new RangeError(`A fit needs at least as many rows as coefficients, and one observation and weight each: ${m} rows, ${n} coefficients, ${ys.length} observations`);
  }
  const a = rows.map((row, i) => {
    const weight = weights?.[i] ?? 1;
    if (row.length !== n || !(weight > 0)) throw new RangeError(`Row ${i} of a fit needs ${n} numbers and a weight above 0: ${row.length} numbers, weight ${weight}`);
    return [...row, ys[i]!].map((value) => value * Math.sqrt(weight));
  });
  const scale = Array.from({ length: n }, (_, j) => Math.hypot(...a.map((row) => row[j]!)));
  for (let k = 0; k < n; k += 1) {
    const norm = Math.hypot(...a.slice(k).map((row) => row[k]!));
    if (!(norm > 1e-12 * scale[k]!)) return { code: 'rank-deficient', column: k };
    const alpha = a[k]![k]! > 0 ? -norm : norm;
    const v = a.map((row, i) => (i < k ? 0 : i === k ? row[k]! - alpha : row[k]!));
    const vv = v.reduce((sum, value) => sum + value * value, 0);
    for (let j = k; j <= n; j += 1) {
      const dot = v.reduce((sum, value, i) => sum + value * a[i]![j]!, 0);
      for (let i = k; i < m; i += 1) a[i]![j]! -= (2 * dot * v[i]!) / vv;
    }
  }
  const coefficients = solveUpper(a, n, (i) => a[i]![n]!);
  const residualSum = a.slice(n).reduce((sum, row) => sum + row[n]! * row[n]!, 0);
  const freedom = m - n;
  const spread = weights ? 1 : freedom > 0 ? residualSum / freedom : 0;
  const inverse = Array.from({ length: n }, (_, j) => solveUpper(a, n, (i) => (i === j ? 1 : 0)));
  const covariance = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (__, j) => spread * inverse.reduce((sum, column) => sum + column[i]! * column[j]!, 0)),
  );
  return { code: 'fitted', coefficients, covariance, residualSum, freedom };
};

const solveUpper = (a: readonly (readonly number[])[], n: number, right: (i: number) => number): number[] => {
  const x = Array.from({ length: n }, () => 0);
  for (let i = n - 1; i >= 0; i -= 1) {
    let rest = right(i);
    for (let j = i + 1; j < n; j += 1) rest -= a[i]![j]! * x[j]!;
    x[i] = rest / a[i]![i]!;
  }
  return x;
};
